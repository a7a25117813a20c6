import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, isOneWord, itemKind, wordsFrom } from "./item.ts";
import { role } from "./word.ts";

/** "ll 208 ln 120": beside volts or legs and with a figure of volts, from line to line. */
export function lineToLine(draft: Draft, items: readonly Item[], own: Item): boolean {
  if (draft.unit !== undefined) return draft.unit.dimension === "voltage";
  if (draft.value < (own.text === "ll" ? 170 : 100) || draft.value > 640) return false;
  if (own.text === "ln") return items.some((item) => item.text === "ll");
  return items.some(
    (item) =>
      item.unit?.dimension === "voltage" ||
      item.label?.quantity === "voltage" ||
      (item.text === "ln" && draft.value > 170) ||
      item.text === "leg" ||
      item.text === "legs" ||
      item.points?.[0]?.[0]?.startsWith("L") === true,
  );
}

/** "DA 57 RA 75 MA 68": beside the other airs MA is the mixed one. */
export function mixedAir(draft: Draft, items: readonly Item[]): boolean {
  if (draft.value < 20 || draft.value > 120 || draft.ownUnit) return false;
  return items.some((item) => /^(?:ra|sa|da|oa|oat|rat)$/.test(item.text));
}

/** "each pair" as one word of the dictionary. */
function pairWord(item: Item | undefined): boolean {
  return item !== undefined && (item.roles & role.each) !== 0 && item.to - item.from >= 9;
}

/** "0.47 each pair", "all pairs 0.6": a winding's three pairs of pins. */
export function eachPair(items: readonly Item[], draft: Draft): boolean {
  if (draft.unit !== undefined || draft.value >= 60 || draft.points !== undefined) return false;
  const [next, before] = [items[draft.index + 1], items[draft.index - 1]];
  const pair =
    pairWord(next) ||
    pairWord(before) ||
    (next !== undefined &&
      (next.roles & role.each) !== 0 &&
      items[draft.index + 2]?.text === "pair");
  if (pair) draft.named ??= "winding_resistance";
  return pair;
}

/** "lifted T1 T2 T3, wiped dry: 0.02 meg T1": the points right behind are the value's, not those far before. */
export function pointsClose(items: readonly Item[], draft: Draft): boolean {
  if (items[draft.index + 1]?.kind !== itemKind.points || !draft.behind.includes(draft.index + 1))
    return false;
  const before = draft.before.filter((index) => items[index]?.kind === itemKind.points).pop();
  return before !== undefined && draft.index - before > 3;
}

/** "then it sat at 27.3": a verb. */
export function satThere(items: readonly Item[], index: number): boolean {
  return (
    items[index + 1]?.text === "at" &&
    /^(?:it|then|she|just|they|and)$/.test(items[index - 1]?.text ?? "")
  );
}

/** "58 F entering the reversing valve": no water enters there. */
export function ofAPart(items: readonly Item[], index: number): boolean {
  const item = items[index];
  if (item === undefined || !/^(?:entering|leaving)$/.test(item.text)) return false;
  // "entering water 72 suction 108"
  if (!isOneWord(item)) return false;
  return items
    .slice(index + 1, index + 5)
    .some(({ text }) => /^(?:coil|drier|compressor|accumulator|side|suction)$|valve/.test(text));
}

/** "24 vac in, 0 out of the hp switch": behind its value a switch is where, no pressure. */
export function atSwitch(items: readonly Item[], index: number): boolean {
  return (
    items[index]?.label?.hint === "pressure" &&
    /^(?:switch|sw|control|switches|cutout)$/.test(items[index + 1]?.text ?? "")
  );
}

/** "fan low 2.1 med 2.6 high 3.1", "pulls 9 low 14 high", "on hi": speeds and stages, no sides of a circuit. */
export function speedWord(items: readonly Item[], draft: Draft, index: number): boolean {
  const text = items[index]?.text ?? "";
  if (!/^(?:low|high|hi|lo)$/.test(text) || items[index]?.label === undefined) return false;
  if (/^(?:side|pressure|press|psi)$/.test(items[index + 1]?.text ?? "")) return false;
  // "low pressure 6 high pressure 31,3 running 14,6 amps"
  const item = items[index];
  if (item !== undefined && !isOneWord(item)) return false;
  if (draft.unit?.dimension === "pressure") return false;
  if (items.some((item) => item.unit?.dimension === "pressure")) return false;
  const electric = draft.unit?.dimension === "current" || draft.value < 30;
  return (
    electric &&
    items.some(
      (item) =>
        /^(?:fan|fans|blower|speed|med|medium|pull|pulls|pulling|draws|amps|motor|tap)$/.test(
          item.text,
        ) || item.unit?.dimension === "current",
    )
  );
}

