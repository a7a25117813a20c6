import * as en from "chrono-node/en";
import type { Item } from "./item.ts";
import type { Note } from "./note.ts";

const day = /^(?:mon|tues?|wed(?:nes)?|thur?s?|fri|satur|sun)(?:day)?$|^(?:tomorrow|tmrw)$/;
const month =
  /^(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)$/;
/** weekdays that are also other words count only behind one of these */
const before = /^(?:due|eta|by|on|for|next|arriv\w*|ships?|here|until|till?)$/;

/** The words of a note that say when something comes, by their first and last item. */
export interface Due {
  readonly first: Item;
  readonly last: Item;
}

function isDay(items: readonly Item[], i: number): boolean {
  const text = items[i]?.text ?? "";
  if (!day.test(text)) return false;
  return text.length > 4 || before.test(items[i - 1]?.text ?? "");
}

/** "november 30", "nov 30th" */
function isMonthDay(items: readonly Item[], i: number): boolean {
  return month.test(items[i]?.text ?? "") && /^\d{1,2}$/.test(items[i + 1]?.text ?? "");
}

/** "a week from friday" */
function fromDay(items: readonly Item[], i: number): Item | undefined {
  return items[i + 1]?.text === "from" && day.test(items[i + 2]?.text ?? "")
    ? items[i + 2]
    : undefined;
}

function isSpan(item: Item | undefined): boolean {
  return item?.unit?.figure === "d" || item?.unit?.figure === "week";
}

/** "thursday", "next tuesday", "in 2 days", "nov 30", "next week": where it stands in the note. */
export function dueWords({ items, plain }: Pick<Note, "items" | "plain">): Due | undefined {
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item === undefined) continue;
    const next = items[i - 1]?.text === "next" ? items[i - 1] : undefined;
    if (isSpan(item)) return { first: item, last: fromDay(items, i) ?? item };
    if (isDay(items, i)) return { first: next ?? item, last: item };
    if (plain.slice(item.from, item.to) === "next week") return { first: item, last: item };
    const number = items[i + 1];
    if (number !== undefined && isMonthDay(items, i)) return { first: item, last: number };
  }
  return undefined;
}

const full: readonly (readonly [RegExp, string])[] = [
  [/\btmrw\b/, "tomorrow"],
  [/\b(\d+)\s*d\b/, "$1 days"],
  [/\b(\d+)\s*wks?\b/, "$1 weeks"],
];

function minutesEast(iso: string): number {
  const match = /([+-])(\d\d):?(\d\d)$/.exec(iso);
  if (match === null) return 0;
  return (match[1] === "-" ? -1 : 1) * (Number(match[2]) * 60 + Number(match[3]));
}

/**
 * The day, as YYYY-MM-DD, that words marked as a due time name, seen from a message's own moment
 * (ISO with its offset) and always ahead of it; nothing where they name no day.
 */
export function dueDay(words: string, at: string | undefined): string | undefined {
  const moment = at === undefined ? Number.NaN : Date.parse(at);
  if (at === undefined || Number.isNaN(moment)) return undefined;
  // "next week" is no day; the library counts "a week from friday" from today
  if (/\bfrom\b|^next week$/i.test(words)) return undefined;
  const plain = full.reduce((text, [from, to]) => text.replace(from, to), words.toLowerCase());
  const said = /^(?:an?|one|two|three|\d)/.test(plain) ? `in ${plain}` : plain;
  const [found] = en.parse(
    said,
    { instant: new Date(moment), timezone: minutesEast(at) },
    { forwardDate: true },
  );
  if (found === undefined) return undefined;
  if (!found.start.isCertain("day") && !found.start.isCertain("weekday")) return undefined;
  const two = (number: number | null): string => String(number ?? 0).padStart(2, "0");
  const { start } = found;
  return `${start.get("year")}-${two(start.get("month"))}-${two(start.get("day"))}`;
}
