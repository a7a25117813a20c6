import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import writeXlsxFile, { type Row } from "write-excel-file/node";
import { delimiterOf, rowsOf } from "../adapters/command-line/csv-rows.ts";
import { sheetRows } from "../adapters/command-line/sheet-rows.ts";
import { decodeText } from "../src/record/import/decode.ts";
import { type Imported, type ImportOptions, importRows } from "../src/record/import/import-rows.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore, type Store } from "../src/record/store.ts";
import { messyRegistry } from "./support/messy-registry.ts";
import { mutated } from "./support/mutated.ts";
import { run } from "./support/run.ts";

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}

function imported(text: string, store = fresh(), options: ImportOptions = {}): Imported {
  const rows = rowsOf(text);
  if (typeof rows === "string") throw new Error(rows);
  const result = importRows(store, rows, { delimiter: delimiterOf(text), ...options });
  if (typeof result === "string") throw new Error(result);
  return result;
}

const reasons = ({ bad }: Imported): readonly string[] =>
  bad.map(({ line, reason }) => `${line} ${reason}`);

describe("bytes become text", () => {
  const words = "Zoë, Ångström-Straße, señor";
  const utf16 = (text: string, big: boolean): Uint8Array => {
    const bytes = Buffer.from(text, "utf16le");
    return big ? bytes.swap16() : bytes;
  };
  test.each([
    ["UTF-8", Buffer.from(words)],
    ["UTF-8", Buffer.from(`\ufeff${words}`)],
    ["UTF-16", utf16(`\ufeff${words}`, false)],
    ["UTF-16", utf16(`\ufeff${words}`, true)],
    ["UTF-16", utf16(words, false)],
    ["UTF-16", utf16(words, true)],
    ["Windows-1252", Buffer.from(words, "latin1")],
  ])("in %s, marked or not", (encoding, bytes) => {
    const decoded = decodeText(bytes);
    expect(decoded.encoding).toBe(encoding);
    expect(decoded.text.replace("\ufeff", "")).toBe(words);
  });
});

describe("headings", () => {
  test.each([
    ["Tag,Site,Serial No.,Factory charge lb", "tag site serial charge_kg"],
    ["EQUIPMENT_TAG;JOB SITE;S/N;Full Charge (lb)", "tag site serial charge_kg"],
    ["unit\tbuilding\tSerialNumber\tRefrigrant charge lbs", "tag site serial charge_kg"],
    ["Site , Tag , Serail #, Charge [kg]", "site tag serial charge_kg"],
  ])("%j are matched in any order, case and spelling", (headings, fields) => {
    const { matched, unused } = imported(`${headings}\n`);
    expect(matched.map(({ field }) => field).join(" ")).toBe(fields);
    expect(unused).toEqual([]);
  });

  test.each([
    ["sites", "Name,Address,City,Phone"],
    ["people", "Name,Role,Phone,Slack ID"],
    ["cylinders", "Bottle no,Gas,Water capacity lb,Tare"],
    ["cylinders", "Cyl #,Gas,WC"],
    ["fault codes", "Fault code,Description"],
    ["parts", "Part number,Description,Supplier"],
    ["equipment", "Asset,Model,Serial"],
  ])("tell %s", (plural, headings) => {
    expect(imported(`${headings}\n`).plural).toBe(plural);
  });

  test("may stand below a title, after empty columns, in two rows with merged cells", () => {
    const store = fresh();
    const { counts, matched } = imported(
      [
        "Unit list of the north branch,,,,,",
        ",,printed 12 May,,,",
        ",Unit,,Nameplate,,",
        ",Tag,Site,Volts,Phase,RLA",
        ",RTU-1,Alder Hall,208,3,19",
      ].join("\n"),
      store,
    );
    expect(counts.added).toBe(1);
    expect(matched.map(({ field }) => field)).toEqual([
      "tag",
      "site",
      "supply_V",
      "phases",
      "rla_A",
    ]);
    expect(readRegistry(store).equipment).toEqual([
      { tag: "RTU-1", site: "Alder Hall", supply_V: 208, phases: 3, rla_A: 19 },
    ]);
  });

  test("what nothing is done with is told", () => {
    expect(imported("Tag,Site,Colour\nA,B,red\n").unused).toEqual(["Colour"]);
  });

  test("that tell nothing are refused with what would be known", () => {
    expect(importRows(fresh(), [{ line: 1, cells: ["a", "b"] }])).toMatch(
      /tell no known kind.*sites/,
    );
  });
});

