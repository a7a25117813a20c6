import { digestOf, type Link } from "../record/chain.ts";
import { readLinks, spokenFor } from "../record/entries-table.ts";
import { settleRevision } from "../record/exports-table.ts";
import { fingerprint } from "../record/fingerprint.ts";
import { peopleById } from "../record/people-table.ts";
import { headsOutside, sealed } from "../record/sealed.ts";
import { daySheets } from "../show/exports/day.ts";
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

/** What the revision is counted by: the same facts again are the same export. */
const unsettled = new Set(["about", "changes"]);

/** The record of a scope with its revision, what changed since the one before, and its proof. */
export function exportRecord(bot: Source, scope: ExportScope): ExportRecord {
  const { memory, store } = bot;
  const record = scopeRecord(memory, scope);
  const shown = record.jobs.map(({ job }) => showJob(memory, job));
  const sheets = daySheets(record).filter(({ name }) => !unsettled.has(name));
  const links = readLinks(store);
  const { now, before } = settleRevision(store, scopeName(scope), {
    entries: links.length,
    digest: digestOf(links),
    content: fingerprint(inOneOrder([sheets.map(({ rows }) => rows), shown])),
  });
  const kept = links.slice(0, now.entries);
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
    chain: chainOf(bot, record, kept),
    changes: before === undefined ? [] : changesOf(bot, record, kept.slice(0, before.entries)),
    reports: reportsOf(bot, settled, { annex: scope.kind === "job" }),
    seal: sealed,
    fingerprint,
  };
}

/** The last moment that anything here was written. */
function lastOf({ jobs }: DayRecord, links: readonly Link[]): string {
  const numbers = new Set(jobs.map(({ job }) => job.job));
  const own = links.filter(({ job }) => numbers.has(job)).map(({ at }) => at);
  return own.reduce((last, at) => (Date.parse(at) > Date.parse(last) ? at : last), own[0] ?? "");
}

function changesOf(
  { memory }: Source,
  { jobs }: DayRecord,
  known: readonly Link[],
): readonly Change[] {
  const places = new Map<number, number>();
  for (const { job, place } of known) places.set(job, place);
  return jobs.flatMap(({ job }) =>
    changesSince(entriesAt(memory, job.job), places.get(job.job) ?? 0),
  );
}

function chainOf({ store }: Source, { jobs }: DayRecord, links: readonly Link[]): Chain {
  const numbers = new Set(jobs.map(({ job }) => job.job));
  const entries = links.filter(({ job }) => numbers.has(job));
  const names = peopleById(store);
  const people = [...new Set(entries.map(({ person }) => person))].sort((a, b) => a - b);
  return {
    entries,
    other_heads: headsOutside(links, numbers),
    words: entries.flatMap((link) => {
      const spoken = spokenFor(store, link);
      return typeof spoken === "string" ? [] : [{ job: link.job, place: link.place, ...spoken }];
    }),
    people: Object.fromEntries(
      people.map((person) => [person, names.get(person) ?? `person ${person}`]),
    ),
  };
}
