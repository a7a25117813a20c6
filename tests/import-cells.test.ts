import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CellReader,
  date,
  inches,
  lengthFactors,
  list,
  massFactors,
  measured,
  number,
  numberWith,
  oneOf,
  positive,
  text,
  yesOrNo,
} from "../src/record/import/column.ts";
import { decimalOf } from "../src/record/import/decimal-mark.ts";
import { fitOf, plainHeading } from "../src/record/import/heading.ts";
import { checkTree } from "../src/record/import/tree.ts";

/** What the office writes in a cell comes out as what it meant, or is refused: never as another value. */

type Mark = "." | "," | "unknown";
const markOf = (mark: Mark) => (mark === "unknown" ? undefined : mark);
const read = (reader: CellReader, cell: string, decimal: Mark = ".", heading = ""): unknown => {
  const found = reader(cell, { heading, decimal: markOf(decimal) });
  return found.ok ? found.value : undefined;
};
const says = (reader: CellReader, cell: string, decimal: Mark = "."): string => {
  const found = reader(cell, { heading: "", decimal: markOf(decimal) });
  return found.ok ? "" : found.problem;
};

/** Groups of three from the right. */
const grouped = (digits: string, mark: string): string => digits.replace(/\B(?=(\d{3})+$)/g, mark);

describe("a number", () => {
  const numbers = fc.record({
    whole: fc.nat(9_999_999),
    broken: fc.option(fc.stringMatching(/^\d{1,4}$/), { nil: undefined }),
    sign: fc.constantFrom("", "-"),
    mark: fc.constantFrom(".", ","),
    thousands: fc.boolean(),
  });
  test("is what was written, where the file's mark is known", () => {
    fc.assert(
      fc.property(numbers, ({ whole, broken, sign, mark, thousands }) => {
        const digits = thousands ? grouped(String(whole), mark === "." ? "," : ".") : String(whole);
        const cell = `${sign}${digits}${broken === undefined ? "" : `${mark}${broken}`}`;
        expect(read(number, cell, mark)).toBe(Number(`${sign}${whole}.${broken ?? 0}`));
      }),
    );
  });
  test("is what was written or is refused, where the mark is not known", () => {
    fc.assert(
      fc.property(numbers, ({ whole, broken, sign, mark, thousands }) => {
        const digits = thousands ? grouped(String(whole), mark === "." ? "," : ".") : String(whole);
        const cell = `${sign}${digits}${broken === undefined ? "" : `${mark}${broken}`}`;
        const found = read(number, cell, "unknown");
        if (found !== undefined) expect(found).toBe(Number(`${sign}${whole}.${broken ?? 0}`));
        else expect(cell).toMatch(/^-?[1-9]\d{0,2}[.,]\d{3}$/);
      }),
    );
  });
  test.each<[string, Mark, unknown]>([
    ["1,234", ".", 1234],
    ["1.234", ".", 1.234],
    ["1,234", ",", 1.234],
    ["1.234", ",", 1234],
    ["1,234", "unknown", undefined],
    ["1,234,567", "unknown", 1_234_567],
    ["1.234.567", "unknown", 1_234_567],
    ["1,234.5", ",", 1234.5],
    ["0,234", "unknown", 0.234],
    ["7,3", ".", 7.3],
    [".5", ".", 0.5],
    ["+5", ".", 5],
    ["\u22125", ".", -5],
    ["1 200", ".", 1200],
    ["1'200.5", ".", 1200.5],
    ["1\u00a0200", ".", 1200],
    ["208/230", ".", undefined],
    ["12 to 14", ".", undefined],
    ["1e9", ".", undefined],
    ["", ".", undefined],
    ["abc", ".", undefined],
    ["9".repeat(400), ".", undefined],
  ])("%s with the mark %s is %s", (cell, decimal, value) => {
    expect(read(number, cell, decimal)).toBe(value);
  });
  test("may have its unit behind it, and no other", () => {
    const volts = numberWith("v|volts?");
    for (const cell of ["460", "460 V", "460V", "460 volts."]) expect(read(volts, cell)).toBe(460);
    for (const cell of ["460 A", "V 460", "460 V 3"]) expect(read(volts, cell)).toBeUndefined();
  });
  test("that must be more than nothing is", () => {
    const some = positive(number);
    expect([read(some, "0.1"), read(some, "0"), read(some, "-1"), read(some, "x")]).toEqual([
      ...[0.1, undefined, undefined, undefined],
    ]);
    expect(says(some, "0")).toMatch(/more than 0/);
    expect(read(positive(text), "words")).toBe("words");
  });
});

