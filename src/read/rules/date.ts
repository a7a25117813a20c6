import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt, wordBefore } from "./near.ts";

const lead: ReadonlySet<string> = new Set([
  "is",
  "on",
  "sat",
  "sun",
  "mon",
  "tue",
  "tues",
  "wed",
  "thu",
  "thur",
  "thurs",
  "fri",
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
  "to",
  "due",
  "mfd",
  "mfg",
  "mfr",
  "date",
  "dated",
  "installed",
  "since",
  "until",
  "till",
  "by",
  "built",
  "from",
  "expires",
  "exp",
  "inspected",
  "inspection",
  "born",
  "moved",
  "scheduled",
  "made",
  "for",
  "next",
  "last",
  "changed",
  "arrives",
  "delivery",
  "ships",
  "ship",
  "shipping",
  "eta",
  "arriving",
  "before",
]);
const months: ReadonlySet<string> = new Set([
  "january",
  "jan",
  "february",
  "feb",
  "march",
  "mar",
  "april",
  "apr",
  "june",
  "jun",
  "july",
  "jul",
  "august",
  "aug",
  "september",
  "sept",
  "sep",
  "october",
  "oct",
  "november",
  "nov",
  "december",
  "dec",
]);
const yearWords: ReadonlySet<string> = new Set([
  "in",
  "since",
  "installed",
  "built",
  "from",
  "mfd",
  "mfg",
  "made",
  "year",
  "dated",
  "vintage",
  "circa",
]);

function isDay(text: string, limit: number): boolean {
  return /^\d{1,2}$/.test(text) && Number(text) >= 1 && Number(text) <= limit;
}

/** "4/19", "03/2019", "4-19-24", "april 19", "since 2014" */
export const dates: Rule = {
  name: "<month>/<day>",
  heads:
    "/|-|st|nd|rd|th|january|jan|february|feb|march|mar|april|apr|june|jun|july|jul|august|aug|september|sept|sep|october|oct|november|nov|december|dec|in|since|installed|built|from|mfd|mfg|made|year|dated|vintage|circa",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined) return;
      const sign = textAt(items, i + 1);
      const next = items[i + 2];
      if (
        (sign === "/" || sign === "-") &&
        freeNumber(next) &&
        next.unit === undefined &&
        next.glued &&
        isDay(item.text, 12)
      ) {
        // "11/15.3", "11/15,3/27,5"
        if ([item, next, items[i + 4]].some((one) => /\d[.,]\d/.test(one?.text ?? ""))) return;
        const third = textAt(items, i + 3) === sign && freeNumber(items[i + 4]) ? i + 5 : i + 3;
        const year = /^(?:19|20)\d\d$/.test(next.text);
        const timed = textAt(items, i + 3) === "at" && items[i + 3]?.owner !== undefined;
        const said = timed || wordBefore(items, i, lead, 2) >= 0;
        if (third === i + 5 || year || (sign === "/" && said && isDay(next.text, 31)))
          state(note, dates.name, [i, third], { kind: "note", about: "date" });
        return;
      }
      if (
        item.fraction &&
        item.value < 1 &&
        wordBefore(items, i, lead, 1) >= 0 &&
        weekday(textAt(items, i - 1))
      )
        state(note, dates.name, [i, i + 1], { kind: "note", about: "date" });
      else if (months.has(textAt(items, i - 1)) && item.value <= 31 && Number.isInteger(item.value))
        state(note, dates.name, [i - 1, ordinalEnd(textAt(items, i + 1), i)], {
          kind: "note",
          about: "date",
        });
      else if (
        item.spoken &&
        item.value >= 1980 &&
        item.value <= 2035 &&
        items[i - 1]?.label?.quantity === undefined &&
        items[i - 1]?.label?.place === undefined &&
        items[i + 1]?.kind !== itemKind.unit &&
        !items.some(
          (word) =>
            word.unit?.dimension === "low_pressure" ||
            word.unit?.dimension === "airflow" ||
            word.unit?.dimension === "speed",
        )
      )
        state(note, dates.name, [i, i + 1], { kind: "note", about: "year" });
      else if (/^(?:19[89]|20[0-4])\d$/.test(item.text) && wordBefore(items, i, yearWords, 1) >= 0)
        state(note, dates.name, [i, i + 1], { kind: "note", about: "date" });
      else if (
        items[i + 1]?.kind === itemKind.word &&
        items[i + 1]?.glued === true &&
        /^(?:st|nd|rd|th)$/.test(textAt(items, i + 1))
      )
        state(note, dates.name, [i, i + 2], { kind: "note", about: "ordinal" });
    });
  },
};

function weekday(text: string): boolean {
  return /^(?:mon|tue|wed|thu|fri|sat|sun)/.test(text);
}

function ordinalEnd(text: string, i: number): number {
  return /^(?:st|nd|rd|th)$/.test(text) ? i + 2 : i + 1;
}
