import { COUNTED } from "../count-words.ts";
import { type Item, itemKind, wordsFrom } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { partBehindHours } from "./hours-and-part.ts";
import {
  behindFarewell,
  closesWith,
  elsewhere,
  farewell,
  isParting,
  minutesOfCall,
  opensWith,
} from "./labor-farewell.ts";
import { closing, minutesBehind } from "./minutes-behind.ts";
import { besideTravel, isOrdinalUpTo } from "./near.ts";
import { STATUS, statusOf } from "./status-words.ts";
import { isTotal } from "./stay.ts";

const labor = /^(?:labor|labour|ot|overtime|timesheet|billable|bill|log|hrs|onsite|straight|me)$/;

const paidFor = /^(?:travel|drive|driving|drv|ot|overtime|labor|labour|onsite)$/;

/** Words of a time sheet beside hours, where the message tells of nothing else. */
const sheet =
  /^(?:today|total|travel|drive|driving|drv|helper|me|myself|mine|worked|work|each|site|on site|shop|here)$/;

/** "2.5 h today plus 1 h travel", "helper 2 h", "3 hrs bram 2 hrs me": nothing but hours is told. */
function sheetOf(items: readonly Item[]): boolean {
  const numbers = items.filter(
    (item, at) =>
      item.kind === itemKind.number &&
      item.owner === undefined &&
      !(items[at - 1]?.unit?.figure === "h" && minutesBehind(items, at - 1) > 0),
  );
  // "3.25 hrs plus 0.5 travel": hours as well, where it says for what
  const hours = ({ unit, value }: Item, at: number): boolean =>
    value <= 24 &&
    (unit?.figure === "h" || (at > 0 && unit === undefined && isPaid(items, numbers[at])));
  if (!numbers.every(hours)) return false;
  if (items.length > 14 || items.some((item) => elsewhere.test(item.text))) return false;
  return items.some((item) => sheet.test(item.text));
}

function isPaid(items: readonly Item[], number: Item | undefined): boolean {
  return number !== undefined && paidFor.test(items[items.indexOf(number) + 1]?.text ?? "");
}

/** "2 hrs labor plus 0.5 travel": behind hours the next number is hours too, where it says for what. */
function hoursAgain(items: readonly Item[], i: number): boolean {
  const [item, next] = [items[i], items[i + 1]];
  if (item?.kind !== itemKind.number || item.value > 24) return false;
  if (item.unit !== undefined && !besideTravel(items, i - 2)) return false;
  if (next === undefined || !paidFor.test(next.text)) return false;
  return items.slice(0, i).some((one) => one.unit?.figure === "h" && one.owner !== undefined);
}

const onTheJob =
  /\b(?:men|guys|techs|us|i was|we were)(?: were| was)?(?: on (?:the job|site|it|this)| here| there| working)*(?: for| about| at)*$/;
/** Where the time that the way took begins in what follows: "plus forty minutes of travel". */
function travelFrom(items: readonly Item[]): number {
  const at = items.findIndex((_, i) => isTravel(items, i));
  let from = at;
  while (/^(?:,|and|plus|\+)$/.test(items[from - 1]?.text ?? "")) from--;
  return at < 0 ? items.length : from;
}

/** "40 min travel", "an hour of driving" */
function isTravel(items: readonly Item[], i: number): boolean {
  const of = items[i + 1]?.text === "of" ? i + 2 : i + 1;
  const time = items[i]?.kind === itemKind.number && items[i]?.unit?.dimension === "time";
  return time && /^(?:travel|drive|driving|drv)$/.test(items[of]?.text ?? "");
}

/** Nothing that was measured, ran or was pulled. */
function aside(item: Item, hours: Item | undefined): boolean {
  if (item === hours) return true;
  if (item.kind === itemKind.number) return item.owner !== undefined;
  return item.label === undefined && !elsewhere.test(item.text);
}

/** "used two hours fifteen", "took me 1.5 hrs": and nothing behind that tells what took so long. */
function spent(items: readonly Item[], i: number): boolean {
  const led = wordsFrom(items, i - 3, i);
  // "used 3 hours", "it took two hours": where nothing else was measured that could have taken so long
  const took = /\btook(?: about| like)?$/.test(led) && items.every((item) => aside(item, items[i]));
  const there = onTheJob.test(wordsFrom(items, i - 6, i));
  if (
    !there &&
    !took &&
    !/\b(?:used|took me|took us|spent|i have|ive got|charge)(?: about| like)?$/.test(led)
  )
    return false;
  const rest = items.slice(minutesBehind(items, i) > 0 ? i + 2 : i + 1);
  const behind = rest.slice(0, travelFrom(rest));
  return (
    (items[i]?.value ?? 0) <= 24 &&
    behind.every(({ text, kind }) => kind === itemKind.line || closing.test(text))
  );
}

