import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { clockAt, timeText } from "../times.ts";
import { role } from "../word.ts";
import {
  correctsFigure,
  gasAgain,
  halfTold,
  likeTheLast,
  ofCooler,
  ofGauges,
  ofHold,
  ofSwitch,
  onSide,
  shownAt,
  shutAt,
  startedAt,
  tripsAt,
} from "./gauge-no-hour.ts";
import { hourBehind } from "./hour-behind.ts";
import { textAt } from "./near.ts";
import { nextTime } from "./next-time.ts";
import { ofStart } from "./of-start.ts";
import { STATUS } from "./status-words.ts";
import { twoTimes } from "./two-times.ts";

const before: ReadonlySet<string> = new Set([
  "until",
  "till",
  "til",
  "before",
  "by",
  "since",
  "close",
  "opens",
  "closes",
  "open",
  "around",
  "after",
]);
const meets: ReadonlySet<string> = new Set([
  "close",
  "closes",
  "open",
  "opens",
  "here",
  "there",
  "crane",
  "back",
  "meeting",
  "lunch",
  "tomorrow",
  "tonight",
  "guard",
  "leaves",
  "come",
  "comes",
  "shift",
  "school",
  "wait",
  "since",
  "down",
  "quit",
  "tuesday",
  "monday",
  "wednesday",
  "thursday",
  "friday",
  "yesterday",
  "today",
  "cutting",
  "arrive",
  "payroll",
  "delivery",
  "truck",
  "call",
  "meet",
  "office",
]);

/** Is the number a value: behind a label or a point, or with a unit? */
function measured(items: readonly Item[], i: number): boolean {
  for (let at = i - 1; at >= 0 && at >= i - 3; at--) {
    const item = items[at];
    if (item === undefined || item.kind === itemKind.line) return false;
    // "head's at two twenty five … sweating back": what a gauge shows
    const next = items[i + 1];
    const goesOn = /^(?:this|am|pm|in|tonight)$/.test(next?.text ?? "");
    const clock =
      items[i]?.colon || goesOn || shutAt(items, i) || ((next?.roles ?? 0) & role.is) !== 0;
    const shown = item.text === "at" && !clock ? shownAt(items, at) : undefined;
    // "closed the valve at 16:20": when it was, no opening
    if (clock && item.label?.quantity === "valve_opening") return false;
    if (shown?.place !== undefined || shown?.quantity !== undefined) return true;
    if (item.text === "at" || item.text === "@") return false;
    if (
      item.kind === itemKind.points ||
      item.kind === itemKind.unit ||
      item.label?.place !== undefined ||
      item.label?.quantity !== undefined ||
      item.label?.hint !== undefined
    )
      return true;
    if ((item.roles & (role.is | role.only | role.about)) === 0) return false;
  }
  return false;
}

/** "cake in the break room at 3": such rooms have an hour, and nobody reads their air. */
function meetingRoom(items: readonly Item[], i: number): boolean {
  if (textAt(items, i - 1) !== "at" && !/\bat$/.test(textAt(items, i - 1))) return false;
  const item = items[i];
  const hour =
    item?.unit === undefined && Number.isInteger(item?.value) && (item?.value ?? 0) <= 12;
  return (
    hour &&
    items
      .slice(0, i)
      .some(({ text }) => /^(?:break|lunch|meeting|conference|locker|training)$/.test(text))
  );
}

const stands =
  /^(?:held|hold|holds|holding|sits|sitting|sat|stays|stayed|steady|stuck|stands|standing|settled|flat|stalled|hanging|hangs)$/;

