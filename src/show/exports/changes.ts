import type { Job, JobReading, JobStatement } from "../../model.ts";
import { figures } from "../figures.ts";
import { partWords } from "../open-parts.ts";
import { componentName, statusWords } from "../wording.ts";
import type { Change } from "./sheet-source.ts";

type Source = Pick<Change, "who" | "at" | "message">;

/** Where the news of a change came from. */
export interface Backing {
  /** the last entry that was added to the job */
  readonly last: Source;
  readonly takenBackBy: (reading: JobReading) => Source | undefined;
}

/** What is otherwise in a job than it was, in the order of readings, parts, times, the rest. `was` absent: the job is new. */
export function changesOf(
  was: Job | undefined,
  is: Job,
  { last, takenBackBy }: Backing,
): readonly Change[] {
  const change = (what: string, before: string, now: string, source: Source): Change => ({
    job: is.job,
    what,
    was: before,
    is: now,
    ...source,
  });
  const opened =
    was === undefined
      ? [
          change("job opened", "", is.complaint ?? is.equipment ?? is.site ?? "", {
            who: last.who,
            at: is.opened,
            message: is.opened_by,
          }),
        ]
      : [];
  const readings = readingChanges(was, is, takenBackBy).map((one) =>
    change(one.what, one.was, one.is, one.source ?? last),
  );
  const parts = is.parts
    .filter((part) => !was?.parts.some((old) => partKey(old) === partKey(part)))
    .map((part) => change("part", "", partWords(part), part));
  const told = statementChanges(was, is).map(({ what, was: before, is: now, source }) =>
    change(what, before, now, source ?? last),
  );
  const plain = facts(was, is).map(([what, before, now]) =>
    change(what, before, now, sourceOfFact(what, is, readings) ?? last),
  );
  return [...opened, ...readings, ...parts, ...told, ...visitChanges(was, is, last), ...plain];
}

const partKey = (part: Job["parts"][number]): string =>
  [part.part, part.number, part.quantity, part.state, part.due, part.arrived].join("|");

interface News {
  readonly what: string;
  readonly was: string;
  readonly is: string;
  readonly source: Source | undefined;
}

function readingChanges(
  was: Job | undefined,
  is: Job,
  takenBackBy: Backing["takenBackBy"],
): readonly News[] {
  const before = new Map(was?.readings.map((reading) => [reading.id, reading]));
  const changed = is.readings.flatMap((reading) => {
    const old = before.get(reading.id);
    return old === undefined || !stood(old) ? [] : fate(old, reading, { is, takenBackBy });
  });
  const successors = new Set(is.readings.map(({ replaced_by }) => replaced_by));
  const fresh = is.readings
    .filter((r) => !before.has(r.id) && !successors.has(r.id) && stood(r))
    .map((r): News => ({ what: nameOf(r), was: "", is: figures([r]), source: sourceOf(r) }));
  return [...changed, ...fresh];
}

/** What became of a reading that stood. */
function fate(
  old: JobReading,
  now: JobReading,
  { is, takenBackBy }: { readonly is: Job } & Pick<Backing, "takenBackBy">,
): readonly News[] {
  const what = nameOf(now);
  if (stood(now)) {
    return old.doubtful === true && now.doubtful !== true
      ? [{ what, was: "doubtful", is: figures([now]), source: takenBackBy(now) }]
      : [];
  }
  const by = is.readings.find(({ id }) => id === now.replaced_by);
  if (by !== undefined) {
    // the same said again in a rewritten message is nothing new
    const same = nameOf(by) === what && figures([by]) === figures([now]);
    return same && stood(by)
      ? []
      : [{ what: nameOf(by), was: figures([now]), is: figures([by]), source: sourceOf(by) }];
  }
  const gone = now.deleted === true ? "deleted" : "taken back";
  return [{ what, was: figures([now]), is: gone, source: takenBackBy(now) }];
}

const stood = (reading: JobReading): boolean =>
  reading.replaced_by === undefined && reading.undone !== true && reading.deleted !== true;

const sourceOf = (reading: JobReading): Source => ({
  who: reading.who,
  at: reading.received,
  message: reading.message,
});

function nameOf(reading: JobReading): string {
  const subject = reading.subject === undefined ? "" : ` of ${componentName(reading.subject)}`;
  return `${reading.quantity.replaceAll("_", " ")}${subject}`;
}

/** of a message that holds a note; the record has all of it */
const mostLetters = 120;

/** What was said that sheets and report tell beside readings, parts and times. */
const toldAs: Readonly<Partial<Record<JobStatement["statement"]["kind"], string>>> = {
  action: "done",
  observation: "seen",
  nameplate: "read from the plate",
  labor: "hours said",
  note: "noted",
};

