import { type Item, itemKind } from "./item.ts";
import { saysOthers } from "./other-points.ts";
import { namesGauge } from "./same-gauge.ts";
import { role } from "./word.ts";
import { zeroUnit } from "./zero-unit.ts";

const overloadActs =
  /^(?:opens|opened|opening|trip|trips|tripped|tripping|kicks|kicked|pops|popped|resets|reset|cuts|cycles|cycled|cycling|closes|closed)$/;

function isWeighed({ text, unit }: Item): boolean {
  const thing = /^(?:charg|weigh|recover|cylinder|tank|bottle|jug|drum)/;
  return unit?.dimension === "mass" || thing.test(text);
}

/** "coil 1 is 1.3 k coil 2 is open": the same noun before the ohms and behind them. */
function namedAgain(items: readonly Item[], open: number): boolean {
  const ohms = items.findLastIndex(
    ({ kind, unit }, at) =>
      at < open && kind === itemKind.number && unit?.dimension === "resistance",
  );
  if (ohms < 0 || open - ohms > 5) return false;
  const before = items.slice(Math.max(0, ohms - 4), ohms);
  return items
    .slice(ohms + 1, open)
    .some(({ text }) => text.length > 3 && before.some((one) => one.text === text));
}

/** "open/1.1/1.1 ohms", "megs 72 72 open": between figures of a row. */
function inRowOfOhms(items: readonly Item[], i: number): boolean {
  const ohms = items.some(
    ({ label, unit }) =>
      unit?.dimension === "resistance" || /resistance$/.test(label?.quantity ?? ""),
  );
  const isFigure = (item: Item | undefined): boolean =>
    item?.kind === itemKind.number || item?.kind === itemKind.over;
  const [far, before, next, behind] = [-2, -1, 1, 2].map((step) => items[i + step]);
  if (!ohms) return false;
  if (next?.text === "/" && isFigure(behind)) return true;
  if (before?.text === "/" && isFigure(far)) return true;
  const ends = next === undefined || next.kind === itemKind.line || /^[,.;]$/.test(next.text);
  return ends && isFigure(before) && isFigure(far);
}

/** Words that keep "open" from being a meter's reading: it was opened, it opens at. */
function openIsReading(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined) return false;
  const before = items[i - 1];
  const next = items[i + 1];
  if (
    item.text === "ol" &&
    /^(?:on|the|trip|trips|tripped|tripping|overload|internal|kicks|kicked|pops|popped|opens|opened|its|thermal)$/.test(
      before?.text ?? "",
    )
  )
    return false;
  // "ol after 4 s": the overload
  const timed = items[i + 2]?.unit?.dimension === "time" && before?.kind !== itemKind.points;
  if (item.text === "ol" && timed && /^(?:after|in|within)$/.test(next?.text ?? "")) return false;
  // "was 11 ohms, now its open"
  if (
    before?.text === "its" &&
    items.slice(0, i).some(({ unit }) => unit?.dimension === "resistance")
  )
    return true;
  // "139 then ol opens", "ol tripped": the overload, no reading
  if (item.text === "ol" && overloadActs.test(next?.text ?? "")) return false;
  if (item.text === "max" || item.text === "inf") return true;
  // "charging off the scale now": what gas is weighed on
  if (item.text === "off" && items.some(isWeighed)) return false;
  if (next?.kind === itemKind.number && /^(?:percent|steps)$/.test(next.unit?.figure ?? ""))
    return false;
  if (item.text !== "open" && item.text !== "wide") return true;
  // "61k discharge, none open"
  if (items.slice(Math.max(0, i - 5), i).some(({ text }) => /^(?:none|neither)$/.test(text)))
    return false;
  // "fuses 30a, L2 open": the fuse in that leg
  if (items.slice(0, i).some((one) => /^(?:fuse|fuses)$/.test(one.text))) return false;
  // "th1 9.7k th2 10.2k th3 open"
  if (before?.kind === itemKind.code && /^(?:th|tc|rt|ntc|t)\d$/.test(before.text))
    return items.slice(Math.max(0, i - 8), i).some(({ unit }) => unit?.dimension === "resistance");
  // "sensor 1 10.1k, 2 9.8k, 3 open"
  if (before?.owner === "<part> <number> reads" && next === undefined) return true;
  if (before?.kind === itemKind.number && before.unit?.figure === "percent") return false;
  if (namedAgain(items, i) || inRowOfOhms(items, i)) return true;
  for (let at = i - 1; at >= 0 && at >= i - 7; at--) {
    const near = items[at];
    if (near === undefined || near.kind === itemKind.line || near.text === "." || near.text === ";")
      break;
    if (
      near.kind === itemKind.number &&
      near.unit?.dimension === "resistance" &&
      items.slice(at, i).some((word) => word.text === "other")
    )
      return true;
    if (near.kind === itemKind.points || near.kind === itemKind.ground) return true;
    // "diode test 0.45 0.44 0.46 open"
    if (near.label?.quantity === "diode_drop" && before?.kind === itemKind.number) return true;
    // "15 ohms and it's open on the third pair"
    const pair =
      /^(?:on|across|at) (?:the )?(?:first|second|third|last|other|next|1st|2nd|3rd) (?:pair|leg|phase|winding|set|lead|one)$/;
    const behind = items.slice(i + 1, i + 5).map(({ text }) => text);
    if (
      near.unit?.dimension === "resistance" &&
      [behind, behind.slice(0, 3)].some((one) => pair.test(one.join(" ")))
    )
      return true;
    if (near.label?.component === true || near.label?.quantity === "winding_resistance") {
      // "start winding's open, C to S is OL": read where the pins are named
      const named = items.some((one, behind) => behind > i && one.kind === itemKind.over);
      return near.label.thing === undefined && !named;
    }
  }
  return (
    next?.kind === itemKind.points ||
    next?.kind === itemKind.ground ||
    ((next?.roles ?? 0) === role.preposition && items[i + 2]?.kind === itemKind.points)
  );
}

