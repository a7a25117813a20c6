import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** A room's number: three or four figures, no unit, no point. */
function room(item: Item | undefined): boolean {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    item.value >= 100 &&
    item.value <= 9999 &&
    !item.text.includes(".")
  );
}

function degrees(item: Item | undefined): boolean {
  return freeNumber(item) && item.unit?.dimension === "temperature";
}

const found =
  /^(?:fine|ok|okay|good|great|happy|warm|hot|cold|cool|cooling|comfortable|empty|vacant)$/;

/** "suite 312 is 76 and 314's fine": behind a suite the next one's number, and how it is there. */
function suiteGoesOn({ items, plain }: Note, i: number): boolean {
  const item = items[i];
  if (item === undefined || !room(item)) return false;
  const suite = items
    .slice(0, i)
    .some(
      ({ kind, text }) =>
        kind === itemKind.subject && /^(?:suite|ste|room|rm|apt|apartment)s?$/.test(text),
    );
  const is = ((items[i + 1]?.roles ?? 0) & role.is) !== 0;
  if (!suite || !(is || plain.slice(item.from, item.to).endsWith("'s"))) return false;
  const at = is ? i + 2 : i + 1;
  const still = /^(?:still|all|just|pretty|real|really|nice|too)$/.test(items[at]?.text ?? "");
  return found.test(items[still ? at + 1 : at]?.text ?? "");
}

/** "204 77F, 206 78F, 208 71F": rooms by their numbers alone, each with its degrees. */
export const numberedRooms: Rule = {
  name: "<room number> <degrees>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    if (!items.some(room)) return;
    items.forEach((_, i) => {
      if (suiteGoesOn(note, i))
        state(note, numberedRooms.name, [i, i + 1], { kind: "note", about: "place" });
    });
    const starts = items.flatMap((item, i) => {
      const before = items[i - 1];
      const begins =
        before === undefined ||
        before.kind === itemKind.line ||
        before.kind === itemKind.sign ||
        before.text === "and" ||
        before.label?.hint === "temperature" ||
        degrees(before);
      return begins && room(item) && degrees(items[i + 1]) ? [i] : [];
    });
    if (starts.length < 2) return;
    for (const i of starts) {
      state(note, numberedRooms.name, [i, i + 1], { kind: "note", about: "place" });
    }
  },
};
