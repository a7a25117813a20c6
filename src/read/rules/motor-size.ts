import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber } from "./near.ts";

/** Nominal volts of motors, V. Source: ANSI C84.1 and IEC 60038, from memory. */
const mains: ReadonlySet<number> = new Set([
  115, 120, 200, 208, 220, 230, 240, 277, 380, 400, 415, 460, 480, 575,
]);

/** Turns of motors at their load by the number of poles, 1/min: 50 and 60 Hz; common practice, no source. */
function nominalTurns(value: number): boolean {
  return value >= 500 && value <= 3600 && value % 5 === 0;
}

const orders =
  /^(?:order|ordered|ordering|need|needs|needed|quote|quoted|bring|grab|get|gets|send|want|wants|stock|install|installed|put|fitted|buy|bought)$/;
const joints =
  /^(?:and|or|to|at|a|an|the|by|phase|ph|single|three|volt|volts|speed|frame|rotation|,|-|\/|:)$/;

const measures =
  /^(?:it|its|it's|is|pulling|pulls|drawing|draws|turning|turns|running|runs|spinning|spins|reads|reading|was|at)$/;

/** Is the number one that a motor's plate gives: its power, its turns, its volts? */
function ofPlate(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (!freeNumber(item)) return false;
  const { unit, value } = item;
  if (unit === undefined) {
    const next = items[i + 1];
    const turns = next?.kind === itemKind.unit && next.unit?.figure === "rpm";
    return (
      mains.has(value) || (turns && nominalTurns(value)) || (value >= 800 && nominalTurns(value))
    );
  }
  if (unit.figure === "hp") return value > 0;
  return (
    (unit.figure === "rpm" && nominalTurns(value)) || (unit.figure === "V" && mains.has(value))
  );
}

/** From the first to the last number of the row that begins at `i`. */
function rowEnd(items: readonly Item[], i: number): number {
  let end = i + 1;
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) break;
    if (ofPlate(items, at)) end = at + 1;
    else if (item.kind === itemKind.unit && item.unit?.figure === "rpm") end = at + 1;
    else if (
      item.kind !== itemKind.sign &&
      !joints.test(item.text) &&
      item.label?.thing === undefined
    )
      break;
  }
  return end;
}

/** Is a motor ordered, needed or put in, in the sentence before the row? */
function isOrdered({ items, plain }: Note, i: number): boolean {
  let motor = false;
  for (let at = i - 1; at >= 0; at--) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) return false;
    if (item.kind === itemKind.number && item.unit !== undefined) return false;
    if (measures.test(item.text)) return false;
    if (/\b(?:motor|blower|fan)s?\b/.test(plain.slice(item.from, item.to))) motor = true;
    if (orders.test(item.text)) return motor;
  }
  return false;
}

/** "waiting on a 460v 1140 rpm cond fan motor": an article before the row, and what it is behind it. */
function isNoun({ items, plain }: Note, i: number, end: number): boolean {
  if (!/^(?:a|an|new|another|same|spare)$/.test(items[i - 1]?.text ?? "")) return false;
  const [first, last] = [items[end], items[end + 2] ?? items[end + 1] ?? items[end]];
  return /^(?:\w+ ){0,3}(?:motor|mtr|blower|fan)\b/.test(plain.slice(first?.from, last?.to));
}

/**
 * "ordered the fan motor, third horse 825 rpm 208-230": what a motor is called by. Nobody measures its
 * horses, and the turns and volts beside them are the plate's too.
 */
export const motorSizes: Rule = {
  name: "<motor> <horses> <turns> <volts>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      if (!ofPlate(items, i)) continue;
      const end = rowEnd(items, i);
      const row = items.slice(i, end);
      const horses = row.some(({ unit }) => unit?.figure === "hp");
      const turns = row.some(({ unit }) => unit?.figure === "rpm");
      const volts = row.some(({ unit }) => unit?.figure === "V");
      // "460v 7.5hp 9.6a": a plate that is read out
      const plate = items[end]?.unit?.dimension === "current" || (volts && !turns);
      const called = (horses && row.length > 1 && !plate) || (turns && isNoun(note, i, end));
      const ordered = (turns || horses) && isOrdered(note, i);
      // "ordered a fan motor 825 rpm 1.9a"
      const amps = ordered && plate && freeNumber(items[end]);
      if (called || ordered)
        state(note, motorSizes.name, [i, amps ? end + 1 : end], { kind: "note", about: "size" });
      i = end - 1;
    }
  },
};
