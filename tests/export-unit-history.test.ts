import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { run } from "./support/run.ts";
import { type Row, sheets, visit } from "./support/unit-history.ts";

const small = { refrigerant: "R-410A", "charge lb": "12" };

test("gas out of units of 5 to 50 lb adds up by month as its weights do, each row with its message", async () => {
  const { rows } = await sheets(small, [
    ...visit("2026-05-12", "recovered 7 lb 6 oz", "recovered 2 lb", "no, 2.5 lb", "done, leaving"),
    ...visit("2026-05-28", "recovered 3 lb, unit is to be scrapped", "done, leaving"),
    ...visit("2026-06-02", "recovered 1 lb", "done, leaving"),
  ]);
  const standing = rows("refrigerant").filter(({ stands }) => stands === "yes");
  // a month alone is guarded: a spreadsheet would make a day of it
  const recovered = rows("recovered").map(
    (row): Row => ({ ...row, month: row.month?.slice(1) ?? "" }),
  );
  expect(recovered.map(({ message, kg }) => [message, kg])).toEqual(
    standing.map(({ message, kg }) => [message, kg]),
  );
  const sum = (month: string): number =>
    recovered.filter((row) => row.month === month).reduce((all, row) => all + Number(row.kg), 0);
  const last = (month: string) => recovered.filter((row) => row.month === month).at(-1);
  // 7 lb 6 oz, 2.5 lb and 3 lb are 12.875 lb
  expect(sum("2026-05")).toBeCloseTo(12.875 * 0.45359237, 2);
  expect(Number(last("2026-05")?.["month kg so far"])).toBeCloseTo(sum("2026-05"), 2);
  expect(Number(last("2026-05")?.["scrapped kg so far"])).toBeCloseTo(3 * 0.45359237, 2);
  expect(last("2026-05")?.scrapped).toBe("yes");
  expect(Number(last("2026-06")?.["month kg so far"])).toBeCloseTo(0.45359237, 2);
});

test.each(["5", "50"])("a unit of %s lb is not among them: 40 CFR 82.156", async (charge) => {
  const { rows } = await sheets(
    { ...small, "charge lb": charge },
    visit("2026-05-12", "recovered 4 lb", "done, leaving"),
  );
  expect(rows("recovered")).toEqual([]);
});

test("a second call within thirty days is a return, by cause, and no person stands in it", async () => {
  const { rows } = await sheets(small, [
    ...visit("2026-05-01", "contactor pitted", "new contactor in", "done, leaving"),
    ...visit("2026-05-20", "compressor hums and trips", "Odo says call Ife", "done, leaving"),
    ...visit("2026-07-10", "coil matted", "done, leaving"),
  ]);
  const returns = rows("returns");
  expect(returns.map((row) => [row.job, row["return of job"], row["days between"]])).toEqual([
    ["2", "1", "19"],
  ]);
  expect(returns[0]?.["done then"]).toContain("contactor");
  expect(JSON.stringify(returns)).not.toMatch(/odo|maren|ife/i);
  const persons = ["by", "person", "people", "said by", "ask", "asked by"];
  expect(Object.keys(returns[0] ?? {}).filter((name) => persons.includes(name))).toEqual([]);
});

test("a case to share names no person, place, serial or invoice that was said", async () => {
  const { db } = await sheets({ ...small, serial: "UNIT-99", notes: "key at Olsen" }, [
    ...visit(
      "2026-05-12",
      "rooms Map Room and Stacks warm",
      "hums and trips, coil matted",
      "locked out at the Olsen panel",
      "old compressor serial 71-100, new serial 88-2260",
      "new compressor in, part 60-12E4",
      "invoice no. 88123 for the compressor, Mr Olsen pays",
      "recovered 7 lb 6 oz",
      "done, leaving",
    ),
  ]);
  const out = mkdtempSync(join(tmpdir(), "anonymous-"));
  expect((await run(["export", "--job", "1", "--anonymous", "--db", db, "--out", out])).exit).toBe(
    0,
  );
  const names = readdirSync(out).filter((file) => /csv$|json$/.test(file));
  expect(names).toContain("anonymous-1.json");
  for (const name of names) {
    const text = readFileSync(join(out, name), "utf8");
    expect([
      name,
      /71-100|88-2260|88123|olsen|cinder|odo|maren|UNIT-99|map room|stacks|hums and|matted/i.exec(
        text,
      )?.[0],
    ]).toEqual([name, undefined]);
  }
  // a lock without its place leaves no gap in the sentence
  expect(readFileSync(join(out, "anonymous-1-jobs.csv"), "utf8")).not.toMatch(/, ;|, "/);
  const weights = readFileSync(join(out, "anonymous-1-refrigerant.csv"), "utf8");
  expect(weights).toContain("7 lb 6 oz");
});
