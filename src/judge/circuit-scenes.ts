import type { CaseNote, Reading } from "../model.ts";
import type { Scene } from "./scene.ts";

const plain = (name: string): string => name.toLowerCase().replace(/^(?:circuit|ckt)\s*/, "");

const isCircuit = (name: string | undefined): name is string =>
  name !== undefined && /^circuit /i.test(name);

/**
 * The case seen from each circuit that refrigerant was weighed for, where the office's file tells a
 * unit's circuits apart: its own weights, charge and refrigerant. Else the case as it is, "system".
 */
export function circuitScenes(scene: Scene): readonly (readonly [about: string, scene: Scene])[] {
  const { circuits } = scene.facts;
  const subjects = scene.readings.filter(isWeight).map(({ subject }) => subject);
  const named = [...new Set(subjects.filter(isCircuit))];
  const [only] = named;
  // a weight of which nobody said where it went, beside several circuits, belongs to none of them
  const unclear = named.length > 1 && !subjects.every(isCircuit);
  if (circuits === undefined || only === undefined || unclear) return [["system", scene]];
  return named.map((name) => [name, sceneFor(scene, name)] as const);
}

const isWeight = ({ quantity, rating }: Reading): boolean =>
  quantity === "mass" && rating === undefined;

function sceneFor(scene: Scene, name: string): Scene {
  const own = scene.facts.circuits?.find(({ circuit }) => plain(circuit) === plain(name));
  const elsewhere = (one: Reading): boolean =>
    isWeight(one) && isCircuit(one.subject) && plain(one.subject) !== plain(name);
  const notes = notesWithout(scene.notes, elsewhere);
  return {
    ...scene,
    facts: {
      ...scene.facts,
      ...(own?.charge_kg === undefined ? {} : { charge_kg: own.charge_kg }),
      ...(own?.refrigerant === undefined ? {} : { refrigerant: own.refrigerant }),
    },
    readings: scene.readings.filter((one) => !elsewhere(one)),
    notes,
    words: notes.map(({ text }) => (text ?? "").toLowerCase()).join("\n"),
    history: scene.history.map((past) => ({ ...past, notes: notesWithout(past.notes, elsewhere) })),
  };
}

/** Notes that spoke of another circuit's weights alone are left out, the time of the last is kept. */
function notesWithout(
  notes: readonly CaseNote[],
  elsewhere: (one: Reading) => boolean,
): readonly CaseNote[] {
  return notes.map((note) => {
    const readings = note.readings.filter((one) => !elsewhere(one));
    if (readings.length === note.readings.length) return note;
    if (readings.some(isWeight)) return { ...note, readings };
    const { text: _, ...rest } = note;
    return { ...rest, readings };
  });
}