describe("cells", () => {
  const head = "Tag,Site,Charge lb,RLA";
  test.each([
    ["7 lb 6 oz", 3.34524372875],
    ["3.2 kg", 3.2],
    ['"1,200"', 544.310844],
    ["8", 3.62873896],
  ])("%s as a charge", (cell, kg) => {
    const store = fresh();
    imported(`${head}\nRTU-1,A,${cell},19.0 A\n`, store);
    expect(readRegistry(store).equipment[0]?.charge_kg).toBeCloseTo(kg, 9);
    expect(readRegistry(store).equipment[0]?.rla_A).toBe(19);
  });

  test("a comma is a decimal mark where the file's own numbers show it", () => {
    const store = fresh();
    imported("Tag;Site;Charge kg;RLA\nA;S;7,3;1,125\n", store);
    expect(readRegistry(store).equipment[0]).toMatchObject({ charge_kg: 7.3, rla_A: 1.125 });
  });

  test("a number that could be two is refused, never guessed", () => {
    const result = imported("Tag;Site;Elevation;RLA\nA;S;;1,125\nB;S;;18\n");
    expect(reasons(result)).toEqual([
      '2 RLA: "1,125" could be two numbers; write it without a thousands mark, such as 1125',
    ]);
    expect(result.counts.added).toBe(1);
  });

  test.each([
    ["RLA", "208/230", /line .*no number; write one number/],
    ["Last addition", "3/4/2025", /could be two days; write it as 2025-03-04/],
    ["Last addition", "31/2/2025", /no day of the calendar/],
    ["Receiver", "perhaps", /neither yes nor no/],
    ["Notes", "Ã¼ber", /lost letters/],
    ["Notes", "\ufffdber", /lost letters/],
    ["Liquid line", "3/8", /size without its length/],
  ])("%s %s is named with its line, its column and a remedy", (heading, cell, says) => {
    const { bad, counts } = imported(`Tag,Site,${heading}\nA,S,${cell}\nB,S,\n`);
    expect(bad).toHaveLength(1);
    expect(`line ${bad[0]?.line} ${bad[0]?.reason}`).toMatch(says);
    expect(counts.added).toBe(1);
  });

  test("circuits of a unit are one unit, each with its charge", () => {
    const store = fresh();
    imported(
      "Tag,Site,Circuit,Charge lb\nRTU-1,A,1,8\nRTU-1,A,2,9\nRTU-2,A,1,8\nRTU-2,A,2,8\n",
      store,
    );
    const [first, second] = readRegistry(store).equipment;
    expect(first?.circuits?.map(({ circuit }) => circuit)).toEqual(["1", "2"]);
    expect(first?.charge_kg).toBeUndefined();
    expect(second?.charge_kg).toBeCloseTo(3.6287, 4);
  });
});