/** "new contactor, labor 1.5": hours in quarters, at the end of what is told. */
function laborAlone(items: readonly Item[], i: number): boolean {
  const [before, item, next] = [items[i - 1], items[i], items[i + 1]];
  const led = /^labou?r$/.test(
    /^[:=]$/.test(before?.text ?? "") ? (items[i - 2]?.text ?? "") : (before?.text ?? ""),
  );
  if (!led || item?.unit !== undefined || item === undefined || item.spoken) return false;
  const quarters = item.value > 0 && item.value <= 16 && (item.value * 4) % 1 === 0;
  return (
    quarters && (next === undefined || next.kind === itemKind.line || /^[,.;]$/.test(next.text))
  );
}

/** "1 hr on rtu 1 45 min on 2": how long which machine took, where several are told or he is done; items taken, or 0. */
function onMachine(items: readonly Item[], i: number): number {
  const [item, on, machine] = items.slice(i, i + 3);
  if (item?.unit?.dimension !== "time" || item.value > 240 || on?.text !== "on") return 0;
  const number = machine?.kind === itemKind.number && isOrdinalUpTo(machine, 99);
  const named = machine?.kind === itemKind.subject;
  if (!number && !named) return 0;
  const told = items.filter(
    (one, at) => one.unit?.dimension === "time" && items[at + 1]?.text === "on",
  );
  const over = items.some((one) => one.owner === STATUS && farewell.has(statusOf(one) ?? ""));
  const first = items.find((one) => one.owner === laborRule.name) !== undefined;
  if (items.some(({ label }) => label !== undefined)) return 0;
  return (named && (told.length > 1 || over)) || (number && first) ? 3 : 0;
}

const round = (hours: number): number => Math.round(hours * 100) / 100;

/** "put me down for 3 hours", "2.5 hrs labor", "1 hour overtime" */
export const laborRule: Rule = {
  name: "<number> hours labor",
  heads:
    "good|thats|buttoned|hours|hour|hr|labor|labour|ot|overtime|timesheet|billable|bill|log|hrs|onsite|straight|put|today|total|travel|drive|driving|drv|helper|me|myself|mine|worked|each|shop|this|far|here|done|finished|complete|leaving|left|out|wrapped|used|took|spent|men|man|guys|techs|us|was|were",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const alone = sheetOf(items);
    items.forEach((item, i) => {
      if (item.owner === undefined && hoursAgain(items, i)) {
        const plus = items[i - 1];
        const from = plus?.text === "plus" && plus.owner === undefined ? i - 1 : i;
        state(note, laborRule.name, [from, i + 2], { kind: "labor", hours: item.value });
        return;
      }
      if (item.kind !== itemKind.number || item.owner !== undefined) return;
      const took = onMachine(items, i);
      if (took > 0) {
        const hours = item.unit?.figure === "min" ? item.value / 60 : item.value;
        state(note, laborRule.name, [i, i + took], { kind: "labor", hours: round(hours) });
        return;
      }
      const minuted = item.unit?.figure === "min" && item.value < 240 && isTravel(items, i);
      if (
        minuted &&
        items.some(({ unit, owner }) => unit?.figure === "h" && owner === laborRule.name)
      ) {
        state(note, laborRule.name, [i, i + 1], {
          kind: "labor",
          hours: round(item.value / 60),
        });
        return;
      }
      if (minutesOfCall(items, i)) {
        const hours = round(item.value / 60);
        state(note, laborRule.name, [i, i + 1], { kind: "labor", hours });
        return;
      }
      if (laborAlone(items, i) || behindFarewell(items, i)) {
        if (isParting(items, i))
          state(note, STATUS, [0, 1], { kind: "status", status: "left_site" });
        state(note, laborRule.name, [i, i + 1], { kind: "labor", hours: item.value });
        return;
      }
      if (item.unit?.figure !== "h") return;
      const near = items.slice(Math.max(0, i - 4), i + 4);
      const down =
        near.some((word) => word.text === "put") &&
        near.some((word) => word.text === "me") &&
        near.some((word) => word.text === "down");
      // "put 3 hrs on it"
      const put =
        /^(?:put|log|bill|book)$/.test(items[i - 1]?.text ?? "") &&
        items[i + 1]?.text === "on" &&
        /^(?:it|this|that|here|there|the)$/.test(items[i + 2]?.text ?? "");
      const said = near.some(
        (word) => word.text !== "me" && labor.test(word.text) && word.kind !== itemKind.number,
      );
      const parts = besideTravel(items, i) ? 0 : partBehindHours(items, i, elsewhere);
      if (parts > 0) state(note, COUNTED, [parts, parts + 1], { kind: "note", about: "count" });
      const last =
        parts > 0 ||
        besideTravel(items, i) ||
        opensWith(items, i) ||
        closesWith(items, i) ||
        spent(items, i);
      if (!down && !put && !said && !alone && !isTotal(items, i) && !last) return;
      const minutes = minutesBehind(items, i);
      const hours = item.value + minutes;
      const overtime = near.some((word) => word.text === "ot" || word.text === "overtime");
      state(
        note,
        laborRule.name,
        [i, minutes > 0 ? i + 2 : i + 1],
        overtime ? { kind: "labor", hours, overtime: true } : { kind: "labor", hours },
      );
    });
  },
};
