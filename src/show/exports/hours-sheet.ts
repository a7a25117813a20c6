import type { Job } from "../../model.ts";
import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { type DayRecord, hoursByRule, hoursOf, onDay, roundedHours } from "./sheet-source.ts";

/** Hours of each person on each job; the stretches they are made of stand on the sheet "time". */
export const hoursSheet: SheetMaker = {
  name: "hours",
  spare: true,
  columns: [
    { name: "person", kind: "text", about: "who worked" },
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "site hours", kind: "number", about: "from the times, not rounded to a rule" },
    { name: "travel hours", kind: "number", about: "from the times, not rounded to a rule" },
    { name: "site hours by rule", kind: "number", about: "rounded up by the company's setting" },
    { name: "travel hours by rule", kind: "number", about: "rounded up by the company's setting" },
    { name: "said hours", kind: "number", about: "hours that the person named, beside the times" },
    { name: "open ends", kind: "number", about: "stretches whose end was never said: not counted" },
  ],
  rows: (record) =>
    record.jobs
      .flatMap(({ job }) => people(job).map((person) => ({ job, person })))
      .map(({ job, person }) => hoursRow(record, job, person))
      .filter((row) => row.slice(4).some((cell) => cell !== null && cell !== 0))
      .sort((a, b) => (String(a[0]) < String(b[0]) ? -1 : String(a[0]) > String(b[0]) ? 1 : 0)),
};

function people(job: Job): readonly string[] {
  return [...new Set([...job.visits.map((v) => v.person), ...saidHours(job).map((s) => s.who)])];
}

function saidHours(
  job: Job,
): readonly { readonly who: string; readonly at: string; readonly hours: number }[] {
  return job.statements.flatMap(({ statement, who, at, undone, deleted }) =>
    statement.kind === "labor" && undone !== true && deleted !== true
      ? [{ who: statement.whose ?? who, at, hours: statement.hours }]
      : [],
  );
}

function hoursRow(
  record: DayRecord,
  job: Job,
  person: string,
): ReturnType<SheetMaker["rows"]>[number] {
  const visits = job.visits.filter((v) => v.person === person && onDay(record, v.from));
  const sum = (kind: "site" | "travel"): number =>
    visits.filter((v) => v.kind === kind).reduce((total, v) => total + hoursOf(v.from, v.to), 0);
  const said = saidHours(job).filter(({ who, at }) => who === person && onDay(record, at));
  return [
    personName(person, record.names),
    job.job,
    job.site,
    job.equipment,
    roundedHours(sum("site")),
    roundedHours(sum("travel")),
    hoursByRule(record, sum("site")),
    hoursByRule(record, sum("travel")),
    said.length === 0 ? null : said.reduce((total, one) => total + one.hours, 0),
    visits.filter((v) => v.to === undefined).length,
  ];
}
