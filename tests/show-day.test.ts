import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import type { FileOut, Job, Sheet } from "../src/model.ts";
import { csvText } from "../src/show/exports/csv.ts";
import { csvFiles, daySheets, workbookFile } from "../src/show/exports/day.ts";
import { sheetMakers } from "../src/show/exports/list.ts";
import type { DayRecord } from "../src/show/exports/sheet-source.ts";
import { xlsxBytes } from "../src/show/exports/xlsx.ts";
import { finding, job, reading, statement } from "./support/reply-input.ts";

const at = (time: string) => `2026-05-12T${time}:00-05:00`;
const said = { message: "m5", received: at("14:31"), taken: at("14:30") };
const first = reading("9.1 megohm", {
  ...said,
  quantity: "insulation_resistance",
  points: ["lead 2", "ground"],
  value: 9.1e6,
  unit: "Ohm",
  subject: "compressor 1",
});
const second = reading("91 megohm", {
  ...said,
  message: "m6",
  quantity: "insulation_resistance",
  points: ["lead 2", "ground"],
  value: 91e6,
  unit: "Ohm",
  subject: "compressor 1",
});
const weight = reading("7 lb", {
  ...said,
  quantity: "mass",
  action: "recovered",
  value: 3.1751,
  unit: "kg",
});
const coil = reading("-6 F", {
  ...said,
  quantity: "temperature",
  at: "box",
  value: -21.11,
  unit: "Cel",
});
const tomorrow = reading("12 A", {
  quantity: "current",
  taken: "2026-05-13T00:10:00-05:00",
  received: at("14:31"),
});

const worked: Job = {
  ...job,
  complaint: '=cold in the morning, "hot" by noon',
  readings: [{ ...first, replaced_by: second.id }, second, weight, coil, tomorrow],
  statements: [
    {
      message: "m5",
      at: at("14:31"),
      who: "bram",
      statement: statement({
        kind: "nameplate",
        field: "refrigerant",
        value: "R-22",
        said: "R-22",
      }),
    },
  ],
  parts: [
    {
      part: "contactor",
      number: "12E4",
      state: "needed",
      who: "bram",
      at: at("14:40"),
      message: "m7",
    },
  ],
  visits: [
    { person: "bram", kind: "travel", from: at("07:15"), to: at("07:40") },
    { person: "bram", kind: "site", from: at("07:40"), to: at("08:20") },
    { person: "tamsin", kind: "site", from: at("14:00") },
  ],
  unread: [{ message: "m8", text: "14" }],
};

const record: DayRecord = {
  jobs: [
    {
      job: {
        ...job,
        job: 9,
        opened: "2026-05-10T07:00:00-05:00",
        status_at: "2026-05-10T07:00:00-05:00",
      },
      equipment: {},
      judgement: { findings: [], diagnosis: [], next: [], cautions: [] },
    },
    {
      job: worked,
      equipment: { serial: "007", charge_kg: 3.6, refrigerant: "R-410A" },
      judgement: {
        findings: [finding({ check: "insulation", level: "watch" })],
        diagnosis: [],
        next: [],
        cautions: [],
      },
    },
  ],
  day: "2026-05-12",
  zone: "America/Chicago",
  names: { bram: "Bram" },
};

async function sheetFiles(): Promise<readonly FileOut[]> {
  const sheets = daySheets(record);
  return [...csvFiles(record, sheets), workbookFile(record, await xlsxBytes(sheets))];
}

/** A sheet's rows as objects, read back from its CSV. */
function rows(name: string): readonly Record<string, string>[] {
  const sheet = daySheets(record).find((s): s is Sheet => s.name === name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  const table: string[][] = parse(csvText(sheet));
  const [head = [], ...body] = table;
  return body.map((row) => Object.fromEntries(head.map((key, index) => [key, row[index] ?? ""])));
}

/** Sheets that are written even where they hold only their headings. */
const standing = sheetMakers.filter((maker) => maker.spare !== true).map(({ name }) => name);

describe("a day's sheets", () => {
  it("hold only the jobs that were touched on the day", () => {
    expect(rows("jobs").map((row) => row.job)).toEqual(["4"]);
  });

  it("keep what a spreadsheet would run or change", () => {
    expect(rows("jobs")[0]).toMatchObject({
      complaint: '\'=cold in the morning, "hot" by noon',
      serial: "'007",
      "site hours": "0.67",
      "travel hours": "0.42",
      "first on site": "2026-05-12 07:40:00",
    });
    expect(rows("parts")[0]).toMatchObject({ number: "'12E4", state: "needed" });
  });

  it("have a row for each reading of the day, replaced ones marked, with its verdict", () => {
    const all = rows("readings");
    expect(all.map((row) => [row.figure, row["SI value"], row.stands, row.verdict])).toEqual([
      ["9.1 megohm", "9100000", "replaced", ""],
      ["91 megohm", "91000000", "yes", "WATCH"],
      ["7 lb", "3.1751", "yes", ""],
      ["'-6 F", "-21.11", "yes", ""],
    ]);
    expect(all[0]?.["replaced by"]).toBe(second.id);
  });

  it("never guess the end of an open visit", () => {
    expect(rows("time").map((row) => [row.person, row.kind, row.hours, row["open end"]])).toEqual([
      ["Bram", "travel", "0.42", ""],
      ["Bram", "site", "0.67", ""],
      ["Tamsin", "site", "", "yes"],
    ]);
  });

  it("take the gas from the plate that was read, before the office's list", () => {
    expect(rows("refrigerant")[0]).toMatchObject({ gas: "R-22", kg: "3.175", action: "recovered" });
  });

  it("list what is open, by message", () => {
    expect(rows("open").map((row) => [row.kind, row.what, row.message])).toEqual([
      ["unread number", "14", "m8"],
      ["part", "12E4 contactor", "m7"],
    ]);
  });

  it("become one CSV a sheet and one workbook, the same bytes each time", async () => {
    const files = await sheetFiles();
    expect(files.map((file) => file.name)).toEqual([
      ...daySheets(record)
        .filter(({ name, rows }) => rows.length > 0 || standing.includes(name))
        .map(({ name }) => `2026-05-12-${name.replaceAll(" ", "-")}.csv`),
      "2026-05-12.xlsx",
    ]);
    expect(await sheetFiles()).toEqual(files);
  });

  it.each(["jobs", "readings", "time", "parts", "refrigerant", "open"])(
    "read as the golden file: %s",
    async (name) => {
      const sheet = daySheets(record).find((one) => one.name === name);
      const text = sheet === undefined ? "" : csvText(sheet).replaceAll("\r\n", "\n");
      await expect(text).toMatchFileSnapshot(`../fixtures/exports/${name}.csv`);
    },
  );
});
