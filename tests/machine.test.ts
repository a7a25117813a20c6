import { describe, expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { openBot, receive, work } from "../src/bot.ts";
import type { Machine } from "../src/model.ts";
import { openStore } from "../src/record/store.ts";

/** What the machine is after some messages of one technician on one job. */
function machineAfter(
  texts: readonly (string | readonly [person: string, text: string])[],
): Machine {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const first: readonly [string, string] = ["maren", "New job: Gull Wharf OU-3, trips. Bram"];
  [first, ...texts].forEach((line, index) => {
    const [person, text] = typeof line === "string" ? (["bram", line] as const) : line;
    receive(bot, {
      message: {
        platform: "test",
        id: String(index).padStart(3, "0"),
        at: new Date(Date.parse("2026-05-12T13:00:00Z") + index * 60_000).toISOString(),
        channel: "south",
        thread: "t",
        person,
        role: person === "maren" ? "dispatcher" : "tech",
        text,
        files: [],
      },
    });
    for (const { error } of work(bot)) if (error !== undefined) throw new Error(error);
  });
  const [job] = allJobs(bot.memory);
  if (job === undefined) throw new Error("no job");
  return job.machine;
}

describe("power", () => {
  test.each<[string, readonly string[], Machine["power"]]>([
    ["nothing said is not known", [], "unknown"],
    ["switched off", ["power off"], "off"],
    ["0 V alone never proves it dead", ["power off", "L1-L2 0 V, L2-L3 0 V, L1-L3 0 V"], "off"],
    ["locked", ["locked out at the roof disconnect"], "locked"],
    [
      "locked and measured live at the line side stays locked",
      ["locked out", "L1-L2 466 V"],
      "locked",
    ],
    ["live by a running current", ["running 14.2 A"], "live"],
    ["live by line volts", ["L1-L2 466 V"], "live"],
    ["proven by the words", ["locked out", "proved dead"], "proven_dead"],
    ["on again", ["power off", "power back on"], "live"],
    ["on again before the lock is told off", ["locked out", "power on", "done, lock off"], "live"],
    ["unlocked and not yet on", ["locked out", "lock off"], "off"],
    ["an undone word leaves what was before", ["power off", "undo"], "unknown"],
  ])("%s", (_, texts, power) => {
    expect(machineAfter(texts).power).toBe(power);
  });
});

describe("locks have owners", () => {
  test("each person's lock is his own and comes off by his word alone", () => {
    const both = machineAfter([
      ["bram", "locked out"],
      ["ife", "locked out"],
    ]);
    expect(both.locks.map(({ who }) => who)).toEqual(["bram", "ife"]);
    const one = machineAfter([
      ["bram", "locked out"],
      ["ife", "locked out"],
      ["ife", "lock off"],
    ]);
    expect(one.locks.map(({ who }) => who)).toEqual(["bram"]);
    expect(one.power).toBe("locked");
  });

  test("who powers up has taken his own lock off; another's hangs on", () => {
    const own = machineAfter(["locked out", "proved dead", "power back on"]);
    expect(own).toMatchObject({ power: "live", locks: [] });
    const others = machineAfter([
      ["bram", "locked out"],
      ["ife", "power back on"],
    ]);
    expect(others.locks.map(({ who }) => who)).toEqual(["bram"]);
  });
});

describe("circuit, leads, bypasses", () => {
  test.each<[string, readonly string[], Partial<Machine>]>([
    ["recovered by weight", ["recovered 7 lb 4 oz"], { circuit: "recovered" }],
    ["nitrogen in", ["nitrogen in, 500 psig"], { circuit: "nitrogen" }],
    ["under vacuum", ["recovered 7 lb", "vacuum 800 microns"], { circuit: "vacuum" }],
    ["charged again", ["vacuum 400 microns", "charged 8 lb"], { circuit: "charged" }],
    ["a plan changes nothing", ["going to recover the charge later"], { circuit: "unknown" }],
    ["leads lifted", ["leads lifted"], { leads: "lifted" }],
    ["leads landed again", ["leads lifted", "leads landed"], { leads: "landed" }],
  ])("%s", (_, texts, wanted) => {
    expect(machineAfter(texts)).toMatchObject(wanted);
  });

  test("a bypass stands with its owner until it is said off", () => {
    const on = machineAfter(["jumped the high pressure switch"]);
    expect(on.bypasses).toMatchObject([{ what: "high pressure switch", who: "bram" }]);
    expect(machineAfter(["jumped the high pressure switch", "jumper off"]).bypasses).toEqual([]);
  });
});
