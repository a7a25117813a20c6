import { endsClause, isStrongBreak } from "../breaks.ts";
import { type Item, itemKind, wordsFrom } from "../item.ts";
import { minutesBehind } from "./minutes-behind.ts";
import { STATUS, statusOf } from "./status-words.ts";
import { sumsUp } from "./sums-up.ts";

/** Words beside hours that are no work of a call. */
export const elsewhere =
  /^(?:off|out|down|ran|run|runtime|runs|running|held|hold|holding|holds|since|after|ago|every|away|eta|for|in|old|later|until|till|til|been|back|wait|waiting|n2|nitrogen|vac|vacuum|pump|test|ok)$/;

/** The name of the rule for hours of several people or machines. */
export const HOURS_OF_EACH = "<hours> <whose>, <number> <whose>";

export const farewell = new Set(["done", "left_site"]);

/** A number but the hour that a farewell was said with: "done 5pm". */
function isFigure({ kind, owner, text }: Item): boolean {
  return kind === itemKind.number && owner !== STATUS && !text.includes(":");
}

/** "heading out, 1.5 hrs": away, and no way to somewhere. */
function goesOut(items: readonly Item[], at: number): boolean {
  if (!/^(?:heading|headed|headin|rolling|rollin)$/.test(items[at]?.text ?? "")) return false;
  const next = items[at + 2];
  return items[at + 1]?.text === "out" && (next === undefined || /^[.,!]$/.test(next.text));
}

/** Where the hours of somebody else begin, told already. */
function colleagueFrom(items: readonly Item[]): number {
  const at = items.findIndex(({ owner }) => owner === HOURS_OF_EACH);
  return at < 0 ? items.length : Math.max(0, at - 1);
}

/** "done for the day" */
const forTheDay = /^for (?:the day|today|now|tonight)\b/;

const asLeft =
  /\bleft (?:it |the |unit |room )*(?:[a-z]+[ -]?)?(?:\d+ )?(?:off|down|locked out|locked)(?: (?:for now|at the \w+))? [.,;]$/;

/** "left 307 off. 1.75 hrs": how a machine was left, and then how long he was there. */
function leftSo(items: readonly Item[], i: number): boolean {
  return asLeft.test(wordsFrom(items, i - 9, i).trim());
}

/** "my lock is on it, 2.5 hrs": the last that is told, parted from a lock that stays. */
function locksUp(items: readonly Item[], i: number, behind: readonly Item[]): boolean {
  const parted = items.slice(i - 1, i).some((one) => endsClause(one));
  const others = items.slice(0, i).some(isFigure);
  const lock = items.slice(0, i).findIndex(({ text }) => /^(?:lock|locks|locked|tag)$/.test(text));
  return parted && !others && behind.length === 0 && lock >= 0 && i - lock <= 10;
}

/** "done, 1.5 hrs", "leaving otterby. 2 hrs": the last that is told behind a farewell is how long he was there. */
export function closesWith(items: readonly Item[], i: number, most = 24): boolean {
  const [item, before] = [items[i], items[i - 1]];
  if (item === undefined || item.value > most) return false;
  const rest = items.slice(minutesBehind(items, i) > 0 ? i + 2 : i + 1);
  // "2h 15 on site. kit 1.5": a colleague's stand apart
  const behind = rest.slice(0, colleagueFrom(rest));
  // "done 6.5h. old comp in van": another sentence tells of something else
  const [first] = behind;
  const comma = first?.text === "," && !behind.some(({ kind }) => kind === itemKind.number);
  const stop = first !== undefined && (isStrongBreak(first) || comma);
  if (
    !stop &&
    behind.some(
      ({ text }) =>
        !/^(?:[.,!]|total|on|it|this|there|here|each|apiece|site|onsite|on site)$/.test(text),
    )
  )
    return false;
  const bye = items.findIndex(
    (one, at) =>
      one.owner === STATUS &&
      (farewell.has(statusOf(one) ?? "") || one.text === "left" || goesOut(items, at)),
  );
  if (bye < 0 && sumsUp(items.slice(0, i))) return behind.length === 0;
  if (bye < 0 || bye >= i)
    return locksUp(items, i, behind) || (behind.length === 0 && leftSo(items, i));
  const told = items.slice(bye + 1, i).filter(({ from }) => from >= (items[bye]?.signsTo ?? 0));
  const between = told.slice(forTheDay.exec(wordsFrom(told, 0, 3))?.[0].split(" ").length ?? 0);
  if (between.length > 7 || between.some(isFigure)) return false;
  if (between.some(({ text }) => elsewhere.test(text) && !/^(?:out|off)$/.test(text))) return false;
  // "done at harl 3 hrs 15": nothing but where stands between them
  const where =
    between.length <= 2 &&
    between.every(({ kind, roles }) => kind === itemKind.word && roles === 0) &&
    / at$/.test(wordsFrom(items, bye, bye + 2).trim() || items[bye]?.text || "");
  return (
    where ||
    (behind.length === 0 && fromPlace(items, bye, between)) ||
    before?.kind === itemKind.sign ||
    before?.kind === itemKind.line ||
    between.length === 0 ||
    before?.owner === STATUS ||
    /^(?:us|each|me)$/.test(before?.text ?? "")
  );
}

