import type { CaseNote, Reading } from "../model.ts";
import { figureSpan, noteOf } from "./near.ts";
import { numberOf } from "./pick.ts";
import { perScene, type Scene } from "./scene.ts";

/** V; a communication pair carries less. Common practice, no source. */
const mostPairV = 60;
/** Letters behind a figure within which the unit that it was read at is named. */
const behind = 26;

const unit =
  /^[^,;.]{0,12}\b(?:at|on|in) (?:the )?(?:last )?(?:heads?|indoors?|idus?|iu|fan ?coils?|cassettes?|units?)(?: unit)? ?#?-?(\d+)\b/i;
const fed = /\b(?:24 ?v(?:olts?)?\b|transformer|thermostat)/i;

/**
 * "15.9 V at head 8, 0.2 at head 9": low volts at one numbered indoor unit after another, which
 * only their communication pair has to share.
 */
export const voltsAlongUnits: (scene: Scene) => ReadonlySet<Reading> = perScene((scene) => {
  const found = scene.notes.filter(({ text }) => !fed.test(text ?? "")).flatMap(alongUnits);
  return new Set(scene.readings.filter((one) => found.includes(one)));
});

function alongUnits(note: CaseNote): Reading[] {
  const placed = note.readings.flatMap((one) => {
    const at = unitOf(note, one);
    return at === undefined ? [] : [{ one, at }];
  });
  return new Set(placed.map(({ at }) => at)).size > 1 ? placed.map(({ one }) => one) : [];
}

function unitOf(note: CaseNote, one: Reading): string | undefined {
  const value = numberOf(one);
  if (one.quantity !== "voltage" || one.kind === "ac" || one.rating !== undefined) return;
  if (value === undefined || value >= mostPairV) return;
  const text = note.text ?? "";
  const [from] = figureSpan(text, one);
  const end = text.indexOf(one.figure.number, from) + one.figure.number.length;
  return unit.exec(text.slice(end, end + behind))?.[1];
}

/** Low volts along numbered units, or at one whose neighbour was read too. */
export function isAlongUnits(scene: Scene, one: Reading): boolean {
  return noteOf(scene, one) !== undefined && voltsAlongUnits(scene).has(one);
}
