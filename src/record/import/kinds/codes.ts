import { text } from "../column.ts";
import type { FileKind } from "../file-kind.ts";

/** The company's own list of fault codes; there is no other. */
export const codes: FileKind = {
  kind: "code",
  plural: "fault codes",
  tells: (headings) => headings.has("code") && headings.has("meaning"),
  key: ["code", "shown_on"],
  columns: [
    {
      field: "code",
      names: ["code", "fault code", "error code", "alarm code", "codes", "fault", "alarm", "error"],
      read: text,
      required: true,
    },
    {
      field: "shown_on",
      names: [
        "shown on",
        "shown at",
        "on",
        "where shown",
        "where",
        "display",
        "equipment",
        "unit",
        "equipment kind",
      ],
      read: text,
    },
    {
      field: "meaning",
      names: ["meaning", "means", "description", "what it means", "text", "explanation"],
      read: text,
      required: true,
    },
    {
      field: "first",
      names: [
        "look at first",
        "first",
        "check first",
        "first check",
        "what to check",
        "action",
        "remedy",
      ],
      read: text,
    },
  ],
};