/** "leaving orchard market 3.25 hrs": nothing but the place that he leaves. */
function fromPlace(items: readonly Item[], bye: number, between: readonly Item[]): boolean {
  const plain = between.every(
    ({ kind, label, signs, text }) =>
      kind === itemKind.word && label === undefined && signs === undefined && text !== "on",
  );
  return /^(?:leaving|leavin)\b/.test(items[bye]?.text ?? "") && between.length <= 3 && plain;
}

/** "3.5 hrs, done", "2 hrs and leaving": the first that is told, right before the farewell. */
export function opensWith(items: readonly Item[], i: number): boolean {
  const item = items[i];
  // "tubes want brushing. 3.25 h, done": a sentence of its own
  const from = items.findLastIndex((one, at) => at < i && isStrongBreak(one)) + 1;
  if (item === undefined || item.value > 24 || !items.slice(from, i).every(isLead)) return false;
  const to = minutesBehind(items, i) > 0 ? i + 2 : i + 1;
  const joint = items[to];
  const parted =
    joint !== undefined &&
    (joint.kind === itemKind.line || /^(?:,|\.|and|&|-|then)$/.test(joint.text));
  const bye = items[parted ? to + 1 : to];
  return bye?.owner === STATUS && farewell.has(statusOf(bye) ?? "");
}

function isLead({ text, kind }: Item): boolean {
  return kind === itemKind.sign || /^(?:about|around|roughly|total|ok|so|and)$/.test(text);
}

/** Hours of a call that are told as a bare figure right behind the farewell, at most. Our choice, no source. */
const mostHours = 5;

/** "leaving 1.5", "left 2.25": said first, and right before its hours, so no rule for a going has taken it. */
export function isParting(items: readonly Item[], i: number): boolean {
  return (
    i === 1 && /^(?:leaving|left)$/.test(items[0]?.text ?? "") && items[0]?.owner === undefined
  );
}

/** "done, 1.5", "leaving. 2.25": quarters of an hour right behind a farewell, and nothing else. */
export function behindFarewell(items: readonly Item[], i: number): boolean {
  const [bye, joint, item] = [items[i - 2], items[i - 1], items[i]];
  const last = /^(?:total|each|apiece)$/.test(items[i + 1]?.text ?? "") ? i + 1 : i;
  if (item === undefined || item.unit !== undefined || item.spoken || last !== items.length - 1)
    return false;
  const quarters = /^\d{1,2}\.(?:25|5|75)$/.test(item.text) && item.value <= 16;
  // "leaving 1.5": no water and no air of a machine leaves at so few degrees
  const parting = isParting(items, i) || (i === 1 && joint?.text === "done");
  if (parting && quarters && item.value <= mostHours) return true;
  const farewells = bye?.owner === STATUS && farewell.has(statusOf(bye) ?? "");
  const parted = /^[,.]$/.test(joint?.text ?? "");
  // "done here. 1.75", "done, out. 30": no more than where or how he goes stands between
  const from = parted ? i - 2 : i - 1;
  const goes = /^(?:here|there|out)$/.test(items[from]?.text ?? "");
  const before = items[from - 1]?.text === "," ? items[from - 2] : items[from - 1];
  const left = goes && before?.owner === STATUS && farewell.has(statusOf(before) ?? "");
  return quarters && ((farewells && parted) || left || (parted && byeAhead(items, i - 1)));
}

/** "done, leaving the hotel. 1.25": the farewell's sentence with no figure of its own. */
function byeAhead(items: readonly Item[], end: number): boolean {
  const from = items.findLastIndex((item, at) => at < end && item.kind === itemKind.number) + 1;
  const begins = Math.max(from, end - 7);
  const told = items.slice(begins, end);
  return (
    items[end]?.text === "." &&
    told.some((one) => one.owner === STATUS && farewell.has(statusOf(one) ?? "")) &&
    !told.some(({ text }) => elsewhere.test(text) && !/^(?:out|off)$/.test(text))
  );
}

/** Minutes that a whole call takes, told behind a farewell. Our choice, no source. */
export const machineTime =
  /^(?:vac|vacuum|pump|evac|hold|nitrogen|nitro|n2|defrost|cycle|test|purge)$/;
const callMinutes: readonly [number, number] = [10, 240];

/** "done w hp-2, 40 min", "done, 45 min each": a call that took less than hours. */
export function minutesOfCall(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.unit?.figure !== "min" || item.value < callMinutes[0]) return false;
  // "vacuum done, 30 min": a test or a pump took so long
  if (items.slice(0, i).some(({ text }) => machineTime.test(text))) return false;
  return items[i - 1]?.unit?.figure !== "h" && closesWith(items, i, callMinutes[1]);
}
