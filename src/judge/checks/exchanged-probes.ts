import type { CaseNote, Finding } from "../../model.ts";
import { figuresOf } from "../figures.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";

/** K within which a board's probe and a clamp on the same pipe agree, and by which two pipes differ at least. Common practice, no source. */
const agreeK = 3;
const apartK = 6;

const shown =
  /\b(?:display|board|screen|controller|remote|app|monitor|it)\b.{0,12}\b(?:says?|shows?|reads?|has|thinks|sees)\b|\b(?:on|per) (?:the )?(?:display|screen|monitor|board)\b/i;
const own = /\b(?:my|clamps?|clamp-?ons?|thermometer|thermocouple|by hand|own probe|strap-?on)\b/i;

interface Pipes {
  readonly liquidCel: number;
  readonly gasCel: number;
}

function pipesOf(note: CaseNote | undefined): Pipes | undefined {
  const at = (place: string): number | undefined => {
    const read = note?.readings.findLast(
      (one) => one.quantity === "temperature" && one.at === place && one.rating === undefined,
    );
    return read === undefined ? undefined : numberOf(read);
  };
  const [liquidCel, gasCel] = [at("liquid"), at("suction")];
  return liquidCel === undefined || gasCel === undefined ? undefined : { liquidCel, gasCel };
}

/** A display's two pipes are a clamp's two pipes the other way round: each probe sits on the other's pipe or plug. */
export function exchangedProbes(scene: Scene): Finding[] {
  const told = scene.notes.find((note) => shown.test(note.text ?? "") && pipesOf(note));
  const read = scene.notes.find(
    (note) => note !== told && own.test(note.text ?? "") && pipesOf(note),
  );
  const [board, clamp] = [pipesOf(told), pipesOf(read)];
  if (board === undefined || clamp === undefined) return [];
  const near = (one: number, other: number): boolean => Math.abs(one - other) <= agreeK;
  const crossed = near(board.liquidCel, clamp.gasCel) && near(board.gasCel, clamp.liquidCel);
  if (!crossed || Math.abs(board.liquidCel - board.gasCel) < apartK) return [];
  const figures = figuresOf(scene);
  const [liquid, gas] = [figures.temperature(clamp.liquidCel), figures.temperature(clamp.gasCel)];
  return [
    {
      about: "sensor",
      check: "sensor",
      level: "bad",
      says: `The pipes are ${liquid} and ${gas} and the board has them the other way round: its two pipe probes are exchanged, at the pipes or at their plugs`,
      brief: "pipe probes exchanged",
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      signs: ["sensor:off"],
    },
  ];
}
