import type { Job, Judgement, Role, RunningClock } from "../model.ts";
import { equipmentOf } from "../record/case.ts";
import { clocksOf } from "../record/clocks.ts";
import { isDirect } from "../record/direct.ts";
import { entriesAtHand, entriesOf } from "../record/entries-table.ts";
import type { Entry } from "../record/entry.ts";
import { fileOf } from "../record/gaps.ts";
import { gripsOf, type PersonGrip } from "../record/grips.ts";
import { lastHeard, lastRoles } from "../record/inbox.ts";
import { foldJob } from "../record/job.ts";
import type { World } from "../record/names.ts";
import { mayBeQuiet } from "../record/quiet-jobs.ts";
import { type Registry, readRegistry } from "../record/registry.ts";
import { type Card, takeFromRest, unitsAtRest } from "../record/rest-table.ts";
import { readSettings, type Settings } from "../record/settings.ts";
import type { Store } from "../record/store.ts";
import { clockText } from "../show/clock-words.ts";
import { zoneOf } from "../show/local-time.ts";
import { recallTold, type Told } from "./cautioned.ts";
import { namesOf, personSaid } from "./people.ts";

/** Everything derived from the store that work needs again and again; the store can always make it anew. */
export interface Memory extends Told {
  readonly entries: Map<number, readonly Entry[]>;
  readonly jobs: Map<number, Job>;
  /** the jobs at hand by site, oldest number first */
  readonly sites: Map<Job["site"], readonly Job[]>;
  /** those of the jobs at hand on which a clock runs or somebody may fall quiet */
  readonly watched: Map<number, Job>;
  /** "channel\nthread" -> the job that it opened or named */
  readonly threads: Map<string, number>;
  /** "channel\nperson" -> the grips of that person there, by job */
  readonly grips: Map<string, Map<number, readonly PersonGrip[]>>;
  /** the keys of `grips` under which a job stands */
  readonly gripped: Map<number, ReadonlySet<string>>;
  readonly clocks: Map<number, readonly RunningClock[]>;
  readonly judged: Map<number, Judgement>;
  readonly roles: Map<string, Role>;
  /** ms of the last word of each person that was worked on */
  readonly heard: Map<string, number>;
  registry: Registry;
  settings: Settings;
  readonly store: Store;
  /** jobs at rest that were read lately */
  readonly fetched: Map<number, Fetched>;
  /** the last that rest of a unit, by site and unit, until a job goes to rest or leaves it */
  readonly cards: Map<string, readonly Card[]>;
  /** grows with whatever is learnt: what was found out before it may no longer hold */
  turn: number;
  /** sites and units of jobs at rest */
  readonly rested: Rested[];
  /** what may be named, until a job, a person or an import adds to it */
  world?: KnownWorld | undefined;
}

/** A job with its entries, as it was read from its rest. */
export interface Fetched {
  readonly job: Job;
  readonly entries: readonly Entry[];
}

export type Rested = Pick<Job, "site" | "equipment">;

/** Every name that a message may use. */
export interface KnownWorld extends World {
  readonly people: readonly string[];
}

export const threadKey = (channel: string, thread: string): string => `${channel}\n${thread}`;

export function remember(store: Store): Memory {
  const memory: Memory = {
    entries: new Map(),
    jobs: new Map(),
    sites: new Map(),
    watched: new Map(),
    threads: new Map(),
    grips: new Map(),
    gripped: new Map(),
    clocks: new Map(),
    judged: new Map(),
    roles: new Map(),
    heard: lastHeard(store),
    cautioned: new Map(),
    advised: new Map(),
    registry: readRegistry(store),
    settings: readSettings(store),
    store,
    fetched: new Map(),
    cards: new Map(),
    turn: 0,
    rested: [...unitsAtRest(store)],
  };
  const entries = entriesAtHand(store);
  for (const entry of entries) append(memory, entry);
  if (memory.rested.length > 0) {
    for (const [who, role] of lastRoles(store)) {
      if (!memory.roles.has(who)) memory.roles.set(who, role);
    }
  }
  for (const job of memory.entries.keys()) {
    refold(memory, job);
    recallTold(memory, store, job);
  }
  return memory;
}