/** "lead 1 pegged": beyond the scale, where no number follows that it reached. */
export function isPegged(items: readonly Item[], i: number): boolean {
  const text = items[i]?.text;
  if (text !== "pegged" && text !== "maxed") return false;
  const before = items[i - 1];
  const next = items[i + 1];
  return before?.kind === itemKind.points && next?.text !== "at" && next?.kind !== itemKind.number;
}

/** "same" is a value only where no number follows it in its clause. */
function sameIsReading(items: readonly Item[], i: number): boolean {
  if (saysOthers(items, i) || namesGauge(items, i)) return true;
  // "350 psi at 10:20, same at 11:05", "2:20 same"
  const times = [items[i - 1], items[i + 1]];
  if (times.some((item) => item?.owner === "at <hour>:<minute>")) return true;
  for (let at = i + 1; at < items.length; at++) {
    const next = items[at];
    if (next === undefined || next.kind === itemKind.line) break;
    if (
      next.kind === itemKind.sign &&
      (next.text === "," || next.text === "." || next.text === ";")
    )
      break;
    if (
      next.kind === itemKind.points ||
      next.kind === itemKind.subject ||
      (next.roles & role.conjunction) !== 0
    )
      break;
    const led = (items[i + 1]?.roles ?? 0) & role.preposition ? i + 2 : i + 1;
    if (next.kind === itemKind.number)
      return next.unit === undefined && at === led && items[i]?.to !== undefined && next.value <= 9;
    if (
      next.label?.thing !== undefined ||
      next.text === "pair" ||
      next.text === "day" ||
      next.text === "unit"
    )
      return false;
    if (
      next.kind === itemKind.word &&
      !/^(?:again|here|too)$/.test(next.text) &&
      (next.roles &
        (role.article | role.only | role.preposition | role.is | role.all | role.each)) ===
        0
    )
      return false;
  }
  const before = items[i - 1];
  const again = /^(?:again|here|too)$/.test(items[i + 1]?.text ?? "");
  const lead = items[again ? i + 2 : i + 1];
  const led = ((lead?.roles ?? 0) & role.preposition) !== 0 || lead?.text === "with";
  // "734 meg same for T2 and T3"
  if (led && (before === undefined || before.kind === itemKind.number)) return true;
  return (
    before !== undefined &&
    (before.kind === itemKind.points ||
      before.kind === itemKind.subject ||
      before.label !== undefined ||
      before.owner === "<row> <number> is <value>" ||
      before.apostrophe ||
      (before.roles & (role.is | role.only | role.all | role.each)) !== 0 ||
      before.kind === itemKind.sign)
  );
}

const stops =
  /^(?:terminat\w*|ends?|ended|trips?|tripped|tripping|cuts?|shuts?|stops?|stopped|locks?|locked|faults?|faulted|dies|died|quits?|kicks?|kicked|drops?|dropped)$/;

