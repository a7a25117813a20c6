import { describe, expect, test } from "vitest";
import { delimiterOf, rowsOf } from "../adapters/command-line/csv-rows.ts";
import { exportRecord } from "../src/bot/export-record.ts";
import { judgeNotes } from "../src/bot/judge-notes.ts";
import { relearn } from "../src/bot/memory.ts";
import { openBot, receive, tick, work } from "../src/bot.ts";
import type { EquipmentFacts, Finding, Limits } from "../src/model.ts";
import { type Imported, importRows } from "../src/record/import/import-rows.ts";
import { limitsFor } from "../src/record/limits-for.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore, type Store } from "../src/record/store.ts";

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}

function imported(text: string, store = fresh(), dry = false): Imported {
  const rows = rowsOf(text);
  if (typeof rows === "string") throw new Error(rows);
  const result = importRows(store, rows, { delimiter: delimiterOf(text), dry });
  if (typeof result === "string") throw new Error(result);
  return result;
}

const micronPa = 0.133322;

describe("a list of limits", () => {
  test.each([
    ["Threshold,Minimum,Maximum,Unit", "Superheat,8,20,F"],
    ["limit;min;max", "super heat;8 F;20 °F"],
    ["Our limits,,\nCheck,Value,Units", "Superheat,8 to 20,deg F"],
    ["Limit\tHigh (F)\tLow (F)", "Superheat\t20\t8"],
    ["Threshold,Value", "Minimum superheat,8 F\nMax. superheat,20 F"],
  ])("is matched however it is headed: %j", (headings, row) => {
    const store = fresh();
    const { plural, bad } = imported(`${headings}\n${row}\n`, store);
    expect([plural, bad]).toEqual(["limits", []]);
    const [limit, ...more] = readRegistry(store).limits;
    expect(more).toEqual([]);
    expect(limit?.limit).toBe("superheat");
    expect(limit?.least).toBeCloseTo(40 / 9, 9);
    expect(limit?.most).toBeCloseTo(100 / 9, 9);
  });

  test.each([
    ["Insulation to ground,20 MΩ", "insulation", { least: 2e7 }],
    ["Megger,20", "insulation", { least: 2e7 }],
    ["Insulation clean,0.2 gigohm", "insulation_clean", { least: 2e8 }],
    ["Voltage imbalance,≤ 2 %", "voltage_unbalance", { most: 2 }],
    ["Current unbalance,10", "current_unbalance", { most: 10 }],
    ["Winding unbalance,3 %", "winding_unbalance", { most: 3 }],
    ["Capacitor tolerance,±5 %", "capacitance_error", { most: 5 }],
    ["Voltage off nameplate,10 percent", "voltage_off_plate", { most: 10 }],
    ["Vacuum hold,300 microns", "vacuum_hold", { most: 300 * micronPa }],
    ["Max compression ratio,9", "compression_ratio", { most: 9 }],
    ["Discharge line,212 F", "discharge_temperature", { most: 100 }],
    ["Static pressure,0.8 in. w.c.", "static_pressure", { most: 0.8 * 249.089 }],
    ["Leak rate,10 % a year", "leak_rate", { most: 10 }],
  ])("reads %j", (row, limit, sides) => {
    const store = fresh();
    expect(imported(`Threshold,Value\n${row}\n`, store).bad).toEqual([]);
    const [{ limit: name, ...read } = { limit: "" }] = readRegistry(store).limits;
    expect(name).toBe(limit);
    for (const [side, value] of Object.entries(sides)) {
      expect(Object.entries(read).find(([key]) => key === side)?.[1]).toBeCloseTo(value, 6);
    }
  });

  test.each([
    ["Wobble,2 F", /Wobble.*not known; write one of/],
    ["Unbalance,2 %", /Unbalance.*not known/],
    ["Superheat,8 F", /could be the least or the most/],
    ["Discharge,200", /200 has no unit; write F or C/],
    ["Discharge,900 F", /no limit that anybody would set/],
    ["Leak rate,5 psi", /"psi" is no unit of leak rate/],
    ["Superheat,20 to 8 F", /minimum is not under the maximum/],
    ["Insulation,lots", /"lots" is no number/],
    ["Insulation,", /no figure/],
  ])("names the row %j with its line and a remedy, and keeps the rest", (row, reason) => {
    const store = fresh();
    const { bad, counts } = imported(`Threshold,Value\nMegger,20\n${row}\n`, store);
    expect(bad).toEqual([{ line: 3, reason: expect.stringMatching(reason) }]);
    expect([counts.added, readRegistry(store).limits.length]).toEqual([1, 1]);
  });

  test("a dry run keeps nothing, a second import changes nothing, an edit changes its row", () => {
    const store = fresh();
    const text = "Threshold,Min,Max,Unit,Site\nSuperheat,8,20,F,\nSuperheat,6,12,F,Gull Wharf\n";
    expect(imported(text, store, true).counts.added).toBe(2);
    expect(readRegistry(store).limits).toEqual([]);
    expect(imported(text, store).counts.added).toBe(2);
    expect(imported(text, store).counts).toEqual({ added: 0, changed: 0, same: 2 });
    const edited = imported(text.replace("8,20", ",22"), store);
    expect(edited.counts).toEqual({ added: 0, changed: 1, same: 1 });
    expect(readRegistry(store).limits[0]).toEqual({
      limit: "superheat",
      most: expect.closeTo(110 / 9, 9),
    });
  });

  test("holds for a unit before its kind's site, for a site before everywhere", () => {
    const store = fresh();
    imported(
      "Threshold,Max,Unit,Site,Equipment\nVacuum,500,micron,,\nVacuum,400,micron,Gull Wharf,\nVacuum,300,micron,,walk-in cooler\nVacuum,200,micron,Gull Wharf,WIC-4\n",
      store,
    );
    const { limits } = readRegistry(store);
    const holdOf = (equipment: EquipmentFacts, site: string | null): number =>
      Math.round((limitsFor(equipment, site, limits).vacuum_hold?.most ?? 0) / micronPa);
    expect(holdOf({ tag: "RTU-1" }, null)).toBe(500);
    expect(holdOf({ tag: "RTU-1" }, "Gull Wharf")).toBe(400);
    expect(holdOf({ tag: "WIC-9", kind: "Walk-in cooler" }, "Gull Wharf")).toBe(300);
    expect(holdOf({ tag: "wic 4", kind: "walk-in cooler" }, "Gull Wharf")).toBe(200);
  });
});

