import { isStrongBreak } from "../breaks.ts";
import { type Item, wordsFrom } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

function ended(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined || isStrongBreak(item)) return true;
  return /^(?:,|and|but|so|now|then|it|its|she|shes|were|today|already)$/.test(item.text);
}

/** Words of capacitors that say which of two is meant. */
const side = /^(?:fan|herm|hermetic|compressor|comp|start|run)$/;

export const NEW_SIZE = "a new <size>";

/** Index behind "in it", "on the fan", where the new one was put; -1 where nothing says so. */
function putEnd(items: readonly Item[], i: number): number {
  const word = textAt(items, i);
  if (!/^(?:in|on|back|up|for)$/.test(word)) return -1;
  const the = textAt(items, i + 1) === "the" ? i + 2 : i + 1;
  if (side.test(textAt(items, the)) || side.test(items[the]?.label?.thing ?? "")) return the + 1;
  if (/^(?:it|there|here|her|this)$/.test(textAt(items, i + 1))) return i + 2;
  return word === "for" ? -1 : i + 1;
}

const put = /^(?:put|putting|stuck|popped|threw|installed|fitted|dropped|slapped|got)$/;

/** "put in 7.5": both words are one item. */
function straightIn(items: readonly Item[], i: number): boolean {
  const [verb, item] = [items[i - 1], items[i]];
  return verb?.text === "put" && verb.to - verb.from > "put".length && item?.spoken !== true;
}

/** "a new five", and behind a verb of fitting "a 7.5" too. */
function isNamed(items: readonly Item[], i: number): boolean {
  const [verb, article] = [textAt(items, i - 2), textAt(items, i - 1)];
  if (straightIn(items, i)) return true;
  if (article === "new") return /^(?:a|the|my)$/.test(verb) || put.test(verb) || i === 1;
  return /^(?:a|an|another)$/.test(article) && put.test(verb);
}

/** Microfarads of capacitors, as they are sold. Common practice, no source. */
const [least, most] = [2, 110];

/** Amperes that contactors, breakers and fuses are sold for. Common practice, no source. */
const poles: ReadonlySet<number> = new Set([
  10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 75, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250,
]);

/** So many readings back a capacitor is still spoken of; our choice, no source. */
const lately = 8;

/** Was a capacitor measured a while ago, or is one side of it named, so that a size is one of them? */
function isCapacitor({ context, items }: Note, i: number, end: number): boolean {
  const size = items[i]?.value ?? 0;
  if (size < least || size > most) return false;
  const last = context.readings.slice(-lately);
  if (last.some(({ quantity }) => quantity === "capacitance")) return true;
  if (items.slice(0, i).some(({ label }) => label?.quantity === "capacitance")) return true;
  const named = items.slice(i, Math.max(i, end));
  if (named.some(({ text }) => /^(?:fan|herm|hermetic|start|run)$/.test(text))) return true;
  const reads = items.some(({ text }) =>
    /^(?:reads?|reading|measures?|tests?|checks?|was|old|weak)$/.test(text),
  );
  return reads && named.some(({ text }) => side.test(text));
}

/**
 * "putting in a new forty five five": what is put in is called by its size; nothing was weighed.
 * Where a capacitor was measured last, a size alone is one.
 */
export const newSize: Rule = {
  name: NEW_SIZE,
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      const sized = item.unit?.dimension === "capacitance";
      const rated = item.unit?.dimension === "current" && poles.has(item.value);
      if (!freeNumber(item) || !isNamed(items, i)) return;
      if (item.unit !== undefined && !sized && !rated) return;
      const fresh = textAt(items, i - 1) === "new";
      const end = putEnd(items, i + 1);
      // "new 40a on, 480 479 481"
      if (rated) {
        const row = end >= 0 && freeNumber(items[end]) && (items[end]?.value ?? 0) >= 100;
        const pullsIn = /^pull(?:s|ed)? in\b/.test(wordsFrom(items, i + 1, i + 3));
        if (fresh && (pullsIn || row || (end >= 0 && ended(items, end))))
          state(note, newSize.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      // "new 5 mfd in"
      if (sized && !(fresh && end >= 0 && ended(items, end))) return;
      const capacitor = sized || isCapacitor(note, i, end);
      // "put a new 45 in and she's running"
      const fitted = end >= 0 && ended(items, end);
      const behind = fitted ? undefined : items[i + 1];
      if (behind !== undefined && !isStrongBreak(behind) && behind.text !== ",") return;
      const straight = straightIn(items, i);
      if (capacitor && (fitted || straight || put.test(textAt(items, fresh ? i - 3 : i - 2))))
        state(note, newSize.name, [i, i + 1], { kind: "part", part: "capacitor", state: "fitted" });
      else if (fresh) state(note, newSize.name, [i, i + 1], { kind: "note", about: "size" });
    });
  },
};
