import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, onDay } from "./sheet-source.ts";

export const partsSheet: SheetMaker = {
  name: "parts",
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "part", kind: "text", about: "as said" },
    { name: "number", kind: "text", about: "part number, as text" },
    { name: "quantity", kind: "number", about: "where said" },
    { name: "state", kind: "text", about: "needed, ordered or fitted" },
    {
      name: "decision",
      kind: "text",
      about:
        "approved or declined, where the customer or the office said so; at, by and message are then of that",
    },
    { name: "here", kind: "text", about: "yes: said to have arrived" },
    { name: "due", kind: "text", about: "as said" },
    { name: "due_on", kind: "time", about: "the day that this means, from the day it was said" },
    { name: "at", kind: "time", about: "when that was said" },
    { name: "by", kind: "text", about: "who said it" },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) =>
    record.jobs.flatMap(({ job }) =>
      job.parts
        .filter((part) => onDay(record, part.at))
        .map((part) => [
          job.job,
          job.site,
          job.equipment,
          part.part,
          part.number ?? null,
          part.quantity ?? null,
          part.state,
          part.decided ?? null,
          part.arrived === true ? "yes" : null,
          part.due ?? null,
          part.due_on ?? null,
          cellTime(record, part.at),
          personName(part.who, record.names),
          part.message,
        ]),
    ),
};