const line = { drive: "line", phases: 3, supply_V: 460, rla_A: 20 } as const;
const cooling = {
  drive: "line",
  refrigerant: "R-410A",
  metering: "expansion_valve",
  mode: "cooling",
} as const;
const ownBasis = "company's own limit";

interface Row {
  readonly check: string;
  readonly notes: readonly string[];
  readonly equipment: EquipmentFacts;
  readonly limits: Limits;
  /** without the limit, and with it */
  readonly levels: readonly [string, string];
}

/** Of the findings of a check the one that a limit of its own changes. */
function judged({ check, notes, equipment, limits }: Row): readonly [Finding, Finding] {
  const both = [undefined, limits].map((own) =>
    judgeNotes({
      equipment,
      site: {},
      notes,
      units: "us",
      ...(own === undefined ? {} : { limits: own }),
    }).findings.filter((one) => one.check === check),
  );
  const [usual = [], own = []] = both;
  const at = own.findIndex((one) => one.basis === ownBasis);
  const [was, is] = [usual[at], own[at]];
  if (was === undefined || is === undefined) throw new Error(`${check}: no finding of its own`);
  return [was, is];
}

const rows: readonly Row[] = [
  {
    check: "insulation",
    notes: ["500 V megger, winding 40 C: 120 meg to ground on all three leads"],
    equipment: line,
    limits: { insulation: { least: 2e8 } },
    levels: ["good", "bad"],
  },
  {
    check: "supply",
    notes: ["480 470 483 V between the lines, running"],
    equipment: line,
    limits: { voltage_unbalance: { most: 1 } },
    levels: ["good", "watch"],
  },
  {
    check: "supply",
    notes: ["480 465 489 V between the lines, running"],
    equipment: line,
    limits: { voltage_unbalance: { most: 4 } },
    levels: ["watch", "good"],
  },
  {
    check: "supply",
    notes: ["490 491 489 V between the lines, running"],
    equipment: line,
    limits: { voltage_off_plate: { most: 5 } },
    levels: ["good", "bad"],
  },
  {
    check: "running_current",
    notes: ["running amps 15 14 16.1"],
    equipment: line,
    limits: { current_unbalance: { most: 5 } },
    levels: ["good", "watch"],
  },
  {
    check: "capacitor",
    notes: ["run capacitor rated 45, reads 43.4 uF"],
    equipment: {},
    limits: { capacitance_error: { most: 3 } },
    levels: ["good", "bad"],
  },
  {
    check: "evacuation",
    notes: ["240 microns, valved off. 2 min 310, 5 min 335, 10 min 342, 20 min 344"],
    equipment: {},
    limits: { vacuum_hold: { most: 300 * micronPa } },
    levels: ["good", "watch"],
  },
  {
    check: "superheat",
    notes: ["suction 118 psig, suction line 63 F"],
    equipment: cooling,
    limits: { superheat: { least: 4, most: 100 / 9 } },
    levels: ["good", "bad"],
  },
  {
    check: "subcooling",
    notes: ["liquid 365 psig, liquid line 100 F"],
    equipment: cooling,
    limits: { subcooling: { most: 3 } },
    levels: ["good", "bad"],
  },
  {
    check: "discharge_temperature",
    notes: ["discharge line 190 F"],
    equipment: cooling,
    limits: { discharge_temperature: { most: 80 } },
    levels: ["good", "bad"],
  },
  {
    check: "airflow",
    notes: ["total static 0.7 in wc"],
    equipment: {},
    limits: { static_pressure: { most: 150 } },
    levels: ["good", "bad"],
  },
  {
    check: "leak_rate",
    notes: ["added 12 lb, last addition was 200 days ago"],
    equipment: {
      refrigerant: "R-404A",
      charge_kg: 81.65,
      use: "commercial_refrigeration",
      leak_regime: "us_84",
    },
    limits: { leak_rate: { most: 8 } },
    levels: ["good", "bad"],
  },
];

