import type { Finding } from "../../model.ts";
import { gasOf } from "../gas-of.ts";
import { stands } from "../standing-reading.ts";
import { personName, verdictWords } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import {
  cellTime,
  type DayRecord,
  type DueItem,
  type ExportJob,
  onDay,
  pounds,
} from "./sheet-source.ts";

/** Every job at which refrigerant went in, with the leak rate that follows and what it is held against. */
export const leakSheet: SheetMaker = {
  name: "leak log",
  spare: true,
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "appliance", kind: "text", about: "tag of the unit" },
    { name: "circuit", kind: "text", about: "where the office's list tells them apart" },
    { name: "gas", kind: "text", about: "from the plate as read, else the office's list" },
    { name: "full charge kg", kind: "number", about: "from the office's list" },
    { name: "full charge lb", kind: "number", about: "the same in pounds" },
    { name: "added kg", kind: "number", about: "put in on this job, as it stands" },
    { name: "added lb", kind: "number", about: "the same in pounds" },
    { name: "recovered kg", kind: "number", about: "taken out on this job" },
    { name: "last weight at", kind: "time", about: "when the last weight was said" },
    { name: "percent a year", kind: "number", about: "leak rate by the method of the office" },
    { name: "verdict", kind: "text", about: "GOOD, WATCH, BAD or NOT JUDGED" },
    {
      name: "what it is held against",
      kind: "text",
      about: "method, limit and reminder, in words",
    },
    { name: "basis", kind: "text", about: "the rule; whether it applies is the office's to say" },
    { name: "next due", kind: "time", about: "the first open date that follows" },
    {
      name: "inspection due",
      kind: "time",
      about: "the next periodic leak check of the appliance; whether it applies is the office's",
    },
    { name: "by", kind: "text", about: "who put it in" },
    { name: "certificate", kind: "text", about: "of that person, from the office's list" },
    { name: "message", kind: "text", about: "message of the last weight" },
  ],
  rows: (record) => record.jobs.flatMap((entry) => leakRows(record, entry)),
};

type Weight = ExportJob["job"]["readings"][number];

/** A row a circuit, where the office's file tells them apart and it was said which; else one a job. */
function leakRows(record: DayRecord, entry: ExportJob): ReturnType<SheetMaker["rows"]> {
  const { job, equipment, judgement } = entry;
  const weights = job.readings.filter(
    (r) => r.quantity === "mass" && r.action !== undefined && r.rating === undefined && stands(r),
  );
  const findings = judgement.findings.filter(({ check }) => check === "leak_rate");
  const apart = equipment.circuits !== undefined && findings.some(({ about }) => isCircuit(about));
  if (!apart) return leakRow(record, entry, { weights, finding: findings[0] });
  return findings.flatMap((finding) =>
    leakRow(record, entry, {
      circuit: finding.about,
      weights: weights.filter(({ subject }) => subject === undefined || subject === finding.about),
      finding,
    }),
  );
}

const isCircuit = (name: string): boolean => /^circuit /i.test(name);

interface Addition {
  readonly circuit?: string;
  readonly weights: readonly Weight[];
  readonly finding: Finding | undefined;
}

function leakRow(
  record: DayRecord,
  entry: ExportJob,
  { circuit, weights, finding }: Addition,
): ReturnType<SheetMaker["rows"]> {
  const { job, equipment } = entry;
  const last = weights.findLast((r) => r.action === "charged" && onDay(record, r.taken));
  if (last === undefined) return [];
  const own = circuit === undefined ? undefined : circuitOf(equipment, circuit);
  const full = own?.charge_kg ?? equipment.charge_kg;
  const added = circuit === undefined ? job.refrigerant.charged_kg : sum(weights, "charged");
  const out = circuit === undefined ? job.refrigerant.recovered_kg : sum(weights, "recovered");
  const due = openDates(record, job.job, circuit);
  const held = finding ?? unrated(added - out, full);
  return [
    [
      job.job,
      job.site,
      job.equipment,
      circuit ?? null,
      own?.refrigerant ?? gasOf(job, equipment),
      full ?? null,
      full === undefined ? null : pounds(full),
      rounded(added),
      pounds(added),
      rounded(out),
      cellTime(record, last.taken),
      rateOf(finding),
      held === undefined ? null : verdictWords[held.level],
      held?.says ?? null,
      held?.basis ?? null,
      due[0]?.due ?? null,
      due.find(({ kind }) => kind === "inspection")?.due ?? null,
      personName(last.who, record.names),
      record.certificates?.[last.who] ?? null,
      last.message,
    ],
  ];
}

/** lb: the smallest full charge that a federal rule covers. Source: 40 CFR 84.106(a). */
const smallestLb = 15;

/** Of a circuit that was emptied and got more than came out the technician is asked nothing; the office has the date. */
function unrated(
  kg: number,
  full: number | undefined,
): Pick<Finding, "level" | "says" | "basis"> | undefined {
  if (kg <= 0 || (full !== undefined && pounds(full) < smallestLb)) return undefined;
  const missing = full === undefined ? "the full charge" : "the date of the last addition";
  return {
    level: "unknown",
    says: `More went in than came out. No leak rate without ${missing}: the office may have it`,
    basis: "40 CFR 82.152",
  };
}

/** What is open of a job, or of one of its circuits, the first date first. */
function openDates(
  { due = [] }: DayRecord,
  job: number,
  circuit: string | undefined,
): readonly DueItem[] {
  return due
    .filter((item) => item.job === job && item.state === "open")
    .filter(({ what }) => circuit === undefined || what.startsWith(circuit))
    .sort((a, b) => (a.due < b.due ? -1 : 1));
}

function circuitOf({ circuits }: ExportJob["equipment"], name: string) {
  const bare = (text: string): string => text.toLowerCase().replace(/^circuit\s*/, "");
  return circuits?.find(({ circuit }) => bare(circuit) === bare(name));
}

const sum = (weights: readonly Weight[], action: "charged" | "recovered"): number =>
  weights.reduce(
    (all, r) => (r.action === action && typeof r.value === "number" ? all + r.value : all),
    0,
  );

function rateOf(finding: Finding | undefined): number | null {
  const percent = finding?.values.leak_rate_percent_per_year;
  return percent === undefined ? null : Number(percent.toPrecision(3));
}

const rounded = (kg: number): number => Math.round(kg * 1000) / 1000;
