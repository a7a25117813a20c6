import type { Status } from "../../vocabulary.ts";
import { isStrongBreak } from "../breaks.ts";
import { isErrand } from "../errand.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { carries } from "../signs.ts";
import { ago, type Clock, clockAt, timeText } from "../times.ts";
import { role } from "../word.ts";
import { atPlace } from "./at-place.ts";
import { untilPart } from "./awaited.ts";
import { comeAndGone } from "./come-and-gone.ts";
import { askedUpTo, handsOver } from "./hands-over.ts";
import { hereAt, hereFirst } from "./here-first.ts";
import { minutesAway, thereIn } from "./minutes-away.ts";
import { besideTravel, textAt } from "./near.ts";
import { ofTwoUnits } from "./of-two-units.ts";
import { leftBehind, leftPlace, lockedPlace, onRoof } from "./place-status.ts";
import { returnsAt } from "./returns-at.ts";
import { clockNear, heardHour } from "./status-clock.ts";
import { comesBy, onTheRoad } from "./status-road.ts";
import { agoSign, isStatus, type Seen, STATUS, statusOf } from "./status-words.ts";

const strength: Readonly<Record<Status, number>> = {
  no_access: 6,
  waiting_for_parts: 5,
  done: 4,
  left_site: 3,
  on_site: 2,
  on_the_way: 1,
};

/** "contactor ordered, eta 2 days" */
function partSpoken({ items }: Note): boolean {
  return items.some(({ text }) => /^(?:part|parts|ordered|order|backordered|shipped)$/.test(text));
}

/** "comp eta thurs": the part comes then */
function partDue({ items }: Note, i: number): boolean {
  const day = /^(?:mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)(?:day|sday|nesday|rsday|urday)?$/;
  return items[i - 1]?.label?.thing !== undefined || day.test(items[i + 1]?.text ?? "");
}

/** "leaving at four ten": where the time itself stands. */
function afterAt(items: readonly Item[], i: number): number {
  return /^(?:at|@|around|about)$/.test(textAt(items, i)) ? i + 1 : i;
}

/** The status that stands at the end of the message; "done here, heading to the chapel" are two. */
function find(note: Note): readonly Seen[] {
  const units = ofTwoUnits(note);
  if (units.length > 0) return units;
  const both = comeAndGone(note);
  if (both.length > 0) return both;
  let best: Seen | undefined;
  let next: Seen | undefined;
  const asked = askedUpTo(note);
  note.items.forEach((item, i) => {
    if (item.signs === undefined || item.owner !== undefined || i < asked) return;
    const status = statusOf(item);
    if (status === undefined || !isStatus(note, i, status)) return;
    // "waiting on part 22-9981 eta fri": the part comes, nobody drives
    const eta = item.text === "eta" && best?.status === "waiting_for_parts";
    if (eta || (item.text === "eta" && (partSpoken(note) || partDue(note, i)))) return;
    // "heading to tollgate, supply run first": the way is to the site
    if (isErrand(note, i) && best?.status === "on_the_way") return;
    const stops = best !== undefined && status === "on_the_way" && isErrand(note, best.at);
    if (stops) best = { status, at: i };
    else if (
      status === "left_site" &&
      best?.status === "done" &&
      clockAt(note.items, afterAt(note.items, i + 1), true) !== undefined
    )
      // "done 3:50 left 4:05": both, each with its time
      next ??= { status, at: i };
    else if (status === "on_the_way" && best !== undefined && best.status !== "on_site")
      next = { status, at: i };
    else if (best === undefined || strength[status] > strength[best.status])
      best = { status, at: i };
  });
  const locked = best === undefined ? lockedPlace(note) : -1;
  if (locked >= 0) return [{ status: "no_access", at: locked }];
  if (best?.status === "done" && next === undefined && leftBehind(note) >= 0)
    next = { status: "left_site", at: leftBehind(note) };
  if (best?.status === "on_the_way" && handsOver(note) >= 0) {
    const gone: Seen = { status: "left_site", at: handsOver(note) };
    return gone.at < best.at ? [gone, best] : [best, gone];
  }
  const left = best === undefined && asked === 0 ? leftPlace(note) : -1;
  if (left >= 0) return [{ status: "left_site", at: left }];
  if (best === undefined && (atUnit(note) || onRoof(note))) return [{ status: "on_site", at: 0 }];
  const place = best === undefined ? atPlace(note) : -1;
  if (place >= 0) return [{ status: "on_site", at: place }];
  const away = best === undefined ? minutesAway(note) : -1;
  if (away >= 0) return [{ status: "on_the_way", at: away }];
  if (best === undefined && hereFirst(note)) return [{ status: "on_site", at: hereAt(note) }];
  return next === undefined || next.status === best?.status
    ? [best].filter((seen) => seen !== undefined)
    : [best, next].filter((seen) => seen !== undefined);
}

