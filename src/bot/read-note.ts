import type { Message, Understood } from "../model.ts";
import { at as atTime, type Context, startContext } from "../read/context.ts";
import { read } from "../read/read.ts";
import { waterMachine } from "../read/water-sides.ts";
import { standingOf } from "../record/standing.ts";
import { type UnitsAt, unitsAt } from "../record/units-at.ts";
import { tooLong } from "../show/too-long.ts";
import { withAsked } from "./asked-not-told.ts";
import { withBackAgain, withLeaving } from "./back-again.ts";
import { withColleague } from "./beside-colleague.ts";
import { withBottle } from "./bottle-difference.ts";
import { withClockAnswer } from "./clock-answer.ts";
import { contextSoFar } from "./context-so-far.ts";
import { withDecision } from "./decision.ts";
import { withHoursLeft } from "./hours-left.ts";
import { withKnownCode } from "./known-code.ts";
import { withKnownRoom } from "./known-room.ts";
import type { Memory } from "./memory.ts";
import { withNamedArrival, withNamedWay } from "./named-arrival.ts";
import { withNamedDone } from "./named-done.ts";
import { withNamedOrder } from "./named-order.ts";
import { withNamedStory } from "./named-story.ts";
import { entriesAt, jobAt } from "./rest.ts";
import { withThere } from "./with-there.ts";
import { withYes } from "./yes-to-deed.ts";

/** No chat sends more in one message, and a pasted file is no note; our choice, no source. */
const mostLetters = 20_000;

/** Reads a text that somebody sent, unless it is longer than a message can be. */
export function readText(text: string, context: Context): Understood {
  return text.length > mostLetters ? leftUnread(text) : read(text, context);
}

/** A text that is kept as it is, all of it unread, and asked for in parts. */
function leftUnread(text: string): Understood {
  return {
    readings: [],
    statements: [],
    unread: [],
    unread_spans: [[0, text.length]],
    ask: [tooLong(text.length)],
    skipped: [],
  };
}

/** Reads a message in the context of what stands before it in its job; alone where it has none. */
export function readNote(
  memory: Memory,
  message: Pick<Message, "text" | "at" | "person" | "role"> &
    Partial<Pick<Message, "id" | "platform" | "channel" | "thread">>,
  job: number | undefined,
): Understood {
  const { context, read } = readIn(memory, message, job);
  const asked = withAsked(withKnownCode(read, message.text, memory.registry.codes), message);
  const coded = withThere(asked, message);
  const understood =
    job === undefined
      ? coded
      : withClockAnswer(memory, message, { job, understood: coded, context });
  const known = job === undefined ? undefined : jobAt(memory, job);
  if (known === undefined) return understood;
  const roomed = withKnownRoom(understood, message.text, roomsOf(memory, known.job));
  const named = withNamedOrder(withNamedDone(roomed, message.text, known), message.text, known);
  const decided = withDecision(named, message.text, known);
  const come = withNamedArrival(withBackAgain(decided, message, known), message, known);
  const goes = withNamedWay(come, message, known);
  const beside = withColleague(goes, message, { memory, job: known });
  const left = withHoursLeft(withLeaving(beside, message, known), message, { memory, job: known });
  const weighed = withBottle(left, message, { job: known, units: memory.settings.units });
  return withNamedStory(withYes(weighed, message, memory), message.text, known);
}

/** The units that the office lists at the job's site. */
function unitsOf(memory: Memory, job: number | undefined): UnitsAt["all"] {
  const site = job === undefined ? undefined : jobAt(memory, job)?.site;
  return unitsAt(memory.registry.equipment, site).all;
}

/** The rooms of the job's site that the office lists. */
function roomsOf(memory: Memory, job: number): ReadonlySet<string> {
  return new Set(unitsOf(memory, job).flatMap(({ places }) => places ?? []));
}

const roomWords = /\b(?:rooms?|rms?|complaints?|suites?|offices?|apartments?|apts?|units?)\b/i;

