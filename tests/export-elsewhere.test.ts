import { expect, test } from "vitest";
import { z } from "zod";
import type { Cell, Sheet } from "../src/model.ts";
import { xlsxBytes } from "../src/show/exports/xlsx.ts";

const built: unknown = await import(
  `${process.cwd()}/dist/adapters/command-line/workbook-elsewhere.js`
);
type Maker = (sheets: readonly Sheet[]) => Promise<Uint8Array>;
const { workbookElsewhere } = z
  .object({ workbookElsewhere: z.custom<Maker>((value) => typeof value === "function") })
  .parse(built);

const columns: Sheet["columns"] = [
  { name: "part", kind: "text", about: "" },
  { name: "value", kind: "number", about: "" },
  { name: "at", kind: "time", about: "" },
];
const row = (n: number): readonly Cell[] => [`12E${n % 40}`, n / 8, "2026-05-12 07:40:05"];
const sheet = (name: string, rows: number): Sheet => ({
  ...{ name, columns },
  rows: Array.from({ length: rows }, (_, n) => row(n)),
});

test.each([3, 5000])("a workbook of %s rows is the same wherever it is made", async (rows) => {
  const sheets = [sheet("parts", rows), sheet("none", 0)];
  const [here, elsewhere] = [await xlsxBytes(sheets), await workbookElsewhere(sheets)];
  expect(Buffer.compare(here, elsewhere)).toBe(0);
});

test("what cannot be made there is told here", async () => {
  const broken = z.custom<Sheet>().parse({ ...sheet("parts", 5000), columns: null });
  await expect(workbookElsewhere([broken])).rejects.toThrow();
});
