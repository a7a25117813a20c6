import type { Job } from "../model.ts";
import { foldJob } from "../record/job.ts";
import type { Named } from "../record/names.ts";
import { type Card, cardOf, cardsAt, cardsOfUnit, cardsOn } from "../record/rest-table.ts";
import type { Routable } from "../record/route.ts";
import { allJobs, jobsAtSite, type KnownWorld, type Memory } from "./memory.ts";
import { entriesAt, jobAt } from "./rest.ts";

/** Every name that a message may use: the office's files and what the jobs brought up. */
export function worldOf(memory: Memory): KnownWorld {
  memory.world ??= makeWorld(memory);
  return memory.world;
}

function makeWorld(memory: Memory): KnownWorld {
  const { registry } = memory;
  const jobs = allJobs(memory);
  const sites = [
    ...registry.sites.map((site) => site.name),
    ...registry.equipment.map((unit) => unit.site),
    ...jobs.map((job) => job.site),
    ...memory.rested.map(({ site }) => site),
  ].filter((name) => typeof name === "string");
  const units = [...jobs, ...memory.rested].flatMap(({ equipment, site }) =>
    equipment === null ? [] : [{ tag: equipment, ...(site === null ? {} : { site }) }],
  );
  const people = [...memory.roles.keys(), ...registry.people.map((person) => person.name)];
  return {
    sites: [...new Set(sites)],
    equipment: [...registry.equipment, ...units],
    people: [...new Set(people)],
  };
}

/** The status that a job had at a moment, as it is known now. */
function statusBy(memory: Memory, job: Job, instant: number): Job["status"] {
  if (Date.parse(job.status_at) <= instant) return job.status;
  const until = entriesAt(memory, job.job).filter(({ at }) => Date.parse(at) <= instant);
  return foldJob(until)?.status ?? "open";
}

/** So many jobs at rest of a site or a unit are looked at; the newest count. */
const mostCards = 24;

/** Jobs at hand as routing sees them, with the tags and rooms around each. */
export function routables(memory: Memory, some = allJobs(memory)): readonly Routable[] {
  return some.map((job) => routableAtHand(memory, job));
}

/** Those that what is named may mean, at hand and at rest. */
export function routablesFor(memory: Memory, named: Named): readonly Routable[] {
  const cards = restedFor(memory, named);
  const known = routables(memory, atHandFor(memory, named));
  if (cards.length === 0) return known;
  const rested = cards.map((card) =>
    routable(memory, card, (instant) => restedBy(memory, card, instant)),
  );
  return [...rested, ...known].sort((a, b) => a.job - b.job);
}

/** Jobs at hand of a number or a site that is named; a unit or a room alone may be anywhere. */
function atHandFor(memory: Memory, { jobs, sites, tags, places }: Named): readonly Job[] {
  const anywhere = sites.length === 0 && tags.length + places.length > 0;
  if (anywhere) return allJobs(memory);
  const numbered = jobs.flatMap((job) => memory.jobs.get(job) ?? []);
  const here = sites.flatMap((site) => jobsAtSite(memory, site));
  return [...new Set([...numbered, ...here])].sort((a, b) => a.job - b.job);
}

/** A job is folded anew when anything is said of it, so what routing sees of it holds as long as it does. */
const seen = new WeakMap<Job, { readonly equipment: Equipment; readonly routable: Routable }>();

function routableAtHand(memory: Memory, job: Job): Routable {
  const { equipment } = memory.registry;
  const last = seen.get(job);
  if (last?.equipment === equipment) return last.routable;
  const made = routable(memory, job, (instant) => statusBy(memory, job, instant));
  seen.set(job, { equipment, routable: made });
  return made;
}

function restedBy(memory: Memory, card: Card, instant: number): Job["status"] {
  if (instant >= card.last) return "done";
  const job = jobAt(memory, card.job);
  return job === undefined ? "done" : statusBy(memory, job, instant);
}

function restedFor(memory: Memory, { jobs, sites, tags }: Named): readonly Card[] {
  if (memory.rested.length === 0) return [];
  const cards = [
    ...jobs.flatMap((job) => cardOf(memory.store, job) ?? []),
    ...sites.flatMap((site) => cardsAt(memory.store, site, mostCards)),
    ...sites.flatMap((site) =>
      tags.flatMap((equipment) => cardsOfUnit(memory.store, { site, equipment }, mostCards)),
    ),
    ...(sites.length > 0 ? [] : tags.flatMap((tag) => cardsOn(memory.store, tag, mostCards))),
  ];
  return [...new Map(cards.map((card) => [card.job, card])).values()];
}

function routable(memory: Memory, job: Job | Card, statusAt: Routable["statusAt"]): Routable {
  const { tags, places } = aroundIn(memory.registry.equipment, job.site);
  return {
    job: job.job,
    site: job.site,
    equipment: job.equipment,
    statusAt,
    opened: job.opened,
    people: job.people,
    ...(job.assigned === undefined ? {} : { assigned: job.assigned }),
    ...("second" in job && job.second !== undefined ? { second: job.second } : {}),
    ...("timeline" in job && isQueued(job) ? { queued: true as const } : {}),
    tags,
    places,
  };
}

const later =
  /[.!?]\s+@?\p{Lu}\p{Ll}+(?: (?:and|&|n) @?\p{Lu}\p{Ll}+)?,? (?:after|when|once|later|next|second|last|then)\b/u;

/** "Rory after the deli", "Dov when you can": who is sent has another to do first. */
const isQueued = ({ timeline }: Job): boolean => later.test(timeline[0]?.says ?? "");

type Equipment = Memory["registry"]["equipment"];
type Around = Pick<Routable, "tags" | "places">;

/** The office's list changes seldom, and each message looks at every job at hand. */
const around = new WeakMap<Equipment, Map<string | null | undefined, Around>>();

function aroundIn(equipment: Equipment, site: Job["site"]): Around {
  const sites = around.get(equipment) ?? new Map<string | null | undefined, Around>();
  around.set(equipment, sites);
  const known = sites.get(site);
  if (known !== undefined) return known;
  const here = equipment.filter((unit) => unit.site === site);
  const made = {
    tags: here.flatMap(({ tag }) => (tag === undefined ? [] : [tag])),
    places: here.flatMap((unit) => unit.places ?? []),
  };
  sites.set(site, made);
  return made;
}