/** "cold complaints 901 902 904": the rooms that the call itself told of. */
function roomsCalled(memory: Memory, job: number): readonly string[] {
  const complaint = jobAt(memory, job)?.complaint ?? "";
  const from = roomWords.exec(complaint)?.index;
  if (from === undefined) return [];
  const words = complaint.slice(from);
  const ranges = [...words.matchAll(/(?<![\w.-])(\d{3,4}) ?(?:to|thru|through|-) ?(\d{3,4})\b/g)];
  return [...(words.match(/(?<![\w.-])\d{3,4}\b/g) ?? []), ...ranges.flatMap(between)];
}

/** Rooms of one floor at most that a call names from one to another. Our choice, no source. */
const mostRooms = 40;

/** "301 to 304": those between them. */
function between([, first = "", last = ""]: RegExpMatchArray): readonly string[] {
  const [from, to] = [Number(first), Number(last)];
  if (to <= from || to - from > mostRooms) return [];
  return Array.from({ length: to - from }, (_, i) => String(from + i + 1));
}

const waterThrough = /\b(?:chiller|boiler|cooling tower|heat exchanger|hydronic|water heater)\b/i;

/** Is the job's unit one that water goes through, by its tag or by what the office says it is? */
function isWet(memory: Memory, job: number | undefined, units: UnitsAt["all"]): boolean {
  const tag = job === undefined ? undefined : jobAt(memory, job)?.equipment;
  if (tag === null || tag === undefined) return false;
  if (waterMachine.test(tag)) return true;
  return units.some((unit) => unit.tag === tag && waterThrough.test(unit.kind ?? ""));
}

/** Does the job's unit run on carbon dioxide, by the office's list or by what it was opened for? */
function runsOnCo2(memory: Memory, job: number | undefined, units: UnitsAt["all"]): boolean {
  const found = job === undefined ? undefined : jobAt(memory, job);
  if (found === undefined) return false;
  if (/\b(?:co2|r-?744|transcritical)\b/i.test(found.complaint ?? "")) return true;
  return units.some(
    ({ tag, refrigerant }) => tag === found.equipment && /744|co2/i.test(refrigerant ?? ""),
  );
}

/** What a text was read as, and all that this followed from but the context that stood before it. */
interface ReadIn {
  readonly text: string;
  readonly at: string;
  readonly units: UnitsAt["all"];
  readonly context: Context;
  readonly read: Understood;
}

/** The last that was read after a context: who waits is looked at before it is his turn. */
const last = new WeakMap<Context, ReadIn>();

function readIn(
  memory: Memory,
  { text, at }: Pick<Message, "text" | "at">,
  job: number | undefined,
): ReadIn {
  const before = contextBefore(memory, job, at);
  const units = unitsOf(memory, job);
  const had = last.get(before);
  if (had?.text === text && had.at === at && had.units === units) return had;
  const context = atTime(before, at);
  const rooms = job === undefined ? [] : [...roomsOf(memory, job), ...roomsCalled(memory, job)];
  const ofUnit = {
    ...(isWet(memory, job, units) ? { wet: true as const } : {}),
    ...(runsOnCo2(memory, job, units) ? { co2: true as const } : {}),
  };
  const known =
    rooms.length === 0
      ? { ...context, ...ofUnit }
      : { ...context, ...ofUnit, rooms: new Set([...(context.rooms ?? []), ...rooms]) };
  const made = { text, at, units, context: known, read: readText(text, known) };
  last.set(before, made);
  return made;
}

/** What the job's notes before a moment leave. */
function contextBefore(memory: Memory, job: number | undefined, at: string): Context {
  const { units } = memory.settings;
  if (job === undefined) return startContext(units, at);
  const instant = Date.parse(at);
  const before = standingOf(entriesAt(memory, job)).filter(
    (note) => note.fate === "stands" && note.instant < instant,
  );
  return contextSoFar(units, before);
}
