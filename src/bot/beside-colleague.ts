import type { Message } from "../model.ts";
import { alongWith } from "../record/grips.ts";
import { type Grip, holdsForMs, inHand } from "../record/hand.ts";
import type { Route } from "../record/route.ts";
import { gripsIn, type Memory } from "./memory.ts";
import { personSaid } from "./people.ts";

const here =
  /^\s*(?:(?:ok(?:ay)?|im|i['’]m|we['’]re|now|just|up|over|back)[ ,]+)*(?:here|there|on site|arrived|got here)\s+(?:now\s+)?(?=w(?:ith)?[/ ])/iu;
const helps =
  /^\s*(?:(?:ok(?:ay)?|im|i['’]m|now)[ ,]+)*helping\s+@?(\p{L}[\p{L}'-]+)\s*(?:[,.!;:\n]|now\b|$)/iu;

/** "Here with Otis" is at the job that Otis has in hand, or had last, whatever its author had himself. */
export function besideColleague(
  memory: Memory,
  { text, channel, person, at, role }: Message,
): Extract<Route, { kind: "job" }> | undefined {
  if (role !== "tech") return undefined;
  // "here Otis" is said to him, and tells nothing of his job
  const name = here.test(text) ? alongWith(text) : helps.exec(text)?.[1];
  const who = name === undefined ? undefined : personSaid(memory, name);
  if (who === undefined || who === person) return undefined;
  const now = Date.parse(at);
  const grips = gripsIn(memory, channel, who);
  const job = inHand(grips, now) ?? lastOf(grips, now);
  return job === undefined ? undefined : { kind: "job", job, by: "name" };
}

/** The job that somebody spoke of last, though he has left it. */
export function lastOf(grips: readonly Grip[], now: number): number | undefined {
  const recent = grips.filter(({ instant }) => instant <= now && now - instant <= holdsForMs);
  const last = recent.reduce<Grip | undefined>(
    (newest, grip) => (newest === undefined || grip.instant >= newest.instant ? grip : newest),
    undefined,
  );
  return last?.job;
}
