import { type Column, inches, lengthFactors, measured, positive } from "../column.ts";
import type { RowFacts } from "../file-kind.ts";

const feet = positive(measured(lengthFactors, "ft"));

/** Pipes between the halves of a unit: their size, how long they are, how much of it the charge covers. */
export const lineColumns: readonly Column[] = [
  {
    field: "liquid_in",
    names: [
      "liquid line",
      "liquid line size",
      "liquid line od",
      "line set liquid",
      "lineset liquid",
    ],
    read: positive(inches),
  },
  {
    field: "suction_in",
    names: [
      "suction line",
      "suction line size",
      "gas line",
      "suction line od",
      "line set suction",
      "line set gas",
      "lineset suction",
    ],
    read: positive(inches),
  },
  {
    field: "length_m",
    names: ["line length", "line set length", "lineset length", "pipe length", "line run"],
    read: feet,
  },
  {
    field: "covered_m",
    names: [
      "line covered",
      "length covered",
      "covered by charge",
      "precharged length",
      "plate covers",
      "charge covers",
      "factory charge covers",
      "line set covered",
    ],
    read: feet,
  },
];

/** Columns of a line set become the one field that judging knows. */
export function withLines(facts: RowFacts): RowFacts | string {
  const { liquid_in, suction_in, length_m, covered_m, ...rest } = facts;
  if (liquid_in === undefined && suction_in === undefined) return rest;
  if (length_m === undefined)
    return "a line's size without its length; fill in the line length too";
  const shared = { length_m, ...(covered_m === undefined ? {} : { covered_m }) };
  const lines = [
    ...(liquid_in === undefined ? [] : [{ line: "liquid", size_in: liquid_in, ...shared }]),
    ...(suction_in === undefined ? [] : [{ line: "suction", size_in: suction_in, ...shared }]),
  ];
  return { ...rest, line_set: lines };
}
