import type { EquipmentFacts, Job, Judgement } from "../../model.ts";
import { localTime } from "../local-time.ts";

/** A job with what else its rows need. */
export interface ExportJob {
  readonly job: Job;
  readonly equipment: EquipmentFacts;
  readonly judgement: Judgement;
}

/** The record of one day, ready to be put into sheets. */
export interface DayRecord {
  readonly jobs: readonly ExportJob[];
  /** "2026-05-12", the day in `zone` */
  readonly day: string;
  /** IANA name or offset */
  readonly zone: string;
  readonly names: Readonly<Record<string, string>>;
}

/** True where the moment falls on the record's day. */
export function onDay(record: DayRecord, iso: string): boolean {
  return localTime(iso, record.zone)?.date === record.day;
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