/** "at ou-3 now": a whole unit, and nothing measured there. */
function atUnit({ items, holds }: Note): boolean {
  const [at, unit, ...rest] = items;
  if (at?.text !== "at" || unit?.kind !== itemKind.subject || holds.mark) return false;
  const whole = /^(?:rtu|ahu|ou|odu|cu|chiller|unit|rack|rooftop)\b/i.test(unit.subject ?? "");
  return whole && rest.every(({ text }) => /^(?:now|here|,|\.)$/.test(text));
}

/** "otw, eta 20": minutes, where no clock shows such an hour or nobody would name it so. */
function etaMinutes(items: readonly Item[], i: number): boolean {
  const [word, item] = [items[i - 1]?.text ?? "", items[i]];
  if (word !== "eta" || item?.unit !== undefined || item?.colon === true) return false;
  const value = item?.value ?? 0;
  return Number.isInteger(value) && value <= 90 && (value > 12 || value === 5 || value === 10);
}

/** "20 min ago", "25 minutes out": a length of time that goes with the status. */
function lengthNear({
  items,
  plain,
}: Note): { seconds: number; at: number; past: boolean } | undefined {
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item?.kind !== itemKind.number || item.owner !== undefined || besideTravel(items, i))
      continue;
    if (etaMinutes(items, i) || (item.unit === undefined && thereIn.test(plain)))
      return { seconds: item.value * 60, at: i, past: false };
    if (item.unit?.dimension !== "time") continue;
    return { seconds: item.value * item.unit.factor, at: i, past: carries(items[i + 1], agoSign) };
  }
  return undefined;
}

function claim(note: Note, from: number, end: number): void {
  for (let i = from; i < end; i++) {
    const item = note.items[i];
    if (item !== undefined) item.owner = STATUS;
  }
}

/** The words behind a status that name where: "on site thornbury", "done at the daycare, leaving". */
function whereOf(note: Note, i: number): string | undefined {
  const { items } = note;
  let from = i + 1;
  while (from < items.length && (items[from]?.from ?? 0) < (items[i]?.signsTo ?? 0)) from++;
  while (from < items.length && whereSkip.test(textAt(items, from))) from++;
  // "on site noor's with me": who came along
  const along = /^(?:with|here|helping|along|coming)$/.test(textAt(items, from + 1));
  if (items[from]?.apostrophe === true && along) return undefined;
  let to = from;
  while (to < items.length && to < from + 4) {
    const item = items[to];
    if (
      item === undefined ||
      item.owner !== undefined ||
      isStrongBreak(item) ||
      item.kind === itemKind.number ||
      item.kind === itemKind.sign ||
      item.kind === itemKind.points
    )
      break;
    if (
      (item.roles & role.conjunction) !== 0 ||
      statusOf(item) !== undefined ||
      dayName.test(item.text) ||
      /^(?:now|too|also|as|well|here|there|soon|around|about|at|in|its|it|im|should|just|left|for|till|til|until|be|will|up|everything|all|nobody|back|to|see|thank|thanks|put|waiting|with|on|from|since|getting|going|help|helping|give|giving)$/.test(
        item.text,
      )
    )
      break;
    to++;
    // "here rtu 4 not running": the machine, and not how it is
    if (item.kind === itemKind.subject) break;
  }
  const first = items[from];
  const last = items[to - 1];
  if (to <= from || first === undefined || last === undefined) return undefined;
  return note.text.slice(first.from, last.to);
}

/** "done for today, back Wednesday": no place. */
const dayName = /^(?:mon|tues|wednes|thurs|fri|satur|sun)day$|^(?:tomorrow|tmrw|morning)$/;

const whereSkip =
  /^(?:today|tonight|day|night|evening|now|the|to|at|over|for|back|a|up|out|of|my|this|that|down|again)$/;

const outOnly = /^(?:heading|headed|headin|rolling|rollin) out(?! (?:to|for|that|your)\b)/;
const finished = /\b(?:all (?:good|set|done|well)|done|good to go|fixed|cooling|running|back up)\b/;

/** "all good, heading out": away from where something was measured or mended; else he comes. */
function leaves(note: Note, { status, at }: Seen): boolean {
  const from = note.items[at]?.from ?? 0;
  if (status !== "on_the_way" || !outOnly.test(note.plain.slice(from))) return false;
  return note.context.readings.length > 0 || finished.test(note.plain.slice(0, from));
}

const untilLater =
  /^\S+(?: \S+)? (?:for (?:today|tonight|now|the (?:day|night|evening))|a (?:day|night))\b/;
