import type { Sheet } from "../model.ts";
import { digestOf } from "../record/chain.ts";
import { linksAt, type Mark, readMarks, spokenFor } from "../record/entries-table.ts";
import { settleRevision } from "../record/exports-table.ts";
import { fingerprint, fingerprintOf } from "../record/fingerprint.ts";
import { peopleById } from "../record/people-table.ts";
import { headsOutside, sealed } from "../record/sealed.ts";
import { daySheets, sheetsOfWork } from "../show/exports/day.ts";
import type { Chain, ExportRecord } from "../show/exports/export-record.ts";
import { inOneOrder } from "../show/exports/in-one-order.ts";
import type { About, Change, DayRecord } from "../show/exports/sheet-source.ts";
import { changesSince } from "./changes-since.ts";
import { scopeRecord } from "./day-record.ts";
import type { Bot } from "./desk.ts";
import { type ExportScope, scopeFile, scopeName } from "./export-scope.ts";
import { reportsOf } from "./reports-of.ts";
import { entriesAt } from "./rest.ts";
import { showJob } from "./show-job.ts";

type Source = Pick<Bot, "store" | "memory">;

/** The record of a scope with its revision, what changed since the one before, and its proof. */
export function exportRecord(bot: Source, scope: ExportScope): ExportRecord {
  const { memory, store } = bot;
  const record = scopeRecord(memory, scope);
  const shown = record.jobs.map(({ job }) => showJob(memory, job));
  const sheets = daySheets(record);
  const marks = readMarks(store);
  const { now, before } = settleRevision(store, scopeName(scope), {
    entries: marks.length,
    digest: digestOf(marks),
    content: fingerprintOf(contentOf(sheetsOfWork(sheets), shown)),
  });
  const kept = marks.slice(0, now.entries);
  const about: About = {
    scope: scopeName(scope),
    file: scopeFile(scope),
    revision: now.revision,
    ...(before === undefined ? {} : { since: before.revision }),
    asOf: lastOf(record, kept),
    digest: now.digest,
  };
  const settled = { ...record, about };
  return {
    ...settled,
    units: memory.settings.units,
    shown,
    sheets,
    chain: chainOf(bot, record, kept),
    changes: before === undefined ? [] : changesOf(bot, record, kept.slice(0, before.entries)),
    reports: reportsOf(bot, settled, { annex: scope.kind === "job" }),
    seal: sealed,
    fingerprint,
  };
}

/** What the revision is counted by, taken in piece by piece. */
function* contentOf(sheets: readonly Sheet[], shown: readonly object[]): Generator<string> {
  yield "[[";
  for (const [index, { rows }] of sheets.entries())
    yield* [index > 0 ? "," : "", JSON.stringify(rows)];
  yield "],[";
  for (const [index, job] of shown.entries()) yield* [index > 0 ? "," : "", inOneOrder(job)];
  yield "]]";
}

/** The last moment that anything here was written. */
function lastOf({ jobs }: DayRecord, marks: readonly Mark[]): string {
  const numbers = new Set(jobs.map(({ job }) => job.job));
  const own = marks.filter(({ job }) => numbers.has(job)).map(({ at }) => at);
  return own.reduce((last, at) => (Date.parse(at) > Date.parse(last) ? at : last), own[0] ?? "");
}

function changesOf(
  { memory }: Source,
  { jobs }: DayRecord,
  known: readonly Mark[],
): readonly Change[] {
  const places = new Map<number, number>();
  for (const { job, place } of known) places.set(job, place);
  return jobs.flatMap(({ job }) =>
    changesSince(entriesAt(memory, job.job), places.get(job.job) ?? 0),
  );
}

function chainOf({ store }: Source, { jobs }: DayRecord, marks: readonly Mark[]): Chain {
  const numbers = new Set(jobs.map(({ job }) => job.job));
  const own = marks.filter(({ job }) => numbers.has(job));
  const names = peopleById(store);
  const people = [...new Set(own.map(({ person }) => person))].sort((a, b) => a - b);
  return {
    entries: again(() => linksAt(store, own)),
    other_heads: headsOutside(marks, numbers),
    words: again(() => wordsOf(store, own)),
    people: Object.fromEntries(
      people.map((person) => [person, names.get(person) ?? `person ${person}`]),
    ),
  };
}

function* wordsOf(store: Source["store"], marks: readonly Mark[]): Generator<object> {
  for (const link of linksAt(store, marks)) {
    const spoken = spokenFor(store, link);
    if (typeof spoken !== "string") yield { job: link.job, place: link.place, ...spoken };
  }
}

/** What is made anew each time that somebody goes through it. */
const again = <T>(make: () => Iterator<T>): Iterable<T> => ({ [Symbol.iterator]: make });
