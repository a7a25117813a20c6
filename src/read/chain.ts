import { capsBled } from "./caps-bled.ts";
import { changed, level, wasBehind } from "./changed.ts";
import { correctWithin } from "./correct-within.ts";
import type { Between, Draft } from "./draft.ts";
import { isRoom } from "./in-there.ts";
import { alive, inherit, sameDimension, unlabelled } from "./inherit.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { between, rolesBefore } from "./relate.ts";
import { twoStates } from "./two-states.ts";
import { role } from "./word.ts";

/** "thirteen or thirty meg": two likely values are one question. */
function choices(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = alive(drafts);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined) return;
    const gap = between(items, left, right);
    if ((gap.roles & role.or) === 0 || !gap.bare || gap.strong || !sameDimension(left, right))
      return;
    inherit(left, right);
    left.question = "choice";
    right.question = "choice";
  });
}

function isRange(
  items: readonly Item[],
  left: Draft,
  right: Draft,
  gap: Between,
  before: number,
): boolean {
  if (gap.strong || gap.carriers || !sameDimension(left, right)) return false;
  if (Number.isNaN(left.value) || Number.isNaN(right.value)) return false;
  if (!Number.isNaN(left.high)) return false;
  // ">550 >550": each a bound of its own
  if ((gap.roles & (role.greater | role.less)) !== 0 && left.value === right.value) return false;
  // "suction 118 - 340 head"
  const sides = (left.place ?? right.place) !== (right.place ?? left.place);
  if (gap.dash && (sides || startsAnew(items, left, right))) return false;
  if (gap.dash) return left.value < right.value && !left.ownUnit && !tableRow(items, left);
  if ((before & role.between) !== 0 && (gap.roles & role.conjunction) !== 0 && gap.bare)
    return true;
  return (gap.roles & role.to) !== 0 && gap.bare && right.index === left.index + 2;
}

/** How far apart the ends of a range lie at most where its dash stands between spaces; our choice, no source. */
const widest = 5;

/** "oat 96 - 1100 cfm", "room 310 is 78 - 312 is 71", "18.1 - 18.4 - and 17.9": a dash that parts what is told. */
function startsAnew(items: readonly Item[], left: Draft, right: Draft): boolean {
  if (items[left.index + 1]?.glued !== false) return false;
  if (left.value > 0 && right.value > left.value * widest) return true;
  const [own, next] = [items[right.index], items[right.index + 1]];
  if (own?.apostrophe === true || ((next?.roles ?? 0) & role.is) !== 0) return true;
  let at = right.index + 1;
  while (/^(?:and|&|,|-)$/.test(items[at]?.text ?? "")) at++;
  const more = items[at];
  const goesOn = at > right.index + 1 && more?.kind === itemKind.number;
  return goesOn && more.value < right.value * 1.2;
}

/** "1 - 1.22G" on a line of its own: a row of a table. */
function tableRow(items: readonly Item[], left: Draft): boolean {
  const before = items[left.index - 1];
  const dash = items[left.index + 1];
  return (
    (before === undefined || before.kind === itemKind.line) &&
    dash?.glued === false &&
    Number.isInteger(left.value) &&
    left.value <= 12
  );
}

function arrow(items: readonly Item[], left: Draft): boolean {
  const next = items[left.index + 1];
  return next?.text === "→" || next?.text === "down" || next?.text === "up";
}

function merge(items: readonly Item[], left: Draft, right: Draft): void {
  inherit(left, right);
  right.before = [...left.before, left.index, ...left.behind, ...right.before];
  right.after ??= left.after;
  right.rating ??= left.rating;
  right.plate = right.plate || left.plate;
  right.lasting ??= left.lasting;
  left.gone = true;
  const item = items[left.index];
  if (item !== undefined) item.owner = "<value> to <value>";
}

/** "room 204 71 then room 206 was 68": each room has its own. */
function ofAnotherRoom(items: readonly Item[], left: Draft, right: Draft): boolean {
  return items.slice(left.index + 1, right.index).some(isRoom);
}

