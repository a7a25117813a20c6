import type { Message, Understood } from "../model.ts";
import { type Route, sentTo } from "../record/route.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";
import { routables } from "./world.ts";

/**
 * What he had in hand is done, and he was sent to another since: figures may be of either, so whose they are is
 * asked. A correction is of what was told, and words alone follow the hand.
 */
export function unlessSent(
  memory: Memory,
  { person, at, role }: Message,
  read: { readonly understood: Understood; readonly place: Route },
): Route {
  const { understood, place } = read;
  if (place.kind !== "job" || place.by !== "hand" || role !== "tech") return place;
  const { readings } = understood;
  if (readings.length === 0 || readings.some(({ corrects }) => corrects === true)) return place;
  const job = jobAt(memory, place.job);
  if (job?.status !== "done") return place;
  const sent = sentTo({ person, instant: Date.parse(at) }, routables(memory));
  const other = sent === undefined ? undefined : jobAt(memory, sent);
  if (other === undefined || other.job === job.job) return place;
  // sent before he finished this one, he may still tell the rest of it
  const ended = job.timeline.findLast(({ kind }) => kind === "status")?.at ?? job.opened;
  if (Date.parse(other.opened) < Date.parse(ended)) return place;
  return { kind: "ask", candidates: [other.job, job.job] };
}
