import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** How many words may tell what was wrong with the first figure. */
const LONGEST = 12;

const back = /^(?:no|oh|wait|hold|hang|oops|whoops|woops|scratch|strike|sorry|my bad)$/;

/** Where words stand that take back the figure right before: "no wait", "scratch that", "oops". */
function takesBackAt(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item === undefined || !back.test(item.text) || (item.roles & role.correct) === 0)
    return false;
  let left = at - 1;
  while (left >= 0 && left >= at - 5 && items[left]?.kind !== itemKind.number) left--;
  return items[left]?.kind === itemKind.number && items[left]?.owner === undefined;
}

/** "two wires in the clamp": a small count within the reason. */
function countsThings(items: readonly Item[], at: number): boolean {
  const [item, next] = [items[at], items[at + 1]];
  const small = item?.unit === undefined && (item?.value ?? 9) <= 4 && item?.spoken === true;
  return small && next?.kind === itemKind.word && next.roles === 0;
}

/** "let me look at the suction it's 118": of something else, so nothing was wrong; a probe is only what showed it. */
function namesElse({ kind, label, text }: Item): boolean {
  if (kind === itemKind.points || kind === itemKind.subject || kind === itemKind.line) return true;
  const what = label?.place ?? label?.quantity;
  return what !== undefined && !/^(?:probe|sensor|gauge|hose|meter)s?$/.test(text);
}

/** The figure that holds behind the reason: led by "it's" and the like, or right behind what was wrong. */
function figureAfter(items: readonly Item[], from: number): number {
  for (let at = from; at < items.length && at <= from + LONGEST; at++) {
    const item = items[at];
    if (item === undefined || namesElse(item)) return -1;
    if (item.kind !== itemKind.number || countsThings(items, at)) continue;
    const led = items[at - 1];
    const short = items[from]?.text === "wrong" && at - from <= 3;
    return ((led?.roles ?? 0) & role.is) !== 0 || short ? at : -1;
  }
  return -1;
}

/** "3.8 bar no wait I had the wrong hose it's 4.8": why the first is wrong says nothing of the second. */
export function reasonBetween(items: readonly Item[]): void {
  for (let at = 1; at < items.length - 2; at++) {
    if (!takesBackAt(items, at)) continue;
    let from = at + 1;
    while (((items[from]?.roles ?? 0) & role.correct) !== 0 && items[from]?.text !== "wrong")
      from++;
    const to = figureAfter(items, from);
    if (to < 0) continue;
    for (let i = from; i < to; i++) {
      const item = items[i];
      if (item === undefined) continue;
      item.kind = itemKind.word;
      item.label = undefined;
      item.roles = role.article;
    }
    at = to;
  }
}
