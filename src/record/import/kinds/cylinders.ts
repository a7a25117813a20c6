import { massFactors, measured, positive, text } from "../column.ts";
import type { FileKind } from "../file-kind.ts";

const weight = measured(massFactors, "lb");

/** Refrigerant cylinders: whose, what gas, how much they hold. */
export const cylinders: FileKind = {
  kind: "cylinder",
  plural: "cylinders",
  tells: (headings) => headings.has("number"),
  key: ["number"],
  columns: [
    {
      field: "number",
      names: [
        "cylinder",
        "bottle",
        "cylinder no",
        "bottle no",
        "tank",
        "tank no",
        "cylinder number",
        "jug",
        "cyl",
        "cyl no",
        "recovery cylinder",
      ],
      read: text,
      required: true,
    },
    { field: "gas", names: ["gas", "refrigerant", "contents", "content"], read: text },
    { field: "owner", names: ["owner", "owned by", "belongs to", "supplier"], read: text },
    {
      field: "net_kg",
      names: ["net", "net weight", "contents weight", "weight of contents", "fill", "gas weight"],
      read: weight,
    },
    {
      field: "capacity_kg",
      names: ["water capacity", "wc", "capacity", "water cap"],
      read: positive(weight),
    },
    {
      field: "tare_kg",
      names: ["tare", "tare weight", "tw", "empty weight"],
      read: positive(weight),
    },
  ],
};
