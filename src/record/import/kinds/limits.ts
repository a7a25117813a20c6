import { type CellReader, number, text } from "../column.ts";
import type { FileKind, RowFacts } from "../file-kind.ts";
import { plainHeading } from "../heading.ts";
import { type LimitRow, limitRows } from "./limit-rows.ts";
import { canonical } from "./limit-units.ts";

const figureWords =
  /^(?<mark>[<>\u2264\u2265=\u00b1]*)\s*(?<from>[-\u2212]?\d[\d.,]*)(?:\s*(?:to|-|\u2013|\.\.)\s*(?<to>\d[\d.,]*))?\s*(?<unit>.*)$/iu;
/** A unit in brackets or behind a comma of a heading: "Max (F)" */
const headingUnit = /\b(f|c|k|percent|micron|microns|megohm|megohms|pa|in wc)$/;

/** "20 megohm", "8 to 20 F", "<= 2 %" as its mark, its one or two numbers and its unit. */
const figure: CellReader = (cell, around) => {
  const found = figureWords.exec(cell.trim())?.groups;
  if (found === undefined) {
    return { ok: false, problem: `"${cell}" is no number; write one with its unit, such as 20 F` };
  }
  const { mark = "", from = "", to, unit = "" } = found;
  const first = number(from, around);
  const second = to === undefined ? undefined : number(to, around);
  if (!first.ok) return first;
  if (second !== undefined && !second.ok) return second;
  const ownUnit = unit.trim() === "" ? (headingUnit.exec(around.heading)?.[1] ?? "") : unit.trim();
  const numbers = second === undefined ? [first.value] : [first.value, second.value];
  return { ok: true, value: [mark, ownUnit, ...numbers.map(String)] };
};

/** Short headings with a unit behind them: "min", "min f". */
const inUnits = (name: string): readonly string[] => [name, `${name} f`, `${name} c`, `${name} k`];

/** Limits that the company sets itself; they stand in for the usual ones. */
export const limits: FileKind = {
  kind: "limit",
  plural: "limits",
  tells: (headings) =>
    headings.has("limit") && ["value", "least", "most"].some((field) => headings.has(field)),
  key: ["limit", "site", "equipment"],
  parts: { field: "side", join: joinSides },
  makes: { limit: ["least", "most"] },
  finish: limitOf,
  columns: [
    {
      field: "limit",
      names: [
        "limit",
        "threshold",
        "limit of",
        "threshold of",
        "company limit",
        "own limit",
        "limit for what",
        "check",
        "measurement",
        "quantity",
        "reading",
        "criterion",
        "parameter",
        "what is limited",
      ],
      read: text,
      required: true,
    },
    {
      field: "least",
      names: [
        "minimum",
        ...inUnits("min"),
        "least",
        ...inUnits("low"),
        "lowest",
        "lower limit",
        "low limit",
        "at least",
        "minimum value",
        "min value",
        "alarm low",
        "low alarm",
      ],
      read: figure,
    },
    {
      field: "most",
      names: [
        "maximum",
        ...inUnits("max"),
        "most",
        "high",
        "highest",
        "upper limit",
        "high limit",
        "at most",
        "maximum value",
        "max value",
        "alarm high",
        "high alarm",
      ],
      read: figure,
    },
    {
      field: "value",
      names: [
        "value",
        "figure",
        "limit value",
        "threshold value",
        "set to",
        "our limit",
        "our value",
      ],
      read: figure,
    },
    {
      field: "unit",
      names: ["unit", "units", "uom", "unit of measure", "measured in"],
      read: text,
    },
    {
      field: "equipment",
      names: [
        "equipment",
        "for equipment",
        "unit tag",
        "tag",
        "equipment kind",
        "kind",
        "kind of equipment",
        "equipment type",
        "applies to",
        "for",
      ],
      read: text,
    },
    {
      field: "site",
      names: ["site", "building", "customer", "location", "property", "facility"],
      read: text,
    },
    {
      field: "notes",
      names: ["notes", "note", "remarks", "comments", "why", "source", "reason"],
      read: text,
    },
  ],
};

const offered = limitRows.map(({ limit }) => limit.replaceAll("_", " ")).join(", ");