/** "run cap reads 58.6 then fan cap was 58.7": each part has its own. */
function ofAnotherPart(items: readonly Item[], left: Draft, right: Draft): boolean {
  const bulbs = [left, right].map(({ named }) => named === "wet_bulb_temperature");
  // "return wet bulb was 63 return air was 80"
  if (bulbs[0] !== bulbs[1] && right.before.length > 0) return true;
  const named = (from: number, to: number): Item | undefined =>
    items.slice(Math.max(0, from), to).find(({ label }) => label?.quantity === "capacitance");
  const [first, second] = [named(left.index - 3, left.index), named(left.index + 1, right.index)];
  return first !== undefined && second !== undefined && first.text !== second.text;
}

/** "suction was 276 now 267 pounds": what a gauge shows, no weight. */
function poundsOfGauge(left: Draft, right: Draft, gap: Between): void {
  const gauge = /^(?:suction|discharge|liquid)$/.test(left.place ?? "") && left.unit === undefined;
  if (!gauge || right.unit?.figure !== "lb" || right.action !== undefined) return;
  if ((gap.roles & (role.now | role.to | role.change | role.correct)) === 0 || gap.strong) return;
  const ratio = right.value / left.value;
  if (unlabelledPounds(right) && ratio > 0.3 && ratio < 3) right.unit = unitCalled("psi");
}

function unlabelledPounds({ named, hint, place, points, subject }: Draft): boolean {
  return [named, hint, place, points, subject].every((one) => one === undefined);
}

/** Ranges and changes: two values that are one reading. */
function joined(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  const list = alive(drafts);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.gone || left.question !== undefined) return;
    if (ofAnotherRoom(items, left, right) || ofAnotherPart(items, left, right)) return;
    const gap = between(items, left, right);
    poundsOfGauge(left, right, gap);
    const previous = list[order - 2];
    const before = rolesBefore(
      items,
      left,
      previous === undefined || previous.gone ? 0 : previous.index + 1,
    );
    if (twoStates(items, left, right)) return;
    if (wasBehind(items, left, right, gap) || beganAt(items, left, right, gap)) {
      backwards(items, left, right);
      return;
    }
    const range = isRange(items, left, right, gap, before);
    if (
      cameFrom(items, left, right, plain) &&
      !gap.strong &&
      sameDimension(left, right) &&
      unlabelled(items, left, right)
    ) {
      backwards(items, left, right);
      return;
    }
    if (pulledThen(items, left, right)) {
      left.place ??= right.place;
      backwards(items, left, right);
      return;
    }
    if (toldNow(items, left, right) && startsAt(items, right) && sameDimension(left, right)) {
      if (unlabelled(items, left, right)) backwards(items, left, right);
      return;
    }
    if (range && isChange(items, left, right, { gap, before })) {
      series(items, left, right);
      return;
    }
    if (range) {
      merge(items, left, right);
      right.high = Math.max(left.value, right.value);
      right.value = Math.min(left.value, right.value);
      return;
    }
    const row = beginsRow(items, right, list[order + 1]);
    if (row && left.series === undefined && (!begun(before) || level(left, right, gap))) return;
    if (changed(items, left, right, gap, before)) series(items, left, right);
  });
}

