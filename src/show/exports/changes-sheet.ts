import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime } from "./sheet-source.ts";

export const changesSheet: SheetMaker = {
  name: "changes",
  ofExport: true,
  spare: true,
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "what", kind: "text", about: "what changed since the export before this one" },
    { name: "was", kind: "text", about: "as the earlier export had it; empty where it is new" },
    { name: "is", kind: "text", about: "as it stands now" },
    { name: "by", kind: "text", about: "who said so" },
    { name: "at", kind: "time", about: "when" },
    { name: "since revision", kind: "number", about: "the export that had it otherwise" },
    { name: "message", kind: "text", about: "message that changed it" },
  ],
  rows: (record) =>
    (record.changes ?? []).map((change) => [
      change.job,
      change.what,
      change.was,
      change.is,
      personName(change.who, record.names),
      cellTime(record, change.at),
      record.about?.since ?? null,
      change.message,
    ]),
};
