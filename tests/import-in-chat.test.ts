import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import writeXlsxFile, { type Row } from "write-excel-file/node";
import { attachedTo, officeWork } from "../adapters/serve/office.ts";
import { openBot, receive, work } from "../src/bot.ts";
import type { Role } from "../src/model.ts";
import { findOut } from "../src/record/outbox.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore } from "../src/record/store.ts";
import { getWords, sentKey } from "../src/record/words-table.ts";

const bookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const cells = (rows: readonly (readonly (string | number)[])[]): Row[] =>
  rows.map((row) =>
    row.map((value) =>
      typeof value === "number" ? { value, type: Number } : { value, type: String },
    ),
  );

async function book(
  sheets: Readonly<Record<string, readonly (readonly (string | number)[])[]>>,
): Promise<Uint8Array> {
  return writeXlsxFile(
    Object.entries(sheets).map(([sheet, rows]) => ({ sheet, data: cells(rows) })),
  ).toBuffer();
}

const units = [
  ["Tag", "Site", "Volts", "Model"],
  ["OU-3", "Gull Wharf", 460, "12E4"],
  ["RTU-2", "Gull Wharf", "many", "007-1"],
] as const;

function house() {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  const bot = openBot(opened.store, () => `salt ${salts++}`);
  let count = 0;
  const send = async (text: string, role: Role, sheets: Readonly<Record<string, Uint8Array>>) => {
    const id = `m${++count}`;
    const files = Object.entries(sheets).map(([name, bytes]) => ({
      name,
      type: name.endsWith(".xlsx") ? bookType : "text/csv",
      size: bytes.length,
      sha256: createHash("sha256").update(bytes).digest("hex"),
    }));
    const at = `2026-05-12T14:${String(count).padStart(2, "0")}:00Z`;
    receive(bot, {
      message: { platform: "replay", id, at, channel: "south", person: role, role, text, files },
      bytes: Object.values(sheets),
    });
    officeWork(bot);
    work(bot);
    const row = findOut(bot.store, `reply:replay:${id}:0`);
    return row === undefined ? undefined : attachedTo(bot, row);
  };
  return { bot, send };
}

test("a workbook sent with the word import is taken in sheet by sheet, each refused row named", async () => {
  const { bot, send } = house();
  const file = await book({
    Units: units,
    Limits: [
      ["Threshold", "Max", "Unit"],
      ["Vacuum hold", 300, "micron"],
    ],
    Scratch: [["call Ife", "tomorrow"]],
  });
  const said = await send("import please", "office", { "lists.xlsx": file });
  expect(said?.text.split("\n")).toEqual([
    "equipment: 1 added, 0 changed, 0 as before, 1 refused.",
    "Columns: Tag = tag, Site = site, Volts = supply V, Model = model.",
    expect.stringMatching(/^Units, line 3: Volts: "many" is no number;/),
    "limits: 1 added, 0 changed, 0 as before, 0 refused.",
    "Columns: Threshold = limit, Max = most, Unit = unit.",
    'Left alone, no list that is known: sheet "Scratch".',
  ]);
  // what the next message is read and judged by
  expect(bot.memory.registry.equipment).toMatchObject([
    { tag: "OU-3", model: "12E4", supply_V: 460 },
  ]);
  expect(bot.memory.registry.limits).toHaveLength(1);
  const again = await send("import", "office", { "lists.xlsx": file });
  expect(again?.text).toMatch(/^equipment: 0 added, 0 changed, 1 as before, 1 refused\./);
});

test("where no words go with a file its name may say it", async () => {
  const { bot, send } = house();
  const file = await book({ Units: units });
  expect((await send("", "office", { "import units, dry run.xlsx": file }))?.text).toMatch(
    /dry run/,
  );
  expect((await send("", "office", { "Import_units.xlsx": file }))?.text).toMatch(/1 added/);
  await send("", "office", {
    "imported.xlsx": await book({ Units: [units[0], ["X-1", "", 1, ""]] }),
  });
  expect(readRegistry(bot.store).equipment).toHaveLength(1);
});

test("a dry run tells what would change and keeps nothing", async () => {
  const { bot, send } = house();
  const said = await send("import, dry run", "office", {
    "units.xlsx": await book({ Units: units }),
  });
  expect(said?.text).toMatch(/1 added.*Nothing was kept: a dry run\./);
  expect(said?.text).toMatch(/\nLine 2: adds gull wharf ou-3$/m);
  expect(readRegistry(bot.store).equipment).toEqual([]);
});

test("nobody but the office may", async () => {
  const { bot, send } = house();
  const file = await book({ Units: units });
  for (const role of ["tech", "dispatcher"] as const) {
    const said = await send("import", role, { "lists.xlsx": file });
    expect(said?.text).toBe("Exports and imports are the office's; ask there.");
  }
  expect(readRegistry(bot.store).equipment).toEqual([]);
});

test("a workbook without the word is a file, and a picture with it is talk", async () => {
  const { bot, send } = house();
  await send("the unit list", "office", { "lists.xlsx": await book({ Units: units }) });
  await send("import", "office", { "roof.jpg": new Uint8Array([255, 216, 255]) });
  expect(readRegistry(bot.store).equipment).toEqual([]);
});

test("what is no list gets a sentence", async () => {
  const { send } = house();
  const broken = (await book({ Units: units })).slice(0, 900);
  expect((await send("import", "office", { "lists.xlsx": broken }))?.text).toBe(
    "lists.xlsx: It is no workbook that can be read; save it again as XLSX or CSV.",
  );
  const old = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0, 0]);
  expect((await send("import", "office", { "lists.xls": old }))?.text).toMatch(/of the old kind/);
});

test("many refused rows are named in a file beside the answer, none of them left out", async () => {
  const { bot, send } = house();
  const rows = Array.from({ length: 60 }, (_, n) => `U-${n},Gull Wharf,volts ${n}`);
  const csv = new TextEncoder().encode(`Tag,Site,Volts\n${rows.join("\n")}\n`);
  const said = await send("import", "office", { "units.csv": csv });
  expect(said?.text.split("\n")).toHaveLength(2 + 20 + 1);
  const [file] = said?.files ?? [];
  const bytes = getWords(bot.store, sentKey(file?.sha256 ?? ""))?.bytes;
  const lines = new TextDecoder().decode(bytes).trim().split("\r\n");
  expect(lines).toHaveLength(61);
  for (const [n, line] of lines.slice(1).entries()) expect(line).toContain(`volts ${n}`);
});
