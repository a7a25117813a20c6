import { expect, test } from "vitest";
import { type Row, sheets, visit } from "./support/unit-history.ts";

interface Worked {
  readonly source: string;
  readonly unit: Row;
  readonly texts: readonly string[];
  readonly percent: string;
  readonly verdict: "GOOD" | "BAD" | "WATCH";
  /** dates in the sheet of what is due */
  readonly due: readonly string[];
}

const comfort = { use: "comfort cooling", "leak regime": "us_82" };

/** Rates and limits by hand; each figure is pounds added over pounds of full charge, by the days. */
const worked: readonly Worked[] = [
  {
    source: "40 CFR 84.102 annualizing: 3/28 * 365/140; over 10: repair in 30 days, 84.106(d)",
    unit: { refrigerant: "R-410A", "charge lb": "28", ...comfort, "leak regime": "us_84" },
    texts: ["added 3 lb, last addition was 140 days ago"],
    percent: "27.9",
    verdict: "BAD",
    due: ["2026-06-11"],
  },
  {
    source: "40 CFR 84.102 annualizing: 12/180 * 365/200; commercial refrigeration, not over 20",
    unit: {
      ...{ refrigerant: "R-404A", "charge lb": "180", kind: "rack" },
      ...{ use: "commercial refrigeration", "leak regime": "us_84" },
    },
    texts: ["added 12 lb, last addition was 200 days ago"],
    percent: "12.2",
    verdict: "GOOD",
    due: [],
  },
  {
    source: "40 CFR 82.152 annualizing, days no more than 365: 5/62 * 365/365; not over 10",
    unit: { refrigerant: "R-22", "charge lb": "62", ...comfort },
    texts: ["added 5 lb, last addition was 500 days ago"],
    percent: "8.06",
    verdict: "GOOD",
    due: [],
  },
  {
    source: "40 CFR 82.157(c)(2): a rate equal to the limit is not over it: 20/100 * 365/365 = 20",
    unit: {
      ...{ refrigerant: "R-22", "charge lb": "100", kind: "rack" },
      ...{ use: "commercial refrigeration", "leak regime": "us_82" },
    },
    texts: ["added 20 lb, last addition was 400 days ago"],
    percent: "20",
    verdict: "GOOD",
    due: [],
  },
  {
    source: "40 CFR 82.157(a): below 50 lb of an ozone depleter no date follows: 6/42 * 365/100",
    unit: { refrigerant: "R-22", "charge lb": "42", ...comfort },
    texts: ["added 6 lb, last addition was 100 days ago"],
    percent: "52.1",
    verdict: "BAD",
    due: [],
  },
  {
    source: "40 CFR 84.106(a): below 15 lb no date follows: 3/14 * 365/100",
    unit: { refrigerant: "R-410A", "charge lb": "14", ...comfort, "leak regime": "us_84" },
    texts: ["added 3 lb, last addition was 100 days ago"],
    percent: "78.2",
    verdict: "BAD",
    due: [],
  },
  {
    source: "40 CFR 84.102 rolling average: (4 + 3 + 5)/90, all within 365 days; over 10",
    unit: {
      ...{ refrigerant: "R-407C", "charge lb": "90", ...comfort },
      ...{ "leak regime": "us_84", "leak method": "rolling" },
    },
    texts: ["added 5 lb today. also added 3 lb 90 days ago and 4 lb 210 days ago"],
    percent: "13.3",
    verdict: "BAD",
    due: ["2026-06-11"],
  },
];

test.each(worked)("$source", async ({ unit, texts, percent, verdict, due }) => {
  const made = await sheets(unit, visit("2026-05-12", ...texts));
  expect(made.log.map((row) => [row["percent a year"], row.verdict])).toEqual([[percent, verdict]]);
  expect(made.due.map((row) => row.due?.slice(0, 10))).toEqual(due);
});

const leaking = {
  ...{ refrigerant: "R-22", "charge lb": "62", ...comfort },
  "last addition": "2025-12-23",
};

test("from one addition to the next the days are counted from the record itself", async () => {
  // 3/62 * 365/140 = 12.6; then 2/62 * 365/30 = 39.2
  const { log } = await sheets(leaking, [
    ...visit("2026-05-12", "added 3 lb", "done, leaving"),
    ...visit("2026-06-11", "added 2 lb"),
  ]);
  expect(log.map((row) => row["percent a year"])).toEqual(["12.6", "39.2"]);
});

