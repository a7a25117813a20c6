import { massFactors, measured, positive, text } from "../column.ts";
import type { FileKind, RowFacts } from "../file-kind.ts";

const weight = measured(massFactors, "lb");

/** Refrigerant cylinders: whose, what gas, how much they hold. */
export const cylinders: FileKind = {
  kind: "cylinder",
  plural: "cylinders",
  // a serial number alone could be a machine's
  tells: (headings) =>
    headings.has("number") &&
    (!/serial/.test(headings.get("number") ?? "") ||
      ["capacity_kg", "tare_kg"].some((field) => headings.has(field))),
  key: ["number"],
  makes: { gross_kg: ["net_kg"] },
  finish: weighed,
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
        "serial no",
      ],
      read: text,
      required: true,
    },
    {
      field: "gas",
      names: ["gas", "refrigerant", "contents", "content", "gas type", "refrigerant type"],
      read: text,
    },
    {
      field: "owner",
      names: ["owner", "owned by", "belongs to", "supplier", "vendor"],
      read: text,
    },
    {
      field: "net_kg",
      names: [
        "net",
        "net weight",
        "contents weight",
        "weight of contents",
        "current contents",
        "remaining",
        "remaining weight",
        "fill",
        "gas weight",
      ],
      read: weight,
    },
    {
      field: "capacity_kg",
      names: ["water capacity", "wc", "capacity", "water cap"],
      read: positive(weight),
    },
    {
      field: "gross_kg",
      names: ["gross", "gross weight", "total weight", "scale weight", "weight on the scale"],
      read: positive(weight),
    },
    {
      field: "tare_kg",
      names: ["tare", "tare weight", "tw", "empty weight"],
      read: positive(weight),
    },
  ],
};

/** What a scale shows, less the empty cylinder, is what is in it. */
function weighed({ gross_kg: gross, ...facts }: RowFacts): RowFacts | string {
  const { net_kg: net, tare_kg: tare } = facts;
  if (typeof gross !== "number" || typeof tare !== "number" || net !== undefined) return facts;
  return gross < tare
    ? "the gross weight is less than the tare; correct one of them"
    : { ...facts, net_kg: Number((gross - tare).toPrecision(12)) };
}
