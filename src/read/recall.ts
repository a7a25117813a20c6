import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { isSameUnit, unitCalled } from "./kinds.ts";
import { latest } from "./latest.ts";
import { isAtLugs, isOnDead } from "./meg-again.ts";
import { megsOrGigs } from "./megs-or-gigs.ts";
import { nearestFirst, ratio } from "./near-value.ts";
import { role } from "./word.ts";

function isPair(points: readonly string[] | undefined): boolean {
  return points !== undefined && points.length === 2 && !points.includes("ground");
}

function sameShape(draft: Draft, reading: Reading): boolean {
  const points = draft.points?.[0];
  if (points !== undefined) {
    if (reading.points === undefined) return false;
    if (reading.quantity === "diode_drop") return true;
    return isPair(points) === isPair(reading.points);
  }
  if (draft.subject !== undefined && reading.subject !== undefined) return true;
  return points === undefined;
}

/** The unit that brings the value closest to what was read before; undefined where two could. */
function unitFor(draft: Draft, like: Reading, context: Context): string | undefined {
  const units = new Map<string, Reading>();
  for (const reading of context.readings)
    if (reading.quantity === like.quantity && reading.figure.unit !== "")
      units.set(reading.figure.unit, reading);
  const last = like.figure.unit;
  if (units.size < 2) return last;
  if (like.quantity === "insulation_resistance") return megsOrGigs(draft, [...units.keys()]);
  for (const [unit, reading] of units) {
    const other = ratio(draft.value, reading);
    if (!isSameUnit(unit, last) && other > 1 / 3 && other < 3) return undefined;
  }
  return last;
}

function adopt(draft: Draft, reading: Reading, context: Context): void {
  const unit = unitFor(draft, reading, context);
  // a weight without its unit is asked about, whatever was weighed before
  const weighed = reading.quantity === "mass" && draft.action !== undefined;
  if (unit === undefined || (weighed && !/^k?g$/.test(unit))) {
    draft.question = "unit";
    return;
  }
  draft.quantity = reading.quantity;
  draft.unit = unitCalled(unit);
  draft.assumedUnit = draft.unit !== undefined;
  if (draft.subject === undefined && reading.subject !== undefined) draft.subject = reading.subject;
  draft.kind ??= reading.kind;
}

/** "two years back it was 2100": a past value of what was just measured. */
function earlierLike(draft: Draft, reading: Reading): boolean {
  if (!draft.earlier || reading.earlier === true) return false;
  const far = ratio(draft.value, reading);
  if (reading.quantity === "insulation_resistance") return far > 1 / 1000 && far < 1000;
  return far > 1 / 3 && far < 3;
}

/** "12:50 355" behind "12:40 pump off, 320 mic": a vacuum or a nitrogen test is told by the clock. */
function byTheClock(items: readonly Item[], draft: Draft, reading: Reading): boolean {
  const gauge = reading.quantity === "vacuum" || reading.quantity === "pressure";
  const far = ratio(draft.value, reading);
  return gauge && reading.at === undefined && far > 0.2 && far < 5 && items.some(isClock);
}

const isClock = (item: Item): boolean => item.owner === "at <hour>:<minute>";

/** Words of a message that goes on where the last one stopped. */
function goesOn(items: readonly Item[], draft: Draft): boolean {
  return goesOnSurely(items, draft) || items.some((item) => (item.roles & role.next) !== 0);
}

function goesOnSurely(items: readonly Item[], draft: Draft): boolean {
  let roles = 0;
  for (const item of items) roles |= item.roles;
  if (
    (roles & (role.correct | role.now | role.change)) !== 0 ||
    draft.after !== undefined ||
    draft.testVoltage !== undefined
  )
    return true;
  return items.some(
    (item) =>
      /^(?:still|same|later|holding|again|sitting|stayed|staying|hovering)$/.test(item.text) ||
      /^(?:retest|retested|repeat|repeated|recheck|rechecked|redid|redo)$/.test(item.text),
  );
}

/** "and after: 14.8 14.9 14.6": the same row measured again. */
function sameAgain(bare: readonly Draft[], last: readonly Reading[], context: Context): boolean {
  const [one] = last;
  if (one === undefined || bare.some((draft) => draft.subject !== undefined)) return false;
  if (!last.every((reading) => reading.quantity === one.quantity && reading.points === undefined))
    return false;
  const near = bare.every((draft, order) => {
    const far = ratio(draft.value, last[order] ?? one);
    return far > 0.5 && far < 2;
  });
  if (near) for (const draft of bare) adopt(draft, one, context);
  return near;
}

