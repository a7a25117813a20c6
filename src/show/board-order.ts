import type { Job } from "../model.ts";
import { partsAreIn } from "./open-parts.ts";

/** Who must move next: the office, the crew at the machine, or somebody outside. */
export type Mover = "office" | "crew" | "others";

/** A job that nobody took for so long is the office's; common practice, no source. */
const unclaimedMinutes = 15;

/** Whose move a job waits for. `now`: ISO. */
export function moverOf(job: Job, now: string): Mover {
  if (job.status === "no_access" || unsafeLeft(job)) return "office";
  if (job.parts.some((part) => part.state === "needed" && !served(job, part))) return "office";
  if (partsAreIn(job)) return "office";
  if (job.status === "open") return waitsUnclaimed(job, now) ? "office" : "crew";
  return job.status === "on_site" || job.status === "on_the_way" ? "crew" : "others";
}

/** A part that was asked for and is ordered, fitted, here or declined since. */
export function served(job: Job, needed: Job["parts"][number]): boolean {
  if (needed.arrived === true || needed.decided === "declined") return true;
  return job.parts.some(
    (other) => other.state !== "needed" && sameThing(other, needed) && other.at >= needed.at,
  );
}

function sameThing(a: Job["parts"][number], b: Job["parts"][number]): boolean {
  if (a.number !== undefined && b.number !== undefined) return a.number === b.number;
  const last = (name: string) => name.toLowerCase().split(" ").pop();
  return last(a.part) === last(b.part);
}

/** Nobody at the machine, and a safety bypassed or the circuit not as it should be left. */
function unsafeLeft(job: Job): boolean {
  const away = job.status === "left_site" || job.status === "waiting_for_parts";
  return away && job.machine.bypasses.length > 0;
}

export function waitsUnclaimed(job: Job, now: string): boolean {
  if (job.status !== "open" || job.assigned !== undefined) return false;
  return Date.parse(now) - Date.parse(job.opened) >= unclaimedMinutes * 60_000;
}
