import { parse } from "csv-parse/sync";
import fc from "fast-check";
import readXlsxFile from "read-excel-file/node";
import { describe, expect, it } from "vitest";
import type { Sheet } from "../src/model.ts";
import { guardedText } from "../src/show/exports/cell-guard.ts";
import { csvBytes, csvText, plainNumber } from "../src/show/exports/csv.ts";
import { fixedZipTimes } from "../src/show/exports/fixed-zip-times.ts";
import { xlsxBytes } from "../src/show/exports/xlsx.ts";

const sheet = (rows: Sheet["rows"]): Sheet => ({
  name: "readings",
  columns: [
    { name: "part", kind: "text", about: "as said" },
    { name: "value", kind: "number", about: "a number" },
    { name: "at", kind: "time", about: "company time" },
  ],
  rows,
});

describe("csv", () => {
  it("starts with the byte order mark, ends lines with CRLF and quotes what needs quoting", () => {
    const bytes = csvBytes(sheet([['say "no", twice\nplease', 3.5, "2026-05-12 07:40:05"]]));
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).toBe(
      'part,value,at\r\n"say ""no"", twice\nplease",3.5,2026-05-12 07:40:05\r\n',
    );
  });

  it.each([
    "=1+1",
    "+1+1",
    "-1+1",
    "@SUM(A1)",
    "\t=1+1",
    "\r=1+1",
    "\n=1+1",
    "  =1+1",
    "\u00a0=1+1",
    "\u200b=1+1",
    "\ufeff=1+1",
    "\u0000=1+1",
    "\uff1d1+1",
    "\uff201",
    "\tplain after a tab",
    '=HYPERLINK("http://example.invalid","x")',
  ])("makes %j harmless", (text) => {
    expect(guardedText(text)).toBe(`'${text}`);
  });

  it.each([
    "12E4",
    "007",
    "1-2",
    "12-1902",
    "1/4",
    "0.30",
    "5:30",
    "MAR1",
    "007-1",
    "2-Sep",
    "1e5",
    "1.50",
  ])("keeps %s as the text that it is", (text) => {
    expect(guardedText(text)).toBe(`'${text}`);
  });

  it.each(["44-1902", "88-2260", "60-12E4", "RTU-1", "84 megohm", "17.3", "H15-2208", "march"])(
    "leaves %s alone",
    (text) => {
      expect(guardedText(text)).toBe(text);
    },
  );

  it("leaves numbers numbers, below zero too", () => {
    expect(csvText(sheet([["x", -6, null]]))).toBe("part,value,at\r\nx,-6,\r\n");
    expect(plainNumber(3.15e-7)).toBe("0.000000315");
    expect(plainNumber(84_000_000)).toBe("84000000");
    expect(plainNumber(696370.00000001)).toBe("696370");
    expect(plainNumber(Number.NaN)).toBe("");
  });

  it("gives any text back through a strict parser, but for the guard", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.double({ noNaN: true }), (text, value) => {
        const written = csvText(sheet([[text, value, null]]));
        const [, row] = parse(written, { relax_column_count: false });
        expect(row?.[0]).toBe(guardedText(text));
      }),
    );
  });
});

describe("workbook", () => {
  const rows: Sheet["rows"] = [
    ["12E4", -6, "2026-05-12 07:40:05"],
    ["=1+1", 84_000_000, null],
    ["Zoë Ångström, \ud800 torn", null, "2026-05-13 00:00:00"],
  ];

  it("keeps text, numbers and dates as what they are", async () => {
    const book = await readXlsxFile(Buffer.from(await xlsxBytes([sheet(rows)])));
    const data = book[0]?.data ?? [];
    expect(data[1]?.slice(0, 2)).toEqual(["12E4", -6]);
    expect(data[1]?.[2]).toEqual(new Date("2026-05-12T07:40:05Z"));
    expect(data[2]?.slice(0, 2)).toEqual(["=1+1", 84_000_000]);
    expect(data[3]?.[0]).toBe("Zoë Ångström,  torn");
  });

  it("explains every column on its last sheet", async () => {
    const book = await readXlsxFile(Buffer.from(await xlsxBytes([sheet(rows)])));
    const last = book[book.length - 1];
    expect(last?.sheet).toBe("columns");
    expect(last?.data[1]).toEqual(["readings", "part", "as said"]);
  });

  it("is the same bytes whenever it is written", async () => {
    const first = await xlsxBytes([sheet(rows)]);
    const dated = first.slice();
    new DataView(dated.buffer).setUint32(10, 0x5a21_7b2f, true);
    expect(dated).not.toEqual(first);
    expect(fixedZipTimes(dated)).toEqual(first);
    expect(await xlsxBytes([sheet(rows)])).toEqual(first);
  });
});