test("of a circuit that was emptied and got more than came out the sheet says what the rate lacks", async () => {
  const said = visit("2026-05-12", "recovered 8 lb", "charged 28 lb");
  const unit = { refrigerant: "R-410A", "charge lb": "28", ...comfort, "leak regime": "us_84" };
  const [row] = (await sheets(unit, said)).log;
  expect(row).toMatchObject({
    "percent a year": "",
    verdict: "NOT JUDGED",
    basis: "40 CFR 82.152",
  });
  expect(row?.["what it is held against"]).toMatch(/without the date of the last addition/);
  const small = await sheets({ ...unit, "charge lb": "9" }, said);
  expect(small.log[0]?.verdict).toBe("");
  const back = await sheets(unit, visit("2026-05-12", "recovered 28 lb", "charged 28 lb"));
  expect(back.log[0]?.verdict).toBe("");
});

test("dates of a leak close by what proves them, in their order: 40 CFR 82.157(d) and (e)", async () => {
  const { due } = await sheets(leaking, [
    ...visit("2026-05-12", "added 3 lb", "done, leaving"),
    ...visit("2026-05-20", "repaired the leak at the flare", "no leaks found", "done, leaving"),
  ]);
  expect(due.map(({ due: by, state, job }) => [by?.slice(0, 10), state, job])).toEqual([
    // ten days from the first check
    ["2026-05-30", "open", "1"],
    // thirty days from the addition
    ["2026-06-11", "done", "1"],
  ]);
  const later = await sheets(leaking, [
    ...visit("2026-05-12", "added 3 lb", "done, leaving"),
    ...visit("2026-05-20", "repaired the leak at the flare", "no leaks found", "done, leaving"),
    ...visit("2026-05-28", "leak checked the whole circuit, no leaks found", "done, leaving"),
  ]);
  expect(later.due.map(({ state }) => state)).toEqual(["done", "done"]);
  expect(later.due.map(({ proof }) => proof)).toEqual([
    "check 2026-05-28",
    "repair 2026-05-20, check 2026-05-20",
  ]);
});

test.each(["initial leak check passed", "leak checked good", "passed its leak check"])(
  "a check that was passed proves like one that found nothing: %s",
  async (check) => {
    const { due } = await sheets(leaking, [
      ...visit("2026-05-12", "added 3 lb", "done, leaving"),
      ...visit("2026-05-20", "repaired the leak at the flare", check, "done, leaving"),
      ...visit("2026-05-28", "follow-up leak check passed", "done, leaving"),
    ]);
    expect(due.map(({ state }) => state)).toEqual(["done", "done"]);
  },
);

test("a leak check that was failed or is to come closes nothing", async () => {
  const { due } = await sheets(leaking, [
    ...visit("2026-05-12", "added 3 lb", "done, leaving"),
    ...visit("2026-05-20", "repaired the leak at the flare", "leak check failed", "done, leaving"),
    ...visit("2026-05-28", "will leak check tomorrow", "done, leaving"),
  ]);
  expect(due.map(({ state }) => state)).toEqual(["open"]);
});

test("a word of a repair without a check closes nothing", async () => {
  const { due } = await sheets(leaking, [
    ...visit("2026-05-12", "added 3 lb", "repaired the leak at the flare", "done, leaving"),
  ]);
  expect(due.map(({ state }) => state)).toEqual(["open"]);
});

test("an industrial process that must stop for the repair has 120 days: 40 CFR 82.157(d)", async () => {
  const { due } = await sheets(
    { ...leaking, use: "industrial process" },
    visit("2026-05-12", "added 10 lb"),
  );
  expect(due[0]?.due).toMatch(/^2026-06-11/);
  expect(due[0]?.what).toContain("2026-09-09 where the process must stop for it");
});

test("in Europe any leak is repaired and looked at again after a day, within a month", async () => {
  // Regulation (EU) 2024/573 Art. 4: no rate; not on the day of the repair
  const unit = { ...leaking, refrigerant: "R-410A", "leak regime": "eu" };
  const once = [
    ...visit("2026-05-12", "added 1 lb", "done, leaving"),
    ...visit("2026-05-20", "repaired the leak at the flare", "no leaks found"),
  ] as const;
  const first = await sheets(unit, [...once, ["2026-05-20T22:30:00-05:00", "no leaks found"]]);
  expect(first.due.map(({ due: by, state }) => [by?.slice(0, 10), state])).toEqual([
    ["2026-06-11", "done"],
    ["2026-06-19", "open"],
  ]);
  const again = await sheets(unit, [...once, ["2026-05-21T09:30:00-05:00", "no leaks found"]]);
  expect(again.due.map(({ state }) => state)).toEqual(["done", "done"]);
});

