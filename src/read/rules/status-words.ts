import { type Status, statuses } from "../../vocabulary.ts";
import { endsClause, isEnd, isStrongBreak } from "../breaks.ts";
import { isErrand, isErrandWord, isSide } from "../errand.ts";
import { type Item, isOneWord, itemKind, wordsFrom } from "../item.ts";
import type { Note } from "../note.ts";
import { carries, signIndex, signName } from "../signs.ts";
import { clockAt } from "../times.ts";
import { role } from "../word.ts";
import { awaitsPart, thingCame } from "./awaited.ts";
import { leadsToPart } from "./leads-to-part.ts";
import { leavesPart, leavesThing } from "./leaves-thing.ts";
import { notYet } from "./not-yet.ts";
import { outOfPlace } from "./out-of-place.ts";
import { placeDone, workDone } from "./place-status.ts";
import { isStay } from "./stay.ts";
import { doneWithMachine, isWhole } from "./whole-machine.ts";

/** The rule's name. */
export const STATUS = "<status> <time>";

const indexes = statuses.map((status) => signIndex(status));
const iceOff = signIndex("ice_off");
export const agoSign = signIndex("ago");

export interface Seen {
  readonly status: Status;
  readonly at: number;
}

export function statusOf(item: Item): Status | undefined {
  for (const index of item.signs ?? [])
    if (indexes.includes(index)) return statuses.find((status) => status === signName(index));
  return undefined;
}

const notLeft: ReadonlySet<string> = new Set(["water", "air", "temp", "temps", "a", "it", "the"]);
const doneBefore: ReadonlySet<string> = new Set(
  "were was be been get got have not aint isnt when if until till being is almost nearly half getting after once are".split(
    " ",
  ),
);

/** "im at the disconnect", "im at the condenser": a part of the machine, no site. */
function atMachine(note: Note, i: number, after: number): boolean {
  const item = note.items[i];
  if (item === undefined || !/\bat the$/.test(note.plain.slice(item.from, item.signsTo)))
    return false;
  const next = note.items[after];
  if (next === undefined || next.label !== undefined || next.kind !== itemKind.word) return true;
  return /^(?:unit|machine|equipment|outdoor|indoor|condenser|compressor|rtu|rack|point|supply|truck|end|controller|shop|top|bottom)$/.test(
    next.text,
  );
}

/** "chilled water's leaving at seven": the words beside say that it is water. */
function wet({ items }: Note, i: number): boolean {
  return items
    .slice(Math.max(0, i - 2), i + 1)
    .some(({ text }) => /^(?:water|waters|chw|chilled|hot|loop)$/.test(text));
}

/** What is made so is a joint or a machine, nobody comes. */
const madeOf =
  /^(?:up|work|run|worse|better|tight|tighter|hold|start|turn|trip|stop|go|quiet|quieter)$/;

const entering = /^(?:ent|entering|ewt|eat|lwt|lat)$/;

function entered(place: string | undefined): boolean {
  return place?.endsWith("_in") === true;
}

/** "leaving water is 54": the name of what is measured, whole in one item. */
function isWholeName(item: Item | undefined): boolean {
  return item?.label?.place === "water_out" && !isOneWord(item);
}

const ahead = /^(?:should|will|gonna|might|could|supposed|ought)$/;
/** "should be done in an hour", "the crane will be here at 2": what is to come. */
function toCome(items: readonly Item[], i: number, status: Status, next?: Item): boolean {
  const told = status === "done" || status === "on_site";
  if (!told || /^(?:till|til|until|for|a|all)$/.test(next?.text ?? "")) return false;
  const led = items.slice(Math.max(0, i - 2), i + 1);
  const cut = led.findLastIndex(({ kind }) => kind === itemKind.sign || kind === itemKind.line);
  return led.slice(cut + 1).some(({ text }) => ahead.test(text));
}