describe("a weight or a length", () => {
  const weight = measured(massFactors, "lb");
  test("is in the unit behind it, else of the heading, else the usual one", () => {
    expect(read(weight, "10 kg", ".", "charge lb")).toBe(10);
    expect(read(weight, "10", ".", "charge kg")).toBe(10);
    expect(read(weight, "10", ".", "charge")).toBeCloseTo(4.5359237, 9);
    expect(read(weight, "500 g")).toBeCloseTo(0.5, 9);
    expect(read(measured(lengthFactors, "ft"), "10")).toBeCloseTo(3.048, 9);
  });
  test("of two units is their sum, however they are joined", () => {
    for (const cell of ["7 lb 6 oz", "7lb 6oz", "7 lbs. and 6 ounces", "7 pounds 6 oz"])
      expect(read(weight, cell)).toBeCloseTo(7 * 0.45359237 + 6 * 0.028349523125, 9);
  });
  test("with words that are none is refused", () => {
    for (const cell of ["7 lb or so", "about 7 kg", "7 stone", "x lb"])
      expect(read(weight, cell)).toBeUndefined();
    expect(says(weight, "1,234 lb 2 oz", "unknown")).toMatch(/could be two numbers/);
  });
});

describe("a day", () => {
  const days = fc.date({
    min: new Date("1990-01-01T00:00:00Z"),
    max: new Date("2060-12-31T00:00:00Z"),
    noInvalidDate: true,
  });
  const months =
    "January February March April May June July August September October November December";
  test("is that day in each way of writing it, or is refused", () => {
    fc.assert(
      fc.property(days, (moment) => {
        const iso = moment.toISOString().slice(0, 10);
        const [year = "", month = "", day = ""] = iso.split("-");
        const [m, d] = [Number(month), Number(day)];
        const name = months.split(" ")[m - 1] ?? "";
        for (const cell of [
          ...[iso, `${year}-${m}-${d}`, `${iso} 00:00`, `${d} ${name} ${year}`],
          ...[
            `${d}. ${name.slice(0, 3)}. ${year}`,
            `${d} ${name.slice(0, 3).toLowerCase()}, ${year}`,
          ],
        ])
          expect(read(date, cell)).toBe(iso);
        for (const mark of ["/", ".", "-"]) {
          const either = d <= 12 && d !== m;
          expect(read(date, `${m}${mark}${d}${mark}${year}`)).toBe(either ? undefined : iso);
          expect(read(date, `${d}${mark}${m}${mark}${year}`)).toBe(either ? undefined : iso);
        }
      }),
    );
  });
  test("that the calendar does not have is refused", () => {
    for (const cell of ["2025-02-30", "31/4/2025", "30 Feb 2025", "2025-13-01", "12 Foo 2025"])
      expect(says(date, cell)).toMatch(/no day of the calendar/);
    expect(read(date, "29/2/2024")).toBe("2024-02-29");
    expect(says(date, "soon")).toMatch(/no date/);
    expect(says(date, "3/4/2025")).toMatch(/could be two days; write it as 2025-03-04/);
  });
});

