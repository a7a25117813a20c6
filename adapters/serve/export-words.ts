import type { ExportScope } from "../../src/bot/export-scope.ts";
import { localTime } from "../../src/show/local-time.ts";
import { rangeOf, realDay } from "../command-line/export-scope.ts";

/** What an export is asked of; "here" is the job of the thread or in hand; a sentence where it can't be. */
export type Asked = { readonly scope: ExportScope | "here" } | { readonly problem: string };

const order = /^(?:@?readback[,:]? )?(?:please )?export(?: |$)/i;
const lead = /^(?:(?:me|us|the|files|all|for|of|on|from) )*/i;
const tail = /(?:,? please)?[.!]*$/i;
/** letters: more than that is no order */
const longest = 200;
const date = String.raw`(\d{4}-\d\d-\d\d)`;

interface Way {
  readonly words: RegExp;
  readonly asks: (found: readonly string[], today: string) => Asked;
}

const of = (scope: ExportScope | "here"): Asked => ({ scope });
const days = (day: string, to: string): Asked => of({ kind: "range", day, to });

/** Ways of saying what; the whole of the words must fit one of them, else it is talk. */
const ways: readonly Way[] = [
  { words: /^(?:today|day)?$/i, asks: (_, today) => of({ kind: "day", day: today }) },
  { words: /^yesterday$/i, asks: (_, today) => of({ kind: "day", day: after(today, -1) }) },
  { words: new RegExp(`^${date}$`), asks: ([day = ""]) => dayOf(day) },
  {
    words: new RegExp(`^${date} ?(?:to|until|till|through|-|–) ?${date}$`, "i"),
    asks: ([from = "", to = ""]) => daysOf(from, to),
  },
  { words: /^this week$/i, asks: (_, today) => days(monday(today), today) },
  {
    words: /^last week$/i,
    asks: (_, today) => days(after(monday(today), -7), after(monday(today), -1)),
  },
  { words: /^this month$/i, asks: (_, today) => days(first(today), today) },
  {
    words: /^last month$/i,
    asks: (_, today) => days(first(after(first(today), -1)), after(first(today), -1)),
  },
  { words: /^(?:this job|job|it|here)$/i, asks: () => of("here") },
  {
    words: /^(?:job ?)?(?:number |no\.? )?#?(\d{1,9})$/i,
    asks: ([job]) => of({ kind: "job", job: Number(job) }),
  },
  { words: /^site (.+)$/i, asks: ([site = ""]) => of({ kind: "site", site }) },
  { words: /^unit (.+)$/i, asks: ([named = ""]) => unitOf(named) },
];

/** What "export …" asks for, where the whole message is such an order. `today`: "2026-05-12". */
export function exportAsked(text: string, at: string, zone: string): Asked | undefined {
  if (text.length > longest) return undefined;
  const said = text.trim().replaceAll(/\s+/g, " ");
  if (!order.test(said)) return undefined;
  const words = said.replace(tail, "").replace(order, "").replace(lead, "");
  const today = localTime(at, zone)?.date ?? at.slice(0, 10);
  for (const way of ways) {
    const found = way.words.exec(words);
    if (found !== null) return way.asks(found.slice(1), today);
  }
  return undefined;
}

/** "OU-3", "OU-3 at Gull Wharf", "OU-3, Gull Wharf" */
function unitOf(named: string): Asked {
  const [unit = "", ...site] = named.split(/ (?:at|in) |, ?/i);
  return of(
    site.length === 0 ? { kind: "unit", unit } : { kind: "unit", unit, site: site.join(", ") },
  );
}

function dayOf(text: string): Asked {
  const day = realDay(text);
  return day === undefined ? { problem: `${text} is no day.` } : of({ kind: "day", day });
}

function daysOf(from: string, to: string): Asked {
  const scope = rangeOf(from, to);
  return typeof scope === "string"
    ? { problem: `${from} to ${to} are no days in a row.` }
    : of(scope);
}

const dayMs = 86_400_000;
const after = (day: string, by: number): string =>
  new Date(Date.parse(day) + by * dayMs).toISOString().slice(0, 10);
const first = (day: string): string => `${day.slice(0, 8)}01`;
/** The Monday of a day's week. */
const monday = (day: string): string => after(day, -((new Date(day).getUTCDay() + 6) % 7));
