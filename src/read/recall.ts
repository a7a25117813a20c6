import type { Reading } from "../model.ts";
import { adopt } from "./adopt.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { hasAmpsOnly, isPumpsOwn } from "./has-amps-only.ts";
import { type Item, itemKind } from "./item.ts";
import { latest } from "./latest.ts";
import { legByLeg } from "./leg-by-leg.ts";
import { isAtLugs, isOnDead } from "./meg-again.ts";
import { isNear, nearestFirst, ratio } from "./near-value.ts";
import { parallel, sameAgain } from "./set-again.ts";
import { nounOf } from "./subject-noun.ts";
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
  // "pump 2: 12,4 and 8,1, flow 11,5 m3/h": what follows says itself what it is
  const others = list.slice(bare.length);
  const told = others.every((one) => !bare.includes(one) && (one.ownUnit || one.named));
  if (bare.length < 2 || !told) return;
  const last =
    bare.length === context.latest ? context.readings.slice(-context.latest) : legByLeg(context);
  if (last.length !== bare.length) return;
  const [was, now] = [last[0], bare[0]];
  if (was !== undefined && (isOnDead(was, items) || isAtLugs(was, now?.value ?? 0, items))) return;
  if (sameAgain(bare, last, { items, context })) return;
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
  if (!beyond.has(last.quantity) || nounOf(last.subject) !== nounOf(draft.subject)) return;
  draft.quantity = last.quantity;
  draft.assumedQuantity = true;
}

/** Share by which two figures lie as near to a third. Our choice, no source. */
const alike = 0.15;

/** "it came down to forty five" behind 52 psi and 52 degrees: of two kinds nobody knows which. */
function asNear(draft: Draft, nearby: readonly Reading[], { readings, latest }: Context): boolean {
  const last = readings.slice(-latest);
  const [first, ...others] = nearby.filter((one) => last.includes(one));
  if (first === undefined || draft.earlier) return false;
  const far = ratio(draft.value, first);
  return others.some(
    (one) => one.quantity !== first.quantity && Math.abs(ratio(draft.value, one) / far - 1) < alike,
  );
}

/** "fan 2 3.8" behind fan 1's 2.6 amps and its capacitor's 4.8: near to both, and as good as neither. */
function ofTwoKinds(draft: Draft, shaped: readonly Reading[]): boolean {
  const near = shaped.filter((one) => one.subject !== undefined && one.rating === undefined);
  const fars = near.map((one) => ratio(draft.value, one));
  if (fars.some((far) => far > 0.9 && far < 1.12)) return false;
  const kinds = near.filter((_, at) => (fars[at] ?? 0) > 0.5 && (fars[at] ?? 0) < 2);
  return new Set(kinds.map(({ quantity }) => quantity)).size > 1;
}

/** "comp 2 112" behind compressor 1's shell: the same place of the next, where no other is near. */
function placeOfNext(draft: Draft, like: Reading, context: Context): void {
  const { subject } = like;
  if (draft.place !== undefined || draft.points !== undefined || subject === undefined) return;
  if (draft.subject === undefined || draft.subject === subject) return;
  if (nounOf(draft.subject) !== nounOf(subject)) return;
  const near = context.readings
    .slice(-Math.max(1, context.latest))
    .filter((one) => one.quantity === like.quantity && isNear(draft.value, one));
  if (new Set(near.map(({ at }) => at)).size === 1 && near.includes(like)) draft.place = like.at;
}

/** "comm shield lifted, 18.4 on both now": of wires, coils and boards no superheat is told. */
const ofWires = ({ text }: Item): boolean =>
  /^(?:comm|comms|shield|wire|wires|coil|coils|board|boards|plug|fan|sensor|thermistor|pair)$/.test(
    text,
  );

/** "comp 1 13.1 12.8 13.0" behind 58 Hz: tenths, or a row, so far below the speed are no hertz. */
function noSpeed(draft: Draft, items: readonly Item[], { readings }: Context): boolean {
  const speeds = readings.flatMap(({ quantity, value }) =>
    quantity === "frequency" && typeof value === "number" ? [value] : [],
  );
  const row = [draft.index - 1, draft.index + 1].some(
    (at) => items[at]?.kind === itemKind.number && items[at]?.unit === undefined,
  );
  const tenths = items[draft.index]?.text.includes(".") === true;
  return draft.value > 0 && draft.value < Math.max(...speeds) / 2 && (tenths || row);
}

/** What is read on a motor that has no power. */
const ofDeadMotor: ReadonlySet<string> = new Set(["insulation_resistance", "winding_resistance"]);

/** What the job's earlier readings make of a number without quantity or unit. */
export function fromContext(draft: Draft, items: readonly Item[], context: Context): void {
  if (draft.over && draft.points === undefined) overLike(draft, context);
  if (draft.unit !== undefined || context.readings.length === 0 || Number.isNaN(draft.value))
    return;
  if (draft.question === "quantity") return;
  const ofMotor = hasAmpsOnly(draft, items);
  const live = context.live === true;
  // "now 3.6" goes on with what was measured, not with how long something took
  const candidates = latest(context).filter(
    (one) =>
      one.quantity !== "duration" &&
      !(live && ofDeadMotor.has(one.quantity)) &&
      (one.quantity !== "mass" || (!ofMotor && isNear(draft.value, one))),
  );
  const shaped = candidates.filter((reading) => sameShape(draft, reading));
  // "still 450" behind 450 psi and 60 F: of several the only one that is near
  const nearby = shaped.filter(
    (one) => ratio(draft.value, one) > 0.6 && ratio(draft.value, one) < 1.67,
  );
  const fitting =
    nearby.length === 1 && draft.points === undefined
      ? nearby
      : nearestFirst(draft, shaped, context.readings.slice(-context.latest));
  const [first] = fitting;
  if (first === undefined || isOnDead(first, items)) return;
  const heat = first.quantity === "superheat" || first.quantity === "subcooling";
  const speed =
    isPumpsOwn(draft, first) || (first.quantity === "frequency" && noSpeed(draft, items, context));
  if (speed || (heat && items.some(ofWires))) {
    draft.question = "quantity";
    return;
  }
  if (isAtLugs(first, draft.value, items)) return;
  const side = draft.thing === "side" && first.quantity === "capacitance";
  const labelled = draft.points !== undefined || draft.subject !== undefined || side;
  const timed = byTheClock(items, draft, first);
  if (!labelled && !timed && !goesOn(items, draft) && !earlierLike(draft, first)) return;
  const close = candidates.filter((reading) => isNear(draft.value, reading));
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
  if (!labelled && !timed && asNear(draft, nearby, context)) {
    draft.question = "quantity";
    return;
  }
  if (draft.subject !== undefined && draft.points === undefined && ofTwoKinds(draft, shaped)) {
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
  if (labelled) placeOfNext(draft, placed, context);
  if (!labelled) {
    draft.place ??= placed.at;
    if (first.points !== undefined && draft.points === undefined && draft.corrects)
      draft.points = [first.points];
  }
}
