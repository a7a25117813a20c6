import type { Job } from "../model.ts";
import { type Named, plainTag } from "./names.ts";

/** What routing needs to know of a job. */
export interface Routable
  extends Pick<Job, "job" | "site" | "equipment" | "opened" | "people" | "assigned" | "second"> {
  /** the status that it had at a moment, so that a late message finds its own time's jobs */
  readonly statusAt: (instant: number) => Job["status"];
  /** tags and rooms that hang on the job's unit or stand at its site */
  readonly tags: readonly string[];
  /** its call says that who is sent does another first: "Rory after the deli" */
  readonly queued?: true;
  readonly places: readonly string[];
}

export type Route =
  | { readonly kind: "job"; readonly job: number; readonly by: "thread" | "name" | "hand" }
  | { readonly kind: "ask"; readonly candidates: readonly number[] }
  | { readonly kind: "none" };

export interface Asked {
  readonly named: Named;
  /** the job of the thread it stands in */
  readonly thread: number | undefined;
  /** its author's job in hand in that channel at that time */
  readonly hand: number | undefined;
  readonly person: string;
  readonly instant: number;
}

/** Whose job a message is: by thread, else by what it names, else by the job in hand, else none. */
export function route(asked: Asked, jobs: readonly Routable[]): Route {
  if (asked.thread !== undefined) return { kind: "job", job: asked.thread, by: "thread" };
  const named = jobNamed(asked, jobs);
  if (named !== undefined) return named;
  if (asked.hand !== undefined) return { kind: "job", job: asked.hand, by: "hand" };
  return { kind: "none" };
}

const isSent = ({ assigned, second }: Routable, person: string): boolean =>
  person === assigned || person === second;

/** The one open job that somebody was sent to: "here" means that one, where he has none in hand. */
export function sentTo(
  asked: Pick<Asked, "person" | "instant">,
  jobs: readonly Routable[],
): number | undefined {
  const open = jobs.filter(
    (job) =>
      isSent(job, asked.person) &&
      Date.parse(job.opened) <= asked.instant &&
      job.statusAt(asked.instant) !== "done",
  );
  // what he has left already waits for something else
  const fresh = open.filter((job) => job.statusAt(asked.instant) !== "left_site");
  const left = fresh.length > 0 ? fresh : open;
  const first = left.filter(({ queued }) => queued !== true);
  const [only, ...others] = first.length > 0 ? first : left;
  return others.length === 0 ? only?.job : undefined;
}

/** The only job that is open at all, nobody sent to it and nobody on it: who sets out is on that one. */
export function unclaimed(
  { instant }: Pick<Asked, "instant">,
  jobs: readonly Routable[],
): number | undefined {
  const [only, ...others] = jobs.filter(
    (job) => Date.parse(job.opened) <= instant && job.statusAt(instant) !== "done",
  );
  const free = only?.assigned === undefined && only?.second === undefined;
  return free && only?.people.length === 0 && others.length === 0 ? only.job : undefined;
}

/** The one job that somebody left and nobody closed: his "done" afterwards is of that one. */
export function leftOpen(
  asked: Pick<Asked, "person" | "instant">,
  jobs: readonly Routable[],
): number | undefined {
  const [only, ...others] = jobs.filter(
    (job) =>
      job.people.includes(asked.person) &&
      Date.parse(job.opened) <= asked.instant &&
      job.statusAt(asked.instant) === "left_site",
  );
  return others.length === 0 ? only?.job : undefined;
}

/** The job that a message names, whatever its thread; undefined where it names none. */
export function jobNamed(asked: Asked, jobs: readonly Routable[]): Route | undefined {
  const byNumber = jobs.find((job) => asked.named.jobs.includes(job.job));
  if (byNumber !== undefined) return { kind: "job", job: byNumber.job, by: "name" };
  const scored = jobs
    .map((job) => ({ job, score: scoreOf(asked.named, job) }))
    .filter(({ score }) => score > 0);
  const best = Math.max(0, ...scored.map(({ score }) => score));
  if (best === 0) return undefined;
  if (isNumberAlone(asked, best, jobs)) return undefined;
  const matching = scored.filter(({ score }) => score === best).map(({ job }) => job);
  const held = matching.find((job) => job.job === asked.hand);
  const isOpen = (job: Routable): boolean => job.statusAt(asked.instant) !== "done";
  // what is in hand and done gives way to what is open
  if (held !== undefined && (isOpen(held) || !matching.some(isOpen))) {
    return { kind: "job", job: held.job, by: "name" };
  }
  const chosen = narrow(matching, asked);
  const [first] = chosen;
  if (first === undefined) return undefined;
  if (chosen.length === 1) return { kind: "job", job: first.job, by: "name" };
  return { kind: "ask", candidates: chosen.map(({ job }) => job) };
}

/**
 * "Water 27 in 31 out": of who is at another site a figure is no room of this one, and what he reads stays there.
 * `best`: how well the best job fits, 1 by a room alone.
 */
function isNumberAlone(asked: Asked, best: number, jobs: readonly Routable[]): boolean {
  const { places } = asked.named;
  const here = jobs.find(({ job }) => job === asked.hand);
  if (
    best > 1 ||
    asked.hand === undefined ||
    !places.every((place) => /^\D{0,6}\d+[a-z]?$/i.test(place))
  )
    return false;
  const there = jobs.filter((job) => places.some((place) => job.places.includes(place)));
  return here === undefined
    ? there.every(({ job }) => job !== asked.hand)
    : here.statusAt(asked.instant) !== "done" && there.every(({ site }) => site !== here.site);
}

function scoreOf(named: Named, job: Routable): number {
  const site = job.site !== null && named.sites.includes(job.site) ? 8 : 0;
  const own = job.equipment === null ? "" : plainTag(job.equipment);
  const tag = named.tags.some((other) => plainTag(other) === own)
    ? 4
    : named.tags.some((other) => job.tags.includes(other))
      ? 2
      : 0;
  const place = named.places.some((other) => job.places.includes(other)) ? 1 : 0;
  // a site that is named and is not this job's speaks against it
  if (named.sites.length > 0 && site === 0) return 0;
  return site + tag + place;
}

/** Of jobs that fit equally: those opened by then, still open, the author's own; of one unit the latest. */
function narrow(jobs: readonly Routable[], asked: Asked): readonly Routable[] {
  const keep = (
    some: readonly Routable[],
    test: (job: Routable) => boolean,
  ): readonly Routable[] => {
    const kept = some.filter(test);
    return kept.length > 0 ? kept : some;
  };
  let left = keep(jobs, (job) => Date.parse(job.opened) <= asked.instant);
  left = keep(left, (job) => job.statusAt(asked.instant) !== "done");
  left = latestOfUnit(left);
  if (left.length === 1) return left;
  left = keep(left, (job) => job.people.includes(asked.person));
  if (left.length === 1) return left;
  return keep(left, (job) => isSent(job, asked.person));
}

function latestOfUnit(jobs: readonly Routable[]): readonly Routable[] {
  const units = new Map<string, Routable>();
  for (const job of jobs) {
    const unit = `${job.site ?? ""}\n${job.equipment ?? ""}`;
    const known = units.get(unit);
    if (known === undefined || Date.parse(known.opened) <= Date.parse(job.opened)) {
      units.set(unit, job);
    }
  }
  return [...units.values()];
}
