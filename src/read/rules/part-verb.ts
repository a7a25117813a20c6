import type { PartState } from "../../model.ts";
import { endsClause, isStrongBreak } from "../breaks.ts";
import { dueWords } from "../due-time.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";
import { comesDue, comesLater, isMounted, toCome } from "./part-comes.ts";

export const needs: ReadonlySet<string> = new Set([
  "need",
  "needs",
  "needed",
  "require",
  "requires",
  "needing",
]);
export const fits: ReadonlySet<string> = new Set([
  "replaced",
  "changed",
  "swapped",
  "installed",
  "fitted",
  "change",
  "swaped",
  "replced",
  "hung",
  "replacing",
]);

const fresh: ReadonlySet<string> = new Set(["new", "spare", "rebuilt", "replacement"]);

/** "from 74 to 72", "to 15/30" behind the thing that was changed. */
function setAnew(items: readonly Item[], at: number): boolean {
  const to = items.findIndex(({ text }, i) => i > at && i < at + 7 && text === "to");
  const from = items.slice(at + 1, at + 5).some(({ text }) => text === "from");
  return to > 0 && items[to + 1]?.kind === itemKind.number && (from || to <= at + 2);
}

export interface Verb {
  readonly state: PartState;
  readonly at: number;
}

const namesLock = (items: readonly Item[]): boolean =>
  items.some(({ text }) => /^(?:lock|locks|tag|tags)$/.test(text));

/** What became of parts in this clause: needed, ordered, or fitted. */
export function verbOf(items: readonly Item[], from: number, to: number): Verb | undefined {
  const waits = items.some(({ text }) => text === "before");
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item === undefined) continue;
    if (needs.has(item.text) || (item.text === "going" && items[i + 1]?.text === "need"))
      return notFirst(items, i, { state: "needed", at: i });
    if (
      item.text === "ordered" ||
      item.text === "ordering" ||
      (item.text === "on" && items[i + 1]?.text === "order") ||
      (item.text === "order" && (i === from || isPlanned(items, i))) ||
      comesDue(items, i) ||
      comesLater(items, from, i, to)
    )
      return { state: item.text === "order" ? "needed" : "ordered", at: i };
    // "eleven and change" amps, "change over"
    const rest = items[i - 1]?.text === "and" && items[i - 2]?.kind === itemKind.number;
    if (item.text === "change" && (items[i + 1]?.text === "over" || rest)) continue;
    // "killed the disconnect and hung my lock": no part was fitted
    if (item.text === "hung" && namesLock(items.slice(i + 1, i + 4))) continue;
    // "filter change due friday": work that is to come
    if (item.text === "change" && toCome.test(items[i + 1]?.text ?? "")) continue;
    // "changed stat from 74 to 72": how it is set
    if (item.text.startsWith("change") && setAnew(items, i)) continue;
    if (waits && notYet(items, i)) continue;
    // "brazed in the new comp": a part, no joint
    const joined = /^(?:brazed|brazing|sweated|soldered|welded)$/.test(item.text);
    if (joined && items.slice(i + 1, i + 4).some(({ text }) => fresh.has(text)))
      return { state: "fitted", at: i };
    if (fits.has(item.text)) return notFirst(items, i, { state: "fitted", at: i });
    if (
      /^(?:put|putting|dropped|stuck)$/.test(item.text) &&
      items.slice(i + 1, i + 4).some((word) => word.text === "new" || word.text === "in") &&
      !intoRun(items, i) &&
      // "putting the comp in friday"
      !(item.text === "putting" && dueWords({ items: items.slice(i, to), plain: "" }))
    )
      return { state: "fitted", at: i };
    if (/^put(?:ting)?$/.test(item.text) && putOn(items, i, to)) return { state: "fitted", at: i };
    if (item.text === "in" && isIn(items, i)) return { state: "fitted", at: i };
    if (item.text === "in" && inAlone(items, from, i, to)) return { state: "fitted", at: i };
    if (item.text === "new" && i === from && offVan(items, i, to))
      return { state: "fitted", at: i };
    if (item.text === "new" && i === from && newReads(items, i)) return { state: "fitted", at: i };
    if (item.text === "new" && newToo(items, i, to)) return { state: "fitted", at: i };
    if (item.text === "put" && item.signs !== undefined && item.to - item.from > 4)
      return { state: "fitted", at: i };
    if (
      fresh.has(item.text) &&
      items
        .slice(i + 1, i + 7)
        .some(
          (word, ahead) =>
            /^(?:installed|reads)$/.test(word.text) ||
            (word.text === "in" && (item.text === "new" || ends(items[i + 2 + ahead]))) ||
            (word.text === "on" && ends(items[i + 2 + ahead])),
        )
    )
      return { state: "fitted", at: i };
  }
  return undefined;
}

