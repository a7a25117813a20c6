import { describe, expect, test } from "vitest";
import type { Job, LimitFacts, Reading, TreeNode } from "../src/model.ts";
import { caseOf, earlierJobs } from "../src/record/case.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { foldJob } from "../src/record/job.ts";
import { limitsFor } from "../src/record/limits-for.ts";
import type { Registry } from "../src/record/registry.ts";
import { openRuleOuts } from "../src/record/rule-outs.ts";
import { readSettings } from "../src/record/settings.ts";
import { openStore, type Store } from "../src/record/store.ts";
import { megs, pairs, r } from "./case-builder.ts";
import { entryOf, kept, line, minuteOf } from "./support/job-lines.ts";

/** What is known around a job: the company's settings and limits, earlier visits, what was told elsewhere. */

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}

describe("a file of settings", () => {
  const settings = (store: Store, rows: readonly (readonly [string, string])[], dry = false) => {
    const all = [["Setting", "Value"] as const, ...rows];
    const result = importRows(
      store,
      all.map((cells, at) => ({ line: at + 1, cells: [...cells] })),
      { dry },
    );
    if (typeof result === "string") throw new Error(result);
    return result;
  };
  test("is kept under each name that people give a setting, and told again changes nothing", () => {
    const store = fresh();
    const rows = [
      ["Time zone", " America/Chicago "],
      ["UNITS", "si"],
      ["hours rounding", "15"],
    ] as const;
    expect(settings(store, rows)).toMatchObject({
      ...{ counts: { added: 2, changed: 1, same: 0 }, bad: [] },
    });
    expect(readSettings(store)).toMatchObject({
      ...{ time_zone: "America/Chicago", units: "si", rounding_min: 15 },
    });
    expect(settings(store, rows).counts).toEqual({ added: 0, changed: 0, same: 3 });
    const changed = settings(store, [["timezone", "America/Denver"]]);
    expect(changed.counts).toEqual({ added: 0, changed: 1, same: 0 });
    expect(changed.changes).toEqual([
      { line: 2, reason: "time_zone: America/Chicago becomes America/Denver" },
    ]);
  });
  test("is looked at alone in a dry run", () => {
    const store = fresh();
    const { changes } = settings(store, [["units", "si"]], true);
    expect(changes).toEqual([{ line: 2, reason: "units: us becomes si" }]);
    expect(readSettings(store).units).toBe("us");
  });
  test("is refused line by line", () => {
    const { bad, counts } = settings(fresh(), [
      ["time zone", "Chicago"],
      ["units", "metric"],
      ["rounding", "0"],
      ["rounding", "61"],
      ["rounding", "a quarter"],
      ["color", "red"],
      ["rounding", "60"],
    ]);
    expect(bad.map((one) => `${one.line} ${one.reason}`)).toEqual([
      '2 "Chicago" is no IANA time zone',
      "3 units are us or si",
      '4 "0" is no step of 1 to 60 minutes',
      '5 "61" is no step of 1 to 60 minutes',
      '6 "a quarter" is no step of 1 to 60 minutes',
      '7 "color" is no setting',
    ]);
    expect(counts.added).toBe(1);
  });
});

describe("a limit of the company", () => {
  const unit = { tag: "OU-3", kind: "outdoor unit" };
  const most = (limit: number, more: Partial<LimitFacts> = {}): LimitFacts => ({
    ...{ limit: "current_unbalance", most: limit, ...more },
  });
  const holds = (...all: readonly LimitFacts[]) =>
    limitsFor(unit, "Gull Wharf", all).current_unbalance?.most;
  test("holds where it was meant to", () => {
    expect(holds(most(5))).toBe(5);
    expect(holds(most(5, { site: "gull wharf" }))).toBe(5);
    expect(holds(most(5, { equipment: "ou 3" }))).toBe(5);
    expect(holds(most(5, { equipment: "Outdoor Unit" }))).toBe(5);
    for (const other of [{ site: "Old Mill" }, { equipment: "OU-4" }, { equipment: "chiller" }])
      expect(holds(most(5, other))).toBeUndefined();
    expect(holds(most(5, { site: "Old Mill", equipment: "OU-3" }))).toBeUndefined();
    expect(limitsFor({}, null, [most(5, { site: "Gull Wharf" })])).toEqual({});
    expect(limitsFor({}, null, [most(5, { equipment: "OU-3" })])).toEqual({});
  });
  test("of the unit outweighs the site's, and that what holds everywhere, in whatever order", () => {
    const all = [
      ...[most(1), most(2, { site: "Gull Wharf" }), most(3, { equipment: "OU-3" })],
      most(4, { site: "Gull Wharf", equipment: "OU-3" }),
    ];
    for (let count = 1; count <= all.length; count++) {
      const some = all.slice(0, count);
      expect(holds(...some)).toBe(count);
      expect(holds(...some.reverse())).toBe(count);
    }
  });
  test("says the side that it was given, and no other", () => {
    expect(limitsFor(unit, null, [{ limit: "insulation_clean", least: 5e7 }])).toEqual({
      insulation_clean: { least: 5e7 },
    });
  });
});

