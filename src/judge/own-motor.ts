import type { Finding, Reading } from "../model.ts";
import { noteOf } from "./near.ts";
import { perScene, type Scene } from "./scene.ts";

const pumps = /\bpumps?\b/;
/** Tags that mechanical drawings give to what moves air or water. Common practice, no source. */
const fanTags = /^(?:ahu|ef|sf|rf|xf|mau|mua|tf|ct|kef|gef)[- ]?\d/;
const pumpTags = /^(?:cwp|chwp|hwp|p)[- ]?\d/;
/** Words of a circuit that such a machine has beside its motor. */
const circuit =
  /\bheaters?\b|\belements?\b|\bstrips?\b|\bcomp(?:ressor)?s?\b|\bscroll\b|\bsuction\b|\bsuct\b|\bdischarge (?:line|press)|\bhead (?:press|\d)|\brefrigerant\b|\bsubcool/;

/**
 * The machine is a pump, or by its tag alone a fan: its one motor is no compressor's, where none is spoken of.
 * What the office calls an air handler may have heaters and a coil, and is judged by its words.
 */
export const ownMotor: (scene: Scene) => "pump" | "fan" | undefined = perScene((scene) => {
  const kind = (scene.facts.kind ?? "").toLowerCase();
  if (kind !== "") return pumps.test(kind) && !/heat pump/.test(kind) ? "pump" : undefined;
  const tag = (scene.facts.tag ?? "").toLowerCase();
  const [fan, pump] = [fanTags.test(tag), pumpTags.test(tag)];
  if ((!fan && !pump) || circuit.test(scene.words.toLowerCase())) return undefined;
  return scene.facts.refrigerant === undefined ? (pump ? "pump" : "fan") : undefined;
});

const motorNouns =
  /\b(?:(?<!heat |vacuum |vac |drain |condensate )pumps?(?! ?(?:it |the \w+ )?down)|fans?|blowers?|comp(?:ressor)?s?|scroll)\b/g;

/** Read on a pump's motor: the machine is one, or a pump was the last motor named before the figure. */
export function isOfPump(scene: Scene, reading: Reading): boolean {
  if (ownMotor(scene) === "pump") return true;
  if (!pumps.test(scene.words)) return false;
  const note = noteOf(scene, reading);
  const until = note === undefined ? 0 : scene.notes.indexOf(note) + 1;
  const said = scene.notes.slice(0, until).map(({ text }) => (text ?? "").toLowerCase());
  return /pump/.test(said.join(" ").match(motorNouns)?.at(-1) ?? "");
}

/** What a winding shows is the pump's own motor: it says nothing of a compressor. */
export function forPump(findings: readonly Finding[]): Finding[] {
  return findings.map((one) => ({
    ...one,
    about: "pump",
    says: one.says.replace(/\bcompressor\b/g, "motor"),
    signs: one.level === "bad" ? ["motor:winding_bad"] : [],
  }));
}
