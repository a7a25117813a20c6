import type { Job, JobPart } from "../../model.ts";
import {
  cellTime,
  type DayRecord,
  type ExportJob,
  hoursOf,
  pounds,
  roundedHours,
} from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { foundNotFixed } from "../found-not-fixed.ts";
import { gasOf } from "../gas-of.ts";
import { leftWords } from "../machine-words.ts";
import { stands } from "../standing-reading.ts";
import { worstFirst } from "../touched.ts";
import { personName, sentence, sentenceCase } from "../wording.ts";
import type { Block } from "./report.ts";

const mostDone = 10;

/** What was done to the machine, each thing once, in its order. */
export function doneBlock({ job }: ExportJob): Block {
  const done = job.statements.flatMap(({ statement, undone, deleted }) => {
    if (undone === true || deleted === true || statement.kind !== "action") return [];
    if (statement.planned === true || quiet.has(statement.action)) return [];
    const words = statement.action.replaceAll("_", " ");
    return [statement.what === undefined ? words : `${statement.what} ${words}`];
  });
  const said = [...new Set(done)].slice(0, mostDone);
  return {
    kind: "lines",
    title: "Done",
    lines: said.length === 0 ? [] : [sentence(sentenceCase(said.join(", ")))],
  };
}

/** Steps on the way that change nothing for whoever reads the report. */
const quiet: ReadonlySet<string> = new Set(["other", "waited", "called", "tested", "stopped"]);

export function partsBlock({ job }: ExportJob, record: DayRecord): Block {
  return {
    kind: "table",
    title: "Parts",
    table: {
      columns: [
        { says: "Part", share: 0.28 },
        { says: "Number", share: 0.18 },
        { says: "Quantity", share: 0.1 },
        { says: "State", share: 0.44 },
      ],
      rows: partsOnce(job.parts).map((states) => {
        const [part] = states;
        const quantity = states.findLast((one) => one.quantity !== undefined)?.quantity;
        return [
          part?.part ?? "",
          states.find(({ number }) => number !== undefined)?.number ?? "",
          quantity === undefined ? "" : String(quantity),
          states.map((one) => stateOf(one, record)).join("; "),
        ];
      }),
    },
  };
}

/** What was said of a part, in its order, the same part in one row. */
function partsOnce(parts: readonly JobPart[]): readonly (readonly JobPart[])[] {
  const rows = new Map<string, JobPart[]>();
  for (const part of parts) {
    const key = `${part.part}|${part.number ?? ""}`;
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [part]);
    else row.push(part);
  }
  return [...rows.values()];
}

function stateOf(part: JobPart, record: DayRecord): string {
  const day = part.due_on ?? part.due;
  const due = day === undefined ? "" : `, due ${day}`;
  const decided = part.decided === undefined ? "" : `, ${part.decided}`;
  return `${part.state}${decided} ${cellTime(record, part.at).slice(5, 16)}${due}`;
}

/** Weights in and out, and their sums in both units. */
export function refrigerantBlock({ job, equipment }: ExportJob, record: DayRecord): Block {
  const weights = job.readings.filter(
    (r) => r.quantity === "mass" && r.action !== undefined && stands(r),
  );
  const sum = (kg: number): string => `${pounds(kg)} lb (${Math.round(kg * 1000) / 1000} kg)`;
  const { recovered_kg, charged_kg } = job.refrigerant;
  const rows = weights.map((r) => [
    cellTime(record, r.taken).slice(5, 16),
    figures([r]),
    record.cylinderOf?.(job, r.message) ?? "",
    personName(r.who, record.names),
  ]);
  return {
    kind: "table",
    title: `Refrigerant${gasOf(job, equipment) === null ? "" : ` ${gasOf(job, equipment)}`}`,
    table: {
      columns: [
        { says: "When", share: 0.15 },
        { says: "Weight, as said", share: 0.38 },
        { says: "Cylinder", share: 0.12 },
        { says: "By", share: 0.35 },
      ],
      rows:
        rows.length === 0
          ? []
          : [
              ...rows,
              ["In all", `recovered ${sum(recovered_kg)}, charged ${sum(charged_kg)}`, "", ""],
            ],
    },
  };
}

/** How the machine was left, and what is advised. */
export function leftBlock({ job, judgement }: ExportJob, record: DayRecord): Block {
  const left = leftWords(job.machine, record.names);
  const advice = adviceOf(job, judgement.findings);
  const open = foundNotFixed(job).map(({ what }) => what);
  const standing = [
    ...(left.length === 0 ? [] : [sentence(sentenceCase(left.join("; ")))]),
    ...(open.length === 0 ? [] : [sentence(`Found and not mended: ${open.join("; ")}`)]),
  ];
  return {
    kind: "lines",
    title: "Left as",
    lines: [
      ...(standing.length === 0 ? [] : [standing.join(" ")]),
      ...advice.map((says) => sentence(`Advised: ${says}`)),
    ],
  };
}

/** What was found bad and nothing done about: a part asked for and not fitted, a verdict that stands. */
function adviceOf(job: Job, findings: ExportJob["judgement"]["findings"]): readonly string[] {
  if (job.parts.some(({ state }) => state === "fitted")) return [];
  const [worst] = worstFirst(findings).filter(({ level }) => level === "bad");
  return worst === undefined || job.status !== "done"
    ? []
    : [`${worst.about}: ${worst.brief ?? worst.says}; nothing was fitted for it`];
}

export function timesBlock({ job }: ExportJob, record: DayRecord): Block {
  return {
    kind: "table",
    title: job.labor_hours > 0 ? `Times, ${job.labor_hours} h on site in all` : "Times",
    table: {
      columns: [
        { says: "Person", share: 0.3 },
        { says: "Kind", share: 0.15 },
        { says: "From", share: 0.2 },
        { says: "To", share: 0.2 },
        { says: "Hours", share: 0.15 },
      ],
      rows: job.visits.map((visit) => [
        personName(visit.person, record.names),
        visit.kind,
        cellTime(record, visit.from).slice(5, 16),
        visit.to === undefined ? "end not said" : cellTime(record, visit.to).slice(5, 16),
        visit.to === undefined ? "" : String(roundedHours(hoursOf(visit.from, visit.to))),
      ]),
    },
  };
}

/** What the record does not hold, and how far it can be trusted; `behind`: what follows the report. */
export function lackingBlock({ job }: ExportJob, behind: string | undefined): Block {
  const { gaps } = job.file;
  const lacking = gaps.length === 0 ? [] : [sentence(`Not in the record: ${gaps.join("; ")}`)];
  const unread =
    job.unread.length === 0
      ? []
      : [sentence(`Said and not understood: ${counted(job.unread.map(({ text }) => text))}`)];
  return {
    kind: "lines",
    title: "Limits",
    lines: [...lacking, ...unread],
    small: [
      "Verdicts compare what was reported with the limits named beside them. They replace no inspection, no local code and no licensed judgement; codes and the maker's instructions go first.",
      "Before work on this unit: lock it out, prove it dead, and expect pressure and stored charge wherever the record does not say otherwise.",
      ...(behind === undefined ? [] : [behind]),
    ],
  };
}

/** Each text once, with how often: "1 (3 times), 14". */
function counted(texts: readonly string[]): string {
  return [...new Set(texts)]
    .map((text) => {
      const times = texts.filter((one) => one === text).length;
      return times === 1 ? text : `${text} (${times} times)`;
    })
    .join(", ");
}