const comesBack =
  /(?:^|[,.;] ?|\b(?:and|then|be|coming|come) )back (?:out )?(?:here )?(?:tomorrow|tmrw|in the morning|first thing|(?:on )?(?:mon|tues|wednes|thurs|fri)day)\b/;

/** "done for today, back tomorrow": he goes, the job goes on. */
function goesOn(note: Note, { status, at }: Seen): boolean {
  // "leaving for today": for no place
  const off = note.items[at]?.text === "leaving" && status === "on_the_way";
  if (off) return untilLater.test(note.plain.slice(note.items[at]?.from));
  if (status !== "done") return false;
  return untilLater.test(note.plain.slice(note.items[at]?.from)) || comesBack.test(note.plain);
}

const leaving: ReadonlySet<Status> = new Set(["left_site", "on_the_way"]);

/** "done here, heading to the next one at half past ten": the hour behind the way is the way's. */
function clockOf(note: Note, seen: Seen, next: Seen | undefined): Clock | undefined {
  const clock = heardHour(note) ?? clockNear(note.items, seen.at, leaving.has(seen.status));
  const later = next?.status === "on_the_way" && next.at > seen.at && clock !== undefined;
  return later && clock.from > next.at ? undefined : clock;
}

function push(note: Note, seen: Seen, next: Seen | undefined): void {
  const { items, context } = note;
  const heard = clockOf(note, seen, next);
  // "we're here til 5" is no arrival at five
  const until = heard !== undefined && /^(?:til|till|until)$/.test(textAt(items, heard.from - 1));
  const closed = seen.status === "no_access" || (seen.status === "on_site" && until);
  const later = closed && heard !== undefined && returnsAt(note, heard);
  const clock = later ? undefined : heard;
  const span = clock === undefined ? lengthNear(note) : undefined;
  // "got here 8:10" at four in the afternoon is the morning's
  const been = seen.status === "on_site" || seen.status === "done";
  let time = clock === undefined ? undefined : timeText(clock, context.at, been);
  if (span?.past === true) time = ago(span.seconds, context.at);
  const spans: [number, number][] = [];
  const one = items[seen.at];
  if (one !== undefined) spans.push([one.from, Math.max(one.to, one.signsTo)]);
  const where = whereOf(note, seen.at);
  const extra =
    clock ??
    (span !== undefined && (span.past || seen.status === "on_the_way")
      ? { from: span.at, end: span.at + (span.past ? 2 : 1) }
      : undefined);
  const from = items[extra?.from ?? -1];
  const to = items[(extra?.end ?? 0) - 1];
  if (extra !== undefined && from !== undefined && to !== undefined) {
    claim(note, extra.from, extra.end);
    spans.push([from.from, to.to]);
  }
  let last = seen.at + 1;
  while (last < items.length && (items[last]?.from ?? 0) < (one?.signsTo ?? 0)) last++;
  claim(note, seen.at, last);
  spans.sort((a, b) => a[0] - b[0]);
  note.statements.push({
    kind: "status",
    status: seen.status,
    ...(time === undefined ? {} : { time }),
    ...(where === undefined ? {} : { where }),
    ...(isErrand(note, seen.at) ? { errand: true as const } : {}),
    said: spans.map(([a, b]) => note.text.slice(a, b)).join(" "),
    spans,
    rule: STATUS,
  });
  note.trace.push(STATUS);
}

/** "heading out, 3.5 hrs plus 1 drive": who tells his hours has been there. */
function sumsUp({ items }: Note, { status, at }: Seen): boolean {
  const heads = /^head/.test(items[at]?.text ?? "") && items[at + 1]?.text !== "to";
  return status === "on_the_way" && heads && items.some((_, i) => besideTravel(items, i));
}

export const statusRule: Rule = {
  name: STATUS,
  needs: "status",
  apply: (note) => {
    const from = note.statements.length;
    const found = find(note);
    found.forEach((seen, order) => {
      const road = found[0]?.status === "done" && order > 0 && onTheRoad(note, seen);
      const away = road || leaves(note, seen) || goesOn(note, seen) || sumsUp(note, seen);
      const status = away ? "left_site" : comesBy(note, seen) ? "on_the_way" : seen.status;
      const waits = status === "left_site" && untilPart(note, seen.at);
      push(note, { ...seen, status: waits ? "waiting_for_parts" : status }, found[order + 1]);
    });
    // "all done, left at 4:15": one hour of both
    const [done, left] = note.statements.slice(from);
    if (done?.kind !== "status" || left?.kind !== "status" || left.status !== "left_site") return;
    if (left.time === undefined && done.time !== undefined)
      note.statements[from + 1] = { ...left, time: done.time };
  },
};
