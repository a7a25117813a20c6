import { list, text } from "../column.ts";
import type { FileKind } from "../file-kind.ts";

/** The company's parts list: what a number is, what it fits, where it comes from. */
export const stockParts: FileKind = {
  kind: "part",
  plural: "parts",
  tells: (headings) => headings.has("number") && headings.has("name"),
  key: ["number"],
  columns: [
    {
      field: "number",
      names: [
        "part no",
        "part number",
        "part",
        "item no",
        "stock no",
        "sku",
        "order no",
        "catalog no",
        "catalogue no",
        "material no",
      ],
      read: text,
      required: true,
    },
    {
      field: "name",
      names: [
        "part name",
        "item name",
        "description",
        "item",
        "what it is",
        "part description",
        "denomination",
      ],
      read: text,
      required: true,
    },
    {
      field: "fits",
      names: [
        "fits",
        "for equipment",
        "used on",
        "for",
        "for unit",
        "equipment",
        "models",
        "fits models",
        "used in",
        "compatible with",
        "compatible units",
        "compatible models",
      ],
      read: list,
    },
    {
      field: "supplier",
      names: ["supplier", "vendor", "from", "source", "supply house"],
      read: text,
    },
    {
      field: "place",
      names: [
        "shelf",
        "bin",
        "bin location",
        "shelf location",
        "stocked at",
        "place",
        "warehouse",
        "location",
      ],
      read: text,
    },
  ],
};