/** Takes in what was just appended. */
export function learn(memory: Memory, entries: readonly Entry[]): void {
  for (const entry of entries) {
    // it rested: with what was just written all of it is at hand again
    if (entry.place > 1 && !memory.entries.has(entry.job)) takeUp(memory, entry.job);
    else append(memory, entry);
  }
  for (const job of new Set(entries.map((entry) => entry.job))) refold(memory, job);
  memory.turn += 1;
}

function takeUp(memory: Memory, job: number): void {
  const { store } = memory;
  takeFromRest(store, job);
  memory.fetched.delete(job);
  memory.cards.clear();
  for (const entry of entriesOf(store, job)) append(memory, entry);
  recallTold(memory, store, job);
}

/** Forgets jobs that were put to rest. */
export function letGo(memory: Memory, jobs: readonly Job[]): void {
  memory.cards.clear();
  const gone = new Set(jobs.map(({ job }) => job));
  for (const { job, site, equipment } of jobs) {
    memory.entries.delete(job);
    putJob(memory, job, undefined);
    memory.clocks.delete(job);
    memory.judged.delete(job);
    holdAnew(memory, job, []);
    const same = (one: Rested): boolean => one.site === site && one.equipment === equipment;
    if (!memory.rested.some(same)) memory.rested.push({ site, equipment });
  }
  for (const [key, job] of memory.threads) if (gone.has(job)) memory.threads.delete(key);
  memory.turn += 1;
}

/** Forgets everything and reads it again: after a step that was rolled back, or an import. */
export function relearn(memory: Memory, store: Store): void {
  const fresh = remember(store);
  replace(memory.entries, fresh.entries);
  replace(memory.jobs, fresh.jobs);
  replace(memory.sites, fresh.sites);
  replace(memory.watched, fresh.watched);
  replace(memory.threads, fresh.threads);
  replace(memory.grips, fresh.grips);
  replace(memory.gripped, fresh.gripped);
  replace(memory.clocks, fresh.clocks);
  replace(memory.roles, fresh.roles);
  replace(memory.heard, fresh.heard);
  replace(memory.cautioned, fresh.cautioned);
  replace(memory.advised, fresh.advised);
  memory.judged.clear();
  memory.fetched.clear();
  memory.cards.clear();
  memory.turn += 1;
  memory.rested.splice(0, memory.rested.length, ...fresh.rested);
  memory.world = undefined;
  memory.registry = fresh.registry;
  memory.settings = fresh.settings;
}

function replace<K, V>(old: Map<K, V>, fresh: ReadonlyMap<K, V>): void {
  old.clear();
  for (const [key, value] of fresh) old.set(key, value);
}

function append(memory: Memory, entry: Entry): void {
  memory.entries.set(entry.job, [...(memory.entries.get(entry.job) ?? []), entry]);
  const { facts } = entry;
  if (facts.kind !== "note") return;
  if (!memory.roles.has(entry.who)) memory.world = undefined;
  memory.roles.set(entry.who, facts.role);
  if (entry.channel === undefined || facts.opens?.listed === true) return;
  // where threads hang under a message they are called by its id: a thread under what was filed is its job's
  const key = threadKey(entry.channel, entry.thread ?? entry.message);
  // the first job of a thread keeps it, unless another is opened in it
  if (facts.opens !== undefined || !memory.threads.has(key)) memory.threads.set(key, entry.job);
}

function refold(memory: Memory, number: number): void {
  const entries = memory.entries.get(number) ?? [];
  const job = foldJob(entries);
  if (job === undefined) {
    putJob(memory, number, undefined);
    memory.clocks.delete(number);
  } else {
    memory.clocks.set(number, clocksOf(job, entries, equipmentOf(job, memory.registry)));
    const was = memory.jobs.get(number);
    if (!keepsNames(memory, was, job)) memory.world = undefined;
    putJob(memory, number, whole(memory, job, entries));
  }
  holdAnew(memory, number, gripsOf(entries, job?.site ?? null));
}