describe("a limit of its own stands in for the usual one", () => {
  test.each(rows)("$check $limits", (row) => {
    const [was, is] = judged(row);
    expect([was.level, is.level]).toEqual(row.levels);
    expect(is.says).toMatch(/company's own/);
    expect(is.source ?? "").not.toBe("");
    // what a figure tells of the cause is no matter of policy, but where the limit is the test
    const signs = ({ signs = [] }: Finding): readonly string[] =>
      signs.filter((sign) => !/^(?:current|evacuation):/.test(sign));
    expect(signs(is)).toEqual(signs(was));
  });

  test("a looser floor of insulation takes no published floor's word back, and both are said", () => {
    const { findings } = judgeNotes({
      equipment: line,
      site: {},
      notes: ["500 V megger, winding 40 C: 3 meg to ground on all three leads"],
      units: "us",
      limits: { insulation: { least: 2e6 } },
    });
    const [floor] = findings.filter(({ check }) => check === "insulation");
    expect(floor?.level).toBe("watch");
    expect(floor?.basis).toBe("IEEE 43");
    expect(floor?.says).toMatch(/above the company's own floor of 2 megohm.*5 megohm/);
  });

  test("six percent of voltage unbalance is not to be run on, whatever a list says", () => {
    const { findings } = judgeNotes({
      equipment: line,
      site: {},
      notes: ["480 440 490 V between the lines, running"],
      units: "us",
      limits: { voltage_unbalance: { most: 9 } },
    });
    const found = findings.find(({ values }) => values.unbalance_percent !== undefined);
    expect(found?.level).toBe("bad");
    expect(found?.basis).toBe("NEMA MG 1");
  });
});

test("from the office's file to the verdict in the sheet", () => {
  const store = fresh();
  let salts = 0;
  const bot = openBot(store, () => `salt ${salts++}`);
  imported("Threshold,Min,Max,Unit,Site\nVacuum hold,,300,micron,Gull Wharf\n", store);
  relearn(bot.memory, store);
  const say = (id: string, minute: number, text: string): void => {
    const at = `2026-05-12T13:${String(minute).padStart(2, "0")}:00Z`;
    receive(bot, {
      message: {
        platform: "terminal",
        id,
        at,
        channel: "south",
        person: "bram",
        role: "tech",
        text,
        files: [],
      },
    });
    tick(bot, at);
    work(bot);
  };
  say("m1", 0, "New job: Gull Wharf OU-3 not cooling");
  say("m2", 5, "240 microns, valved off. 2 min 310, 5 min 335, 10 min 342, 20 min 344");
  const record = exportRecord(bot, { kind: "job", job: 1 });
  const sheet = record.sheets?.find(({ name }) => name === "readings");
  const columns = sheet?.columns.map(({ name }) => name) ?? [];
  const bases = sheet?.rows.map((row) => [
    row[columns.indexOf("verdict")],
    row[columns.indexOf("basis")],
  ]);
  expect(bases?.at(-1)).toEqual(["WATCH", ownBasis]);
});
