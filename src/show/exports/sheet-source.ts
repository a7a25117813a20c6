import type { EquipmentFacts, Job, JobPart, Judgement, UnitHabit } from "../../model.ts";
import { localTime } from "../local-time.ts";

/** A job with what else its rows need. */
export interface ExportJob {
  readonly job: Job;
  readonly equipment: EquipmentFacts;
  readonly judgement: Judgement;
  /** as it was judged before anything was changed on the machine; absent where nothing was */
  readonly beforeWork?: { readonly at: string; readonly judgement: Judgement };
  /** the job before it on the same unit */
  readonly before?: { readonly job: Job; readonly judgement: Judgement };
}

/** What became another than an earlier export said. */
export interface Change {
  readonly job: number;
  readonly what: string;
  readonly was: string;
  readonly is: string;
  readonly who: string;
  /** ISO */
  readonly at: string;
  readonly message: string;
}

/** Something that a rule or the office's own habit wants by a day. */
export interface DueItem {
  readonly job: number;
  readonly kind: "repair" | "follow_up" | "inspection";
  readonly what: string;
  /** "2026-06-11" */
  readonly due: string;
  readonly basis: string;
  readonly state: "open" | "done";
  /** what closed it, or what would */
  readonly proof: string;
}

/** What an export is of, and where it stands among those before it. */
export interface About {
  /** "day 2026-05-12", "job 14" */
  readonly scope: string;
  /** beginning of its files' names */
  readonly file: string;
  readonly revision: number;
  /** the revision that its changes count from */
  readonly since?: number;
  /** ISO: the last entry that it holds */
  readonly asOf: string;
  /** of the whole store as it was then */
  readonly digest: string;
}

/** The record of some days or some jobs, ready to be put into sheets. */
export interface DayRecord {
  readonly jobs: readonly ExportJob[];
  /** "2026-05-12", the first day in `zone`; absent: all that is known of its jobs */
  readonly day?: string;
  /** the last day, where it is another */
  readonly to?: string;
  /** IANA name or offset */
  readonly zone: string;
  readonly names: Readonly<Record<string, string>>;
  readonly units?: UnitHabit;
  /** hours are rounded up to so many minutes by the company's rule */
  readonly rounding_min?: number;
  /** person -> certificate */
  readonly certificates?: Readonly<Record<string, string>>;
  /** where the company's parts list says that a part comes from */
  readonly supplierOf?: (part: JobPart) => string | undefined;
  /** the cylinder that was said with a message's weight */
  readonly cylinderOf?: (job: Job, message: string) => string | undefined;
  readonly due?: readonly DueItem[];
  readonly changes?: readonly Change[];
  readonly about?: About;
}

/** True where the moment falls on the record's days. */
export function onDay(record: DayRecord, iso: string): boolean {
  if (record.day === undefined) return true;
  const date = localTime(iso, record.zone)?.date ?? "";
  return date >= record.day && date <= (record.to ?? record.day);
}

/** "2026-05-12 07:40:05" on the company's clock; the text itself where it is no time. */
export function cellTime(record: DayRecord, iso: string): string {
  const local = localTime(iso, record.zone);
  return local === undefined ? iso : `${local.date} ${local.seconds}`;
}

/** True where the job was opened, worked on or written to on the record's day. */
export function touchedOnDay(record: DayRecord, job: Job): boolean {
  return (
    onDay(record, job.opened) ||
    onDay(record, job.status_at) ||
    job.timeline.some((t) => onDay(record, t.at)) ||
    job.readings.some((r) => onDay(record, r.taken) || onDay(record, r.received)) ||
    job.statements.some((s) => onDay(record, s.at)) ||
    job.visits.some((v) => onDay(record, v.from) || (v.to !== undefined && onDay(record, v.to)))
  );
}

/** Hours of a stretch that lie on the record's day; `now` closes none: an open one counts 0. */
export function hoursOf(from: string, to: string | undefined): number {
  if (to === undefined) return 0;
  return Math.max(0, Date.parse(to) - Date.parse(from)) / 3_600_000;
}

/** Hours with two digits: a minute is 0.02 h, finer is not known. */
export function roundedHours(hours: number): number {
  return Math.round(hours * 100) / 100;
}

/** Hours by the company's rule, up to the next whole step; null where it has none. */
export function hoursByRule(record: DayRecord, hours: number): number | null {
  const step = record.rounding_min;
  if (step === undefined || step <= 0) return null;
  return roundedHours((Math.ceil((hours * 60) / step - 1e-9) * step) / 60);
}

/** kg in a pound, exact by definition (NIST SP 811). */
const kgPerPound = 0.45359237;

/** kg as pounds, two digits. */
export function pounds(kg: number): number {
  return Math.round((kg / kgPerPound) * 100) / 100;
}
