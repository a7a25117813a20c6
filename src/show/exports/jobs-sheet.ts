import type { Cell, Job, Judgement, Visit } from "../../model.ts";
import { served } from "../board-order.ts";
import { namedCauses } from "../causes.ts";
import { leftWords } from "../machine-words.ts";
import { lastDone } from "../past.ts";
import { causeCell, personName, statusWords } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import {
  cellTime,
  type DayRecord,
  type ExportJob,
  hoursOf,
  onDay,
  roundedHours,
} from "./sheet-source.ts";

export const jobsSheet: SheetMaker = {
  name: "jobs",
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "opened", kind: "time", about: "when it was opened, company time" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "model", kind: "text", about: "model from the unit's plate or the office's list" },
    { name: "serial", kind: "text", about: "serial number, as text" },
    { name: "complaint", kind: "text", about: "what was called in" },
    { name: "status", kind: "text", about: "the last word of a technician" },
    { name: "status at", kind: "time", about: "when that was said" },
    { name: "said by", kind: "text", about: "who said it" },
    { name: "people", kind: "text", about: "everyone who worked on it" },
    { name: "visits", kind: "number", about: "stretches on site on this day" },
    { name: "first on site", kind: "time", about: "first arrival on this day" },
    { name: "last left", kind: "time", about: "last leaving on this day" },
    { name: "site hours", kind: "number", about: "over all people, this day; open visits count 0" },
    { name: "travel hours", kind: "number", about: "over all people, this day" },
    { name: "cause", kind: "text", about: "most likely cause, with likely, possible or put right" },
    { name: "done", kind: "text", about: "what was fitted, repaired or cleaned" },
    {
      name: "left as",
      kind: "text",
      about: "power, locks, leads, circuit and bypasses as last said",
    },
    { name: "parts open", kind: "text", about: "parts asked for and not fitted" },
    { name: "recovered kg", kind: "number", about: "refrigerant taken out, whole job" },
    { name: "charged kg", kind: "number", about: "refrigerant put in, whole job" },
    { name: "file", kind: "text", about: "open or closed: closed when nothing is missing" },
    { name: "gaps", kind: "text", about: "what the file lacks" },
    { name: "opened by", kind: "text", about: "message that opened it" },
  ],
  rows: (record) => record.jobs.map((entry) => jobRow(record, entry)),
};

function jobRow(record: DayRecord, { job, equipment, judgement }: ExportJob): readonly Cell[] {
  const visits = job.visits.filter((v) => onDay(record, v.from));
  const site = visits.filter((v) => v.kind === "site");
  const hours = (list: readonly Visit[]) =>
    roundedHours(list.reduce((sum, v) => sum + hoursOf(v.from, v.to), 0));
  return [
    job.job,
    cellTime(record, job.opened),
    job.site,
    job.equipment,
    equipment.model ?? null,
    equipment.serial ?? null,
    job.complaint ?? null,
    statusWords[job.status],
    cellTime(record, job.status_at),
    job.person === null ? null : personName(job.person, record.names),
    job.people.map((p) => personName(p, record.names)).join(", "),
    site.length,
    edge(
      record,
      site.map((v) => v.from),
      "first",
    ),
    edge(
      record,
      site.flatMap((v) => (v.to === undefined ? [] : [v.to])),
      "last",
    ),
    hours(site),
    hours(visits.filter((v) => v.kind === "travel")),
    causeOf(judgement),
    lastDone(job),
    leftWords(job.machine, record.names).join("; "),
    openParts(job),
    kilograms(job.refrigerant.recovered_kg),
    kilograms(job.refrigerant.charged_kg),
    job.file.state,
    job.file.gaps.join("; "),
    job.opened_by,
  ];
}

function edge(record: DayRecord, times: readonly string[], which: "first" | "last"): Cell {
  const sorted = [...times].sort((a, b) => Date.parse(a) - Date.parse(b));
  const time = which === "first" ? sorted[0] : sorted[sorted.length - 1];
  return time === undefined ? null : cellTime(record, time);
}

function causeOf(judgement: Judgement): Cell {
  const [top] = namedCauses(judgement);
  return top === undefined ? null : causeCell(top);
}

function openParts(job: Job): string {
  return job.parts
    .filter((p) => p.state === "needed" && !served(job, p))
    .map((p) => [p.number, p.part].filter((w) => w !== undefined).join(" "))
    .join("; ");
}

function kilograms(kg: number): number {
  return Math.round(kg * 1000) / 1000;
}
