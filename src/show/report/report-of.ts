import type { Job, SiteFacts, Statement } from "../../model.ts";
import { partPapers } from "../exports/part-papers.ts";
import { type About, cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { gasOf } from "../gas-of.ts";
import type { Plot } from "../plots/plot.ts";
import { listed, personName, sentence, sentenceCase, statusWords } from "../wording.ts";
import { causeBlock, proofBlock } from "./found.ts";
import { countedReadings, readingsTable } from "./readings-table.ts";
import type { Block, Photo, Report } from "./report.ts";
import {
  doneBlock,
  lackingBlock,
  leftBlock,
  partsBlock,
  refrigerantBlock,
  timesBlock,
} from "./work.ts";

/** What a report needs beside the job. */
export interface ReportSource {
  readonly entry: ExportJob;
  readonly record: DayRecord & { readonly about: About };
  readonly site: SiteFacts;
  readonly plots: readonly Plot[];
  readonly photos: readonly Photo[];
  /** every reading, on pages of their own */
  readonly annex: boolean;
}

/** A job as a report that an owner, a parts desk or a warranty desk can read without the chat. */
export function reportOf(source: ReportSource): Report {
  const { entry, record } = source;
  const { job } = entry;
  const unit = job.equipment ?? "unit not named";
  const blocks: readonly Block[] = [
    {
      kind: "lines",
      title: "Called for",
      lines: [sentence(sentenceCase(job.complaint ?? "not said"))],
    },
    causeBlock(entry),
    proofBlock(entry, record),
    doneBlock(entry),
    partsBlock(entry, record),
    refrigerantBlock(entry, record),
    leftBlock(entry, record),
    timesBlock(entry, record),
    lackingBlock(entry, behindOf(source)),
  ];
  const last = job.timeline.at(-1)?.at ?? job.opened;
  return {
    title: `Job report ${job.job}`,
    subtitle: [unit, job.site].filter((word) => word !== null).join(", "),
    head: headOf(source),
    blocks: blocks.filter(isFilled),
    plots: source.plots,
    photos: source.photos,
    annex: source.annex && job.readings.length > 0 ? [readingsTable(entry, record)] : [],
    foot: `Revision ${record.about.revision}. Digest ${record.about.digest}. Values as reported by the technician.`,
    paper: record.units === "si" ? "A4" : "LETTER",
    made: last,
  };
}

/** "The report ends here; behind it: 2 plots and an appendix with all 41 readings …" */
function behindOf({ entry, plots, photos, annex }: ReportSource): string | undefined {
  const { readings } = entry.job;
  const parts = [
    plots.length === 0 ? "" : `${plots.length} ${plots.length === 1 ? "plot" : "plots"}`,
    photos.length === 0 ? "" : `${photos.length} ${photos.length === 1 ? "photo" : "photos"}`,
    !annex || readings.length === 0
      ? ""
      : `an appendix with ${countedReadings(readings.length)} as said, corrections included`,
  ].filter((part) => part !== "");
  const sheet =
    annex || readings.length === 0
      ? ""
      : ` ${sentenceCase(countedReadings(readings.length))} stand in the sheet of readings of this export.`;
  if (parts.length === 0) return sheet === "" ? undefined : sheet.trim();
  return `The report ends here; behind it: ${listed(parts)}.${sheet}`;
}

const isFilled = (block: Block): boolean =>
  block.kind === "lines"
    ? block.lines.length + (block.small?.length ?? 0) > 0
    : block.table.rows.length > 0;

function headOf({ entry, record, site }: ReportSource): Report["head"] {
  const { job, equipment } = entry;
  const gas = gasOf(job, equipment);
  const plate = [
    equipment.kind,
    equipment.model === undefined ? undefined : `model ${equipment.model}`,
    equipment.serial === undefined ? undefined : `serial ${equipment.serial}`,
    equipment.installed === undefined ? undefined : `installed ${equipment.installed}`,
  ];
  const electric = [
    equipment.supply_V === undefined ? undefined : `${equipment.supply_V} V`,
    equipment.phases === undefined ? undefined : `${equipment.phases} phase`,
    equipment.rla_A === undefined ? undefined : `RLA ${equipment.rla_A} A`,
    gas === null ? undefined : gas,
  ];
  const people = job.people.map((person) => {
    const certificate = record.certificates?.[person];
    const name = personName(person, record.names);
    return certificate === undefined ? name : `${name} (certificate ${certificate})`;
  });
  const rows: readonly (readonly [string, string])[] = [
    ["Site", joined([site.street, site.town])],
    ["Unit", joined(plate)],
    ["Plate", joined(electric)],
    ["People", people.join(", ")],
    ["Opened", openedWords(entry, record)],
    ["Serials read", serials(entry)],
  ];
  return rows.filter(([, text]) => text !== "");
}

/** "2026-05-12 07:00; done 2026-05-12 11:20", in the company's time. */
function openedWords({ job }: ExportJob, record: DayRecord): string {
  const time = (iso: string): string => cellTime(record, iso).slice(0, 16);
  const status =
    job.status === "open"
      ? "nobody has reported on it yet"
      : `${statusWords[job.status]} ${time(job.status_at)}`;
  return `${time(job.opened)}; ${status} (${record.zone})`;
}

const joined = (words: readonly (string | undefined)[]): string =>
  words.filter((word) => word !== undefined && word !== "").join(", ");

/** "new compressor": what a serial that was read out stands on, where that was said. */
function ownerOf(job: Job, { subject, value }: Extract<Statement, { kind: "nameplate" }>): string {
  const fitted = job.parts.filter(({ state }) => state === "fitted");
  const owners = fitted.flatMap((part) => {
    const { old, fresh } = partPapers(job, part);
    return old === value ? [`old ${part.part}`] : fresh === value ? [`new ${part.part}`] : [];
  });
  return owners[0] ?? subject ?? "";
}

function serials({ job }: ExportJob): string {
  return job.statements
    .flatMap(({ statement, undone, deleted }) =>
      statement.kind === "nameplate" && undone !== true && deleted !== true
        ? [[ownerOf(job, statement), statement.field, statement.value].join(" ").trim()]
        : [],
    )
    .join(", ");
}