describe("a file again", () => {
  const first = "Tag,Site,Serial,Volts\nRTU-1,Alder Hall,A1,208\nRTU-2,Alder Hall,A2,208\n";
  test("changes nothing", () => {
    const store = fresh();
    expect(imported(first, store).counts).toEqual({ added: 2, changed: 0, same: 0 });
    expect(imported(first, store).counts).toEqual({ added: 0, changed: 0, same: 2 });
  });

  test("with other columns in another order updates just those", () => {
    const store = fresh();
    imported(first, store);
    const again = imported("Serial,Site,Tag\nA9,Alder Hall,RTU-1\nA2,alder hall,rtu-2\n", store);
    expect(again.counts).toEqual({ added: 0, changed: 2, same: 0 });
    expect(again.changes[0]).toEqual({ line: 2, reason: "alder hall rtu-1: serial A1 becomes A9" });
    expect(readRegistry(store).equipment[0]).toMatchObject({ serial: "A9", supply_V: 208 });
    expect(readRegistry(store).equipment).toHaveLength(2);
  });

  test("as a dry run tells what would change and keeps nothing", () => {
    const store = fresh();
    imported(first, store);
    const would = imported("Tag,Site,Serial\nRTU-1,Alder Hall,B7\nRTU-3,Alder Hall,C\n", store, {
      dry: true,
    });
    expect(would.counts).toEqual({ added: 1, changed: 1, same: 0 });
    expect(readRegistry(store).equipment.map(({ serial }) => serial)).toEqual(["A1", "A2"]);
  });
});

describe("the tree", () => {
  test("a circle is named on each of its lines, an unknown parent with its row kept", () => {
    const result = imported(
      [
        "Tag,Site,Fed from",
        "OU-1,A,",
        "BB-1,A,OU-1",
        "BB-2,A,BB-3",
        "BB-3,A,BB-2",
        "IU-1,A,IU-1",
        "IU-2,A,BB-9",
        "BB-1,B,",
      ].join("\n"),
    );
    expect(reasons(result)).toEqual([
      "4 parent: a circle, BB-2 on BB-3 on BB-2; correct the parent on line 4 or 5",
      "5 parent: a circle, BB-2 on BB-3 on BB-2; correct the parent on line 4 or 5",
      "6 parent: IU-1 hangs on itself; name what feeds it, or leave the cell empty",
    ]);
    expect(result.notes).toEqual([
      {
        line: 7,
        reason:
          "IU-2 hangs on BB-9, and there is no BB-9 at A; the row is kept, add BB-9 or correct its name",
      },
    ]);
    expect(result.counts.added).toBe(4);
  });

  test("a circle that closes through what was taken in before is found", () => {
    const store = fresh();
    imported("Tag,Site,Fed from\nA,S,B\nB,S,\n", store);
    expect(reasons(imported("Tag,Site,Fed from\nB,S,A\n", store))).toHaveLength(1);
  });
});

test("units of a site are one tree, however their rows spell it", () => {
  const store = fresh();
  imported("Site,Town\nPelham Granary,Pelham\n", store);
  const rows = [
    "Tag,Site,Fed from",
    "OU-1,pelham granary,",
    "BB-1,PELHAM  GRANARY,OU-1",
    "IU-1,Elsewhere,",
  ];
  imported(rows.join("\n"), store);
  imported("Tag,Site\nIU-2,elsewhere\n", store);
  expect(readRegistry(store).equipment.map(({ site }) => site)).toEqual([
    ...["Pelham Granary", "Pelham Granary", "Elsewhere", "Elsewhere"],
  ]);
});

describe("broken files", () => {
  test("a quote that is not closed spoils its own line alone", () => {
    const result = imported('Tag,Site,Model\nA,S,"open\nB,S,m\nC,S,"x, y"\n');
    expect(reasons(result)).toEqual([
      "2 a quote is opened and not closed; close it or take it out",
    ]);
    expect(result.counts.added).toBe(2);
  });

  test.each([
    ["an old workbook", [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1], /old kind/],
    ["a broken workbook", [0x50, 0x4b, 3, 4, 9, 9], /no workbook/],
    ["a PDF", [0x25, 0x50, 0x44, 0x46], /PDF/],
    ["zeros", [1, 0, 0, 0, 2, 0, 0, 0, 3], /neither CSV nor XLSX/],
  ])("%s is said so", async (_what, bytes, says) => {
    expect(await sheetRows(Uint8Array.from(bytes))).toMatch(says);
  });
});

