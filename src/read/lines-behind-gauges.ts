import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { within } from "./line-range.ts";

/** F of a line that is taken for one by the other side's alone: narrower than a line may be. Common practice, no source. */
const suctionLineF = [-40, 95] as const;
const liquidLineF = [60, 150] as const;

/** Words by which a second pressure is one of another moment or of another machine. */
const anew =
  /^(?:now|then|after|later|again|both|each|other|was|from|to|up|down|at|climbed|dropped)$/;

function isBare(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    draft.rating === undefined &&
    draft.points === undefined &&
    draft.action === undefined &&
    draft.subject === undefined &&
    !draft.over &&
    !draft.same
  );
}

/**
 * "118 over 365. liquid 98 suct 52": with both sides' pressures told, what is named beside the liquid
 * line is the other line, no second pressure.
 */
export function linesBehindGauges(list: readonly Draft[], items: readonly Item[]): void {
  for (const [order, draft] of list.entries()) {
    if (draft.place !== "suction" || !isBare(draft) || !within(draft.value, suctionLineF)) continue;
    if (draft.named !== undefined) continue;
    settleNamed(draft, list.slice(0, order), items);
    const beside = [list[order - 1], list[order + 1]].find((one) => one?.place === "liquid");
    if (beside === undefined || !isBare(beside) || !within(beside.value, liquidLineF)) continue;
    const before = list.slice(0, Math.min(order, list.indexOf(beside)));
    const low = before.findLast((one) => one.place === "suction");
    const high = before.findLast((one) => one.place === "discharge");
    if (low === undefined || high === undefined || high.value <= low.value) continue;
    const words = items.slice(
      Math.max(low.index, high.index) + 1,
      Math.max(draft.index, beside.index),
    );
    if (words.some(({ text, kind }) => anew.test(text) || kind === itemKind.subject)) continue;
    const told = draft.hint === "temperature";
    for (const line of [draft, beside]) {
      line.named = "temperature";
      line.hint = "temperature";
      if (told) line.settled = true;
    }
  }
}

/** "141 low, 288 high, 60 on the suction line": its gauge is told already, and the line is named right behind. */
function settleNamed(draft: Draft, told: readonly Draft[], items: readonly Item[]): void {
  if (draft.hint !== "temperature" || !told.some(isLowGauge)) return;
  const [on, the, name] = items.slice(draft.index + 1, draft.index + 4);
  if (!/^(?:on|at|off)$/.test(on?.text ?? "")) return;
  const line = /^(?:the|my)$/.test(the?.text ?? "") ? name : the;
  if (line?.label?.hint === "temperature") draft.settled = true;
}

/** A suction that no line is as warm as. */
function isLowGauge(one: Draft): boolean {
  return one.place === "suction" && one.value > suctionLineF[1];
}

/** bar that no gauge shows less than, and how much over its head no liquid stands. Common practice, no source. */
const emptied = -1;
const overHead = 1.02;

/**
 * "suct 0.6 head 11.2 liq 24", "1.1/13.4, line -14": in a metric house bars and degrees are of one size; over the
 * head, or below an empty circuit, it is the line's warmth.
 */
export function metricLines(
  list: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  if (units !== "si") return;
  const head = list.find((one) => one.place === "discharge" && !one.gone);
  for (const draft of list) {
    const line = /^(?:line|pipe)$/.test(items[draft.index - 1]?.text ?? "");
    if (draft.place !== "suction" && draft.place !== "liquid" && !line) continue;
    if (draft.unit !== undefined || draft.named !== undefined || !isBare(draft)) continue;
    const over =
      draft.place === "liquid" && head?.unit === undefined && head !== undefined
        ? draft.value > head.value * overHead
        : false;
    if (!over && draft.value >= emptied) continue;
    draft.named = "temperature";
    draft.hint = "temperature";
  }
}
