import type { Job, Judgement, Role, RunningClock } from "../model.ts";
import { equipmentOf } from "../record/case.ts";
import { clocksOf } from "../record/clocks.ts";
import { readEntries } from "../record/entries-table.ts";
import type { Entry } from "../record/entry.ts";
import { fileOf } from "../record/gaps.ts";
import { gripsOf, type PersonGrip } from "../record/grips.ts";
import { lastHeard } from "../record/inbox.ts";
import { foldJob } from "../record/job.ts";
import type { World } from "../record/names.ts";
import { type Registry, readRegistry } from "../record/registry.ts";
import { readSettings, type Settings } from "../record/settings.ts";
import type { Store } from "../record/store.ts";
import { clockText } from "../show/clock-words.ts";
import { zoneOf } from "../show/local-time.ts";
import { readTold, type Told } from "./cautioned.ts";
import { namesOf } from "./people.ts";

/** Everything derived from the store that work needs again and again; the store can always make it anew. */
export interface Memory extends Told {
  readonly entries: Map<number, readonly Entry[]>;
  readonly jobs: Map<number, Job>;
  /** "channel\nthread" -> the job that it opened or named */
  readonly threads: Map<string, number>;
  /** "channel\nperson" -> the grips of that person there, by job */
  readonly grips: Map<string, Map<number, readonly PersonGrip[]>>;
  readonly clocks: Map<number, readonly RunningClock[]>;
  readonly judged: Map<number, Judgement>;
  readonly roles: Map<string, Role>;
  /** ms of the last word of each person that was worked on */
  readonly heard: Map<string, number>;
  registry: Registry;
  settings: Settings;
  /** what may be named, until a job, a person or an import adds to it */
  world?: KnownWorld | undefined;
}

/** Every name that a message may use. */
export interface KnownWorld extends World {
  readonly people: readonly string[];
}

export const threadKey = (channel: string, thread: string): string => `${channel}\n${thread}`;

export function remember(store: Store): Memory {
  const memory: Memory = {
    entries: new Map(),
    jobs: new Map(),
    threads: new Map(),
    grips: new Map(),
    clocks: new Map(),
    judged: new Map(),
    roles: new Map(),
    heard: lastHeard(store),
    ...readTold(store),
    registry: readRegistry(store),
    settings: readSettings(store),
  };
  const entries = readEntries(store);
  for (const entry of entries) append(memory, entry);
  for (const job of memory.entries.keys()) refold(memory, job);
  return memory;
}

/** Takes in what was just appended. */
export function learn(memory: Memory, entries: readonly Entry[]): void {
  for (const entry of entries) append(memory, entry);
  for (const job of new Set(entries.map((entry) => entry.job))) refold(memory, job);
}

/** Forgets everything and reads it again: after a step that was rolled back, or an import. */
export function relearn(memory: Memory, store: Store): void {
  const fresh = remember(store);
  replace(memory.entries, fresh.entries);
  replace(memory.jobs, fresh.jobs);
  replace(memory.threads, fresh.threads);
  replace(memory.grips, fresh.grips);
  replace(memory.clocks, fresh.clocks);
  replace(memory.roles, fresh.roles);
  replace(memory.heard, fresh.heard);
  replace(memory.cautioned, fresh.cautioned);
  replace(memory.advised, fresh.advised);
  memory.judged.clear();
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
  if (entry.channel === undefined) return;
  // where threads hang under a message they are called by its id: a thread under what was filed is its job's
  const key = threadKey(entry.channel, entry.thread ?? entry.message);
  // the first job of a thread keeps it, unless another is opened in it
  if (facts.opens !== undefined || !memory.threads.has(key)) memory.threads.set(key, entry.job);
}

function refold(memory: Memory, number: number): void {
  const entries = memory.entries.get(number) ?? [];
  const job = foldJob(entries);
  if (job === undefined) {
    memory.jobs.delete(number);
    memory.clocks.delete(number);
  } else {
    const equipment = equipmentOf(job, memory.registry);
    const clocks = clocksOf(job, entries, equipment);
    memory.clocks.set(number, clocks);
    const shown = { time_zone: zoneFor(memory, job), names: namesOf(memory) };
    const was = memory.jobs.get(number);
    if (was?.site !== job.site || was.equipment !== job.equipment) memory.world = undefined;
    memory.jobs.set(number, {
      ...job,
      file: fileOf(job, equipment, memory.registry.people),
      clocks: clocks.map((clock) => ({ ...clock, text: clockText(clock, job, shown) })),
    });
  }
  holdAnew(memory, number, gripsOf(entries));
}

export const gripKey = (channel: string, who: string): string => `${channel}\n${who}`;

/** Puts the grips on a job in the place of those that were known. */
function holdAnew(memory: Memory, job: number, grips: readonly PersonGrip[]): void {
  for (const held of memory.grips.values()) held.delete(job);
  for (const grip of grips) {
    const key = gripKey(grip.channel, grip.who);
    const held = memory.grips.get(key) ?? new Map<number, readonly PersonGrip[]>();
    held.set(job, [...(held.get(job) ?? []), grip]);
    memory.grips.set(key, held);
  }
}

/** All jobs, oldest number first. */
export function allJobs(memory: Memory): readonly Job[] {
  return [...memory.jobs.values()].sort((a, b) => a.job - b.job);
}

/** The company's zone; a store that was never told keeps to the offset of the job's own messages. */
export function zoneFor(memory: Memory, job: Pick<Job, "opened">): string {
  return memory.settings.time_zone ?? zoneOf(job.opened);
}