/** Puts a job where it is looked up; `undefined` takes it out there. */
function putJob({ jobs, sites, watched }: Memory, number: number, job: Job | undefined): void {
  const others = (site: Job["site"]): readonly Job[] =>
    (sites.get(site) ?? []).filter((one) => one.job !== number);
  const was = jobs.get(number);
  if (was !== undefined) sites.set(was.site, others(was.site));
  if (job !== undefined && (job.clocks.length > 0 || mayBeQuiet(job))) watched.set(number, job);
  else watched.delete(number);
  if (job === undefined) jobs.delete(number);
  else {
    jobs.set(number, job);
    sites.set(
      job.site,
      [...others(job.site), job].sort((a, b) => a.job - b.job),
    );
  }
}

/** Whether the names that may be said stay as they are: making them anew costs more than a message. */
function keepsNames({ world }: Memory, was: Job | undefined, job: Job): boolean {
  const { site, equipment } = job;
  if (was !== undefined) return was.site === site && was.equipment === equipment;
  if (world === undefined) return true;
  return (
    (site === null || world.sites.includes(site)) &&
    (equipment === null ||
      world.equipment.some((unit) => unit.tag === equipment && unit.site === (site ?? undefined)))
  );
}

/** A folded job with its file and its clocks. */
export function whole(memory: Memory, job: Job, entries: readonly Entry[]): Job {
  const equipment = equipmentOf(job, memory.registry);
  const clocks = memory.clocks.get(job.job) ?? clocksOf(job, entries, equipment);
  const shown = { time_zone: zoneFor(memory, job), names: namesOf(memory) };
  return {
    ...job,
    file: fileOf(job, equipment, memory.registry.people),
    clocks: clocks.map((clock) => ({ ...clock, text: clockText(clock, job, shown) })),
  };
}

export const gripKey = (channel: string, who: string): string => `${channel}\n${who}`;

const channelOf = (memory: Memory, job: number): string | undefined =>
  memory.jobs.get(job)?.channel;

/** The grips of a person: in a channel, or wherever they are for who speaks to the bot alone. */
export function gripsIn(memory: Memory, channel: string, who: string): readonly PersonGrip[] {
  const own = memory.grips.get(gripKey(channel, who));
  if (!isDirect(channel)) return own === undefined ? [] : [...own.values()].flat();
  return [...memory.grips].flatMap(([key, held]) =>
    key.endsWith(`\n${who}`) ? [...held.values()].flat() : [],
  );
}

/** Puts the grips on a job in the place of those that were known. */
function holdAnew(memory: Memory, job: number, grips: readonly PersonGrip[]): void {
  for (const key of memory.gripped.get(job) ?? []) memory.grips.get(key)?.delete(job);
  const keys = new Set<string>();
  for (const grip of grips) {
    // what is said to the bot alone takes the job in hand where the crew talks of it
    const channel = isDirect(grip.channel) ? channelOf(memory, job) : grip.channel;
    const who = grip.named === true ? (personSaid(memory, grip.who) ?? grip.who) : grip.who;
    const key = gripKey(channel ?? grip.channel, who);
    const held = memory.grips.get(key) ?? new Map<number, readonly PersonGrip[]>();
    held.set(job, [...(held.get(job) ?? []), grip]);
    memory.grips.set(key, held);
    keys.add(key);
  }
  if (keys.size === 0) memory.gripped.delete(job);
  else memory.gripped.set(job, keys);
}

/** In order until something is learnt. */
const ordered = new WeakMap<Memory, { readonly turn: number; readonly jobs: readonly Job[] }>();

/** All jobs at hand, oldest number first. */
export function allJobs(memory: Memory): readonly Job[] {
  const last = ordered.get(memory);
  if (last?.turn === memory.turn) return last.jobs;
  const jobs = [...memory.jobs.values()].sort((a, b) => a.job - b.job);
  ordered.set(memory, { turn: memory.turn, jobs });
  return jobs;
}

/** Jobs at hand at a site, or at none, oldest number first. */
export const jobsAtSite = ({ sites }: Memory, site: Job["site"]): readonly Job[] =>
  sites.get(site) ?? [];

/** The company's zone; a store that was never told keeps to the offset of the job's own messages. */
export function zoneFor(memory: Memory, job: Pick<Job, "opened">): string {
  return memory.settings.time_zone ?? zoneOf(job.opened);
}
