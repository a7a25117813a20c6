import type { CaseNote, Reading } from "../model.ts";
import { numberOf } from "./pick.ts";
import { saidDateMs } from "./said-date.ts";
import type { Scene } from "./scene.ts";

/** One weight of refrigerant that went in or out. */
export interface Weight {
  readonly kg: number;
  readonly action: "recovered" | "charged";
  /** days before the case's last moment; 0 for now, absent for an earlier visit without a date */
  readonly daysAgo?: number;
  /** said by day and month alone, so within the last year */
  readonly withinYear?: true;
}

const dayMs = 86_400_000;
const daysOf = { day: 1, week: 7, month: 30, year: 365 } as const;
const ago =
  /(\d+|a|an|one|two|three|four|five|six) ?(day|week|month|year)s? (?:ago|back|before|earlier)/;
/** The same between two additions: "200 days since", "a year to the day after". */
const between =
  /(\d+|a|an|one|two|three|four|five|six) ?(day|week|month|year)s? (?:ago|back|before|earlier|since|after|to the day|exactly)/;
const numberWords: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};

/** Every weight of the notes, oldest first, those of earlier days with how long ago they were. */
export function weightsOf(scene: Scene): Weight[] {
  return scene.notes.flatMap((note) => {
    const masses = note.readings.filter(isMass);
    if (masses.length === 0) return [];
    const now = nowMs(scene);
    return masses.flatMap((one, at) =>
      weight(one, actionOf(masses, at, note.text ?? ""), { note, now }),
    );
  });
}

function isMass(reading: Reading): boolean {
  return reading.quantity === "mass" && reading.rating === undefined && reading.doubtful !== true;
}

/** Its own, or that of the weight before it: "added 1.9 kg in March and 2.6 kg in May". */
function actionOf(
  masses: readonly Reading[],
  at: number,
  text: string,
): Weight["action"] | undefined {
  const own = masses.slice(0, at + 1).findLast((one) => one.action !== undefined)?.action;
  return (
    own ??
    (/\b(?:went|put|going|added|goes) in\b|\b(?:added|topped)\b/i.test(text)
      ? "charged"
      : undefined)
  );
}

function weight(
  reading: Reading,
  action: Weight["action"] | undefined,
  { note, now }: { readonly note: CaseNote; readonly now: number },
): Weight[] {
  const kg = numberOf(reading);
  if (kg === undefined || action === undefined) return [];
  const text = (note.text ?? "").toLowerCase();
  // its span may reach over the words that date it
  const number = text.indexOf(reading.figure.number, reading.spans[0]?.[0] ?? 0);
  const to = number < 0 ? (reading.spans.at(-1)?.[1] ?? 0) : number + reading.figure.number.length;
  const own = ownWords(text.slice(to));
  const days = daysAgo(own);
  if (days !== undefined) return [{ kg, action, daysAgo: days }];
  if (dayOfYear.test(own) || isOfLastYear(own, now)) return [{ kg, action, withinYear: true }];
  // "added 3.6 kg, last time was 150 days ago": the earlier visit is another addition's
  const earlier = reading.earlier === true && !/\blast\b/.test(text.slice(to, to + lastNear));
  return [{ kg, action, ...(earlier ? {} : { daysAgo: 0 }) }];
}

/** "on 3 March": with neither a year nor the day of today known. */
const dayOfYear =
  /\b(?:on|in) (?:\d{1,2}(?:st|nd|rd|th)? )?(?:jan|feb|mar|apr|may|june?|july?|aug|sep|oct|nov|dec)[a-z]*\b(?!.{0,8}\b(?:19|20)\d\d)/;

const monthOfYear =
  /\b(?:on|in) (?:\d{1,2}(?:st|nd|rd|th)? )?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*,? ((?:19|20)\d\d)\b/;
const monthNames = "janfebmaraprmayjunjulaugsepoctnovdec";

/** "in april 2026": a month that began within the last 365 days. */
function isOfLastYear(words: string, now: number): boolean {
  const [, month = "", year] = monthOfYear.exec(words) ?? [];
  if (year === undefined || Number.isNaN(now)) return false;
  const days = (now - Date.UTC(Number(year), monthNames.indexOf(month) / 3, 1)) / dayMs;
  return days >= 0 && days <= 365;
}

/** Letters after a weight in which "last" begins another addition's words. */
const lastNear = 14;

/**
 * What is said of this weight: up to the next weight, and up to "last" ("put in 9.8 kg, last top up
 * was 402 days back": those days are another addition's).
 */
function ownWords(words: string): string {
  return (
    words.split(/\d[\d.]*\s*(?:kg|lbs?|pounds?|oz|ounces?)\b|\b(?:last|previous|prior)\b/)[0] ??
    words
  );
}

