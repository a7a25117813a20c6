import type { Message, Understood } from "../model.ts";
import { leftOpen, type Route, sentTo, unclaimed } from "../record/route.ts";
import type { Memory } from "./memory.ts";
import { routables } from "./world.ts";

/**
 * "here", "on my way" of somebody with nothing in hand: the one open job that he was sent to, or the only one at
 * all where nobody was.
 * Readings alone are not enough for it, and a place that is named and unknown is none of ours.
 * "done" of somebody who has left: the one job that he left open.
 */
export function arrivedAt(
  memory: Memory,
  message: Message,
  understood: Understood,
): Extract<Route, { kind: "job" }> | undefined {
  const arrives = understood.statements.some(
    (said) =>
      said.kind === "status" &&
      (said.status === "on_site" || said.status === "on_the_way") &&
      said.where === undefined,
  );
  const ends = understood.statements.some(
    (said) => said.kind === "status" && said.status === "done",
  );
  if (arrives === ends) return undefined;
  if (ends && understood.readings.length > 0) return undefined;
  const asked = { person: message.person, instant: Date.parse(message.at) };
  const jobs = routables(memory);
  const job = ends ? leftOpen(asked, jobs) : (sentTo(asked, jobs) ?? unclaimed(asked, jobs));
  return job === undefined ? undefined : { kind: "job", job, by: "hand" };
}