function talkOfTime(items: readonly Item[], i: number): boolean {
  if (ofStart(items, i)) return true;
  // "pump on since ten to four", "been at it since 9"
  if (textAt(items, i - 1) === "since") return items[i]?.unit === undefined;
  if (!before.has(textAt(items, i - 1)) && textAt(items, i - 1) !== "at") return false;
  if (ofSwitch(items, i)) return false;
  // "pumped down, held at 400": where it stands
  if (textAt(items, i - 1) === "at" && stands.test(textAt(items, i - 2))) return false;
  return (
    items.some((item) => meets.has(item.text)) &&
    !items.some((item) => /^water_/.test(item.label?.place ?? "")) &&
    !items.some(
      (item) =>
        item.kind === itemKind.points ||
        item.kind === itemKind.unit ||
        (item.kind === itemKind.number &&
          item.unit !== undefined &&
          item.unit.dimension !== "time"),
    )
  );
}

/** "at ten forty suction was 71": spoken at the head of what was measured then. */
function opensWith(items: readonly Item[], i: number): boolean {
  const [at, item, next, start] = [items[i - 1], items[i], items[i + 1], items[i - 2]];
  if (at?.text !== "at" || item?.spoken !== true || item.unit !== undefined) return false;
  if (item.value < 100 || item.value >= 1300 || item.value % 100 === 0) return false;
  if (
    start !== undefined &&
    start.kind !== itemKind.line &&
    !/^(?:[.,]|and|then|so)$/.test(start.text)
  )
    return false;
  const [article, named] = [items[i + 1], items[i + 2]];
  const its = /^(?:its|it's)$/.test(next?.text ?? "") && items[i + 2]?.kind === itemKind.number;
  const it =
    its ||
    (next?.text === "it" &&
      ((items[i + 2]?.roles ?? 0) & role.is) !== 0 &&
      items[i + 3]?.kind === itemKind.number);
  const behind =
    ((article?.roles ?? 0) & role.article) !== 0 &&
    (named?.label?.place !== undefined || named?.label?.quantity !== undefined);
  if (it || behind) return items.slice(i + 2).some(({ kind }) => kind === itemKind.number);
  const told =
    next?.label?.place !== undefined ||
    next?.label?.quantity !== undefined ||
    next?.kind === itemKind.points ||
    next?.kind === itemKind.subject;
  return told && items.slice(i + 2).some(({ kind }) => kind === itemKind.number);
}

/** "supply run, back in 40", "back in 20 minutes": how long he is away. */
function backIn(items: readonly Item[], i: number): boolean {
  const [item, next, back] = [items[i], items[i + 1], items[i - 1]];
  // "back in" is one item
  if (back?.text !== "back" || back.to < back.from + 6) return false;
  if (!items.slice(0, i - 1).some(({ owner }) => owner === STATUS)) return false;
  if (item?.kind !== itemKind.number || item.value > 180) return false;
  return item.unit?.dimension === "time" || (item.unit === undefined && next?.label === undefined);
}

/** "isolated it at 5, 410 microns. its 5:30 and 455": an hour, where another time is told by the clock. */
function hourBeside(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.kind !== itemKind.number || item.unit !== undefined || item.spoken) return false;
  if (textAt(items, i - 1) !== "at" || !Number.isInteger(item.value)) return false;
  if (item.value < 1 || item.value > 12 || !/^(?:[.,]|)$/.test(textAt(items, i + 1))) return false;
  return (
    items.some((one) => one.colon) &&
    items.some(({ unit }) => unit?.figure === "micron" || unit?.figure === "psi")
  );
}

const errands =
  /\b(?:gone|going|went|ran|run|running|lunch|break|errand|grab\w*|fetch\w*|store|truck|van|shop|get|getting|off to|heading|call you|hit the)\b/;

/** "gone to get a belt, back in 30": minutes that somebody is away, no gas. */
function awayFor(note: Note, i: number): boolean {
  const { items } = note;
  const [item, back] = [items[i], items[i - 1]];
  if (item?.kind !== itemKind.number || back === undefined) return false;
  if (item.unit !== undefined && item.unit.dimension !== "time") return false;
  const led = note.plain.slice(Math.max(0, back.to - " back in".length), back.to);
  if (!/\bback (?:in|by)$/.test(led) || item.value > 120) return false;
  if (items[i + 1]?.unit?.dimension === "mass") return false;
  return errands.test(note.plain.slice(0, back.from));
}

