import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { run } from "./support/run.ts";

/** What the office reads in the day's sheets, from what was said. */
const folder = mkdtempSync(join(tmpdir(), "office-rules-"));
let stores = 0;

type Row = Readonly<Record<string, string>>;

async function day(said: readonly string[], settings = "") {
  const place = join(folder, String(++stores));
  mkdirSync(place);
  const db = join(place, "store.db");
  if (settings !== "") {
    writeFileSync(join(place, "settings.csv"), settings);
    const taken = await run(["import", join(place, "settings.csv"), "--db", db]);
    expect(taken.exit, taken.out.join("\n")).toBe(0);
  }
  const lines = ["New job: Gull Wharf OU-3, not cooling. Odo", ...said].map((text, n) =>
    JSON.stringify({
      ...{ id: `m${n}`, channel: "south", text },
      at: `2026-05-12T0${8 + Math.floor(n / 6)}:0${n % 6}:00-05:00`,
      ...(n === 0
        ? { person: "maren", role: "dispatcher" }
        : { person: "odo", role: "tech", thread: "m0" }),
    }),
  );
  writeFileSync(join(place, "chat.jsonl"), lines.join("\n"));
  expect((await run(["replay", join(place, "chat.jsonl"), "--db", db])).exit).toBe(0);
  const out = join(place, "out");
  expect((await run(["export", "--day", "2026-05-12", "--db", db, "--out", out])).exit).toBe(0);
  return (name: string): readonly Row[] =>
    parse(readFileSync(join(out, `2026-05-12-${name}.csv`), "utf8"), { bom: true, columns: true });
}

const found = async (...said: readonly string[]): Promise<readonly unknown[]> =>
  (await day(said))("open")
    .filter(({ kind }) => kind === "found, not fixed")
    .map(({ what, message }) => [what, message]);

test("what was found worn and not put right is listed once, with its message", async () => {
  expect(
    await found("contactor pitted, not changed", "contactor is still pitted", "belt worn"),
  ).toEqual([
    ["contactor pitted", "m1"],
    ["belt worn", "m3"],
  ]);
  expect(await found("coil matted, left as is")).toEqual([["coil matted", "m1"]]);
});

test.each([
  ["fitted", ["contactor pitted, not changed", "new contactor in"]],
  ["cleaned", ["coil matted", "cleaned the coil"]],
  ["mended", ["found a leak at the flare", "repaired the leak"]],
  ["tightened", ["lug loose", "tightened the lug"]],
  ["declined", ["contactor pitted, customer declined a new one"]],
  ["taken back", ["contactor pitted", "undo"]],
])("not where it was %s since", async (_, said) => {
  expect(await found(...said)).toEqual([]);
});

test("a part of another kind, or work announced, settles nothing", async () => {
  expect(await found("contactor pitted", "new belt on")).toEqual([["contactor pitted", "m1"]]);
  expect(await found("coil matted", "will clean the coil tomorrow")).toEqual([
    ["coil matted", "m1"],
  ]);
});

test("hours by the company's rule stand beside the raw ones", async () => {
  const said = [
    "here",
    "suction 118",
    "liquid 338",
    "return air 76",
    "supply air 55",
    "done, leaving",
  ];
  const raw = (await day(said))("hours")[0];
  expect([raw?.["site hours"], raw?.["site hours by rule"]]).toEqual(["0.98", ""]);
  const ruled = await day(said, "setting,value\nhours rounding,15\n");
  expect(ruled("hours")[0]).toMatchObject({ "site hours": "0.98", "site hours by rule": "1" });
  expect(ruled("time")[0]?.rule).toBe("up to 15 min");
});

test("a step of hours that is none is refused with its reason", async () => {
  const file = join(folder, "bad.csv");
  writeFileSync(file, "setting,value\nrounding_min,0\n");
  const { exit, out } = await run(["import", file, "--db", join(folder, "bad.db")]);
  expect(exit).toBe(1);
  expect(out.join("\n")).toContain('line 2: "0" is no step of 1 to 60 minutes');
});