test("each circuit is an appliance of its own, with its charge, its rate and its dates: 40 CFR 84.106(a)", async () => {
  // 3/28 * 365/140 = 27.9, over 10; 3/180 * 365/140 = 4.35, not over
  const circuits = [
    { ...comfort, refrigerant: "R-410A", "leak regime": "us_84", circuit: "1", "charge lb": "28" },
    { ...comfort, refrigerant: "R-410A", "leak regime": "us_84", circuit: "2", "charge lb": "180" },
  ];
  const { log, due } = await sheets(
    circuits,
    visit(
      "2026-05-12",
      "circuit 1 added 3 lb, last addition was 140 days ago",
      "circuit 2 added 3 lb, last addition was 140 days ago",
    ),
  );
  expect(
    log.map((row) => [row.circuit, row["full charge lb"], row["added lb"], row["percent a year"]]),
  ).toEqual([
    ["circuit 1", "28", "3", "27.9"],
    ["circuit 2", "180", "3", "4.35"],
  ]);
  expect(log.map(({ verdict }) => verdict)).toEqual(["BAD", "GOOD"]);
  expect(due.map(({ what, due: by }) => [what, by?.slice(0, 10)])).toEqual([
    ["circuit 1: leak repaired and first check", "2026-06-11"],
  ]);
});

test("of a unit with several circuits it is asked which one, not guessed", async () => {
  const circuits = ["28", "180"].map((charge, n) => ({
    ...{ ...comfort, refrigerant: "R-410A", circuit: String(n + 1), "charge lb": charge },
  }));
  const { log } = await sheets(
    circuits,
    visit("2026-05-12", "added 3 lb, last addition was 140 days ago"),
  );
  expect(log.map((row) => [row["percent a year"], row.verdict])).toEqual([["", "NOT JUDGED"]]);
  expect(log[0]?.["what it is held against"]).toContain("which circuit it went into");
});

const rack = {
  ...{ refrigerant: "R-404A", kind: "rack", use: "commercial refrigeration" },
  ...{ "leak regime": "us_84", "last addition": "2025-12-23" },
};
const datesOf = (rows: readonly Row[]) => rows.map(({ due }) => due?.slice(0, 10));

test.each([
  ["refrigeration of 500 lb or more, each quarter", { ...rack, "charge lb": "500" }, "2026-08-12"],
  ["refrigeration below, once a calendar year", { ...rack, "charge lb": "499" }, "2027-05-12"],
  [
    "comfort cooling of any size, once a calendar year",
    { ...rack, refrigerant: "R-410A", "charge lb": "800", use: "comfort cooling" },
    "2027-05-12",
  ],
] as const)(
  "a rate over its limit makes inspections due: %s, 40 CFR 84.106(g)",
  async (_, unit, due) => {
    const { log, inspections } = await sheets(unit, visit("2026-05-12", "added 90 lb"));
    expect(datesOf(inspections)).toEqual([due]);
    expect(log.map((row) => row["inspection due"]?.slice(0, 10))).toEqual([due]);
    // the repair comes before it
    expect(log.map((row) => row["next due"]?.slice(0, 10))).toEqual(["2026-06-11"]);
  },
);

test("each inspection moves the next one, whether it found a leak or none; of a unit one date stands", async () => {
  const said = [
    ...visit("2026-05-12", "added 90 lb", "done, leaving"),
    ...visit("2026-08-01", "leak checked everything, no leaks found", "done, leaving"),
    ...visit("2026-10-30", "found a leak at the flare", "added 60 lb", "done, leaving"),
  ];
  const { inspections } = await sheets({ ...rack, "charge lb": "500" }, said.slice(0, 6));
  expect(datesOf(inspections)).toEqual(["2026-11-01"]);
  const later = await sheets({ ...rack, "charge lb": "500" }, said);
  expect(datesOf(later.inspections)).toEqual(["2027-01-30"]);
});

test("a rate that is not over, or a unit that the rule does not reach, makes none due", async () => {
  const small = { ...rack, "charge lb": "500" };
  expect((await sheets(small, visit("2026-05-12", "added 10 lb"))).inspections).toEqual([]);
  const tiny = { ...rack, "charge lb": "14" };
  expect((await sheets(tiny, visit("2026-05-12", "added 6 lb"))).inspections).toEqual([]);
});

test.each([
  // t of CO2 equivalent by the annexes of the regulation: R-410A 2088, R-404A 3922
  ["4.7 t: none", "R-410A", "2.25 kg", []],
  ["5.2 t: each year", "R-410A", "2.5 kg", ["2027-05-12"]],
  ["52.2 t: each half year", "R-410A", "25 kg", ["2026-11-12"]],
  ["510 t: each quarter", "R-404A", "130 kg", ["2026-08-12"]],
] as const)(
  "in Europe checks follow from the charge: %s, 2024/573 Art. 5",
  async (_, refrigerant, charge, due) => {
    const unit = { refrigerant, charge, "leak regime": "eu" };
    const { inspections } = await sheets(unit, visit("2026-05-12", "no leaks found", "done"));
    expect(datesOf(inspections)).toEqual(due);
    const never = await sheets(unit, visit("2026-05-12", "suction 118", "done"));
    expect(never.inspections.map(({ proof }) => /none is there yet/.test(proof ?? ""))).toEqual(
      due.map(() => true),
    );
  },
);