/** "new cap 5.1, fan spins right up": what it reads, to the tenth, no size that is bought. */
function newReads(items: readonly Item[], i: number): boolean {
  const value = items[i + 2];
  const cap = /^(?:cap|capacitor)$/.test(items[i + 1]?.text ?? "");
  return (
    cap && value?.kind === itemKind.number && !Number.isInteger(value.value) && !value.fraction
  );
}

/** "put the fan motor on": not "put the gauges on", "put the disconnect in". */
function putOn(items: readonly Item[], i: number, to: number): boolean {
  const on = items.findIndex(
    (word, at) => at > i + 1 && at < to && /^(?:on|in|back)$/.test(word.text),
  );
  if (on < 0 || on > i + 6 || intoRun(items, i)) return false;
  const thing = items[on - 1];
  // "put a float switch in"
  const mounts = isMounted(thing) || thing?.text === "switch";
  return mounts && (on + 1 >= to || ends(items[on + 1]));
}

/** "motor's in, spins", "the board is in": who works there has fitted it. */
function isIn(items: readonly Item[], i: number): boolean {
  const verb = items[i - 1];
  const before = items.slice(Math.max(0, i - 6), i);
  if (before.some(({ text }) => /^(?:when|once|if|until|till|after|before)$/.test(text)))
    return false;
  const thing = verb?.text === "is" ? items[i - 2] : verb?.apostrophe === true ? verb : undefined;
  return isMounted(thing) && (ends(items[i + 1]) || items[i + 1]?.text === "place");
}

/** "gas valve in, lights off": the clause holds the part and nothing else. */
function inAlone(items: readonly Item[], from: number, i: number, to: number): boolean {
  if (i !== to - 1 || i - from < 1 || i - from > 4 || !isMounted(items[i - 1])) return false;
  const part = items[i - 1];
  // "contactor in": it pulls
  if (/\b(?:contactor|relay)$/.test(part?.text ?? "")) return false;
  // "drier in, drier out 61": two ends of one
  const ends = items
    .slice(i + 1, i + 8)
    .some(
      ({ text, label }) =>
        text === part?.text ||
        text.endsWith(" out") ||
        (label?.place !== undefined && label.place === part?.label?.place),
    );
  // "2 heaters in": so many of them
  const [first, ...rest] = items.slice(from, i);
  const counted = first?.kind === itemKind.number && first.unit === undefined && rest.length > 0;
  return (
    !ends &&
    [...(counted ? [] : [first]), ...rest].every(
      (item, at) =>
        (item?.kind !== itemKind.number && item?.roles === 0) ||
        // "txv and drier in"
        (at > 0 && /^(?:and|&|n)$/.test(item?.text ?? "")),
    )
  );
}

/** "new contactor off the van": what was at hand is in. */
function offVan(items: readonly Item[], i: number, to: number): boolean {
  const off = items.findIndex(({ text }, at) => at > i && at < to && /^(?:off|from)$/.test(text));
  return (
    off > i + 1 &&
    items.slice(off + 1, off + 3).some(({ text }) => /^(?:van|truck|shelf|stock|rig)$/.test(text))
  );
}

