import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { roomBeside } from "./name-row.ts";

/** "463 across 1 and 2, 90 and 95 on the others", "… the others at 277": measured like the first, at what was not named. */
export function onTheOthers(list: readonly Draft[], items: readonly Item[]): void {
  const known = list.find(
    (draft) =>
      draft.quantity !== undefined &&
      (draft.points !== undefined ||
        draft.subject !== undefined ||
        (draft.quantity === "temperature" && roomBeside(items, draft.index))),
  );
  if (known === undefined) return;
  const order = list.indexOf(known);
  const rest = list.slice(order + 1);
  const last = rest[rest.length - 1];
  if (last === undefined || rest.length > 2) return;
  const words = items.slice(last.index + 1, last.index + 5).map((item) => item.text);
  const behind = /^(?:on|for|across|at) (?:the )?(?:others?|rest|other two)\b/.test(
    words.join(" "),
  );
  // "… and the others are at 277"
  const gap = items.slice(known.index + 1, rest[0]?.index).map((item) => item.text);
  const ahead =
    /\b(?:the )?(?:others?|rest|other two)(?: (?:is|are|was|were|at|read|reads|both))*$/;
  if (!behind && !(rest.length === 1 && ahead.test(gap.join(" ")))) return;
  const like = (one: Draft): boolean => one.quantity === undefined && one.unit === undefined;
  if (!rest.every((one) => like(one) || one.quantity === known.quantity)) return;
  for (const one of rest) {
    // "the other two are the same": their points are known already
    if (one.same) continue;
    if (like(one)) {
      one.quantity = known.quantity;
      one.unit = known.unit;
      one.assumedUnit = true;
    }
    // "same on the other two" was told its points
    if (!one.same) one.points = undefined;
    if (known.points === undefined) one.subject = undefined;
  }
}

const failed = /^(?:open|dead|bad|shorted|burnt|burned|out|grounded|blown|locked|ol)$/;
const others = /^(?:on|across|for|at) (?:the )?(?:others?|rest|other (?:two|2|three|3|ones?))\b/;

/** "heater three is open ten point two on the other two": of those that are left, not of the one that was told. */
export function notOfTheOne(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    const behind = items.slice(draft.index + 1, draft.index + 5).map(({ text }) => text);
    if (draft.subject === undefined || !others.test(behind.join(" "))) continue;
    const name = items.findLastIndex(({ kind }, i) => i < draft.index && kind === itemKind.subject);
    const between = items.slice(name + 1, draft.index);
    if (between.some(({ kind }) => kind === itemKind.number)) continue;
    if (between.some(({ text }) => failed.test(text))) draft.subject = undefined;
  }
}
