import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const liquidParts = /^(?:drier|dryer|strainer|solenoid|filter-drier|filterdrier)$/;
const otherParts = /^(?:reversing|4|four|rev)$/;
/** F or C of a pipe that is told without a unit. Common practice, no source. */
const coldest = { us: 20, si: -40 } as const;
const warmest = 200;

function bare(draft: Draft, us = true): boolean {
  const warm = draft.unit === undefined || draft.unit.dimension === "temperature";
  return (
    warm &&
    draft.named === undefined &&
    draft.points === undefined &&
    draft.value >= coldest[us ? "us" : "si"] &&
    draft.value < warmest
  );
}

/** "reversing valve: coil side suction pipe 41, compressor side 66": pipes at one valve's body. */
export function atValveBody(list: readonly Draft[], items: readonly Item[]): void {
  const valve = items.some(
    ({ text }, at) =>
      otherParts.test(text) && items.slice(at, at + 4).some((one) => one.text.startsWith("valve")),
  );
  if (
    !valve ||
    !list.some(({ hint, unit }) => hint === "temperature" || unit?.dimension === "temperature")
  )
    return;
  for (const draft of list) {
    if (!bare(draft) || draft.unit !== undefined || draft.hint !== undefined) continue;
    if (
      !/^(?:side|pipe|tube|port|line|common|centre|center|is|at)$/.test(
        items[draft.index - 1]?.text ?? "",
      )
    )
      continue;
    draft.named = "temperature";
    draft.hint = "temperature";
    draft.place = undefined;
  }
}

/** Parts with an end where liquid or gas enters and one where it leaves. */
const throughParts = /^(?:hx|exchanger|subcooler|accumulator|branch|accu|receiver|bs|bc|ports?)$/;
const throughMachine = /^(?:branch box|bb|bs|bc)[ -]\d/i;

/** Is it told in one order that the left value enters and the right one leaves: "95 in 77 out", "in 31 out 24"? */
function entersLeaves(items: readonly Item[], left: Draft, right: Draft): boolean {
  const told = (step: number): string =>
    [left, right].map(({ index }) => items[index + step]?.text ?? "").join(" ");
  const ends = /^(?:in out|out in|inlet outlet|entering leaving)$/;
  return ends.test(told(1)) || ends.test(told(-1));
}

function partAhead(ahead: readonly Item[]): "liquid" | "other" | undefined {
  const at = ahead.findLastIndex(
    ({ text, kind, subject, to, from }, i) =>
      liquidParts.test(text) ||
      // "filter drier", not "filter's"
      (text === "filter" && to - from > text.length + 2) ||
      throughParts.test(text) ||
      throughMachine.test(subject ?? "") ||
      (kind !== itemKind.sign &&
        otherParts.test(text) &&
        ahead.slice(i, i + 4).some((one) => one.text.startsWith("valve"))),
  );
  const { text = "" } = ahead[at] ?? {};
  if (at < 0) return undefined;
  return liquidParts.test(text) || text === "filter" ? "liquid" : "other";
}

/**
 * "drier 95 in 77 out", "reversing valve 40 in 61 out", "branch box 1 in 31,5 out 12": the warmth of what goes
 * into a part and comes out of it.
 */
export function throughPart(list: readonly Draft[], items: readonly Item[], us: boolean): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || ![left, right].every((one) => bare(one, us))) return;
    if (!entersLeaves(items, left, right) || right.index - left.index > 4) return;
    const begins = list[order - 2]?.index ?? -1;
    const part = partAhead(items.slice(begins + 1, left.index));
    if (part === undefined) return;
    for (const draft of [left, right]) {
      draft.named = "temperature";
      draft.hint = "temperature";
      draft.place =
        part === "liquid" && /^in$/.test(items[left.index + 1]?.text ?? "") ? "liquid" : undefined;
      draft.action = undefined;
    }
  });
}

const sideOfPart =
  /\b(?:past|after|behind|beyond|before|ahead of|leaving|into|entering|out of|(?:down|up)stream of) (?:the )?(?:liquid )?(?:line )?(?:filter[- ]?)?(?:drier|dryer|strainer|solenoid)(?: valve)?(?: its| it is| is| was| reads| at| only|,|:)*$/;

/** "past the filter drier it's 71", beside how warm the liquid is: the same line behind a part. */
export function besidePart(list: readonly Draft[], items: readonly Item[], plain: string): void {
  const warm = list.some(
    ({ place, hint, unit }) =>
      place === "liquid" && (hint === "temperature" || unit?.dimension === "temperature"),
  );
  if (!warm) return;
  for (const draft of list) {
    if (!bare(draft) || draft.hint !== undefined) continue;
    if (draft.place !== undefined && draft.place !== "liquid") continue;
    const [first, own] = [items[Math.max(0, draft.index - partWords)], items[draft.index]];
    const before = plain.slice(first?.from, own?.from).toLowerCase().replace(/['’]/g, "");
    if (!sideOfPart.test(before.trim())) continue;
    draft.named = "temperature";
    draft.hint = "temperature";
    draft.place = "liquid";
  }
}

/** Words before a figure that may name its side of a part. */
const partWords = 10;
