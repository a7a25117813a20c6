import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";

/** Microfarads that capacitors are made in; common practice, no source. */
const made: ReadonlySet<number> = new Set([
  3, 4, 5, 6, 7.5, 10, 12.5, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80,
]);

const reads = /^(?:reads|reading|read|readin|redin|reedin|readng|tests|tested|measures|measuring)$/;

function maybe(draft: Draft): boolean {
  return (
    (draft.unit === undefined || draft.unit.dimension === "capacitance") &&
    (draft.named === undefined || draft.named === "capacitance") &&
    draft.points === undefined &&
    draft.place === undefined
  );
}

function readsNext(items: readonly Item[], left: Draft, right: Draft): boolean {
  const noun = items[left.index + 1]?.label?.quantity === "capacitance" ? 1 : 0;
  const verb = items[left.index + 1 + noun]?.text ?? "";
  return right.index === left.index + 2 + noun && reads.test(verb);
}

/** Volts that control circuits, boards and supplies are made with; common practice, no source. */
const rails: ReadonlySet<number> = new Set([
  3.3, 5, 10, 12, 15, 18, 24, 115, 120, 208, 230, 240, 277, 380, 400, 415, 460, 480, 575, 600,
]);

const source =
  /^(?:rail|supply|reg|regulator|output|line|side|bus|board|ref|reference|transformer)$/;

/** "12vdc reads 3.8", "24v supply reads 19.2": what a rail is called by, and what it has. */
function railThenRead(items: readonly Item[], left: Draft, right: Draft): void {
  const between = items.slice(left.index + 1, right.index);
  const verb = between[between.length - 1]?.text ?? "";
  const noun = between.length === 1 || source.test(between[0]?.text ?? "");
  if (between.length === 0 || between.length > 2 || !noun || !reads.test(verb)) return;
  if (left.unit?.figure !== "V" || !left.ownUnit || !rails.has(left.value)) return;
  if (left.rating !== undefined || left.points !== undefined) return;
  if (right.unit !== undefined && right.unit.dimension !== "voltage") return;
  if (right.value > left.value * 1.5 || right.points !== undefined) return;
  left.rating = "nominal";
  right.named = "voltage";
  right.unit ??= left.unit;
  right.kind ??= left.kind;
  if (right.place?.endsWith("_air") === true) right.place = undefined;
  right.hint = undefined;
}

/** "run cap 40 uF: meter says 31.5" */
function meterSays(items: readonly Item[], left: Draft, right: Draft): boolean {
  const gap = items.slice(left.index + 1, right.index).map(({ text }) => text);
  return /^(?:[:,] |and |but )?(?:(?:the |my )?(?:meter|it) )?(?:only |just )?(?:says|reads|reading|tests|shows|measures|measured|got)(?: only| just)?$/.test(
    gap.join(" "),
  );
}

/** Kilohms at 25 Cel that sensors are made with; common practice, no source. */
const tables: ReadonlySet<number> = new Set([
  1, 2, 2.2, 2.5, 3, 3.3, 5, 6, 6.8, 10, 15, 20, 30, 50, 100,
]);

/** "ntc is 10k @77, rd 9.7k", "sensor is 10k, reads 12.1": what its table says, and what it has. */
function tableThenRead(items: readonly Item[], left: Draft, right: Draft): void {
  if (left.unit?.figure !== "kilohm" || right.unit?.figure !== "kilohm") return;
  if (!left.ownUnit || !tables.has(left.value) || left.rating !== undefined || left.earlier) return;
  if (left.points !== undefined || right.points !== undefined) return;
  const lead = items[left.index - 1];
  if (!/^(?:is|its|a|an)$/.test(lead?.text ?? "") && lead?.apostrophe !== true) return;
  const gap = wordsFrom(items, left.index + 1, right.index);
  if (
    /^(?:(?:at|@) \d+ )?(?:[:,] |and |but )?(?:its |this one |it )?(?:only |just )?(?:rd|rds|reads|reading|read|shows|showing|measures|measured|got|getting)(?: only| just)?$/.test(
      gap,
    )
  ) {
    left.rating = "nominal";
    right.place ??= left.place;
  }
}

/** "12vdc reads 3.8", "caps: comp 45 reading 31.2, fan 5 reading 4.9 uf": the size that it is made in, and what it has. */
export function markedThenRead(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined) return;
    railThenRead(items, left, right);
    tableThenRead(items, left, right);
  });
  const spoken = items.some(
    ({ label, text }) => label?.quantity === "capacitance" || /^(?:cap|caps)$/.test(text),
  );
  if (!spoken) return;
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || !(readsNext(items, left, right) || meterSays(items, left, right)))
      return;
    if (items[left.index]?.kind !== itemKind.number || left.rating !== undefined) return;
    if (!made.has(left.value) || !maybe(left) || !maybe(right)) return;
    left.rating = "nominal";
    left.named = "capacitance";
    right.named = "capacitance";
    right.rating = undefined;
  });
}