/** "ran for six minutes before it cut out", "takes 90 seconds and then it trips", "trips after 20 seconds". */
function untilStop(items: readonly Item[], i: number): boolean {
  // "trips after about 5 minutes"
  const at = ((items[i - 1]?.roles ?? 0) & role.about) !== 0 ? i - 1 : i;
  // "terminated at 48 after 22 min"
  const warm = items[at - 2]?.kind === itemKind.number && items[at - 3]?.text === "at" ? 2 : 0;
  const lead = items[at - 1]?.text;
  const [verb, no] = [2, 3].map((back) => items[at - back - warm]?.text ?? "");
  // "no drop in 30 min": how long it held
  const none = /^(?:no|without|zero|any|not|didnt)$/.test(no ?? "");
  if (/^(?:after|in|within)$/.test(lead ?? "") && stops.test(verb ?? "") && !none) return true;
  const runs = items
    .slice(Math.max(0, i - 3), i)
    .some(({ text }) => /^(?:ran|runs|run|takes|took|lasts|lasted|stays|stayed)$/.test(text));
  const then = items
    .slice(i + 1, i + 4)
    .findIndex(
      ({ text, roles }) =>
        /^(?:before|then|until|till)$/.test(text) || (text === "and" && (roles & role.next) !== 0),
    );
  if (!runs || then < 0) return false;
  return items.slice(i + then + 2, i + then + 6).some(({ text }) => stops.test(text));
}

/** "harvest 3 min 40, freeze cycle 21 min", "the pump down took 3 minutes": how long a run of the machine was. */
function ofCycle(items: readonly Item[], i: number): boolean {
  const before = items.slice(Math.max(0, i - 4), i);
  const cycle = /^(?:cycle|harvest|defrost|freeze|runtime|pumpdown)$/;
  const down = before.some(({ text }, at) => text === "pump" && before[at + 1]?.text === "down");
  const verb = /^(?:took|takes|lasted|lasts|was|is|cycle|harvest|runtime)$/;
  const near = verb.test(items[i - 1]?.text ?? "");
  return near && (down || before.some(({ text }) => cycle.test(text)));
}

/** A length of time is a value only where it is what was measured: "run time is 4 minutes". */
function isResult(items: readonly Item[], i: number): boolean {
  if (
    items.every(
      (item, at) => at === i || item.kind === itemKind.sign || (item.roles & role.about) !== 0,
    )
  )
    return true;
  if (items.some((item) => item.text === "timed" || item.text === "clocked")) return true;
  if (untilStop(items, i) || ofCycle(items, i)) return true;
  // "1 rev 38 sec", "41 sec a rev": how fast a gas meter turns
  const turn = /^(?:revs?|rotation|revolution)$/;
  if ([i - 1, i + 1, i + 2].some((at) => turn.test(items[at]?.text ?? ""))) return true;
  for (let at = i - 1; at >= 0 && at >= i - 6; at--) {
    const item = items[at];
    if (item?.label?.quantity === "duration") return true;
    if (item === undefined || item.kind === itemKind.number || item.text === ",") return false;
  }
  return false;
}

/** "dropping .3/h": how fast, nothing that was read. */
function isRate(items: readonly Item[], i: number): boolean {
  const [stroke, time] = [items[i + 1], items[i + 2]];
  // "sf 1.15": a motor's service factor
  const own = items[i]?.value ?? 0;
  if (items[i - 1]?.text === "sf" && own > 1 && own < 1.5) return true;
  // "88k btuh"
  if (stroke?.text === "k" && /^btu/.test(time?.text ?? "")) return true;
  if (items[i]?.kind !== itemKind.number || stroke?.text !== "/" || time?.glued !== true)
    return false;
  return /^(?:ton|tons|sqft|person|week|wk|month|mo|yr|year|h|hr|hour|min|minute|day|s|sec)$/.test(
    time.text,
  );
}

/** "#2 18.4": a number behind the sign is a name, no value. */
function hashed(items: readonly Item[], i: number): boolean {
  const [mark, item] = [items[i - 1], items[i]];
  if (mark?.text !== "#" || item?.glued !== true || item.unit !== undefined) return false;
  return mark.kind === itemKind.sign && Number.isInteger(item.value) && item.value <= 24;
}

export interface Found {
  readonly index: number;
  readonly zero: string | undefined;
}

/** Items that hold a value: numbers that no rule took, "OL", "same", "no volts". */
export function valuesOf(items: readonly Item[]): Found[] {
  const found: Found[] = [];
  items.forEach((item, index) => {
    if (item.owner !== undefined || hashed(items, index) || isRate(items, index)) return;
    if (item.kind === itemKind.number) {
      if (item.unit?.dimension !== "time" || isResult(items, index))
        found.push({ index, zero: undefined });
    } else if (item.kind === itemKind.over) {
      if (openIsReading(items, index)) found.push({ index, zero: undefined });
    } else if (isPegged(items, index)) {
      found.push({ index, zero: undefined });
    } else if ((item.roles & role.same) !== 0) {
      if (sameIsReading(items, index)) found.push({ index, zero: undefined });
    } else if (
      (item.roles & (role.not | role.zero)) !== 0 ||
      item.text === "dead" ||
      item.text.startsWith("short")
    ) {
      const zero = zeroUnit(items, index);
      if (zero !== undefined) found.push({ index, zero });
    }
  });
  return found;
}