function limitOf(facts: RowFacts): RowFacts | string {
  const { limit, value, least, most, unit, ...rest } = facts;
  const said = plainHeading(String(limit));
  const row = limitRows.find(
    (one) => one.called.test(said) || said === one.limit.replaceAll("_", " "),
  );
  if (row === undefined) return `limit: "${limit}" is not known; write one of: ${offered}`;
  const beside = typeof unit === "string" ? unit : "";
  const sides = [
    sideOf(row, least, { side: "least", beside }),
    sideOf(row, most, { side: "most", beside }),
    alone(row, value, { said, beside }),
  ];
  const bad = sides.find((one) => typeof one === "string");
  if (bad !== undefined) return bad;
  const bounds: Bounds = Object.assign({}, ...sides);
  if (bounds.least === undefined && bounds.most === undefined)
    return `${row.limit.replaceAll("_", " ")}: no figure; fill in a minimum or a maximum, or delete the line`;
  if ((bounds.least ?? -Infinity) >= (bounds.most ?? Infinity))
    return `${row.limit.replaceAll("_", " ")}: the minimum is not under the maximum; correct one of them`;
  return { ...rest, limit: row.limit, side: Object.keys(bounds).sort().join(), ...bounds };
}

interface Bounds {
  readonly least?: number;
  readonly most?: number;
}

/** One cell of one side, in the canonical unit. */
function sideOf(
  row: LimitRow,
  cell: unknown,
  { side, beside }: { readonly side: "least" | "most"; readonly beside: string },
): Bounds | string {
  if (!Array.isArray(cell)) return {};
  const [, ownUnit = "", digits = "", more] = cell.map(String);
  const column = side === "least" ? "minimum" : "maximum";
  if (more !== undefined) return `${column}: two numbers stand there; write one`;
  const found = inUnit(row, digits, ownUnit === "" ? beside : ownUnit);
  return typeof found === "string" ? `${column}: ${found}` : { [side]: found };
}

/** A figure in no column of a side: the words, its mark or what is usual tell which it is. */
function alone(
  row: LimitRow,
  cell: unknown,
  { said, beside }: { readonly said: string; readonly beside: string },
): Bounds | string {
  if (!Array.isArray(cell)) return {};
  const [mark = "", ownUnit = "", from = "", to] = cell.map(String);
  const unit = ownUnit === "" ? beside : ownUnit;
  if (to !== undefined) {
    const [least, most] = [inUnit(row, from, unit), inUnit(row, to, unit)];
    if (typeof least === "string") return `value: ${least}`;
    return typeof most === "string" ? `value: ${most}` : { least, most };
  }
  const side = sideSaid(said, mark) ?? row.side;
  if (side === undefined)
    return `value: ${row.limit.replaceAll("_", " ")} ${from} could be the least or the most; say "minimum" or "maximum" with it`;
  const found = inUnit(row, from, unit);
  return typeof found === "string" ? `value: ${found}` : { [side]: found };
}

function sideSaid(said: string, mark: string): "least" | "most" | undefined {
  if (/[>\u2265]/.test(mark) || /\b(?:min|minimum|least|low|lowest|lower)\b/.test(said))
    return "least";
  return /[<\u2264\u00b1]/.test(mark) || /\b(?:max|maximum|most|high|highest|upper)\b/.test(said)
    ? "most"
    : undefined;
}

function inUnit({ limit, dimension, within }: LimitRow, digits: string, unit: string) {
  const name = limit.replaceAll("_", " ");
  const found = canonical(Number(digits), unit, dimension);
  if (found === undefined) {
    return unit === ""
      ? `${name} ${digits} has no unit; write ${dimension.offer} behind it`
      : `"${unit}" is no unit of ${name}; write ${dimension.offer}`;
  }
  const [from, to] = within;
  return found < from || found > to
    ? `${name} ${digits} ${unit} is no limit that anybody would set; correct the number or its unit`
    : found;
}

/** A minimum and a maximum that stand on two lines are one limit. */
function joinSides(rows: readonly RowFacts[]): RowFacts {
  const { side: _side, ...facts }: RowFacts = Object.assign({}, ...rows);
  return facts;
}