/** "reset it and it pulled 19.4 on L1": a motor draws, nobody takes refrigerant out. */
export function pulledAmps(items: readonly Item[], draft: Draft, index: number): boolean {
  if (items[index]?.text !== "pulled" || draft.unit !== undefined || index > draft.index)
    return false;
  if (draft.value >= 170 || items.some((item) => item.unit?.dimension === "mass")) return false;
  const before = items[index - 1];
  const legs = draft.points?.every((points) => /^[LT]\d$/.test(points[0] ?? "")) === true;
  return (
    legs ||
    before?.kind === itemKind.subject ||
    /^(?:it|she|comp|compressor|fan|motor|blower|pump|still|each)$/.test(before?.text ?? "")
  );
}

/** "subcool 2 looks low on charge": how full it is, no side of the circuit. */
export function lowOnGas(items: readonly Item[], index: number): boolean {
  if (!/^(?:low|lo)$/.test(items[index]?.text ?? "") || items[index + 1]?.text !== "on")
    return false;
  return /^(?:charge|gas|refrigerant|freon|oil|juice|water)$/.test(items[index + 2]?.text ?? "");
}

/** "fan contactor 24 on coil": a contactor's coil, no air on one of the machine's. */
export function onItsCoil(items: readonly Item[], index: number): boolean {
  const item = items[index];
  if (item?.label?.place !== "return_air" || !/^(?:on|coil)$/.test(item.text)) return false;
  // "coil on zone five valve 46 46 open": the valve's, where no figure stands in between
  const behind = items.slice(index + 1, index + 5);
  const valve = behind.findIndex(({ text }) => /^(?:valves?|vlv|eev|exv|lev|txv)$/.test(text));
  if (valve >= 0 && behind.slice(0, valve).every(({ kind }) => kind !== itemKind.number))
    return true;
  return items.some(({ text }) =>
    /^(?:contactors?|contactr|relay|solenoid|sv|starter)\b/.test(text),
  );
}

/** "breaker case is hot": nothing that food stands in. */
const cased =
  /^(?:breaker|motor|bearing|gear|drive|inverter|pump|meter|fuse|contactor|transformer)$/;

/** "at the indoor end that pipe is 73 F": where on the machine, no air. */
export function endOfMachine(items: readonly Item[], index: number): boolean {
  const place = items[index]?.label?.place;
  if (place === "box" && cased.test(items[index - 1]?.text ?? "")) return true;
  if (place !== "indoor_air" && place !== "outdoor_air") return false;
  if (/^(?:end|side|section|half)$/.test(items[index + 1]?.text ?? "")) return true;
  const before = items[index - 1]?.label;
  const outdoors = /^(?:outdoors|indoors|outside|inside)$/.test(items[index]?.text ?? "");
  return (
    outdoors &&
    before?.hint === "temperature" &&
    /^(?:suction|liquid|discharge)$/.test(before.place ?? "")
  );
}

/** "shell 92 when megged": when it was, not what it is. */
export function whenDone(items: readonly Item[], index: number): boolean {
  const before = items[index - 1]?.text ?? "";
  return (
    items[index]?.label?.quantity !== undefined &&
    /^(?:when|while|before|after|during)$/.test(before)
  );
}

/** "rated 45 and 5, I'm reading 39 and 4.8", "herm 39.2 fan 5.1 rated 45 and 5": as many sizes as there are values. */
function sizesBoth(items: readonly Item[], drafts: readonly Draft[], order: number): boolean {
  const [left, right] = [drafts[order - 1], drafts[order]];
  if (left === undefined || right === undefined) return false;
  if (items[left.index + 1]?.text !== "and" || right.value >= left.value) return false;
  const measured = drafts.slice(0, order - 1);
  const ofCans = measured.some(({ named }) => named === "capacitance");
  if (ofCans && measured.length === 2 && order === drafts.length - 1) return true;
  if (left.named !== "capacitance" || drafts.length < order + 3) return false;
  return items[drafts[order + 1]?.index ?? -1] !== undefined;
}

/** "rated 45/5", "set at 72/76": what was said of the first holds for the second. */
export function rateBoth(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.rating === undefined || right.rating !== undefined || right.before.length > 0) return;
    if (right.index !== left.index + 2) return;
    const joint = items[left.index + 1]?.text ?? "";
    // "rated 45 over 5", "45 plus 5": a capacitor's two sides
    const spoken = /^(?:over|plus|\+|slash)$/.test(joint) && left.rating === "nominal";
    const twin = spoken && left.named === "capacitance" && right.value < left.value;
    if (joint !== "/" && !twin && !sizesBoth(items, drafts, order)) return;
    if (left.unit === undefined || right.unit === undefined || left.unit === right.unit)
      right.rating = left.rating;
  });
}

