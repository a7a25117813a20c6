import { describe, expect, test } from "vitest";
import { delimiterOf, rowsOf } from "../adapters/command-line/csv-rows.ts";
import { type Imported, importRows } from "../src/record/import/import-rows.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore, type Store } from "../src/record/store.ts";

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}

function taken(text: string, store = fresh()): Imported | string {
  const rows = rowsOf(text);
  return typeof rows === "string"
    ? rows
    : importRows(store, rows, { delimiter: delimiterOf(text) });
}

const fieldsOf = (text: string): string => {
  const result = taken(text);
  return typeof result === "string"
    ? result
    : `${result.plural}: ${result.matched.map(({ field }) => field).join(" ")}`;
};

describe("headings that offices use", () => {
  test.each([
    [
      "Unit #,Site Name,Equip. Type,Model #,Serial #,V/Ph/Hz,Comp RLA,Comp LRA,Refrigerant Type,Charge (lbs),Install Date,Area Served,Parent Unit",
      "equipment: tag site kind model serial supply rla_A lra_A refrigerant charge_kg installed places parent",
    ],
    [
      "Equip ID,Customer Name,Descr.,Mod. No.,Ser. No.,Volts,Ph,Ref.,Chg lb,Yr Inst,Rooms Served,Feeds From,Metering Dev.",
      "equipment: tag site kind model serial supply_V phases refrigerant charge_kg installed places parent metering",
    ],
    ["ASSET_TAG;BUILDING_NAME;ASSET_TYPE;RATED_VOLTS", "equipment: tag site kind supply_V"],
    [
      "Store,Street Address,Town/City,Manager,Phone #,Elev. (ft)",
      "sites: name street town contact phone altitude_m",
    ],
    [
      "Customer Name,Job Address,City,Contact Name,Alt. (m)",
      "sites: name street town contact altitude_m",
    ],
    ["Name,Role,EPA 608 Cert #,Nick name", "people: name role certificate nickname"],
    ["Employee Name;F-gas certificate;Slack Member ID", "people: name certificate slack"],
    ["First Name,Last Name,Title,Cert Number", "people: nickname family role certificate"],
    [
      "Serial No,Gas Type,Water Cap. kg,Tare kg,Remaining kg",
      "cylinders: number gas capacity_kg tare_kg net_kg",
    ],
    [
      "Fault,Displayed On,Fault Description,Corrective Action",
      "fault codes: code shown_on meaning first",
    ],
    [
      "Parameter,Low Limit,High Limit,Units,Equipment Type",
      "limits: limit least most unit equipment",
    ],
    ["Catalogue No;Denomination;Fits Models;Bin Location", "parts: number name fits place"],
  ])("%s", (headings, fields) => {
    expect(fieldsOf(`${headings}\n`)).toBe(fields);
  });

  test("of one word among many unknown ones tell no list", () => {
    expect(fieldsOf("Error,Unit Type,Weather,Mood,Tide\nE3,outdoor,dry,calm,ebb\n")).toMatch(
      /tell no known kind/,
    );
  });

  test("under merged ones mean what stands over them", () => {
    const store = fresh();
    const text = [
      "Equipment,,Nameplate,,Refrigerant,,,Line set,,",
      "Unit Tag,Building,Volts,Phase,Type,Charge (lb),Circuit,Liquid,Length (ft),Covered",
      "OU-3,Gull Wharf,460,3,R-410A,23.5,,3/8,55,15",
    ].join("\n");
    expect(taken(text, store)).toMatchObject({ unused: [], bad: [] });
    const [unit] = readRegistry(store).equipment;
    expect(unit).toMatchObject({ refrigerant: "R-410A", line_set: [{ line: "liquid" }] });
    expect(unit).not.toHaveProperty("kind");
  });

  test("are told without the title above them", () => {
    const result = taken("printed 12.05.2026;;\nBuilding Name;City;Tel.\nGull Wharf;Saltbox;1;2\n");
    expect(result).toMatchObject({
      matched: [{ heading: "Building Name" }, { heading: "City" }, { heading: "Tel." }],
    });
  });
});

describe("what several cells tell together", () => {
  test("a plate's supply in one cell is volts and phases; two voltages are refused", () => {
    const store = fresh();
    const result = taken(
      "Unit,V/Ph/Hz\nOU-3,460/3/60\nOU-4,208-230/1/60\nOU-5,208V-1Ph-60Hz\nOU-6,many\n",
      store,
    );
    expect(readRegistry(store).equipment).toEqual([
      { tag: "OU-3", supply_V: 460, phases: 3 },
      { tag: "OU-5", supply_V: 208, phases: 1 },
    ]);
    expect(result).toMatchObject({
      bad: [
        { line: 3, reason: expect.stringMatching(/two voltages; write .*208\/1\/60/) },
        { line: 5, reason: expect.stringMatching(/no supply/) },
      ],
    });
  });

  test("first and last name are one name", () => {
    const store = fresh();
    const text = "First Name,Last Name,Title\nBram,Øster,Tech\n,,Tech\n";
    expect(taken(text, store)).toMatchObject({ counts: { added: 1 }, bad: [{ line: 3 }] });
    expect(taken(text, store)).toMatchObject({ counts: { added: 0, same: 1 } });
    expect(readRegistry(store).people).toEqual([
      { name: "Bram Øster", nickname: "Bram", role: "Tech" },
    ]);
  });

  test("gross less tare is what a cylinder holds", () => {
    const store = fresh();
    const result = taken("Cylinder,Gross kg,Tare kg\n22,20,12\n23,10,12\n", store);
    expect(readRegistry(store).cylinders).toEqual([{ number: "22", tare_kg: 12, net_kg: 8 }]);
    expect(result).toMatchObject({
      bad: [{ line: 3, reason: expect.stringMatching(/less than/) }],
    });
  });
});

describe("what no list of ours is as large as", () => {
  test("a row of very many cells is no heading, and is told by its first ones", () => {
    const cells = Array.from({ length: 60_000 }, (_, index) => `c${index}`);
    const result = taken(`${cells.join(",")}\n1,2\n`);
    expect(result).toMatch(/^The headings tell no known kind of file: c0, c1, .*\.\.\.\. Known:/);
    expect(String(result).length).toBeLessThan(400);
  });

  test("a cell of very many letters is refused in a line, and spoils no other", () => {
    const store = fresh();
    const long = "a".repeat(300_000);
    const result = taken(`Tag,Site,Notes\nOU-1,Gull Wharf,${long}\nOU-2,Gull Wharf,roof\n`, store);
    expect(result).toMatchObject({
      counts: { added: 1 },
      bad: [{ line: 2, reason: expect.stringMatching(/^Notes: the cell holds 300000 letters/) }],
    });
    expect(JSON.stringify(result).length).toBeLessThan(1000);
    expect(fieldsOf(`${long},Tag,Site\n1,OU-1,Gull Wharf\n`)).toBe("equipment: tag site");
  });
});

test("what a dry run would change is told in words", () => {
  const store = fresh();
  const text = (length: string): string =>
    `Tag,Liquid line,Line length ft,Rooms\nOU-3,3/8,${length},"12; 14"\n`;
  taken(text("55"), store);
  expect(taken(text("50"), store)).toMatchObject({
    changes: [
      {
        reason:
          "ou-3: line set line liquid, size in 0.375, length m 16.764 becomes line liquid, size in 0.375, length m 15.24",
      },
    ],
  });
});
