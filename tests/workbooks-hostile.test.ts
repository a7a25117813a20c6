import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import writeXlsxFile from "write-excel-file/node";
import { rowsOf } from "../adapters/command-line/csv-rows.ts";
import { sheetRows } from "../adapters/command-line/sheet-rows.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { chanceFrom, mutateText } from "./support/mutate.ts";
import { unzipped, type ZipPart, zipped } from "./support/zip.ts";

/** Workbooks that are made to hurt whoever opens them. READBACK_FUZZ_SECONDS and READBACK_SEED as in the fuzz tests. */
const seconds = Number(process.env.READBACK_FUZZ_SECONDS ?? 8) / 8;
const seed = Number(process.env.READBACK_SEED ?? Date.now() % 1_000_000);

const table = rowsOf(readFileSync("fixtures/days/day-a/sites.csv", "utf8"));
if (typeof table === "string") throw new Error(table);
const cells = table.map((row) => row.cells.map((value) => ({ value, type: String })));
const book = await writeXlsxFile(cells, { sheet: "Sites" }).toBuffer();
const parts = unzipped(book);
const isSheet = ({ name }: ZipPart): boolean => /worksheets\/sheet1\.xml$/.test(name);
const textOf = ({ bytes }: ZipPart): string => Buffer.from(bytes).toString();

/** The workbook with its sheet's XML changed; `told`: the size that its directory tells of the sheet. */
function changed(change: (xml: string) => string, told?: number): Buffer {
  return zipped(
    parts.map((part) =>
      isSheet(part)
        ? {
            ...part,
            bytes: Buffer.from(change(textOf(part))),
            ...(told === undefined ? {} : { told }),
          }
        : part,
    ),
  );
}

const rowsAfter =
  (rows: string) =>
  (xml: string): string =>
    xml.replace("</sheetData>", `${rows}</sheetData>`);
const blanks = (size: number) => rowsAfter(" ".repeat(size));
const one = (row: string, at: string): string =>
  `<row r="${row}"><c r="${at}" t="n"><v>1</v></c></row>`;
const megabyte = 2 ** 20;

test("the workbook as it is is read, taken apart and put together too", async () => {
  const plain = await sheetRows(book);
  expect(plain).toMatchObject([{ name: "Sites" }]);
  expect(await sheetRows(changed((xml) => xml))).toEqual(plain);
});

describe("is refused in a sentence, without the memory that it asks for", () => {
  const tooLarge = /larger than any list/;
  const many = Array.from({ length: 20_000 }, (_, at) => one(`${at + 9000}`, `A${at + 9000}`));
  const attempts: readonly (readonly [string, () => Buffer, RegExp])[] = [
    [
      "a sheet of 250 MB whose directory tells 1 kB",
      () => changed(blanks(250 * megabyte), 1000),
      tooLarge,
    ],
    [
      "one cell far to the right of 20,000 rows",
      () => changed(rowsAfter(`${one("8999", "XFD8999")}${many.join("")}`)),
      tooLarge,
    ],
    ["one row far below", () => changed(rowsAfter(one("99999999", "A99999999"))), tooLarge],
    ["a column with a long name", () => changed(rowsAfter(one("9000", "ZZZZZZZZ9000"))), tooLarge],
    ["a place spelled in entities", () => changed(rowsAfter(one("9000", "&#90;ZZ9000"))), tooLarge],
    [
      "a place behind a mark in another value",
      () => changed(rowsAfter(`<row><c s=">" r='ZZZZZ1'><v>1</v></c></row>`)),
      tooLarge,
    ],
    ["a row that is no number", () => changed(rowsAfter(one("-1e9", "A1"))), tooLarge],
    ["an archive cut in its middle", () => book.subarray(0, book.length >> 1), /no workbook/],
  ];
  test.each(attempts)("%s", async (_title, made, says) => {
    const bytes = made();
    const before = process.memoryUsage().rss;
    expect(await sheetRows(bytes)).toMatch(says);
    expect(process.memoryUsage().rss - before).toBeLessThan(700 * megabyte);
  });

  test("a part that its directory does not tell of is never opened", async () => {
    const [first, ...rest] = parts;
    if (first === undefined) throw new Error("no parts");
    const hidden = zipped([
      { name: "xl/worksheets/sheet9.xml", bytes: Buffer.alloc(250 * megabyte) },
    ]);
    // before the archive that is told of, whose places all move
    const body = hidden.subarray(0, hidden.readUInt32LE(hidden.length - 22 + 16));
    const shifted = moved(zipped([first, ...rest]), body.length);
    const before = process.memoryUsage().rss;
    expect(await sheetRows(Buffer.concat([body, shifted]))).toEqual(await sheetRows(book));
    expect(process.memoryUsage().rss - before).toBeLessThan(150 * megabyte);
  });
});

/** An archive whose places are told as they stand behind so many other bytes. */
function moved(archive: Buffer, by: number): Buffer {
  const copy = Buffer.from(archive);
  const end = copy.length - 22;
  let at = copy.readUInt32LE(end + 16);
  for (let left = copy.readUInt16LE(end + 10); left > 0; left--) {
    copy.writeUInt32LE(copy.readUInt32LE(at + 42) + by, at + 42);
    at += 46 + [28, 30, 32].reduce((sum, field) => sum + copy.readUInt16LE(at + field), 0);
  }
  copy.writeUInt32LE(copy.readUInt32LE(end + 16) + by, end + 16);
  return copy;
}

test("XML that is spoiled inside a whole archive is read or refused, never thrown or waited for", {
  timeout: seconds * 1000 + 60_000,
}, async () => {
  const end = performance.now() + seconds * 1000;
  const seen = { read: 0, refused: 0 };
  for (let turn = 0; performance.now() < end; turn++) {
    const chance = chanceFrom(seed + turn);
    const spoiled = chance.oneOf(parts);
    const bytes = zipped(
      parts.map((part) =>
        part === spoiled ? { ...part, bytes: Buffer.from(mutateText(chance, textOf(part))) } : part,
      ),
    );
    try {
      const found = await sheetRows(bytes);
      if (typeof found === "string") {
        seen.refused += 1;
        continue;
      }
      seen.read += 1;
      const opened = openStore(":memory:");
      if (!opened.ok) throw new Error(opened.problem);
      for (const { rows, delimiter } of found) importRows(opened.store, rows, { delimiter });
      closeStore(opened.store);
    } catch (error) {
      throw new Error(`seed ${seed + turn}`, { cause: error });
    }
  }
  process.stdout.write(`spoiled XML: ${seen.read} read, ${seen.refused} refused, seed ${seed}\n`);
  expect(seen.read + seen.refused).toBeGreaterThan(0);
});
