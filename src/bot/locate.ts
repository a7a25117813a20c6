import { z } from "zod";
import type { Message } from "../model.ts";
import { inHand } from "../record/hand.ts";
import { findMessage } from "../record/inbox.ts";
import { namesIn, plainTag } from "../record/names.ts";
import { findOut } from "../record/outbox.ts";
import { type Asked, jobNamed, type Routable, type Route, route } from "../record/route.ts";
import { anotherUnit } from "../record/strange-unit.ts";
import { gripsIn, type Memory } from "./memory.ts";
import { jobAt, threadJob } from "./rest.ts";
import { routablesFor, worldOf } from "./world.ts";

/** Several steps of one message's work ask for its place. */
const found = new WeakMap<
  Message,
  { readonly memory: Memory; readonly turn: number; readonly route: Route }
>();

/** Where a message belongs, and what it names. */
export function locate(memory: Memory, message: Message): Route {
  const known = found.get(message);
  if (known?.memory === memory && known.turn === memory.turn) return known.route;
  const place = locateAnew(memory, message);
  found.set(message, { memory, turn: memory.turn, route: place });
  return place;
}

/** "On my way from the hotel": where he comes from is not where he goes. */
const cameFrom =
  /\b(omw|otw|on (?:my|the) way|coming|headed|heading|rolling|driving)(?: over)? from (?:the )?[\p{L}'’-]+/iu;

function locateAnew(memory: Memory, message: Message): Route {
  const thread = threadOf(memory, message);
  // a thread tells the job, whatever is named
  if (thread !== undefined) return { kind: "job", job: thread, by: "thread" };
  const named = namesIn(message.text.replace(cameFrom, "$1"), worldOf(memory));
  const grips = gripsIn(memory, message.channel, message.person);
  const hand = inHand(grips, Date.parse(message.at));
  const jobs = routablesFor(memory, named);
  const place = ofKind(route(askedOf(message, { named, hand }), jobs), message.text, jobs);
  return unlessAnother(memory, message, { place, jobs });
}

/** A unit that is not the one in hand: the open job of its own, by its number in words too; else whose it is is asked. */
function unlessAnother(
  memory: Memory,
  { text, role, at }: Message,
  { place, jobs }: { readonly place: Route; readonly jobs: readonly Routable[] },
): Route {
  if (place.kind !== "job" || place.by !== "hand" || role !== "tech") return place;
  const unit = jobAt(memory, place.job)?.equipment;
  const other = unit === undefined || unit === null ? undefined : anotherUnit(text, unit);
  if (other === undefined) return place;
  const own = jobs.filter(
    (job) =>
      plainTag(job.equipment ?? "") === plainTag(other) && job.statusAt(Date.parse(at)) !== "done",
  );
  const [only, ...others] = own;
  if (only !== undefined && others.length === 0) return { kind: "job", job: only.job, by: "name" };
  return { kind: "ask", candidates: [place.job] };
}

/** "At the school, ahu first": of the jobs that a name leaves, the only one whose unit is of the kind that is said. */
function ofKind(place: Route, text: string, jobs: readonly Routable[]): Route {
  if (place.kind !== "ask") return place;
  const words = new Set(text.toLowerCase().match(/[a-z]+/g) ?? []);
  const kindOf = (job: number): string =>
    jobs
      .find((one) => one.job === job)
      ?.equipment?.toLowerCase()
      .match(/[a-z]+/)?.[0] ?? "";
  const fits = place.candidates.filter((job) => words.has(kindOf(job)));
  const [only, ...others] = fits;
  return only === undefined || others.length > 0 ? place : { kind: "job", job: only, by: "name" };
}

/** The job of the thread that a message stands in, or of what it answers. */
function threadOf(memory: Memory, message: Message): number | undefined {
  const { channel, thread } = message;
  return (
    (thread === undefined ? undefined : threadJob(memory, channel, thread)) ??
    answersJob(memory, message)
  );
}

/** The job that some words name, `job` itself where it fits; undefined where they name none. */
export function locateWords(
  memory: Memory,
  message: Message,
  some: { readonly words: string; readonly job: number },
): Route | undefined {
  const named = namesIn(some.words, worldOf(memory));
  const jobs = routablesFor(memory, named);
  const place = jobNamed(askedOf(message, { named, hand: some.job }), jobs);
  return place === undefined ? undefined : ofKind(place, some.words, jobs);
}

/** The job of the message, or of the bot's own post, that a message replies to. */
export function answersJob({ store }: Memory, { platform, answers }: Message): number | undefined {
  if (answers === undefined) return undefined;
  const kept = findMessage(store, platform, answers)?.job ?? undefined;
  return kept ?? postedFor(findOut(store, answers)?.detail);
}

const aboutJob = z.object({ job: z.number().optional() });

function postedFor(detail: string | undefined): number | undefined {
  if (detail === undefined) return undefined;
  return aboutJob.safeParse(JSON.parse(detail)).data?.job;
}

function askedOf({ person, at }: Message, told: Pick<Asked, "named" | "hand">): Asked {
  return { ...told, thread: undefined, person, instant: Date.parse(at) };
}