test("words, yes and no, lists and sizes", () => {
  for (const cell of ["y", "YES", "true", "1", "x", "\u2713"])
    expect(read(yesOrNo, cell)).toBe(true);
  for (const cell of ["n", "No", "false", "0", "none"]) expect(read(yesOrNo, cell)).toBe(false);
  for (const cell of ["yes?", "perhaps", "10"]) expect(read(yesOrNo, cell)).toBeUndefined();
  expect(read(list, "Map Room; Stacks East|12 , 14\n 15;")).toEqual([
    ...["Map Room", "Stacks East", "12", "14", "15"],
  ]);
  expect(read(text, " a \t b\u0000c ")).toBe("a b c");
  expect(read(text, "Zo\u00eb")).toBe("Zo\u00eb");
  for (const lost of ["Zo\u00c3\u00ab", "a\ufffd", "\u00e2\u20ac\u2122"])
    expect(read(text, lost)).toBeUndefined();
  const drive = oneOf([
    [/inverter/, "inverter"],
    [/line|dol/, "line_start"],
  ]);
  expect([read(drive, "Inverter-driven"), read(drive, "DOL")]).toEqual(["inverter", "line_start"]);
  expect(says(drive, "steam")).toBe('"steam" is not known; write inverter or line start');
  fc.assert(
    fc.property(
      fc.nat(9),
      fc.integer({ min: 1, max: 31 }),
      fc.constantFrom(2, 4, 8, 16, 32),
      (whole, over, under) => {
        const size = whole + over / under;
        for (const cell of [
          `${whole} ${over}/${under}`,
          `${whole}-${over}/${under} in.`,
          `${size}"`,
        ])
          expect(read(inches, cell)).toBeCloseTo(size, 9);
        expect(read(inches, `${over}/${under} inch`)).toBeCloseTo(over / under, 9);
      },
    ),
  );
});

describe("the mark before decimals", () => {
  const of = (...cells: readonly string[]) => decimalOf([{ line: 1, cells }]);
  test("is what the file's own numbers show, unless they show both or none", () => {
    for (const cell of ["7,3", "1.234,5", "0,125", "12,3456"]) expect(of("x", cell)).toBe(",");
    for (const cell of ["7.3", "1,234.5", "0.125", "12.3456"]) expect(of(cell, "x")).toBe(".");
    for (const cell of ["1,234", "1.234", "12", "7,3 kg", "12 May"])
      expect(of(cell)).toBeUndefined();
    expect(of("7,3", "7.3")).toBeUndefined();
    expect(of("7,3", "1,234")).toBe(",");
  });
});

