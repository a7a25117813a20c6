import { describe, expect, test } from "vitest";
import type { ClockKindName, EquipmentFacts, Job, RunningClock } from "../src/model.ts";
import { clocksOf } from "../src/record/clocks.ts";
import type { Entry } from "../src/record/entry.ts";
import { foldJob } from "../src/record/job.ts";
import { quietClocks } from "../src/record/quiet-jobs.ts";
import { type Part, r, seen } from "./case-builder.ts";
import { act, entryOf, minuteOf } from "./support/job-lines.ts";

/** Which words and readings start a clock, how long it runs, and which end it: each with each. */

const opens = { site: "Gull Wharf", equipment: "OU-3", channel: "south", assigned: "bram" };
const inverter: EquipmentFacts = { drive: "inverter" };

interface Told {
  readonly text?: string;
  readonly parts?: readonly Part[];
  readonly who?: string;
  readonly channel?: string;
}

function entriesOf(told: readonly Told[]): readonly Entry[] {
  const notes = told.map(({ parts = [], ...more }, index) =>
    entryOf(index + 1, {
      ...more,
      readings: parts.flatMap((one) => ("figure" in one ? [one] : [])),
      statements: parts.flatMap((one) => ("figure" in one ? [] : [one])),
    }),
  );
  return [entryOf(0, { who: "maren", role: "dispatcher", opens }), ...notes];
}

function jobOf(entries: readonly Entry[]): Job {
  const job = foldJob(entries);
  if (job === undefined) throw new Error("no job");
  return job;
}

function running(told: readonly Told[], equipment = inverter): readonly RunningClock[] {
  const entries = entriesOf(told);
  return clocksOf(jobOf(entries), entries, equipment);
}

const kinds = (clocks: readonly RunningClock[]): readonly string[] =>
  clocks.map(({ kind }) => kind).sort();

/** Steps of a job; `starts`: the clocks that each sets going, with their seconds. */
const steps: Readonly<
  Record<string, Told & { readonly starts?: Partial<Record<ClockKindName, number>> }>
> = {
  // read at 60 s and at 10 min, for the polarization index (IEEE 43-2013, 12.2)
  "meg going": {
    text: "Meg on comp 1 going now",
    starts: { insulation_1min: 60, insulation_10min: 600 },
  },
  "meg tested": {
    parts: [act("tested", { what: "comp 1 insulation" })],
    starts: { insulation_1min: 60, insulation_10min: 600 },
  },
  "vacuum isolated": { parts: [act("vacuum_isolated")], starts: { vacuum_hold: 600 } },
  "nitrogen in": { parts: [act("nitrogen_in")], starts: { nitrogen_hold: 3600 } },
  "circuit under nitrogen": {
    parts: [act("other", { circuit: "nitrogen" })],
    starts: { nitrogen_hold: 3600 },
  },
  "power off": { parts: [act("power_off")], starts: { bus_wait: 600 } },
  locked: { parts: [act("locked")], starts: { bus_wait: 600 } },
  // 60 min since the 2019 edition of NFPA 51B
  brazed: { parts: [act("brazed")], starts: { fire_watch: 3600 } },
  "heater powered": {
    parts: [act("power_on", { what: "crankcase heater" })],
    starts: { heater: 8 * 3600 },
  },
  "heater replaced": {
    parts: [act("replaced", { what: "heater" })],
    starts: { heater: 8 * 3600 },
  },
  "heater repaired": {
    parts: [act("repaired", { what: "crankcase" })],
    starts: { heater: 8 * 3600 },
  },
  "heater started": {
    parts: [act("started", { what: "crankcase heater" })],
    starts: { heater: 8 * 3600 },
  },
  "heater tested": { parts: [act("tested", { what: "crankcase heater" })] },
  "plan to braze": { parts: [act("brazed", { planned: true })] },
  "plan to isolate": { parts: [act("vacuum_isolated", { planned: true })] },
  "meg with its value": {
    text: "megging now 212",
    parts: [r("insulation_resistance", 212e6)],
  },
  "one-minute value": { parts: [r("insulation_resistance", 2e8, { after_s: 60 })] },
  "too early a value": { parts: [r("insulation_resistance", 2e8, { after_s: 30 })] },
  "ten-minute value": { parts: [r("insulation_resistance", 2e8, { after_s: 600 })] },
  "leads landed": { parts: [act("leads_landed", { leads: "landed" })] },
  "power on": { parts: [act("power_on")] },
  started: { parts: [act("started")] },
  "proved dead": { parts: [act("proved_dead")] },
  vacuum: { parts: [r("vacuum", 50)] },
  "vacuum of the plan": { parts: [r("vacuum", 50, { rating: "setpoint" })] },
  "vacuum started": { parts: [act("vacuum_started")] },
  "vacuum broken": { parts: [act("vacuum_broken")] },
  charged: { parts: [act("charged")] },
  "weight charged": { parts: [r("mass", 3, { action: "charged" })] },
  "weight recovered": { parts: [r("mass", 3, { action: "recovered" })] },
  "circuit opened": { parts: [act("circuit_opened")] },
  "nitrogen out": { parts: [act("nitrogen_out")] },
  "test pressure": { parts: [r("pressure", 3e6)] },
  "suction pressure": { parts: [r("pressure", 8e5, { at: "suction" })] },
  temperature: { parts: [r("temperature", 20)] },
  "holding steady": { parts: [seen("holding_steady")] },
  dropping: { parts: [seen("dropping")] },
  "leak found": { parts: [seen("leak_found")] },
  "no leak found": { parts: [seen("no_leak_found")] },
  noisy: { parts: [seen("noisy")] },
  "bus volts": { parts: [r("voltage", 3, { at: "dc_bus" })] },
  "line volts": { parts: [r("voltage", 460)] },
  "bus current": { parts: [r("current", 3, { at: "dc_bus" })] },
  "diode drop": { parts: [r("diode_drop", 0.45)] },
  "rated current": { parts: [r("current", 12, { rating: "RLA" })] },
  current: { parts: [r("current", 12)] },
  talk: { text: "coffee" },
};