/** "now 121 and 345" behind "suction 118 head 340", "60 Hz 12.1" behind "50 Hz 8.2 amps": the same again, in order. */
function parallel(list: readonly Draft[], items: readonly Item[], context: Context): boolean {
  const last = context.readings.slice(-context.latest);
  if (list.length < 2 || list.length !== context.latest || last.length !== list.length)
    return false;
  let known = 0;
  const fits = list.every((draft, order) => {
    const reading = last[order];
    if (reading === undefined || reading.rating !== undefined || draft.rating !== undefined)
      return false;
    if (draft.quantity !== undefined) {
      known++;
      return draft.quantity === reading.quantity && draft.ownUnit;
    }
    const far = ratio(draft.value, reading);
    const free =
      draft.unit === undefined && draft.place === undefined && draft.points === undefined;
    return free && draft.subject === undefined && far > 0.3 && far < 3;
  });
  const goes = items.some(
    (item) => (item.roles & role.now) !== 0 || /^(?:after|again|still|same|later)$/.test(item.text),
  );
  if (!fits || known === list.length || (known === 0 && !goes)) return false;
  if (known === 0 && new Set(last.map((reading) => `${reading.quantity} ${reading.at}`)).size < 2)
    return false;
  list.forEach((draft, order) => {
    const like = last[order];
    if (like === undefined || draft.quantity !== undefined) return;
    adopt(draft, like, context);
    draft.place = like.at;
  });
  return true;
}

/** "compressor two 49 and 168": as many bare numbers as the last message had readings, in its order. */
export function inOrder(list: readonly Draft[], items: readonly Item[], context: Context): void {
  if (parallel(list, items, context)) return;
  // "after cleaning: 69 / 218, split up to 19": the same two again, and more of another kind
  const [again, rest] = [list.slice(0, context.latest), list.slice(context.latest)];
  const more = rest.length > 0 && rest.every((one) => one.quantity ?? one.named);
  if (more && again.every((one) => one.quantity === undefined) && parallel(again, items, context))
    return;
  const bare = list.filter(
    (draft) =>
      draft.quantity === undefined &&
      draft.unit === undefined &&
      draft.place === undefined &&
      draft.points === undefined &&
      draft.question === undefined,
  );
  if (bare.length < 2 || bare.length !== list.length || bare.length !== context.latest) return;
  const last = context.readings.slice(-context.latest);
  const [was, now] = [last[0], bare[0]];
  if (was !== undefined && (isOnDead(was, items) || isAtLugs(was, now?.value ?? 0, items))) return;
  if (sameAgain(bare, last, context)) return;
  if (
    !bare.every((draft) => draft.subject !== undefined) ||
    !last.every((reading) => reading.subject !== undefined && reading.subject === last[0]?.subject)
  )
    return;
  bare.forEach((draft, order) => {
    const like = last[order];
    if (like === undefined) return;
    adopt(draft, like, context);
    draft.place = like.at;
    draft.state = like.state;
  });
}

/** A test whose values are told by the clock. */
function paced(reading: Reading): boolean {
  if (reading.quantity === "vacuum" || reading.quantity === "insulation_resistance") return true;
  return reading.at === undefined || reading.at === "dc_bus";
}

/** "now 121 and 351" behind a suction of 118 and a head of 340: of the places that the quantity was read at, the one near. */
function placedLike(draft: Draft, first: Reading, context: Context): Reading | undefined {
  if (first.quantity !== "pressure" && first.quantity !== "temperature") return first;
  if (draft.place !== undefined || draft.subject !== undefined) return first;
  const places = new Map<string, Reading>();
  for (const reading of context.readings)
    if (reading.quantity === first.quantity && reading.rating === undefined)
      places.set(`${reading.at} ${reading.subject}`, reading);
  if (places.size < 2) return first;
  const near = [...places.values()].filter((reading) => {
    const far = ratio(draft.value, reading);
    return far > 0.6 && far < 1.67;
  });
  // "still 250" behind 250 psi of nitrogen, whatever the head was before
  const same = near.filter((reading) => Math.abs(ratio(draft.value, reading) - 1) < 0.005);
  if (same.length === 1 && same[0] === context.readings.at(-1)) return same[0];
  return near.length === 1 ? near[0] : undefined;
}

