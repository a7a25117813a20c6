import type { Place } from "../vocabulary.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { waterMachine } from "./water-sides.ts";
import { movesNoAir } from "./where-words.ts";

/** Beside what moves no air: water and lines, whose two ends are told in the same words. */
const wet = /^(?:water|chw|chilled|wtr|barrel|pipe|line)$/;

const noAir = (item: Item): boolean =>
  movesNoAir(item) || wet.test(item.text) || waterMachine.test(item.subject ?? "");

/** A coil of which the two ends may be told; one that is spoken of farther off is another matter. */
const nearCoil = (items: readonly Item[], left: Draft, right: Draft): boolean =>
  items.slice(Math.max(0, left.index - 4), right.index + 3).some(({ text }) => text === "coil");

/** Cel between air into and out of a coil; common practice, no source. */
const mostSplit = 25;

function warmth(draft: Draft): boolean {
  return (
    (draft.place === undefined || draft.place === "outdoor_air" || draft.place === "return_air") &&
    (draft.named === undefined || draft.named === "temperature") &&
    draft.points === undefined &&
    draft.action === undefined &&
    draft.rating === undefined &&
    (draft.unit === undefined
      ? draft.value >= 13 && draft.value <= 130
      : draft.unit.dimension === "temperature")
  );
}

function place(draft: Draft, at: Place): void {
  draft.place = at;
  draft.hint = "temperature";
}

/** "in", "out" directly before a value; "air in" is one item. */
function sideOf(items: readonly Item[], draft: Draft | undefined): string {
  const before = draft === undefined ? undefined : items[draft.index - 1];
  if (before?.text === "air" && before.label?.place === "return_air") return "in";
  if (before?.text === "inlet") return "in";
  if (before?.text === "outlet") return "out";
  return before?.text ?? "";
}

/** Cel between return and supply while a coil cools; common practice, no source. */
const usualSplit: readonly [number, number] = [6, 15];

/** "return 76 out 55": what the coil made of it, where the two are as far apart as a coil brings them. */
function returnThenOut(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right !== undefined && nearCoil(items, left, right)) return;
    if (right === undefined || left.place !== "return_air" || sideOf(items, left) === "in") return;
    const words = items.slice(left.index + 1, right.index).map(({ text }) => text);
    if (!words.includes("out") || words.length > 4) return;
    if (!words.every((word) => /^(?:out|at|and|is|coming|,|its)$/.test(word))) return;
    if (!warmth(left) || !warmth(right)) return;
    if ((left.unit === undefined) !== (right.unit === undefined)) return;
    const fahrenheit = left.unit === undefined || left.unit.figure === "F";
    const split = (left.value - right.value) / (fahrenheit ? 1.8 : 1);
    if (split >= usualSplit[0] && split <= usualSplit[1]) place(right, "supply_air");
  });
}

/** Words behind a figure that tell which way its air goes: "68 going in and 102 coming off". */
const goesIn = /^(?:going|entering|coming) in\b/;
const comesOff = /^(?:coming|leaving|going out)\b/;

/** "drier: 91 going in, 76 coming out": parts of the circuit. */
const carriesNoAir =
  /^(?:drier|dryer|strainer|solenoid|reversing|filter-drier|filterdrier|txv|exchanger|suction|liquid|discharge|compressor|coil)$/;

function behindOf(items: readonly Item[], draft: Draft): string {
  return wordsFrom(items, draft.index + 1, draft.index + 4);
}

/** "68 going in and 102 coming off": the air before and behind what heats or cools it. */
function goingIn(items: readonly Item[], drafts: readonly Draft[]): void {
  if (items.some(({ text }) => /^(?:water|chw|chilled|wtr|barrel|pipe|line)$/.test(text))) return;
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right === undefined || !warmth(left) || !warmth(right)) return;
    const ahead = items.slice(Math.max(0, left.index - 5), left.index);
    if (ahead.some(({ text }) => carriesNoAir.test(text))) return;
    if (!goesIn.test(behindOf(items, left)) || !comesOff.test(behindOf(items, right))) return;
    place(left, "return_air");
    place(right, "supply_air");
  });
}

/** "air out of iu-8 38,5 in 20": what goes into it is air as well. */
function airOutThenIn(items: readonly Item[], drafts: readonly Draft[]): void {
  let told = false;
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    const named = left.before.some((at) => items[at]?.text === "air");
    // "…, head 4 13,8 on 24,5": the same of the next
    const again = told && left.place === undefined && left.subject !== undefined && warmth(left);
    if (right === undefined || !((left.place === "supply_air" && named) || again)) return;
    const way = items[right.index - 1]?.text ?? "";
    if (!/^(?:in|on)$/.test(way) || !warmth(right)) return;
    told = true;
    place(left, "supply_air");
    place(right, "return_air");
  });
}

/**
 * "in 76 out 55", "out 91 in 76 sup 56": the sides stand before the values. Beside a supply the two are
 * the weather and the room; else they are the air into and out of the unit, where they are as near to
 * each other as such air is and the air cools; a warmer "out" may be either and is left to be asked.
 */
export function inThenOut(items: readonly Item[], drafts: readonly Draft[]): void {
  goingIn(items, drafts);
  airOutThenIn(items, drafts);
  const inlets = items.some(({ text }) => text === "inlet");
  if (!inlets && items.some(noAir)) return;
  const supplied = drafts.some((draft) => draft.place === "supply_air");
  if (!supplied) returnThenOut(items, drafts);
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    const sides = `${sideOf(items, left)} ${sideOf(items, right)}`;
    if (right === undefined || !/^(?:in out|out in)$/.test(sides)) return;
    if (!warmth(left) || !warmth(right)) return;
    if (nearCoil(items, left, right)) return;
    const near = items.slice(Math.max(0, left.index - 4), right.index + 2);
    if (inlets && near.some(noAir)) return;
    if ((left.unit === undefined) !== (right.unit === undefined)) return;
    const [into, out] = sides === "in out" ? [left, right] : [right, left];
    if (supplied) {
      place(into, "return_air");
      place(out, "outdoor_air");
      return;
    }
    const fahrenheit = left.unit === undefined || left.unit.figure === "F";
    const split = (into.value - out.value) / (fahrenheit ? 1.8 : 1);
    if (split > 0 && split <= mostSplit) {
      place(into, "return_air");
      place(out, "supply_air");
      return;
    }
    for (const one of [into, out]) {
      one.place = undefined;
      one.question = "quantity";
    }
  });
}
