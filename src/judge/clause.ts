import type { Reading } from "../model.ts";
import { noteOf } from "./near.ts";
import { perReading, type Scene } from "./scene.ts";

/** Letters to each side, where a clause runs on without a stop. */
const farthest = 80;

/** The clause of its note that a reading stands in, lower case: up to the next comma or stop. */
export const clauseOf: (scene: Scene, reading: Reading) => string = perReading(findClause);

function findClause(scene: Scene, reading: Reading): string {
  const text = noteOf(scene, reading)?.text;
  const from = reading.spans[0]?.[0];
  const to = reading.spans[reading.spans.length - 1]?.[1];
  if (text === undefined || from === undefined || to === undefined)
    return reading.said.toLowerCase();
  const before =
    text
      .slice(Math.max(0, from - farthest), from)
      .split(/[,;:]|\.\s/)
      .at(-1) ?? "";
  const after = text.slice(to, to + farthest).split(/[,;]|\.\s|\.$/)[0] ?? "";
  return `${before}${text.slice(from, to)}${after}`.toLowerCase();
}