function claim(note: Note, i: number): number {
  const { items } = note;
  const item = items[i];
  if (item === undefined || item.owner !== undefined) return i;
  if (item.kind !== itemKind.number && item.text !== "noon") return i;
  if (awayFor(note, i)) {
    state(note, clockTimes.name, [i - 1, i + 1], { kind: "note", about: "time" });
    return i;
  }
  const hour = hourLetter(note, i);
  if (hour !== undefined) {
    state(note, clockTimes.name, hour, { kind: "note", about: "time" });
    return hour[1] - 1;
  }
  if (backIn(items, i)) {
    state(note, clockTimes.name, [i, i + 1], { kind: "note", about: "time" });
    return i;
  }
  // "40a 2p": two poles
  if (textAt(items, i + 1) === "p" && items[i - 1]?.unit?.dimension === "current") return i;
  if (tripsAt(items, i) || ofCooler(items, i)) return i;
  if (ofGauges(items, i) || gasAgain(note, i) || correctsFigure(note, i)) return i;
  const loose = talkOfTime(items, i);
  const hourTold = hourBehind(note, i);
  const clock = clockAt(
    items,
    i,
    loose ||
      meetingRoom(items, i) ||
      hourBeside(items, i) ||
      // where the company thinks in pascals no gauge shows so much
      (note.context.units === "si" && shutAt(items, i)) ||
      nextTime(items, i, clockTimes.name) ||
      opensWith(items, i) ||
      hourTold ||
      ofHold(items, i) ||
      twoTimes(items, i),
  );
  const room = meetingRoom(items, i) || halfTold(items, i) || hourTold;
  const read = !room && (measured(items, i) || onSide(items, i));
  if (clock === undefined || read || startedAt(items, i)) return i;
  // "still 425 this morning": a gauge that stands where it stood
  const stands = /^(?:still|holding|holds|held|only)$/.test(textAt(items, i - 1));
  if (stands && !item.colon && item.value >= 100 && note.context.readings.length > 0) return i;
  if (likeTheLast(note, item, clock.end)) return i;
  const at = textAt(items, i - 1) === "at" || textAt(items, i - 1) === "@";
  const bounded = before.has(textAt(items, i - 1)) || textAt(items, i - 1) === "yesterday";
  if (!loose && !bounded && item.kind === itemKind.number)
    note.measuredAt.push({ index: i, time: timeText(clock, note.context.at) });
  state(note, clockTimes.name, [at ? i - 1 : i, clock.end], { kind: "note", about: "time" });
  return clock.end - 1;
}

/** "since 10h15", "at 14h": hours as the clock has them; where the time begins and ends, in items. */
function hourLetter({ items }: Note, i: number): readonly [from: number, end: number] | undefined {
  const item = items[i];
  if (item?.unit?.figure !== "h" || !Number.isInteger(item.value) || item.value > 23)
    return undefined;
  const next = items[i + 1];
  const minutes = next?.kind === itemKind.number && next.glued && next.unit === undefined;
  const said = /^(?:at|@|since|from|until|till|til|by)$/.test(textAt(items, i - 1));
  const from = textAt(items, i - 1) === "at" || textAt(items, i - 1) === "@" ? i - 1 : i;
  if (minutes && next.to - next.from === 2 && next.value < 60) return [from, i + 2];
  // "at 2 h" may be two hours into a test
  return said && item.value >= 6 && item.to - item.from <= 3 ? [from, i + 1] : undefined;
}

/** "at 9:20", "9am", "0700", "until one thirty" */
export const clockTimes: Rule = {
  name: "at <hour>:<minute>",
  apply: (note) => {
    for (let i = 0; i < note.items.length; i++) i = claim(note, i);
  },
};