const opens = { site: "Gull Wharf", equipment: "OU-3", channel: "south" };
const folded = foldJob([entryOf(0, { opens })]);
function job(number: number, more: Partial<Job> = {}): Job {
  if (folded === undefined) throw new Error("no job");
  return { ...folded, job: number, opened: minuteOf(number), ...more };
}
const registry: Registry = {
  ...{ sites: [], equipment: [], codes: [], people: [], cylinders: [], parts: [], limits: [] },
};

describe("of other jobs", () => {
  test("the earlier ones on the same unit of the same site are its history, oldest first", () => {
    const now = job(10);
    const numbers = (...others: readonly Job[]) => earlierJobs(now, others).map((one) => one.job);
    expect(numbers(job(3), job(1), job(2), now)).toEqual([1, 2, 3]);
    expect(numbers(job(1, { equipment: "ou 3" }))).toEqual([1]);
    expect(numbers(job(1, { equipment: "OU-4" }), job(2, { equipment: null }))).toEqual([]);
    expect(numbers(job(1, { site: "Old Mill" }), job(2, { site: null }))).toEqual([]);
    expect(numbers(job(11), job(12, { opened: now.opened }))).toEqual([]);
    expect(earlierJobs(job(10, { site: null }), [job(1, { site: null })])).toEqual([]);
    expect(earlierJobs(job(10, { equipment: null }), [job(1)])).toEqual([]);
    const { history } = caseOf(
      now,
      registry,
      [job(2, { status: "done", status_at: minuteOf(3) })],
      minuteOf(11),
    );
    expect(history).toMatchObject([{ job: 2, closed: minuteOf(3), equipment: "OU-3" }]);
    expect(caseOf(now, registry, [job(1)], minuteOf(11)).history[0]).not.toHaveProperty("closed");
  });
  test("what they told of the site's parts is known, oldest first, until taken back", () => {
    const tells = (minute: number, ...nodes: readonly TreeNode[]) =>
      line(minute, { kind: "tree", nodes, said: "", spans: [], rule: "test" });
    const told = (one: Job, ...others: readonly Job[]) =>
      caseOf(one, registry, others, minuteOf(20)).site.told?.map(({ tag }) => tag);
    const now = job(10);
    const later = job(4, { statements: [tells(7, { tag: "BB-2" })] });
    const sooner = job(5, {
      equipment: "OU-9",
      statements: [
        tells(6, { tag: "BB-1" }),
        line(6, { kind: "labor", hours: 1, said: "", spans: [], rule: "test" }),
      ],
    });
    expect(told(now, later, sooner)).toEqual(["BB-1", "BB-2"]);
    expect(told(now)).toBeUndefined();
    expect(told(now, job(4, { statements: [tells(21, { tag: "BB-2" })] }))).toBeUndefined();
    expect(told(now, job(4, { statements: [tells(20, { tag: "BB-2" })] }))).toEqual(["BB-2"]);
    for (const gone of [{ undone: true }, { deleted: true }] as const)
      expect(
        told(now, job(4, { statements: [{ ...tells(7, { tag: "BB-2" }), ...gone }] })),
      ).toBeUndefined();
    expect(
      told(now, job(4, { site: "Old Mill", statements: [tells(7, { tag: "BB-2" })] })),
    ).toBeUndefined();
    expect(
      told(job(10, { site: null }), job(4, { site: null, statements: [tells(7, { tag: "B" })] })),
    ).toBeUndefined();
    expect(told(job(4, { statements: later.statements }), later)).toBeUndefined();
  });
  test("a case holds what stands and is not doubted, message by message", () => {
    const readings = [
      ...[kept(1, r("current", 1)), kept(1, r("current", 2), { id: "x" })],
      ...[kept(2, r("current", 3), { undone: true }), kept(2, r("current", 4), { doubtful: true })],
    ];
    const words = (minute: number, says: string) => ({
      ...{ at: minuteOf(minute), who: "bram", kind: "note", says, message: `m${minute}` },
    });
    const statements = [
      line(1, { kind: "labor", hours: 1, said: "", spans: [], rule: "test" }),
      {
        ...line(2, { kind: "labor", hours: 2, said: "", spans: [], rule: "test" }),
        undone: true as const,
      },
    ];
    const { notes } = caseOf(
      job(10, { readings, statements, timeline: [words(1, "one"), words(2, "two")] }),
      ...([registry, [], minuteOf(20)] as const),
    );
    expect(
      notes.map(({ text, readings: some, statements: said }) => [
        text,
        some.map(({ value }) => value),
        said.length,
      ]),
    ).toEqual([
      ["one", [1, 2], 1],
      ["two", [], 0],
    ]);
  });
});

