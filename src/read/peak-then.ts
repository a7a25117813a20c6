import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { role } from "./word.ts";

const startWord =
  /^(?:start|starts|started|starting|startup|start-up|strts|fires|fired|kicks|kicked|inrush)\b/;
const thenWord =
  /^(?:then|and|settl|runs?\b|ran\b|running|now|drop|drops|dropped|falls|fell|level|after that|down to|to|@|at)/;

/** "peak on startup 112": how it starts now, unless something else says that it was then. */
function startsNow(draft: Draft, items: readonly Item[]): boolean {
  if (draft.state !== "start") return false;
  if (draft.stat === "peak") return true;
  return [...draft.before, ...draft.behind].every(
    (index) =>
      ((items[index]?.roles ?? 0) & role.earlier) === 0 || items[index]?.label?.state === "start",
  );
}

/**
 * "new cap in, starts, peak 62 then 14.8": what it peaked at and what it came down to are amps of a
 * start and of its running, whatever part was named before them.
 */
export function peakThen(items: readonly Item[], drafts: readonly Draft[]): void {
  for (const draft of drafts) if (startsNow(draft, items)) draft.earlier = false;
  if (!items.some(({ text, label }) => startWord.test(text) || label?.state === "start")) return;
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right === undefined || !(isPeak(items, left) || atStart(items, left))) return;
    if (!isAmps(left) || !isAmps(right)) return;
    if (right.value >= left.value || !isNext(items, left, right)) return;
    // the part's own name says nothing of the amps
    left.before = left.before.filter((index) => {
      const label = items[index]?.label;
      return label?.quantity !== "capacitance" && label?.hint !== "capacitance";
    });
    asCurrent(left, "start");
    if (isPeak(items, left)) left.stat = "peak";
    asCurrent(right, "running");
  });
}

function isPeak(items: readonly Item[], { index }: Draft): boolean {
  return [items[index - 1], items[index + 1]].some((item) => item?.label?.stat === "peak");
}

/** "amps were 15 on startup then down to 9.6" */
function atStart(items: readonly Item[], { index }: Draft): boolean {
  return items[index + 1]?.label?.state === "start";
}

/** Nothing said of it but what a part's name in the same message left there. */
function isAmps(draft: Draft): boolean {
  if (draft.gone || draft.points !== undefined || draft.place !== undefined || draft.earlier)
    return false;
  if (draft.unit !== undefined) return draft.unit.dimension === "current";
  return draft.named === undefined || draft.named === "current" || draft.named === "capacitance";
}

/** Between them only that one came after the other. */
function isNext(items: readonly Item[], left: Draft, right: Draft): boolean {
  const between = items.slice(left.index + 1, right.index);
  const said = between.filter(
    ({ kind, label }) =>
      kind !== itemKind.sign && label?.stat !== "peak" && label?.state !== "start",
  );
  return said.length > 0 && said.length <= 3 && said.every(({ text }) => thenWord.test(text));
}

function asCurrent(draft: Draft, state: "start" | "running"): void {
  draft.named = "current";
  draft.component = false;
  draft.hint = undefined;
  draft.state = state;
  if (draft.unit !== undefined) return;
  draft.unit = unitCalled("A");
  draft.assumedUnit = true;
}