/** What ends each clock. Nothing but the end of the job ends a fire watch. */
const ends: Readonly<Record<string, readonly string[]>> = {
  insulation_1min: [
    ...["meg with its value", "one-minute value", "ten-minute value", "leads landed", "power on"],
    "heater powered",
  ],
  insulation_10min: [
    ...["meg with its value", "ten-minute value", "leads landed", "power on", "heater powered"],
  ],
  vacuum_hold: [
    ...["vacuum", "vacuum started", "vacuum broken", "charged", "weight charged"],
    "circuit opened",
  ],
  nitrogen_hold: [
    ...["test pressure", "holding steady", "dropping", "leak found", "no leak found", "vacuum"],
    ...["nitrogen out", "vacuum started", "charged", "circuit opened"],
  ],
  bus_wait: [
    ...["bus volts", "diode drop", "power on", "started", "proved dead", "heater powered"],
    ...["heater started"],
  ],
  fire_watch: [],
  heater: ["current", "bus current", "started"],
};

const starters = [
  "meg going",
  "vacuum isolated",
  "nitrogen in",
  "power off",
  "brazed",
  "heater powered",
];

describe.each(Object.entries(steps))("%s", (name, step) => {
  test("sets going its clocks alone, each for its time", () => {
    const clocks = running([step]);
    expect(
      Object.fromEntries(
        clocks.map(({ kind, since, due }) => [kind, (Date.parse(due) - Date.parse(since)) / 1000]),
      ),
    ).toEqual(step.starts ?? {});
    for (const { since, holder, job, channel } of clocks) {
      expect({ since, holder, job, channel }).toEqual({
        ...{ since: minuteOf(1), holder: "bram", job: 1, channel: "south" },
      });
    }
  });

  test.each(starters)("ends of what '%s' started what it answers, and leaves the rest", (first) => {
    const started = Object.keys(steps[first]?.starts ?? {});
    const own = Object.keys(step.starts ?? {});
    const left = started.filter((kind) => ends[kind]?.includes(name) !== true);
    expect(kinds(running([steps[first] ?? {}, step]))).toEqual(
      [...new Set([...left, ...own])].sort(),
    );
  });
});

