import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, hoursByRule, hoursOf, onDay, roundedHours } from "./sheet-source.ts";

export const timeSheet: SheetMaker = {
  name: "time",
  columns: [
    { name: "person", kind: "text", about: "who worked" },
    { name: "kind", kind: "text", about: "travel or site" },
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "from", kind: "time", about: "as said, else as the message came" },
    { name: "to", kind: "time", about: "empty where the end was never said" },
    {
      name: "hours",
      kind: "number",
      about: "from the times, not rounded to a rule; empty while open",
    },
    { name: "hours by rule", kind: "number", about: "rounded up by the company's setting" },
    { name: "rule", kind: "text", about: "that setting; empty where there is none" },
    { name: "open end", kind: "text", about: "yes: no end was said, and none is guessed" },
  ],
  rows: (record) =>
    record.jobs
      .flatMap(({ job }) => job.visits.map((visit) => ({ job, visit })))
      .filter(({ visit }) => onDay(record, visit.from))
      .sort(
        (a, b) =>
          (a.visit.person < b.visit.person ? -1 : a.visit.person > b.visit.person ? 1 : 0) ||
          Date.parse(a.visit.from) - Date.parse(b.visit.from),
      )
      .map(({ job, visit }) => [
        personName(visit.person, record.names),
        visit.kind,
        job.job,
        job.site,
        job.equipment,
        cellTime(record, visit.from),
        visit.to === undefined ? null : cellTime(record, visit.to),
        visit.to === undefined ? null : roundedHours(hoursOf(visit.from, visit.to)),
        visit.to === undefined ? null : hoursByRule(record, hoursOf(visit.from, visit.to)),
        record.rounding_min === undefined ? null : `up to ${record.rounding_min} min`,
        visit.to === undefined ? "yes" : null,
      ]),
};