describe("before a dear part is ordered", () => {
  const open = (part: string, ...readings: readonly Reading[]) =>
    openRuleOuts(job(1, { readings: readings.map((one, at) => kept(at, one)) }), part);
  const all: readonly (readonly [string, readonly Reading[]])[] = [
    ["three leads to ground", megs([9e8, 9e8, 9e8])],
    ["three winding pairs", pairs([0.6, 0.6, 0.6])],
    ["supply volts", [r("voltage", 460)]],
    ["start amps", [r("current", 120, { state: "start" })]],
  ];
  test("each thing that was not looked at is named, and nothing that was", () => {
    const names = all.map(([name]) => name);
    expect(open("compressor")).toEqual(names);
    expect(open("comp 2", ...all.flatMap(([, some]) => some))).toEqual([]);
    for (const [name] of all) {
      const rest = all.filter(([other]) => other !== name).flatMap(([, some]) => some);
      expect(open("compressor", ...rest)).toEqual([name]);
    }
    expect(open("contactor")).toEqual([]);
    expect(open("inverter board")).toEqual([
      ...[
        "bus volts",
        "diode readings of the bridge",
        "three leads to ground",
        "three winding pairs",
      ],
    ]);
  });
  test("two leads are not three, one lead read three times is one, five diodes are not six", () => {
    expect(open("compressor", ...megs([9e8, 9e8]))).toContain("three leads to ground");
    const again = megs([9e8]).flatMap((one) => [one, one, one]);
    expect(open("compressor", ...again)).toContain("three leads to ground");
    const diodes = (count: number) => Array.from({ length: count }, () => r("diode_drop", 0.45));
    expect(open("drive", ...diodes(5))).toContain("diode readings of the bridge");
    expect(open("drive", ...diodes(6))).not.toContain("diode readings of the bridge");
    expect(open("drive", r("voltage", 640, { at: "dc_bus" }))).not.toContain("bus volts");
    expect(open("compressor", r("voltage", 640, { at: "dc_bus" }))).toContain("supply volts");
    expect(open("compressor", r("current", 100, { stat: "peak" }))).not.toContain("start amps");
    expect(open("compressor", r("current", 14))).toContain("start amps");
  });
  test("nobody is asked to start what reads low to ground once more", () => {
    expect(open("compressor", ...megs([9.9e5]))).not.toContain("start amps");
    expect(open("compressor", ...megs([1e6]))).toContain("start amps");
  });
  test("what was taken back, doubted, of the plate or of an earlier day was not looked at", () => {
    for (const more of [
      { undone: true },
      { doubtful: true },
      { rating: "nominal" },
      { earlier: true },
    ] as const) {
      const one = job(1, { readings: [kept(1, r("voltage", 460), more)] });
      expect(openRuleOuts(one, "compressor")).toContain("supply volts");
    }
  });
});