test("a clock that is started again runs from the second start alone", () => {
  const [clock, ...more] = running([steps.brazed ?? {}, {}, steps.brazed ?? {}]);
  expect(clock?.since).toBe(minuteOf(3));
  expect(more).toEqual([]);
});

test("only an inverter's bus is waited for", () => {
  expect(running([steps["power off"] ?? {}], { drive: "line" })).toEqual([]);
  expect(running([steps.locked ?? {}], {})).toEqual([]);
});

test("they are told in the order in which they come due", () => {
  const clocks = running([
    steps["nitrogen in"] ?? {},
    steps.brazed ?? {},
    steps["meg going"] ?? {},
  ]);
  expect(clocks.map(({ kind }) => kind)).toEqual([
    ...["insulation_1min", "insulation_10min", "nitrogen_hold", "fire_watch"],
  ]);
});

describe("who leaves the site", () => {
  const status = (name: "left_site" | "waiting_for_parts" | "no_access" | "done" | "on_site") => ({
    parts: [{ kind: "status", status: name, said: "", spans: [], rule: "test" } as const],
  });
  const all = ["meg going", "vacuum isolated", "nitrogen in", "locked", "brazed", "heater powered"];
  const begun = ["meg going", "vacuum isolated", "locked", "brazed", "nitrogen in"].map(
    (name) => steps[name] ?? {},
  );
  test.each(["left_site", "waiting_for_parts", "no_access"] as const)(
    "leaves the heater on, and the nitrogen in for the next morning: %s",
    (name) => {
      const clocks = running([...begun, steps["heater repaired"] ?? {}, status(name)]);
      expect(clocks.map(({ kind, due }) => [kind, due])).toEqual([
        ["heater", "2026-05-12T16:06:00Z"],
        ["nitrogen_hold", "2026-05-13T07:00:00Z"],
      ]);
    },
  );
  test("and where he is done, nothing", () => {
    expect(running([...all.map((name) => steps[name] ?? {}), status("done")])).toEqual([]);
    expect(kinds(running([...begun, status("on_site")]))).toHaveLength(6);
  });
  test("before seven in the morning is asked the same day, in his own time", () => {
    const left = (from: string, to: string) => {
      const entries = entriesOf([steps["nitrogen in"] ?? {}, status("left_site")]).map(
        (entry, index) => ({ ...entry, at: index === 2 ? to : from }),
      );
      return clocksOf(jobOf(entries), entries, inverter).map(({ due }) => due);
    };
    expect(left("2026-05-12T06:00:00-05:00", "2026-05-12T06:59:59-05:00")).toEqual([
      "2026-05-12T07:00:00-05:00",
    ]);
    expect(left("2026-05-12T06:00:00-05:00", "2026-05-12T07:00:00-05:00")).toEqual([
      "2026-05-13T07:00:00-05:00",
    ]);
    expect(left("2026-05-31T22:00:00+05:30", "2026-05-31T23:00:00+05:30")).toEqual([
      "2026-06-01T07:00:00+05:30",
    ]);
  });
});

describe("whom a clock asks, and where", () => {
  const onSite = {
    parts: [{ kind: "status", status: "on_site", said: "", spans: [], rule: "test" } as const],
  };
  const asks = (...told: readonly Told[]) =>
    running(told).map(({ holder, channel }) => `${holder} in ${channel}`);
  test("is who holds the job now", () => {
    expect(asks(steps.brazed ?? {}, { ...onSite, who: "ife" })).toEqual(["ife in south"]);
    expect(asks(steps.brazed ?? {}, { text: "hello", who: "ife" })).toEqual(["bram in south"]);
    const takes = {
      kind: "question",
      question: "handover",
      about: "i'm taking it from bram, anything i should know",
      ...{ said: "", spans: [], rule: "test" },
    } as const;
    expect(asks(steps.brazed ?? {}, { parts: [takes], who: "ife" })).toEqual(["ife in south"]);
  });
  test("in his own chat where he began it there, before the crew once another has it", () => {
    const alone = { ...steps.brazed, channel: "direct:bram" };
    expect(asks(alone)).toEqual(["bram in direct:bram"]);
    expect(asks(alone, { ...onSite, who: "ife" })).toEqual(["ife in south"]);
    expect(asks({ ...steps.brazed, channel: "north" })).toEqual(["bram in south"]);
  });
  test("in the thread of the job", () => {
    const [first, ...rest] = entriesOf([steps.brazed ?? {}]);
    if (first?.facts.kind !== "note") throw new Error("no opening");
    const threaded = { ...first.facts, opens: { ...opens, thread: "t1" } };
    const entries = [{ ...first, facts: threaded }, ...rest];
    expect(clocksOf(jobOf(entries), entries, inverter)[0]?.thread).toBe("t1");
  });
});

