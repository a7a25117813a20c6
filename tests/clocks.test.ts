import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { rowsOf } from "../adapters/command-line/csv-rows.ts";
import { relearn } from "../src/bot/memory.ts";
import { type Bot, openBot, receive, tick, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { saidOf } from "../src/record/outbox.ts";
import { closeStore, openStore } from "../src/record/store.ts";

const unit = "Tag,Site,Drive,Refrigerant\nOU-3,Gull Wharf,inverter,R-410A\n";

interface Said {
  readonly time: string;
  readonly text: string;
  readonly person?: string;
  readonly day?: string;
}

const at = ({ time, day = "2026-05-12" }: Pick<Said, "time" | "day">): string =>
  `${day}T${time.length === 5 ? `${time}:00` : time}-05:00`;

const start: readonly Said[] = [
  { time: "08:00", text: "New job: Gull Wharf OU-3, leaks. Bram", person: "maren" },
  { time: "08:20", text: "on site gull wharf" },
];

function open(path: string): Bot {
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const rows = rowsOf(unit);
  if (typeof rows === "string") throw new Error(rows);
  importRows(opened.store, rows);
  relearn(bot.memory, opened.store);
  return bot;
}

let count = 0;
function say(bot: Bot, said: Said): void {
  count += 1;
  const message: Message = {
    platform: "test",
    id: `m${count}`,
    at: at(said),
    channel: "south",
    person: said.person ?? "bram",
    role: said.person === "maren" ? "dispatcher" : "tech",
    text: said.text,
    files: [],
  };
  receive(bot, { message });
  for (const { error } of work(bot)) if (error !== undefined) throw new Error(error);
}

/** What the clocks ask when they are looked at at these times; the program restarts before each step if told so. */
function asked(
  steps: readonly (Said | { readonly tick: string; readonly day?: string })[],
  restarts: boolean,
): readonly string[] {
  const path = join(mkdtempSync(join(tmpdir(), "clocks-")), "a.db");
  let bot = open(path);
  const heard: string[] = [];
  for (const step of [...start, ...steps]) {
    if (restarts) {
      closeStore(bot.store);
      bot = open(path);
    }
    if ("tick" in step) {
      const now = at({ time: step.tick, ...(step.day === undefined ? {} : { day: step.day }) });
      for (const { due, text } of tick(bot, now)) heard.push(`${due.slice(0, 16)} ${text}`);
    } else say(bot, step);
  }
  expect(saidOf(bot.store, "clock")).toHaveLength(heard.length);
  closeStore(bot.store);
  return heard;
}

const stories: readonly (readonly [
  string,
  readonly (Said | { readonly tick: string; readonly day?: string })[],
  readonly RegExp[],
])[] = [
  [
    "vacuum hold asks once",
    [
      { time: "10:00", text: "vacuum isolated at 380 microns" },
      { tick: "10:09" },
      { tick: "10:10" },
      { tick: "10:11" },
      { tick: "11:00" },
    ],
    [/^2026-05-12T10:10 Bram, OU-3: vacuum isolated/],
  ],
  [
    "a value given before stops it",
    [
      { time: "10:00", text: "vacuum isolated at 380 microns" },
      { time: "10:08", text: "390 microns" },
      { tick: "10:30" },
    ],
    [],
  ],
  [
    "the pump back on stops it",
    [
      { time: "10:00", text: "vacuum isolated at 380 microns" },
      { time: "10:04", text: "pump back on" },
      { tick: "10:30" },
    ],
    [],
  ],
  [
    "a deleted start stops it",
    [
      { time: "10:00", text: "vacuum isolated at 380 microns" },
      { time: "10:01", text: "undo" },
      { tick: "10:30" },
    ],
    [],
  ],
  [
    "nitrogen left in is asked for next morning, of the one who has the job then",
    [
      { time: "16:30", text: "nitrogen in, 500 psig" },
      { time: "16:50", text: "leaving gull wharf" },
      { tick: "23:00" },
      { time: "06:40", day: "2026-05-13", text: "on site gull wharf", person: "ife" },
      { tick: "06:59", day: "2026-05-13" },
      { tick: "07:00", day: "2026-05-13" },
      { tick: "08:00", day: "2026-05-13" },
    ],
    [/^2026-05-13T07:00 Ife, OU-3: nitrogen in since 16:30/],
  ],
  [
    "power off on an inverter waits for the bus, and a bus reading ends it",
    [
      { time: "09:00", text: "power off, locked" },
      { tick: "09:10" },
      { time: "09:12", text: "bus 3 Vdc" },
      { time: "10:00", text: "power off" },
      { time: "10:05", text: "bus 2 Vdc" },
      { tick: "10:30" },
    ],
    [/^2026-05-12T09:10 Bram, OU-3: power off since 09:00\. Measure the bus/],
  ],
  [
    "who says nothing on site is asked once, then the dispatcher is told once",
    [
      { tick: "09:49" },
      { tick: "09:50" },
      { tick: "10:00" },
      { tick: "10:19" },
      { tick: "10:20" },
      { tick: "15:00" },
    ],
    [
      /^2026-05-12T09:50 Bram, OU-3: nothing heard since 08:20/,
      /^2026-05-12T10:20 Job 1 OU-3, Bram: nothing heard since 08:20, and no answer/,
    ],
  ],
  [
    "any word of his, talk too, ends the check on a quiet job",
    [
      { time: "09:45", text: "coffee first lol" },
      { tick: "09:55" },
      { tick: "11:14" },
      { time: "11:14:30", text: "done, leaving" },
      { tick: "13:00" },
    ],
    [],
  ],
  [
    "done ends every clock",
    [
      { time: "10:00", text: "vacuum isolated at 380 microns" },
      { time: "10:05", text: "done, leaving" },
      { tick: "11:00" },
    ],
    [],
  ],
  [
    "the insulation test asks at one and at ten minutes",
    [
      { time: "14:31:00", text: "meg on comp 1 going now" },
      { tick: "14:32:00" },
      { time: "14:32:10", text: "212 megohm" },
      { tick: "14:41:00" },
      { tick: "14:50" },
    ],
    [/^2026-05-12T14:32 .*one minute/, /^2026-05-12T14:41 .*ten minutes/],
  ],
];

describe.each([
  ["in one run", false],
  ["with a restart before every step", true],
] as const)("clocks, %s", (_name, restarts) => {
  test.each(stories)("%s", (_title, steps, wanted) => {
    const heard = asked(steps, restarts);
    expect(heard).toHaveLength(wanted.length);
    for (const [index, pattern] of wanted.entries()) expect(heard[index]).toMatch(pattern);
  });
});