const wayFrom =
  /^[,\s]*(?:(?:up|down|back|now|again|and|is|was|its|it's|coming|came|comes|climbing|climbed|dropping|dropped|rising|risen|rose|falling|fallen|fell|recovered|improved|way|all the way)[,\s]+)*from\s*$/;

/** "8 from 3", "box 38 down from 47", "sh 12, up from 4": where it began is told behind where it is. */
function cameFrom(items: readonly Item[], left: Draft, right: Draft, plain: string): boolean {
  if (!wayFrom.test(plain.slice(items[left.index]?.to, items[right.index]?.from))) return false;
  // "600 came down from 410 to 335": that way has an end of its own
  const goes = /^(?:to|down|up)$/.test(items[right.index + 1]?.text ?? "");
  return !goes || items[right.index + 2]?.kind !== itemKind.number;
}

/** "39.4 coming down, it was 55 when I got here": where it began is told last. */
function beganAt(items: readonly Item[], left: Draft, right: Draft, gap: Between): boolean {
  if (!whenBefore(items, right) || right.earlier || gap.strong) return false;
  if (items[right.index - 1]?.text !== "was") return false;
  return sameDimension(left, right) && unlabelled(items, left, right);
}

function whenBefore(items: readonly Item[], right: Draft): boolean {
  const words = wordsFrom(items, right.index + 1, right.index + 5);
  return /^(?:when (?:i|we) (?:got|arrived|started|came|walked|pulled)|on arrival|at first|to start|before (?:i|we|that)|initially|originally)\b/.test(
    words,
  );
}

/** "at three fifty now, we started at four hundred": the start is told last. */
function startsAt(items: readonly Item[], draft: Draft): boolean {
  const [before, first] = [items[draft.index - 1]?.text, items[draft.index - 2]?.text ?? ""];
  return before === "started" || (before === "at" && /^(?:started|began)$/.test(first));
}

/** "pulled it down to 36, box started at 61": where it is now comes first. */
function pulledThen(items: readonly Item[], left: Draft, right: Draft): boolean {
  if (!startsAt(items, right) || !sameDimension(left, right) || left.series !== undefined)
    return false;
  if (right.value <= left.value || between(items, left, right).strong) return false;
  const led = items.slice(Math.max(0, left.index - 5), left.index).map(({ text }) => text);
  const places =
    left.place === undefined || right.place === undefined || left.place === right.place;
  return (
    places &&
    led.some((text) => text.startsWith("pull")) &&
    /^(?:down|to|pull\w*)$/.test(led[led.length - 1] ?? "")
  );
}

function toldNow(items: readonly Item[], left: Draft, right: Draft): boolean {
  return left.now || items.slice(left.index + 1, right.index).some(({ text }) => text === "now");
}

function begun(before: number): boolean {
  return (before & role.change) !== 0;
}

/** "L3 188 V. now 231 230 230 V": a row measured again, no change of the last value. */
function beginsRow(items: readonly Item[], right: Draft, next: Draft | undefined): boolean {
  if (next === undefined || next.before.length > 0 || !sameDimension(right, next)) return false;
  const gap = between(items, right, next);
  return (gap.list || gap.empty) && !gap.dash;
}

/** "230 to 171", "decay 300 to 700", "went 95 to 61": one after the other, no range. */
function isChange(
  items: readonly Item[],
  left: Draft,
  right: Draft,
  said: { readonly gap: Between; readonly before: number },
): boolean {
  const { gap, before } = said;
  const to = (gap.roles & role.to) !== 0 && !gap.dash;
  if (to && left.before.some((index) => /^(?:decay|rise|rises)$/.test(items[index]?.text ?? "")))
    return true;
  if (gap.dash || (before & role.between) !== 0) return false;
  if (to && /^(?:sag|dip)/.test(items[left.index - 1]?.text ?? "")) return true;
  const falls = to && left.value > right.value && left.place === undefined;
  if (falls && left.unit?.dimension !== "mass") return true;
  return changes(left, right, before) || arrow(items, left);
}

function changes(left: Draft, right: Draft, before: number): boolean {
  return (before & role.change) !== 0 || left.series !== undefined || right.after !== undefined;
}

function series(items: readonly Item[], left: Draft, right: Draft): void {
  right.series = [...(left.series ?? [left.value]), right.value];
  merge(items, left, right);
  right.earlier = false;
  // "950 > 410 > 260": an arrow, no bound
  const item = items[right.index];
  if (item !== undefined && items[right.index - 1]?.text === ">") item.relation = "=";
}

/** "up to 8 from 3": said backwards. */
function backwards(items: readonly Item[], left: Draft, right: Draft): void {
  const [now, then] = [left.value, right.value];
  series(items, left, right);
  right.series = [then, now];
  right.value = now;
}

export function chain(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  correctWithin(drafts, items);
  choices(drafts, items);
  capsBled(items, alive(drafts));
  joined(drafts, items, plain);
}