test("a clock that asked, or was overtaken, asks no more", () => {
  const entries = entriesOf([steps.brazed ?? {}, steps["vacuum isolated"] ?? {}]);
  const [first] = clocksOf(jobOf(entries), entries, inverter);
  const asked: Entry = {
    ...entryOf(9),
    facts: { kind: "clock", clock: first?.id ?? "", outcome: "asked" },
  };
  expect(kinds(clocksOf(jobOf(entries), [...entries, asked], inverter))).toEqual(["fire_watch"]);
});

test("what was edited away or deleted starts and ends nothing", () => {
  const entries = entriesOf([steps.brazed ?? {}]);
  const gone: Entry = {
    ...entryOf(5),
    facts: { kind: "delete", message: entries[1]?.message ?? "" },
  };
  const all = [...entries, gone];
  expect(clocksOf(jobOf(all), all, inverter)).toEqual([]);
});

describe("a job of which nothing is heard", () => {
  const base = jobOf(entriesOf([steps.brazed ?? {}]));
  const job = (more: Partial<Job> = {}): Job => ({
    ...{ ...base, status: "on_site", status_at: "2026-05-12T08:00:00-05:00", person: "bram" },
    ...{ people: ["bram"], ...more },
  });
  const at = (text: string): number => Date.parse(`2026-05-12T${text}:00-05:00`);
  const due = (one: Job, heard: readonly (readonly [string, number])[] = []) =>
    quietClocks(one, [], new Map(heard)).map((clock) => clock.due);
  test("is asked for after 90 minutes, after 45 where one works alone on something live", () => {
    expect(due(job())).toEqual(["2026-05-12T09:30:00-05:00"]);
    const machine = { ...base.machine, power: "live" } as const;
    expect(due(job({ machine }))).toEqual(["2026-05-12T08:45:00-05:00"]);
    expect(due(job({ machine, people: ["bram", "ife"] }))).toEqual(["2026-05-12T09:30:00-05:00"]);
  });
  test("any word of any of its people puts off, another's does not", () => {
    expect(due(job(), [["bram", at("08:20")]])).toEqual(["2026-05-12T09:50:00-05:00"]);
    expect(due(job(), [["ife", at("08:20")]])).toEqual(["2026-05-12T09:30:00-05:00"]);
    const both = job({ people: ["bram", "ife"] });
    expect(
      due(both, [
        ["ife", at("08:20")],
        ["bram", at("08:10")],
      ]),
    ).toEqual(["2026-05-12T09:50:00-05:00"]);
  });
  test("only while somebody is there", () => {
    for (const status of ["open", "on_the_way", "left_site", "waiting_for_parts", "done"] as const)
      expect(due(job({ status }))).toEqual([]);
    expect(due(job({ person: null }))).toEqual([]);
  });
  test("is told the dispatcher half an hour after he was asked, and then no more", () => {
    const asked = (clock: string): Entry => ({
      ...entryOf(7),
      facts: { kind: "clock", clock, outcome: "asked" },
    });
    const [first] = quietClocks(job(), [], new Map());
    const second = quietClocks(job(), [asked(first?.id ?? "")], new Map());
    expect(first).toMatchObject({ kind: "quiet_job", holder: "bram", channel: "south" });
    expect(second).toMatchObject([{ kind: "quiet_told", due: "2026-05-12T10:00:00-05:00" }]);
    const both = [asked(first?.id ?? ""), asked(second[0]?.id ?? "")];
    expect(quietClocks(job(), both, new Map())).toEqual([]);
    // a word of his begins it anew
    expect(quietClocks(job(), both, new Map([["bram", at("09:00")]]))).toHaveLength(1);
  });
});