/** Statements that came since, and those that were taken back; one said again is the same. */
function statementChanges(was: Job | undefined, is: Job): readonly News[] {
  const [before, now] = [was, is].map(statementsOf);
  const fresh = without(now ?? [], before ?? []).map(
    ({ what, said, of }): News => ({ what, was: "", is: said, source: of }),
  );
  const gone = without(before ?? [], now ?? []).map(
    ({ what, said }): News => ({ what, was: said, is: "taken back", source: undefined }),
  );
  return [...gone, ...fresh];
}

interface Told {
  readonly what: string;
  readonly said: string;
  readonly of: Source;
}

function statementsOf(job: Job | undefined): readonly Told[] {
  const noted = new Set<string>();
  return (job?.statements ?? []).flatMap(({ statement, message, at, who, undone, deleted }) => {
    const what = toldAs[statement.kind];
    const said = saidOf(statement);
    if (what === undefined || said === "" || undone === true || deleted === true) return [];
    // its weight, or what was done, is told already
    if (statement.kind === "action" && /^(?:charged|recovered)$/.test(said)) return [];
    if (statement.kind === "observation" && tellsOfWork(statement.said, message, job)) return [];
    // a note tells the office something where it holds a number: a cylinder's, an invoice's
    if (statement.kind !== "note") return [{ what, said, of: { who, at, message } }];
    if (!/\d/.test(said) || noted.has(message)) return [];
    noted.add(message);
    const says = job?.timeline.find((line) => line.message === message)?.says ?? said;
    return [{ what, said: says.slice(0, mostLetters), of: { who, at, message } }];
  });
}

/** "coil cleaned", as a report says it; else his own words. */
function saidOf(statement: JobStatement["statement"]): string {
  if (statement.kind !== "action" || statement.action === "other") return statement.said.trim();
  return [statement.what, statement.action.replaceAll("_", " ")].filter((word) => word).join(" ");
}

const tellsOfWork = (said: string, message: string, job: Job | undefined): boolean =>
  job?.statements.some(
    (one) =>
      one.message === message &&
      one.statement.kind === "action" &&
      said.includes(one.statement.said.trim()),
  ) === true;

function without(some: readonly Told[], others: readonly Told[]): readonly Told[] {
  const left = new Map<string, number>();
  const keyOf = ({ what, said }: Told): string => `${what}|${said}`;
  for (const one of others) left.set(keyOf(one), (left.get(keyOf(one)) ?? 0) + 1);
  return some.filter((one) => {
    const count = left.get(keyOf(one)) ?? 0;
    left.set(keyOf(one), count - 1);
    return count <= 0;
  });
}

function visitChanges(was: Job | undefined, is: Job, last: Source): readonly Change[] {
  return is.visits.flatMap((visit) => {
    const old = was?.visits.find(
      (one) => one.person === visit.person && one.kind === visit.kind && one.from === visit.from,
    );
    if (old !== undefined && old.to === visit.to) return [];
    const words = (to: string | undefined): string => `${visit.from} to ${to ?? "no end said"}`;
    return [
      {
        job: is.job,
        what: `time (${visit.kind})`,
        was: old === undefined ? "" : words(old.to),
        is: words(visit.to),
        who: visit.person,
        at: visit.to ?? visit.from,
        message: last.message,
      },
    ];
  });
}

/** Who made a fact of the whole job another, where that can be told. */
function sourceOfFact(what: string, is: Job, readings: readonly Change[]): Source | undefined {
  const line = / kg$/.test(what)
    ? readings.findLast((one) => /^mass\b/.test(one.what))
    : what === "status"
      ? is.timeline.findLast(({ at, who }) => at === is.status_at && who === is.person)
      : undefined;
  return line === undefined ? undefined : { who: line.who, at: line.at, message: line.message };
}

/** Facts of the job as a whole that are otherwise than they were. */
function facts(was: Job | undefined, is: Job): readonly (readonly [string, string, string])[] {
  if (was === undefined) return [];
  const both: readonly (readonly [string, (job: Job) => string])[] = [
    ["status", (job) => statusWords[job.status]],
    ["site", (job) => job.site ?? ""],
    ["unit", (job) => job.equipment ?? ""],
    ["complaint", (job) => job.complaint ?? ""],
    ["recovered kg", (job) => String(job.refrigerant.recovered_kg)],
    ["charged kg", (job) => String(job.refrigerant.charged_kg)],
    ["hours on site", (job) => String(job.labor_hours)],
    ["power", (job) => job.machine.power.replaceAll("_", " ")],
    ["leads", (job) => job.machine.leads],
    ["circuit", (job) => job.machine.circuit],
    ["bypassed", (job) => job.machine.bypasses.map(({ what }) => what).join(", ")],
  ];
  return both
    .map(([what, of]) => [what, of(was), of(is)] as const)
    .filter(([, before, now]) => before !== now);
}