/** Least number of letters added, dropped, changed or swapped with their neighbor, from the definition. */
function slips(a: string, b: string): number {
  const known = new Map<string, number>();
  const from = (i: number, j: number): number => {
    const found = known.get(`${i} ${j}`);
    if (found !== undefined) return found;
    let least: number;
    if (i === 0 || j === 0) least = i + j;
    else {
      const change = from(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      least = Math.min(from(i - 1, j) + 1, from(i, j - 1) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, from(i - 2, j - 2) + 1);
    }
    known.set(`${i} ${j}`, least);
    return least;
  };
  return from(a.length, b.length);
}

describe("a heading", () => {
  test("in plain small words is the same however it is set", () => {
    for (const cell of [
      "Serial No",
      "SERIAL_NO",
      "SerialNo",
      " serial-no. ",
      "serial #",
      "S\u00e9rial No",
    ])
      expect(plainHeading(cell)).toBe("serial no");
  });
  test("misspelled is the one that is meant, as far as its length allows", () => {
    const letters = fc.stringMatching(/^[b-eo-r]{4,13}$/);
    fc.assert(
      fc.property(letters, letters, fc.integer({ min: 0, max: 3 }), (name, noise, many) => {
        // a word with some of its letters changed, added, dropped or swapped
        let said = name;
        for (let at = 0; at < many; at++) {
          const place = 1 + ((noise.charCodeAt(at) * 7 + at) % (said.length - 1));
          const kind = noise.charCodeAt(at + 1) % 4;
          const [a, b] = [said.slice(0, place), said.slice(place)];
          if (kind === 0) said = `${a}x${b}`;
          if (kind === 1) said = `${a}${b.slice(1)}`;
          if (kind === 2) said = `${a}y${b.slice(1)}`;
          if (kind === 3) said = `${a}${b.slice(1, 2)}${b.slice(0, 1)}${b.slice(2)}`;
        }
        const shorter = Math.min(said.length, name.length);
        const allowed = shorter < 5 || said[0] !== name[0] ? 0 : shorter < 10 ? 1 : 2;
        const fit = fitOf(said, { names: [name] });
        expect(fit).toBe(said === name ? 4 : slips(said, name) <= allowed ? 2 : 0);
      }),
      { numRuns: 1000 },
    );
  });
  test("fits by its name best, then but for units and filler, then by its beginning", () => {
    const fits = (heading: string, ...names: readonly string[]) => fitOf(heading, { names });
    expect(fits("charge", "charge")).toBe(4);
    expect(fits("charge lb", "charge")).toBe(3);
    expect(fits("the charge in kg", "charge")).toBe(3);
    expect(fits("nick name", "nickname")).toBe(3);
    expect(fits("ser no", "serial no")).toBe(3);
    expect(fits("refr", "refrigerant")).toBe(3);
    expect(fits("charge per circuit", "charge")).toBe(1);
    expect(fits("tag color", "tag")).toBe(0);
    expect(fits("color", "tag", "charge")).toBe(0);
    expect(fits("chrage", "tag", "charge")).toBe(2);
    // of several names the best
    expect(fits("charge", "charge per", "charge")).toBe(4);
    // a heading of filler alone is itself
    expect(fits("no", "id")).toBe(0);
    expect(fits("id", "id")).toBe(4);
  });
});

describe("who hangs on whom", () => {
  const unit = fc.record({
    site: fc.constantFrom("A", "B"),
    parent: fc.option(fc.nat(7), { nil: undefined }),
  });
  test("is refused exactly where a unit comes back to itself, whatever the order", () => {
    fc.assert(
      fc.property(fc.array(unit, { minLength: 1, maxLength: 7 }), (units) => {
        const rows = units.map(({ site, parent }, index) => ({
          line: index + 2,
          key: "",
          facts: {
            tag: `U${index}`,
            site,
            ...(parent === undefined ? {} : { parent: `u${parent}` }),
          },
        }));
        const { lines, bad, notes } = checkTree({ lines: rows, bad: [] }, []);
        const parentOf = (at: number): number | undefined => {
          const { site, parent } = units[at] ?? {};
          return parent !== undefined && units[parent]?.site === site ? parent : undefined;
        };
        const comesBack = (at: number): boolean => {
          let up = parentOf(at);
          for (let far = 0; far < units.length && up !== undefined; far++) {
            if (up === at) return true;
            up = parentOf(up);
          }
          return false;
        };
        expect(bad.map(({ line }) => line - 2)).toEqual(
          units.flatMap((_, at) => (comesBack(at) ? [at] : [])),
        );
        expect(lines).toHaveLength(units.length - bad.length);
        const lost = units.flatMap(({ parent }, at) =>
          parent !== undefined && parentOf(at) === undefined ? [at + 2] : [],
        );
        expect(notes.map(({ line }) => line)).toEqual(lost);
      }),
    );
  });
  test("may be told by what was taken in before, in any letters", () => {
    const row = { line: 2, key: "", facts: { tag: "BB-1", site: "alder hall", parent: "ou-1" } };
    const known = [{ tag: "OU-1", site: "Alder Hall" }];
    expect(checkTree({ lines: [row], bad: [] }, known)).toMatchObject({ bad: [], notes: [] });
    expect(checkTree({ lines: [row], bad: [] }, []).notes).toHaveLength(1);
    const circle = [{ tag: "OU-1", site: "Alder Hall", parent: "BB-1" }];
    const { bad } = checkTree(
      {
        lines: [row],
        bad: [
          { line: 9, reason: "x" },
          { line: 1, reason: "y" },
        ],
      },
      circle,
    );
    expect(bad.map(({ line }) => line)).toEqual([1, 2, 9]);
    expect(bad[1]?.reason).toMatch(/on line 2$/);
  });
});