/** "new valve in, new drier too": the clause holds the thing and nothing else. */
function newToo(items: readonly Item[], i: number, to: number): boolean {
  return (
    /^(?:too|also)$/.test(items[to - 1]?.text ?? "") && to - i <= 5 && isMounted(items[to - 2])
  );
}

/** "put it in forced defrost from the board": into a way of running, no part. */
function intoRun(items: readonly Item[], i: number): boolean {
  const into = items.slice(i + 1, i + 5).findIndex(({ text }) => text === "in" || text === "into");
  return (
    into >= 0 &&
    items
      .slice(i + 2 + into, i + 5 + into)
      .some(({ text }) =>
        /^(?:forced|defrost|test|heat|heating|cool|cooling|manual|auto|pumpdown|service)$/.test(
          text,
        ),
      )
  );
}

/** "gonna order a board", "i'll order the board": it is needed, and not ordered yet. */
function isPlanned(items: readonly Item[], i: number): boolean {
  const before = items.slice(Math.max(0, i - 3), i);
  if (before.some((item) => (item.roles & role.not) !== 0 || isStrongBreak(item))) return false;
  if (items[i - 1]?.text === "i" || /^(?:should|do|shall)$/.test(before[0]?.text ?? ""))
    return false;
  return before.some(
    ({ roles, text }) => (roles & role.plan) !== 0 || /^(?:please|pls)$/.test(text),
  );
}

/** "megging it before i put new ones in": not done yet. */
function notYet(items: readonly Item[], i: number): boolean {
  for (let at = Math.max(0, i - 4); at <= i; at++) {
    if (items[at]?.text !== "before") continue;
    const who = /^(?:i|we|you|he|they|putting|installing|fitting|replacing|swapping|changing)$/;
    if (who.test(items[at + 1]?.text ?? "")) return true;
  }
  return false;
}

/** "new contactor on, runs 19.8": "on" ends what was done; "on order", "on the truck" go on. */
function ends(next: Item | undefined): boolean {
  return (
    next === undefined || isStrongBreak(next) || /^(?:,|and|now|it|runs|running)$/.test(next.text)
  );
}

function notFirst(items: readonly Item[], i: number, verb: Verb): Verb | undefined {
  for (let at = i - 1; at >= 0 && at >= i - 3; at--) {
    const item = items[at];
    if (item === undefined || endsClause(item)) break;
    if (item.text === "should" || (item.roles & role.plan) !== 0)
      return verb.state === "fitted" ? { ...verb, state: "needed" } : verb;
    if ((item.roles & role.not) !== 0) return undefined;
    if (/^(?:who|somebody|someone|they|utility|guy)$/.test(item.text)) return undefined;
  }
  return verb;
}

const ofOrder =
  /^(?:today|this|morning|afternoon|yesterday|now|just|and|it|its|them|all|both|two|three|everything|parts?|that|thats|due|eta|here|coming|comes|arrives|arriving|ships|in|on|by|for|from|the|be|will|should|is|are|was|were|been|have|has|i|we|already|ok|done|pickup|pick|up|delivery|overnight|order|next|week)$/;

/** "ordered, due thursday", "its on order": of what was spoken of before; no thing is named. */
export function isBareOrder(note: Note, verb: Verb, from: number, to: number): boolean {
  if (verb.state !== "ordered") return false;
  const { items } = note;
  const due = dueWords(note);
  const behind = items.slice(verb.at + 1, to);
  const isPlain = behind.every(
    (item) => ofOrder.test(item.text) || (due !== undefined && item.from >= due.first.from),
  );
  const ahead = items.slice(from, verb.at);
  if (ahead.some(({ roles }) => (roles & (role.not | role.plan)) !== 0)) return false;
  // a site may be named before it, and without a day nothing else may
  return isPlain && (due !== undefined || ahead.every(({ text }) => ofOrder.test(text)));
}