/** "that pipe is 73 F": the line whose temperature was read last. */
export function thatLine(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const at = items.findIndex(
    (item, i) =>
      /^(?:pipe|line)$/.test(item.text) && /^(?:that|same)$/.test(items[i - 1]?.text ?? ""),
  );
  const draft = at < 0 ? undefined : list.find((one) => one.index > at);
  if (draft?.quantity !== "temperature" || draft.place !== undefined) return;
  if (!draft.before.includes(at)) return;
  const last = context.readings.filter(
    (reading) => reading.quantity === "temperature" && reading.at !== undefined,
  );
  const place = last[last.length - 1]?.at;
  if (place === "suction" || place === "liquid" || place === "discharge") draft.place = place;
}

const beyond: ReadonlySet<string> = new Set([
  "winding_resistance",
  "insulation_resistance",
  "resistance",
]);

/** "fan 2 OL" behind "fan 1 winding 212 ohm": the next of its kind, beyond the range of the same test. */
function overLike(draft: Draft, context: Context): void {
  const last = context.readings[context.readings.length - 1];
  if (last?.subject === undefined || draft.subject === undefined || last.points !== undefined)
    return;
  const kind = (name: string): string => name.replace(/ [^ ]+$/, "");
  if (!beyond.has(last.quantity) || kind(last.subject) !== kind(draft.subject)) return;
  draft.quantity = last.quantity;
  draft.assumedQuantity = true;
}

/** What the job's earlier readings make of a number without quantity or unit. */
export function fromContext(draft: Draft, items: readonly Item[], context: Context): void {
  if (draft.over && draft.points === undefined) overLike(draft, context);
  if (draft.unit !== undefined || context.readings.length === 0 || Number.isNaN(draft.value))
    return;
  if (draft.question === "quantity") return;
  const candidates = latest(context);
  const shaped = candidates.filter((reading) => sameShape(draft, reading));
  // "still 450" behind 450 psi and 60 F: of several the only one that is near
  const nearby = shaped.filter(
    (one) => ratio(draft.value, one) > 0.6 && ratio(draft.value, one) < 1.67,
  );
  const fitting =
    nearby.length === 1 && draft.points === undefined ? nearby : nearestFirst(draft, shaped);
  const [first] = fitting;
  if (first === undefined || isOnDead(first, items)) return;
  if (isAtLugs(first, draft.value, items)) return;
  const side = draft.thing === "side" && first.quantity === "capacitance";
  const labelled = draft.points !== undefined || draft.subject !== undefined || side;
  const timed = byTheClock(items, draft, first);
  if (!labelled && !timed && !goesOn(items, draft) && !earlierLike(draft, first)) return;
  const close = candidates.filter(
    (reading) => ratio(draft.value, reading) > 1 / 3 && ratio(draft.value, reading) < 3,
  );
  const rival =
    labelled && draft.points !== undefined
      ? close.find(
          (reading) =>
            reading.quantity !== first.quantity &&
            reading.points !== undefined &&
            (!isPair(draft.points?.[0]) || isPair(reading.points)),
        )
      : undefined;
  if (rival !== undefined) {
    draft.question = "quantity";
    return;
  }
  const far = ratio(draft.value, first);
  if (!labelled && draft.after !== undefined && !paced(first)) return;
  // ohms after volts: nothing but insulation spans such a range
  const wide = first.quantity === "insulation_resistance" || first.quantity === "vacuum";
  if ((!labelled || !wide) && (far > 30 || far < 1 / 30)) return;
  const onlyNext = !labelled && !timed && !draft.earlier && !goesOnSurely(items, draft);
  if (onlyNext && (far > 3 || far < 1 / 3)) return;
  const placed = placedLike(draft, first, context);
  if (placed === undefined) {
    draft.question = "quantity";
    return;
  }
  adopt(draft, placed, context);
  if (!labelled) {
    draft.place ??= placed.at;
    if (first.points !== undefined && draft.points === undefined && draft.corrects)
      draft.points = [first.points];
  }
}
