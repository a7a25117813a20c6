import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** The most heads that hang on one outdoor unit; common practice, no source. */
const HEADS = 64;

/** "all heads", "the other heads": indoor units, where no pressure follows. */
function plainHeads(items: readonly Item[], i: number): boolean {
  return /^(?:all|the|other|both|indoor|some|few)$/.test(textAt(items, i - 1));
}

/** What is told of units on one communication line. */
const network =
  /^(?:link|comm|comms|communication|offline|signal|pair|address|network|dropped out)$/;

const aheadOfHead = /^(?:at|on|to|from|and|,|leaving|past|after|behind|beyond|before|between)$/;

/** "heads 9 thru 14 dropped off the bus": the end of a span of small whole numbers behind the plural. */
function spanEnd(items: readonly Item[], i: number): number | undefined {
  if (items[i]?.text !== "heads" || !/^(?:thru|through|to|-)$/.test(textAt(items, i + 2))) return;
  const [first, last] = [items[i + 1], items[i + 3]];
  if (!isOfHead(first) || !isOfHead(last) || first.value >= last.value) return;
  return i + 4;
}

function isOfHead(item: Item | undefined): item is Item {
  if (!freeNumber(item) || item.unit !== undefined || item.series !== undefined) return false;
  return Number.isInteger(item.value) && item.value >= 1 && item.value <= HEADS;
}

/** The whole numbers of units behind their noun. */
function numbersEnd(items: readonly Item[], from: number): number {
  let end = from;
  while (end < items.length) {
    const item = items[end];
    const number = freeNumber(item) && item.unit === undefined && Number.isInteger(item.value);
    const small = number && item.value >= 1 && item.value <= HEADS && item.series === undefined;
    const joint =
      end > from && /^(?:and|&|,)$/.test(item?.text ?? "") && freeNumber(items[end + 1]);
    if (!small && !joint) break;
    end++;
  }
  return end;
}

/** "head 1 fine", "head 2 and 3 warm": behind the numbers the word of a room, not of a gauge. */
function headsEnd(items: readonly Item[], from: number): number {
  let end = from;
  while (end < items.length) {
    const item = items[end];
    const number = freeNumber(item) && item.unit === undefined && item.value <= HEADS;
    const joint =
      end > from && /^(?:and|&|,)$/.test(item?.text ?? "") && freeNumber(items[end + 1]);
    if (!number && !joint) break;
    end++;
  }
  while (/^(?:is|are|was|were|still|both|all)$/.test(textAt(items, end))) end++;
  // "head is down to 412": a gauge that moved
  const moved =
    /^(?:to|from|by|at|about)$/.test(textAt(items, end + 1)) || freeNumber(items[end + 1]);
  if (moved && !freeNumber(items[from])) return from;
  return /^(?:fine|ok|okay|good|warm|hot|cold|dead|out|down|off|not|cooling|heating)$/.test(
    textAt(items, end),
  )
    ? end
    : from;
}

/** "head 2 liq pipe 41", "head 2 9.7k": so few psi no head has, so it is an indoor unit, and what was read there. */
function readAt(items: readonly Item[], i: number): boolean {
  const [number, next] = [items[i + 1], items[i + 2]];
  if (!freeNumber(number) || number?.unit !== undefined || number?.series !== undefined)
    return false;
  if (!Number.isInteger(number?.value) || (number?.value ?? 0) < 1 || (number?.value ?? 99) > 9)
    return false;
  if (next?.kind === itemKind.number) return next.unit !== undefined;
  const { label } = next ?? {};
  return label?.component === true || (label?.hint === "temperature" && label.place !== undefined);
}

const code = /(?:^| )(?:[a-z]-?\d{1,3}|\d{2,3}[a-z]|f1-?f2) (?:on|at)$/;

/** "u4 on head 3 and 4", "f1-f2 at head 3": where a code stands or a pair ends; where the numbers end, or `i`. */
function shownAt({ items, plain }: Note, i: number): number {
  const head = items[i];
  if (head === undefined || !/^heads?$/.test(head.text)) return i;
  if (!code.test(plain.slice(Math.max(0, head.from - 12), head.from).trim())) return i;
  const end = numbersEnd(items, i + 1);
  return end > i + 1 ? end : i;
}

/** "mini split 3 head" */
function headsOfSplit(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  if (!freeNumber(before) || before?.unit !== undefined || (before?.value ?? 99) > 9) return false;
  // "3 hd 36k odu"
  if (items[i + 1]?.unit?.figure === "kilohm") return true;
  return items.some(({ text }) => /^(?:mini|ductless|multi|minisplit)$/.test(text));
}

/** "15.9 V at head 8, 0.2 at head 9": beside volts the heads of a split are numbered. */
export const numberedHeads: Rule = {
  name: "head <number>",
  heads: "head|heads|hd|indoor|indoors",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((_, i) => {
      const end = spanEnd(items, i);
      if (end !== undefined)
        state(note, numberedHeads.name, [i, end], { kind: "note", about: "place" });
    });
    items.forEach((item, i) => {
      const before = items[i - 1];
      if (item.text === "head" && item.owner === undefined && readAt(items, i)) {
        state(note, numberedHeads.name, [i, i + 2], { kind: "note", about: "place" });
        return;
      }
      const many =
        before?.kind === itemKind.number &&
        (item.text === "heads" || (/^(?:head|hd)$/.test(item.text) && headsOfSplit(items, i)));
      if (many && freeNumber(before) && before.unit === undefined)
        state(note, numberedHeads.name, [i - 1, i + 1], { kind: "note", about: "count" });
      else if (item.text === "heads" && item.owner === undefined && plainHeads(items, i))
        state(note, numberedHeads.name, [i, i + 1], { kind: "note", about: "count" });
    });
    if (items.some(({ text }) => network.test(text)))
      items.forEach((item, i) => {
        if (!/^indoors?$/.test(item.text)) return;
        const end = numbersEnd(items, i + 1);
        if (end > i + 1)
          state(note, numberedHeads.name, [i, end], { kind: "note", about: "place" });
      });
    items.forEach((item, i) => {
      if (!/^heads?$/.test(item.text)) return;
      const end = headsEnd(items, i + 1);
      if (end > i + 1) state(note, numberedHeads.name, [i, end], { kind: "note", about: "place" });
    });
    items.forEach((_, i) => {
      const end = shownAt(note, i);
      if (end > i) state(note, numberedHeads.name, [i, end], { kind: "note", about: "place" });
    });
    if (!items.some((item) => item.unit?.dimension === "voltage")) return;
    items.forEach((item, i) => {
      const next = items[i + 1];
      if (!/^heads?$/.test(item.text) || next?.kind !== itemKind.number) return;
      if (!freeNumber(next) || next.unit !== undefined || !Number.isInteger(next.value)) return;
      if (next.value > HEADS || !aheadOfHead.test(textAt(items, i - 1))) return;
      state(note, numberedHeads.name, [i, i + 2], { kind: "note", about: "place" });
    });
  },
};