/** "402 days back" -> 402; undefined where no such words stand. */
export function daysAgo(words: string, pattern: RegExp = ago): number | undefined {
  const found = pattern.exec(withDigits(words.toLowerCase()));
  if (found === null) return undefined;
  const [, count = "", unit = ""] = found;
  const many = numberWords[count] ?? Number(count);
  const each =
    unit === "day" || unit === "week" || unit === "month" || unit === "year" ? daysOf[unit] : 1;
  return many * each;
}

const ones =
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
const spelled = new RegExp(
  `\\b(?:(?:(${ones.slice(0, 9).join("|")}|a) hundred(?: and)?[ -]?)?(?:(${tens.join("|")})[ -]?)?(${ones.join("|")})?)(?= ?(?:days?|weeks?|months?))`,
  "g",
);

/** "sixty one days" -> "61 days" */
function withDigits(words: string): string {
  if (!/hundred|ty\b|teen\b|\b(?:seven|eight|nine|ten|eleven|twelve)\b/.test(words)) return words;
  return words.replace(spelled, (all, hundred: string = "", ten: string = "", one: string = "") => {
    const hundreds = hundred === "" ? 0 : hundred === "a" ? 1 : ones.indexOf(hundred) + 1;
    const value =
      100 * hundreds + (ten === "" ? 0 : 10 * (tens.indexOf(ten) + 2)) + ones.indexOf(one) + 1;
    return value > 0 ? String(value) : all;
  });
}

/** What is said of the last addition: "140 days since the last charge", "last top up was 402 days back". */
function ofLast(line: string): string | undefined {
  return (
    /[\w ]{0,32}\b(?:since|after) (?:\w+ ){0,3}?(?:last|previous|prior)\b/.exec(line)?.[0] ??
    /\b(?:last|previous|prior|(?:time|one|fill|top.?up) before|before (?:that|this))\b[^.;]{0,80}/.exec(
      line,
    )?.[0]
  );
}

/**
 * Days since the last addition before this one: said in the notes, the plate's date, or an earlier
 * addition's own. Undefined where nothing tells.
 */
export function daysSinceAddition(scene: Scene): number | undefined {
  const said = scene.words.split("\n").flatMap((line) => ofLast(line) ?? [])[0];
  const fromWords = said === undefined ? undefined : daysAgo(said, between);
  if (fromWords !== undefined) return fromWords;
  const now = nowMs(scene);
  const date = said === undefined || Number.isNaN(now) ? undefined : saidDateMs(said, now);
  if (date !== undefined) return Math.floor((now - date) / dayMs);
  const earlier = [...weightsOf(scene), ...pastAdditions(scene)]
    .flatMap((one) =>
      one.action === "charged" && (one.daysAgo ?? 0) > 0 ? (one.daysAgo ?? 0) : [],
    )
    .sort((a, b) => a - b)[0];
  if (earlier !== undefined) return earlier;
  return daysFromDates(scene);
}

function daysFromDates(scene: Scene): number | undefined {
  const last = scene.facts.last_addition;
  const now = nowMs(scene);
  if (last === undefined || Number.isNaN(now)) return undefined;
  const then = Date.parse(`${last.slice(0, 10)}T00:00:00Z`);
  if (Number.isNaN(then) || then > now) return undefined;
  return Math.floor((now - then) / dayMs);
}

/** Additions on earlier jobs of this unit, with how long ago they were. */
export function pastAdditions(scene: Scene): Weight[] {
  const now = nowMs(scene);
  return scene.history.flatMap((past) =>
    past.notes.flatMap((note) => {
      const then = Date.parse(note.at ?? past.closed ?? "");
      if (Number.isNaN(then) || Number.isNaN(now)) return [];
      const daysAgo = Math.floor((now - then) / dayMs);
      return note.readings
        .filter((one) => isMass(one) && one.action === "charged")
        .flatMap((one) => {
          const kg = numberOf(one);
          return kg === undefined ? [] : [{ kg, action: "charged" as const, daysAgo }];
        });
    }),
  );
}

function nowMs(scene: Scene): number {
  return Date.parse(scene.at ?? scene.notes.findLast((one) => one.at !== undefined)?.at ?? "");
}

/** What went in and out today, in kg. */
export function sumsOf(scene: Scene): { readonly inKg: number; readonly outKg: number } {
  const today = weightsOf(scene).filter((one) => one.daysAgo === 0);
  const sum = (action: Weight["action"]) =>
    today.filter((one) => one.action === action).reduce((all, one) => all + one.kg, 0);
  return { inKg: sum("charged"), outKg: sum("recovered") };
}
