import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** "sure, 15 minutes out": index of "out", or -1. */
export function minutesAway({ items, plain }: Note): number {
  if (thereIn.test(plain)) return items.findIndex(({ text }) => text === "there");
  const due = items.findIndex(
    ({ kind, unit, from }) =>
      kind === itemKind.number && unit?.figure === "min" && dueAt.test(plain.slice(0, from)),
  );
  if (due >= 0)
    return items.findLastIndex(({ text }, i) => i < due && /^(?:be|should|will)$/.test(text));
  return items.findIndex(
    (item, i) =>
      (item.text === "out" || item.text === "away") &&
      items[i - 1]?.kind === itemKind.number &&
      (/^(?:min|h)$/.test(items[i - 1]?.unit?.figure ?? "") || bareMinutes(plain, items[i - 1])) &&
      items.slice(0, i - 1).every((word) => assent.test(word.text)) &&
      (items[i + 1] === undefined || items[i + 1]?.kind === itemKind.sign) &&
      i <= 5,
  );
}

/** "there in 15", "be there in about 20 min": how long he still drives, and nothing else. */
export const thereIn =
  /^(?:(?:ok|okay|yep|yes|yeah|sure|ill|i'll|i will|should|will|can|be)[ ,]+){0,4}there in (?:about |like |maybe |another )?\d{1,2}(?: ?m(?:in(?:ute)?s?)?)?[ .!]*$/;

/** "should be at the school in about 25 minutes" */
const dueAt =
  /\b(?:should|will|i'?ll|gonna|going to) be (?:at|over at|to) (?:the )?[a-z ]{3,24} in (?:about |around |like |maybe |another )?$/;

/** "yep 15 out": minutes, of who was asked to come. */
function bareMinutes(plain: string, item: Item | undefined): boolean {
  const agrees =
    /^(?:sure|ok|okay|yes|yep|yeah|ya|roger|copy|gotcha|on it|got it|running late|late)\b/;
  const value = item?.unit === undefined ? (item?.value ?? 0) : 0;
  return Number.isInteger(value) && value >= 5 && value <= 90 && agrees.test(plain);
}

const assent =
  /^(?:sure|ok|okay|yes|yep|yeah|ya|im|i'm|about|still|roger|copy|maybe|like|now|can|do|gotcha|on|it|got|running|late|bit|a|,|\.)$/;