test("what was decided of a part stands beside it; what is declined is neither ordered nor open", async () => {
  const sheet = await day([
    "need a contactor 12E4 and a fan motor",
    "need a drive, part 60-12E4",
    "customer approved the contactor",
    "fan motor declined",
  ]);
  expect(sheet("parts").map(({ part, decision, message }) => [part, decision, message])).toEqual([
    ["contactor", "approved", "m3"],
    ["fan motor", "declined", "m4"],
    ["drive", "", "m2"],
  ]);
  expect(sheet("to-order").map(({ part, decision }) => [part, decision])).toEqual([
    ["contactor", "approved"],
    ["drive", ""],
  ]);
  const open = sheet("open").filter(({ kind }) => kind === "part");
  expect(open.map(({ what }) => what)).toEqual(["12E4 contactor", "60-12E4 drive"]);
  expect(sheet("jobs")[0]?.["parts open"]).toBe("12E4 contactor; 60-12E4 drive");
});

test("a warranty row holds what a claim asks for, and names what is not there", async () => {
  const sheet = await day([
    "T1-T2 0.74 T2-T3 0.73 T1-T3 0.74 ohm",
    "comp 1 all three leads to ground 0.2 megohm at 500 V",
    "old compressor serial 71-100, new serial 88-2260",
    "new compressor in, part 60-12E4",
    "running amps 13.8 14.0 13.7",
    "invoice no. 88123 for the compressor",
  ]);
  const [row, ...more] = sheet("warranty");
  expect(more).toEqual([]);
  expect(row).toMatchObject({
    ...{ part: "compressor", number: "60-12E4", "old serial": "71-100", "new serial": "88-2260" },
    ...{ invoice: "88123", photos: "0" },
  });
  expect(row?.cause).toMatch(/compressor grounded/);
  expect(row?.["readings before"]).toContain("0.2");
  expect(row?.["readings after"]).toContain("13.8");
  const lacking = row?.lacking?.split("; ") ?? [];
  for (const gap of ["unit model", "unit serial", "date installed", "a photo", "hours"]) {
    expect(lacking).toContain(gap);
  }
  for (const there of ["part number", "cause", "readings before", "invoice number of the part"]) {
    expect(lacking).not.toContain(there);
  }
});

test("of two parts a serial and an invoice go to the one that is named with them, never to both", async () => {
  const sheet = await day([
    "new compressor in",
    "new fan motor in",
    "fan motor new serial 577-AB12",
    "new compressor serial 88-2260",
    "serial 99-1",
    "compressor invoice 4471",
  ]);
  expect(sheet("warranty").map((row) => [row.part, row["new serial"], row.invoice])).toEqual([
    ["compressor", "88-2260", "4471"],
    ["fan motor", "577-AB12", ""],
  ]);
  expect(sheet("warranty")[1]?.lacking).toContain("invoice number of the part");
});

test("a claim's readings are those taken on the part, however much was read after them", async () => {
  const gas = "suction 124 psi 54 F, head 338 psi, liquid 93 F, outdoor air 88 F";
  const sheet = await day([
    "comp 1 all three leads to ground 0.2 megohm at 500 V",
    ...[gas, gas, gas],
    "return air 76 F supply air 57 F",
    "new compressor in, part 60-12E4",
  ]);
  expect(sheet("warranty")[0]?.["readings before"]).toContain("0.2 megohm");
});

test("a weight stands beside the cylinder that was said with it, and beside no other", async () => {
  const sheet = await day([
    "recovered 7 lb 6 oz into cylinder 22",
    "charged 3 lb",
    "cyl C-9",
    "done, leaving",
    "charged 2 lb",
  ]);
  expect(sheet("refrigerant").map(({ figure, cylinder }) => [figure, cylinder])).toEqual([
    ["7 lb 6 oz", "22"],
    ["3 lb", "C-9"],
    ["2 lb", ""],
  ]);
});

test("what a verdict says, with its limit, stands beside it", async () => {
  const sheet = await day(["L1-L2 471 V L2-L3 459 V L1-L3 468 V"]);
  expect(sheet("readings")[0]).toMatchObject({
    ...{ verdict: "GOOD", shows: "471, 459 and 468 V", basis: "NEMA MG 1" },
  });
});

test("three amps without their legs share the verdict that names them, of each set that still counts", async () => {
  const sheet = await day(["comp 1 running amps 11 14.4 11.2", "comp 1 running amps 14 14.4 14.2"]);
  const first = sheet("readings").filter(({ message }) => message === "m1");
  expect(first.map(({ verdict }) => verdict)).toEqual(["WATCH", "WATCH", "WATCH"]);
  expect(first[0]?.shows).toContain("unbalance");
});