/** Words that look like a status and are not: "filters were done last week", "leaving 51.5". */
export function isStatus(note: Note, i: number, status: Status): boolean {
  // "chilled water's leaving at seven": the water's warmth
  if (/^water_/.test(note.items[i]?.label?.place ?? "") && wet(note, i)) return false;
  if (isWholeName(note.items[i])) return false;
  const { items } = note;
  let after = i + 1;
  while (after < items.length && (items[after]?.from ?? 0) < (items[i]?.signsTo ?? 0)) after++;
  const next = items[after];
  const before = items[i - 1];
  if (note.holds.mark || isSide(note, i) || notYet(note, i, status)) return false;
  if (isErrandWord(note, i)) return status === "left_site" && isErrand(note, i);
  if (status === "waiting_for_parts" && note.items[i]?.to !== undefined && !awaitsPart(note, i))
    return false;
  // "leads off to ground 500": only what begins a thought is a way to somewhere
  if (items[i]?.text === "off" && status === "on_the_way") {
    const begins =
      i === 0 ||
      before?.kind === itemKind.sign ||
      before?.kind === itemKind.line ||
      (/^(?:im|i'm|were|we're)$/.test(before?.text ?? "") && startsClause(items, i - 1));
    const place = next?.kind === itemKind.word || next?.kind === itemKind.label;
    if (!begins || !place) return false;
  }
  // "im at the unit now" is no arrival, "im at the church now" is
  if (status === "on_site" && /^(?:im|i)$/.test(items[i]?.text ?? "") && atMachine(note, i, after))
    return false;
  if (toCome(items, i, status, next)) return false;
  const plan = sentenceRoles(items, i);
  const valued = items.some((item) => item.kind === itemKind.number && item.owner === undefined);
  if (status === "left_site" && next?.kind === itemKind.subject && valued) return false;
  // "gotta go, Ilse takes over" is a farewell, "gotta go get a cap" none
  if (status === "left_site" && /^(?:have|got|gotta)$/.test(items[i]?.text ?? ""))
    return next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
  // "lvg air 55"
  if (status === "left_site" && /_air$/.test(items[i]?.label?.place ?? "")) return false;
  if (status === "left_site") {
    // "leaving is 44.5 actually": what leaves is water or air
    const degrees = items[after + 1]?.kind === itemKind.number;
    if (items[i]?.text === "leaving" && /^(?:is|was)$/.test(next?.text ?? "") && degrees)
      return false;
    // "leaving the 300 on overnight": nobody goes
    if (/^(?:leav|left)/.test(items[i]?.text ?? "") && leavesThing(items, after)) return false;
    // "coil is clear of ice"
    if (carries(items[i], iceOff)) return false;
    if (leavesPart(items, after)) return false;
    // "84 F leaving the outdoor coil": what comes out of it
    if (/^(?:condenser|evaporator)_out$/.test(items[i]?.label?.place ?? "")) return false;
    // "cond ent 92 lvg 118": what leaves it is water or air
    const enters = items
      .slice(0, i)
      .some(({ text, label }) => entering.test(text) || entered(label?.place));
    if (next?.kind === itemKind.number && next.colon !== true && enters) return false;
    // "54 ent 44 lvg": each word behind its figure
    if (before?.kind === itemKind.number && next?.kind !== itemKind.number && enters) return false;
    // "left at 118/340": how the machine was left
    if (next?.kind === itemKind.number && items[after + 1]?.text === "/") return false;
    if (next?.unit !== undefined && next.unit.dimension !== "time") return false;
    if (
      items[i]?.text === "leaving" &&
      (next?.kind === itemKind.number || notLeft.has(next?.text ?? "")) &&
      next?.text !== "the" &&
      next?.kind !== itemKind.number
    )
      return false;
    if (
      items[i]?.text === "leaving" &&
      next?.kind === itemKind.number &&
      !(next.unit?.figure === "h" && items[after + 1] === undefined) &&
      clockAt(items, after, true) === undefined
    )
      return false;
    if (
      items[i]?.text === "leaving" &&
      items.some(
        (item) => item.label?.place === "water_in" || item.text === "chw" || item.text === "hw",
      )
    )
      return false;
    if (
      items[i]?.text === "i" &&
      (next?.text === "in" ||
        next?.text === "on" ||
        next?.text === "it" ||
        next?.text === "my" ||
        next?.text === "a")
    )
      return false;
    if (
      items[i]?.text === "got" &&
      (next?.kind === itemKind.number || before?.kind === itemKind.number) &&
      clockAt(items, after, true) === undefined
    )
      return false;
    if (
      (items[i]?.text === "pulled" || items[i]?.text === "pulling") &&
      items[i]?.label !== undefined &&
      !outOfPlace(note, i)
    )
      return false;
    return (plan & role.plan) === 0;
  }
  if (status === "done") {
    const asked = items
      .slice(Math.max(0, i - 3), i)
      .some((item) => /^(?:when|whenever)$/.test(item.text));
    if (asked) return false;
    if (placeDone(items, i)) return true;
    if (workDone(items, i)) return false;
    if (
      doneBefore.has(before?.text ?? "") &&
      items[i]?.text === "done" &&
      !/^(?:im|were|all)$/.test(before?.text ?? "") &&
      !(before?.text === "are" && items[i - 2]?.text === "we")
    )
      return before?.text === "is" && isWhole(items[i - 2]);
    // "all three cycling done here two hours"
    if (next?.text === "here" && items[after + 1]?.unit?.dimension === "time") return true;
    if (
      before?.kind === itemKind.word &&
      before.roles === 0 &&
      before.signs === undefined &&
      !/^(?:all|me|job|everything|call|am|pm|o'?clock)$/.test(before.text)
    )
      return !/^(?:done|complete|completed|finished)$/.test(items[i]?.text ?? "");
    if (/^(?:with|w)$/.test(next?.text ?? "")) return doneWithMachine(items, after + 1);
    const past = next?.text === "for" && isEnd(items[after + 1]);
    if (past || next?.text === "last" || next?.text === "by") return false;
    if (items[i]?.text === "good" && items.some((item) => item.kind === itemKind.number))
      return false;
    return (plan & (role.plan | role.not)) === 0;
  }
  if (
    status === "on_site" &&
    (items[i]?.text === "pulled" || items[i]?.text === "pulling") &&
    i > 0 &&
    before?.text !== "just" &&
    before?.text !== "i" &&
    !(startsClause(items, i) && hasTime(items, after))
  )
    return false;
  if (status === "on_site" && (thingCame(items, i) || isStay(items, i, after))) return false;
  // "pulled in 60 feet of wire", "defrosted once while we were here"
  const meanwhile = /\b(?:while|when|as|since)\b/.test(wordsFrom(items, i - 2, i));
  if (status === "on_site" && (meanwhile || next?.unit?.dimension === "length")) return false;
  // "made it up again", "made it to 300": a joint, a pressure
  if (status === "on_site" && items[i]?.text === "made") {
    const on = items[after + 1];
    const upNow = next?.text === "up" && /^(?:the|a|here|to|on|there|in)$/.test(on?.text ?? "");
    if (!upNow && madeOf.test(next?.text ?? "")) return false;
    if (next?.kind === itemKind.number && !next.colon && after > i + 1)
      return !/\bmade it to\b/.test(note.plain);
  }
  // "just got in the new board", "just got in a call": what came, and nobody
  if (status === "on_site" && /^just (?:got|rolled) in\b/.test(note.plain.slice(items[i]?.from)))
    return next === undefined || isStrongBreak(next) || afterComing.test(next.text);
  // "first time in the building" is no sheet of hours
  if (
    status === "on_site" &&
    items[i]?.text === "time" &&
    clockAt(items, after, true) === undefined
  )
    return false;
  // "its 79 in there now": the room's warmth
  if (status === "on_site" && items[i]?.text === "there" && !startsClause(items, i)) return false;
  if (status === "on_site" && items[i]?.text === "back") return isReturn(note, i, next);
  if (status === "on_site") return (plan & role.plan) === 0 || items[i]?.text !== "walked";
  const notToBe = /^(?:to|wont|cant|couldnt|cannot|not|never|could|can|might|may)$/.test(
    before?.text ?? "",
  );
  // "the wire nut on the way to the contactor": a wire's way
  if (status === "on_the_way")
    return !leadsToPart(items, after) && !(items[i]?.text === "be" && notToBe);
  return true;
}

const afterComing = /^(?:,|to|at|here|w|with|now)$/;

/** "pulled up 20 min ago", "pulled up at 7:20": what has its time is an arrival. */
function hasTime(items: readonly Item[], from: number): boolean {
  const at = /^(?:at|@|about|around|abt)$/.test(items[from]?.text ?? "") ? from + 1 : from;
  if (items[at]?.unit?.dimension === "time") return carries(items[at + 1], agoSign);
  return items[at]?.unit === undefined && clockAt(items, at, true) !== undefined;
}

/** Only what begins a thought is a return: "back at OU-3". */
function startsClause(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  return (
    before === undefined ||
    isStrongBreak(before) ||
    /^(?:,|im|i|were|and|then|now|ok|okay|here|done|finished)$/.test(before.text)
  );
}

/** "back at OU-3", not "put it back at 40", "back at it", "back at the shop". */
function isReturn(note: Note, i: number, next: Item | undefined): boolean {
  const words = note.items.slice(i + 1, i + 5).map(({ text }) => text);
  return (
    startsClause(note.items, i) &&
    next?.kind !== itemKind.number &&
    !words.some((word) => /^(?:it|shop|office|home|house|hq|warehouse|van|truck)$/.test(word))
  );
}

function sentenceRoles(items: readonly Item[], i: number): number {
  let roles = 0;
  for (let at = i - 1; at >= 0 && at >= i - 4; at--) {
    const item = items[at];
    if (item === undefined || endsClause(item)) break;
    roles |= item.roles;
  }
  return roles;
}
