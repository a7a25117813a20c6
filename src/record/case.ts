import type {
  Case,
  CaseNote,
  EquipmentFacts,
  Job,
  PastCase,
  SiteFacts,
  TreeNode,
} from "../model.ts";
import { withCorrections } from "./corrected-notes.ts";
import { limitsFor } from "./limits-for.ts";
import { plainTag } from "./names.ts";
import { isCurrent } from "./readings.ts";
import type { Registry } from "./registry.ts";
import { unitsAt } from "./units-at.ts";

/** What the office's files say of a job's unit; its tag and site alone where they say nothing. */
export function equipmentOf(job: Job, registry: Registry): EquipmentFacts {
  const { byTag } = unitsAt(registry.equipment, job.site);
  const here = job.equipment === null ? undefined : byTag.get(plainTag(job.equipment));
  return (
    here ?? {
      ...(job.equipment === null ? {} : { tag: job.equipment }),
      ...(job.site === null ? {} : { site: job.site }),
    }
  );
}

/** What the office's files say of a job's site, with the tree of its units and rooms. */
export function siteOf(job: Job, registry: Registry): SiteFacts {
  const site = registry.sites.find(({ name }) => name === job.site);
  const tree = unitsAt(registry.equipment, job.site).all.flatMap(({ tag, parent, kind, places }) =>
    tag === undefined
      ? []
      : [
          {
            tag,
            ...(parent === undefined ? {} : { parent }),
            ...(kind === undefined ? {} : { kind }),
            ...(places === undefined ? {} : { places }),
          },
        ],
  );
  return {
    ...(site ?? (job.site === null ? {} : { name: job.site })),
    ...(tree.length === 0 ? {} : { tree }),
  };
}

/**
 * A job and all that is known around it, for judging: only what stands and is not doubted.
 * `around`: other jobs, of which those on its unit are its history and those at its site tell its tree.
 */
export function caseOf(job: Job, registry: Registry, around: readonly Job[], at: string): Case {
  const told = toldAt(job, around, at);
  const equipment = equipmentOf(job, registry);
  return {
    equipment,
    site: { ...siteOf(job, registry), ...(told.length === 0 ? {} : { told }) },
    notes: caseNotes(job),
    history: earlierJobs(job, around).map(pastCase),
    codes: registry.codes,
    limits: limitsFor(equipment, job.site, registry.limits),
    at,
  };
}

/** What was told of a site's tree on its other jobs by a moment, oldest first. */
function toldAt(job: Job, around: readonly Job[], at: string): readonly TreeNode[] {
  if (job.site === null) return [];
  const moment = Date.parse(at);
  const lines: Job["statements"][number][] = [];
  for (const other of around) {
    if (other.job === job.job || other.site !== job.site) continue;
    for (const line of treeLines(other)) if (Date.parse(line.at) <= moment) lines.push(line);
  }
  return lines
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at))
    .flatMap(({ statement }) => (statement.kind === "tree" ? statement.nodes : []));
}

/** A site's other jobs are looked through at each message, and few of them tell of its tree. */
const treesTold = new WeakMap<Job, Job["statements"]>();

function treeLines(job: Job): Job["statements"] {
  const known = treesTold.get(job);
  if (known !== undefined) return known;
  const lines = job.statements.filter(
    ({ statement, undone, deleted }) =>
      statement.kind === "tree" && undone !== true && deleted !== true,
  );
  treesTold.set(job, lines);
  return lines;
}

/** Earlier visits are the same at each message: their cases are made once. */
const pastCases = new WeakMap<Job, PastCase>();

function pastCase(job: Job): PastCase {
  const known = pastCases.get(job);
  if (known !== undefined) return known;
  const made: PastCase = {
    job: job.job,
    ...(job.status === "open" ? {} : { closed: job.status_at }),
    ...(job.equipment === null ? {} : { equipment: job.equipment }),
    notes: caseNotes(job),
  };
  pastCases.set(job, made);
  return made;
}

function caseNotes(job: Job): readonly CaseNote[] {
  const readings = byMessage(
    job.readings.filter((reading) => isCurrent(reading) && reading.doubtful !== true),
  );
  const statements = byMessage(
    job.statements.filter((line) => line.undone !== true && line.deleted !== true),
  );
  const notes = job.timeline.map(
    ({ message, at, who, says }): CaseNote => ({
      at,
      who,
      readings: readings.get(message) ?? [],
      statements: (statements.get(message) ?? []).map((line) => line.statement),
      text: says,
    }),
  );
  return withCorrections(job, notes);
}

function byMessage<T extends { readonly message: string }>(
  some: readonly T[],
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of some) {
    const known = groups.get(one.message);
    if (known === undefined) groups.set(one.message, [one]);
    else known.push(one);
  }
  return groups;
}

/** Earlier jobs on the same unit of the same site, oldest first. */
export function earlierJobs(job: Job, jobs: readonly Job[]): readonly Job[] {
  if (job.site === null || job.equipment === null) return [];
  const { site, equipment } = job;
  const tag = plainTag(equipment);
  const opened = Date.parse(job.opened);
  return jobs
    .filter(
      (other) =>
        other.job !== job.job &&
        other.site === site &&
        other.equipment !== null &&
        // the same letters need not be made plain
        (other.equipment === equipment || plainTag(other.equipment) === tag) &&
        Date.parse(other.opened) < opened,
    )
    .sort((a, b) => Date.parse(a.opened) - Date.parse(b.opened));
}
