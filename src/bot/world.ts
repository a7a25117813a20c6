import type { Job } from "../model.ts";
import { foldJob } from "../record/job.ts";
import type { Routable } from "../record/route.ts";
import { allJobs, type KnownWorld, type Memory } from "./memory.ts";

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
  ].filter((name) => typeof name === "string");
  const units = jobs.flatMap(({ equipment, site }) =>
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
  const entries = memory.entries.get(job.job) ?? [];
  const until = entries.filter(({ at }) => Date.parse(at) <= instant);
  return foldJob(until)?.status ?? "open";
}

/** Jobs as routing sees them, with the tags and rooms around each. */
export function routables(memory: Memory): readonly Routable[] {
  return allJobs(memory).map((job) => {
    const around = memory.registry.equipment.filter((unit) => unit.site === job.site);
    return {
      job: job.job,
      site: job.site,
      equipment: job.equipment,
      statusAt: (instant: number) => statusBy(memory, job, instant),
      opened: job.opened,
      people: job.people,
      ...(job.assigned === undefined ? {} : { assigned: job.assigned }),
      tags: around.flatMap(({ tag }) => (tag === undefined ? [] : [tag])),
      places: around.flatMap((unit) => unit.places ?? []),
    };
  });
}