describe("a workbook", () => {
  const text = (value: string): { value: string; type: StringConstructor } => ({
    value,
    type: String,
  });
  const units: Row[] = [
    ["Tag", "Site", "Charge lb", "Serial", "Last addition"].map(text),
    [
      text("RTU-1"),
      text("Zoë's Hall"),
      { value: 8.2, type: Number },
      text("12E4"),
      { value: new Date("2025-03-14T00:00:00Z"), type: Date, format: "yyyy-mm-dd" },
    ],
    [text("RTU-2"), text("Zoë's Hall"), text("much"), text("007"), null],
  ];
  test("is taken in sheet by sheet, numbers, dates and text as they are", async () => {
    const folder = mkdtempSync(join(tmpdir(), "import-"));
    const path = join(folder, "office.xlsx");
    const db = join(folder, "a.db");
    const people: Row[] = [["Name", "Role"].map(text), ["Zoë", "tech"].map(text)];
    const chatter: Row[] = [[text("nothing of ours")]];
    const bytes = await writeXlsxFile([
      { sheet: "units", data: units },
      { sheet: "crew", data: people },
      { sheet: "plans", data: chatter },
    ]).toBuffer();
    writeFileSync(path, bytes);
    const { exit, out, complaints } = await run(["import", path, "--db", db]);
    expect(exit).toBe(1);
    expect(out).toEqual([
      "equipment: 1 added, 0 changed, 0 as before, 1 refused",
      'units, line 3: Charge lb: "much" is no number; write one number in digits, or leave the cell empty',
      "people: 1 added, 0 changed, 0 as before, 0 refused",
    ]);
    expect(complaints).toContain('Sheet "plans" holds no list');
    expect(complaints).toContain("Charge lb = charge kg");
    const opened = openStore(db, { readonly: true });
    if (!opened.ok) throw new Error(opened.problem);
    expect(readRegistry(opened.store).equipment).toEqual([
      expect.objectContaining({ serial: "12E4", last_addition: "2025-03-14", site: "Zoë's Hall" }),
    ]);
  });
});

describe("a messy registry of 5,000 rows", () => {
  const { bytes, bad, looked, good } = messyRegistry(5000);
  test("has every bad row named, every good row kept, none lost, in under 3 s", async () => {
    const began = performance.now();
    const sheets = await sheetRows(bytes);
    if (typeof sheets === "string") throw new Error(sheets);
    const store = fresh();
    const [sheet] = sheets;
    const result = importRows(store, sheet?.rows ?? [], { delimiter: sheet?.delimiter ?? "" });
    const seconds = (performance.now() - began) / 1000;
    if (typeof result === "string") throw new Error(result);
    expect(result.bad.map(({ line }) => line)).toEqual(bad);
    expect(result.notes.map(({ line }) => line)).toEqual(looked);
    expect(result.counts).toEqual({ added: good, changed: 0, same: 0 });
    expect(bad.length + good).toBe(5000);
    expect(readRegistry(store).equipment).toHaveLength(good);
    expect(result.bad.every(({ reason }) => /[;:] /.test(reason))).toBe(true);
    process.stderr.write(`messy registry: ${seconds.toFixed(2)} s, ${bad.length} bad rows\n`);
    if (!mutated) expect(seconds).toBeLessThan(3);
  });
});

test("a person has a name on each platform, in one file or in two", () => {
  const store = fresh();
  imported("Name,Role,Slack ID,Matrix ID\nBram,tech,U01,@bram:example.org\n", store);
  imported("Name,Role,Chat name\nIfe,tech,ife\n", store);
  imported("Name,Role,Slack\nIfe,tech,U07\n", store);
  imported("Name,Role,Matrix\nIfe,tech,@ife:example.org\n", store);
  expect(readRegistry(store).people.map(({ name, handles }) => [name, handles])).toEqual([
    ["Bram", ["U01", "@bram:example.org"]],
    ["Ife", ["ife", "U07", "@ife:example.org"]],
  ]);
});