/** "since yesterday", nitrogen left "last night": this visit's test, not a past one's value. */
export function standing(items: readonly Item[], index: number): boolean {
  const before = items[index - 1]?.text;
  if (before === "since" || before === "until" || before === "till") return true;
  if (before === "as" || ((items[index - 1]?.roles ?? 0) & role.same) !== 0) return true;
  const night = items[index]?.text === "last" || items[index]?.text === "yesterday";
  return (
    night &&
    items
      .slice(0, index)
      .some(({ text }) => text === "nitrogen" || text === "n2" || text === "started") &&
    !items.some((item) => item.text === "year" || item.text === "month")
  );
}

/** "suction was 60 and it pulled down to 40": a gauge of the circuit that came down, no vacuum. */
function pumpedDown(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit !== undefined && draft.unit.dimension !== "pressure") return false;
  if (items.some(({ text }) => /^(?:vac|vacuum|microns?|pump|evac|hg|mercury)$/.test(text)))
    return false;
  const number = (item: Item): boolean => item.kind === itemKind.number && item.owner === undefined;
  const left = items.slice(0, draft.index).findLast(number);
  if (left !== undefined && left.value <= draft.value) return false;
  return items
    .slice(0, draft.index)
    .some(({ label }) => label?.place === "suction" || label?.place === "discharge");
}

/** "box pulling down, 44 now", "pulled down to 36 in the box": what is cooled draws no amps and no vacuum. */
export function pullsDown(draft: Draft, items: readonly Item[], index: number): boolean {
  const item = items[index];
  if (item === undefined || !item.text.startsWith("pull")) return false;
  if (item.label?.hint === "current") return items[index + 1]?.text === "down";
  if (item.label?.quantity !== "vacuum") return false;
  if (pumpedDown(draft, items)) return true;
  if (draft.unit !== undefined) return false;
  const cooled = items.some(
    ({ text, label }) => label?.place === "box" || /^(?:room|rooms|space|product)$/.test(text),
  );
  const evacuated = items.some(({ text }) => /^(?:vac|vacuum|microns?|pump|evac)$/.test(text));
  if (cooled && !evacuated) draft.hint ??= "temperature";
  return cooled && !evacuated;
}

/** "contactor pulled in, 208 across all three": a contact moved, nothing was taken out. */
export function pulledIn(items: readonly Item[], index: number): boolean {
  return (
    items[index + 1]?.text === "in" &&
    /\b(?:contactors?|relays?|starter|coil|solenoid)\b/.test(wordsFrom(items, index - 4, index))
  );
}

/** "customer thinks it's low. 84 out": what ends its sentence names no side of the next number. */
export function justLow(items: readonly Item[], index: number): boolean {
  const [item, next] = [items[index], items[index + 1]];
  if (item === undefined || next === undefined || !isStrongBreak(next)) return false;
  // "290 psi high side; 12 amps"
  return /^(?:low|high)$/.test(item.text) && isOneWord(item);
}

/** "48 into the valve, 66 out of it": beside degrees of a line no refrigerant is weighed. */
export function warmthOnly(items: readonly Item[], draft: Draft, index: number): boolean {
  const text = items[index]?.text;
  if (draft.unit !== undefined || (text !== "out" && text !== "in")) return false;
  if (items.some((item) => item.unit?.dimension === "mass")) return false;
  return items
    .slice(0, draft.index)
    .some((item) => item.label?.hint === "temperature" && item.label.place !== undefined);
}

const takes =
  /\b(?:pull|pulls|pulled|pulling|suck|sucked|sucking|drain|drained|draining|recover|recovering|reclaim|reclaiming)(?: out)?(?: (?:the|its|this|that|my|all|of|whole|old|entire|full|rest|remaining))*$/;

/** "pulling the charge, 5 lb out", "the charge came out at 6 lb", "charge is out": a noun, and it leaves the machine. */
export function chargeTaken(items: readonly Item[], index: number): boolean {
  if (!/^charge(?: is)?$/.test(items[index]?.text ?? "")) return false;
  if (takes.test(wordsFrom(items, index - 6, index))) return true;
  return /^(?:(?:is|was|now|all|came|comes|coming|went|back) )*out\b(?! of (?:range|spec|gas))/.test(
    wordsFrom(items, index + 1, index + 5),
  );
}
