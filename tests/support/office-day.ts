import { type Bot, openBot, receive, work } from "../../src/bot.ts";
import { appendEntry } from "../../src/record/entries-table.ts";
import type { Entry } from "../../src/record/entry.ts";
import { closeStore, openStore, transact } from "../../src/record/store.ts";

/** Invented sites and people, with letters that not every file format carries by itself. */
const sites = ["Gull Wharf", "Młyn Łódź", "Cinder School", "Søndre Kornhus", "Saltbox Lofts"];
const people = ["bram", "tamsin", "odo", "ife"];

const texts: readonly ((step: number) => string)[] = [
  (n) => `lead 1 ${84 + n} lead 2 ${86 + n} lead 3 ${91 + n} megohm to ground at 500 V`,
  (n) =>
    `suction 118 psi ${50 + (n % 9)} F, liquid 338 psi 93 F, outdoor air 95 F, discharge 180 F`,
  (n) => `L1-L2 471 V L2-L3 ${460 + n} V L1-L3 470 V running`,
  (n) => `running amps L1 13.8 A L2 14.0 A L3 13.${n} A`,
  (n) => `return air 76 F supply air ${55 + n} F`,
  // what a spreadsheet would run or turn into another number
  (n) => `=1+1 need contactor 12E4, box -${n + 1} F`,
];

export interface OfficeDay {
  readonly path: string;
  /** jobs that are played message by message, as a chat brings them */
  readonly played: number;
  /** so many jobs of the same kind stand for each of them, on units of their own */
  readonly times: number;
  /** messages with readings on each job, after the one that opens it */
  readonly messages: number;
}

/** Plays an invented day, 2026-05-12, into a store; tells how many readings it holds. */
export function playOfficeDay({ path, played, times, messages }: OfficeDay): number {
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  const salt = (): string => `salt ${salts++}`;
  const bot = openBot(opened.store, salt);
  for (let job = 0; job < played; job++) {
    const site = sites[job % sites.length] ?? "";
    say(bot, job, { minute: 0, text: `New job: ${site} RTU-${job + 1}, not cooling` });
    for (let n = 0; n < messages; n++) {
      const text = texts[n % texts.length]?.(n % 8) ?? "";
      say(bot, job, { minute: 2 + n, text });
    }
  }
  work(bot);
  transact(bot.store, () => {
    for (let copy = 1; copy < times; copy++) {
      for (const [job, entries] of bot.memory.entries) {
        for (const entry of entries) append(bot, entry, job + copy * played);
      }
    }
  });
  const readings = [...bot.memory.jobs.values()].reduce((sum, job) => sum + job.readings.length, 0);
  closeStore(opened.store);
  return readings * times;
}

/** The same entry on another job, on a unit of its own. */
function append(bot: Bot, { place: _, facts, text = "", ...entry }: Entry, job: number): void {
  const moved =
    facts.kind === "note" && facts.opens !== undefined
      ? { ...facts, opens: { ...facts.opens, equipment: `RTU-${job}` } }
      : facts;
  appendEntry(bot.store, { ...entry, text, facts: moved, job }, bot.salt());
}

/** Every job has a thread of its own, under the message that opened it. */
function say(
  bot: Bot,
  job: number,
  { minute, text }: { readonly minute: number; readonly text: string },
): void {
  const clock = (value: number): string => String(value % 60).padStart(2, "0");
  const first = minute === 0;
  receive(bot, {
    message: {
      platform: "replay",
      id: `j${job}-${minute}`,
      at: `2026-05-12T${clock(7 + (job % 10) + Math.floor(minute / 60))}:${clock(minute)}:00-05:00`,
      channel: "south",
      ...(first ? {} : { thread: `j${job}-0` }),
      person: first ? "maren" : (people[job % people.length] ?? ""),
      role: first ? "dispatcher" : "tech",
      text,
      files: [],
    },
  });
}
