import type { Between, Draft } from "./draft.ts";
import { sameDimension, unlabelled } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { ofItsPlace } from "./of-its-place.ts";
import { ofOtherClause } from "./of-other-clause.ts";
import { twoStates } from "./two-states.ts";
import { role } from "./word.ts";

const verbs = role.change | role.now | role.is;

/** "starts at 6 ramps to 22.5": the start of a change, no starting current. */
function ramps(items: readonly Item[], left: Draft, right: Draft): boolean {
  const starts = left.before.some((index) =>
    /^(?:starts|started|start)$/.test(items[index]?.text ?? ""),
  );
  if (!starts) return false;
  for (let i = left.index + 1; i < right.index; i++)
    if (
      /^(?:ramp|climb|goes|rose|rises|creep|crept|work|come|comes|builds)/.test(
        items[i]?.text ?? "",
      )
    )
      return true;
  return false;
}

/** "starts 42 A then 11.8 11.9 11.7": a start, and what three even legs draw behind it. */
function thenLegs(items: readonly Item[], left: Draft, right: Draft): boolean {
  if ((left.unit ?? right.unit)?.dimension !== "current" || left.series !== undefined) return false;
  const starts = items
    .slice(Math.max(0, left.index - 3), left.index)
    .some(({ text }) => /^(?:starts|started|start)$/.test(text));
  const legs = items.slice(right.index + 1, right.index + 5).filter(({ text }) => text !== "/");
  const even = legs
    .slice(0, 2)
    .every((item) => isNumber(item) && Math.abs(item.value / right.value - 1) < 0.2);
  return starts && legs.length >= 2 && even && right.value < left.value * 0.7;
}

/** Three amps side by side, none far from the next. */
function inEvenRow(items: readonly Item[], left: Draft, right: Draft): boolean {
  if ((left.unit ?? right.unit)?.dimension !== "current" || left.series !== undefined) return false;
  if (right.index !== left.index + 1) return false;
  const even = (one: Item | undefined, two: Item | undefined): boolean =>
    isNumber(one) && isNumber(two) && Math.abs((one?.value ?? 0) / (two?.value ?? 1) - 1) < 0.1;
  const third =
    even(items[right.index + 1], items[right.index]) ||
    even(items[left.index - 1], items[left.index]);
  return even(items[left.index], items[right.index]) && third;
}

/** "… it dropped to 295", "and it came up to 410": the word between says that one value became the other. */
function movedBetween(items: readonly Item[], left: Draft, right: Draft): boolean {
  return items.slice(left.index + 1, right.index).some(({ text, roles, label, owner }) => {
    if (owner !== undefined) return false;
    if (/^(?:dropped|drops|dropping|fell|falls|rose|climbed|crept)$/.test(text)) return true;
    if (text === "came") return (roles & role.change) !== 0;
    return text.startsWith("pull") && label?.quantity === "vacuum";
  });
}

/** "started at nine and it's at 24.5 now", "was 26 and … it's at 14", "ramped up 4, 8, 12.6 A". */
export function changed(
  items: readonly Item[],
  left: Draft,
  right: Draft,
  gap: Between,
  before: number,
): boolean {
  if (
    !sameDimension(left, right) ||
    !unlabelled(items, left, right) ||
    left.rating !== undefined ||
    right.rating !== undefined
  )
    return false;
  if (ofItsPlace(left, right) || ofOtherClause(items, left, right)) return false;
  if (Number.isNaN(left.value) || Number.isNaN(right.value)) return false;
  // "120 on the low side and it's 91 degrees out here": each of its own place
  if (left.place !== undefined && right.place !== undefined && left.place !== right.place)
    return false;
  // between what it swings is no change
  if (!Number.isNaN(right.high)) return false;
  // "supply 132 rtn 71 rise 61": what lies between the two airs
  if (items[right.index - 1]?.text === "rise" && left.place?.endsWith("_air") === true) {
    right.named = "temperature_difference";
    return false;
  }
  // "no voltage from L2 to ground and 276 from L1 and L3": each at its own points
  if (left.zero && right.behind.some((index) => items[index]?.points !== undefined)) return false;
  // "(was a 35, read 11), now 4.6 A fan": of another thing
  if (items.slice(left.index + 1, right.index).some(({ text }) => text === ")")) return false;
  // "L1-L3 300, swapped it, now 470 all three": of each of them, no change of one
  if (right.count > 1 && left.count === 1) return false;
  // "now 18.2 amps 18.4 18.1": an even row of legs, no change of one
  if (inEvenRow(items, left, right)) return false;
  // "peak was 88.4, average 21": each of its own kind
  if (right.stat !== undefined && right.stat !== left.stat) return false;
  // the peak of a start and what it runs at are two readings
  if (left.stat === "peak" && left.state === "start" && right.state === "running") return false;
  // "bus 590, now 14.2 each leg": a bus has no legs
  const behind = items.slice(right.index + 1, right.index + 4);
  if (left.place === "dc_bus" && behind.some(({ text }) => /^(?:legs?|each|all|per)$/.test(text)))
    return false;
  if (twoStates(items, left, right)) return false;
  if (toldBack(items, right)) return false;
  if (endsRow(items, left) && !isNumber(items[right.index + 1])) return false;
  if (left.unit?.dimension === "mass" || right.unit?.dimension === "mass") return false;
  // "68F to 52F read 533": what a gauge read, no temperature
  if (left.unit?.dimension === "temperature" && !right.ownUnit && right.value > 3 * left.value)
    return false;
  // a row of its own, in a sentence of its own, is no change of the last of another
  if (gap.strong && (isNumber(items[left.index - 1]) || isNumber(items[right.index + 1])))
    return false;
  // "pulled 68 on start and settled out at 14.2": the start, and what it runs at
  const words = items.slice(left.index + 1, right.index);
  if (left.state === "start" && words.some(({ text }) => /^settl/.test(text))) return false;
  if (thenLegs(items, left, right)) {
    left.state ??= "start";
    return false;
  }
  if (left.state === "start" && ramps(items, left, right)) {
    left.state = undefined;
    if (left.unit === undefined && left.named === undefined && right.value < 170)
      left.hint ??= "current";
    return true;
  }
  if (left.state !== undefined && (before & role.change) === 0) return false;
  const dimension = left.unit?.dimension ?? right.unit?.dimension;
  if (
    !gap.strong &&
    dimension !== "current" &&
    !left.earlier &&
    !right.earlier &&
    movedBetween(items, left, right)
  )
    return true;
  if (right.after !== undefined && left.before.some((i) => items[i]?.text === "pulled"))
    return false;
  const held = since(items, left, right);
  if ((left.earlier && !held) || right.earlier) return false;
  // "pulled it down to 1.8 torr, then 0.7"
  const pulled =
    vacuumLike(left, right) && left.before.some((i) => items[i]?.text.startsWith("pulled"));
  const begun = (before & role.change) !== 0 || left.series !== undefined || pulled;
  if (begun && (gap.list || (gap.roles & (role.next | role.change | role.now)) !== 0)) return true;
  if (begun && !gap.strong && (gap.roles & verbs) !== 0) return true;
  if (
    right.after !== undefined &&
    left.after === undefined &&
    vacuumLike(left, right) &&
    !gap.strong &&
    left.place === undefined
  ) {
    const later = items.slice(left.index, right.index).some((item) => item.text === "later");
    // "isolated at 360, ten minutes later 395 microns": each said in full
    if (later && (right.ownUnit || underNitrogen(items)) && !held)
      return (gap.roles & role.change) !== 0 || stands(items, right);
    return later || held || (gap.roles & (role.is | role.now | role.change)) !== 0;
  }
  if (!right.now && (gap.roles & role.change) === 0 && !held)
    return wasThen(items, left, right, gap);
  return (gap.roles & verbs) !== 0 && !gap.list;
}

const otherThing = /^(?:and|ones?|old|other|it|its|that|this|there|they|he|tag|plate)$/;

/** "suction 118 was 96 before the charge", "12 now, was 31": what it was is told behind what it is. */
export function wasBehind(
  items: readonly Item[],
  left: Draft,
  right: Draft,
  gap: Between,
): boolean {
  if (items[right.index - 1]?.text !== "was" || gap.strong) return false;
  // "11.2 11.5 11.3 was 10.1": all of the row were
  if (isNumber(items[left.index - 1]) && isNumber(items[left.index - 2])) return false;
  if (left.earlier || right.earlier || left.series !== undefined) return false;
  if (right.stat !== undefined && right.stat !== left.stat) return false;
  if (!left.now && (left.after ?? right.after) !== undefined) return false;
  // "45.2 uF, the old one was 19": of another thing
  const subject = items.slice(left.index + 1, right.index - 1);
  if (!left.now && subject.some(({ text }) => otherThing.test(text))) return false;
  if (left.rating !== undefined || right.rating !== undefined) return false;
  if (/^(?:typo|wrong|mistake)$/.test(items[right.index + 1]?.text ?? "")) return false;
  if (!left.now && (toldBack(items, right) || left.unit?.dimension === "mass")) return false;
  return sameDimension(left, right) && unlabelled(items, left, right);
}

/** "391 at 68 degrees, it was 82 this morning": told back, not what became of the first. */
function toldBack(items: readonly Item[], right: Draft): boolean {
  const was = items
    .slice(Math.max(0, right.index - 2), right.index)
    .some(({ text }) => text === "was");
  const [next, after] = [items[right.index + 1], items[right.index + 2]];
  const when = next?.text === "this" || next?.text === "earlier" || after?.text === "morning";
  return was && when;
}

/** "207 209 and 206 and it drops to 199": the last leg of a row that stands for itself. */
function endsRow(items: readonly Item[], left: Draft): boolean {
  const [first, second, joint] = items.slice(Math.max(0, left.index - 3), left.index);
  if (joint?.text !== "and" || !isNumber(first) || !isNumber(second)) return false;
  return first?.unit === undefined && second?.unit === undefined;
}

/** "… ten minutes later it's sitting at 890 microns": what it was has become what it is. */
function stands(items: readonly Item[], right: Draft): boolean {
  const before = items.slice(Math.max(0, right.index - 4), right.index);
  return before.some(({ text }) => text === "its") && !underNitrogen(items);
}

function vacuumLike(left: Draft, right: Draft): boolean {
  const dimension = left.unit?.dimension ?? right.unit?.dimension;
  return dimension === "low_pressure" || dimension === "pressure" || left.named === "vacuum";
}

/** Nitrogen stands for long: each look at its gauge is a reading, but in a test with a beginning and an end. */
function underNitrogen(items: readonly Item[]): boolean {
  return (
    items.some((item) => item.text === "nitrogen" || item.text === "n2" || item.text === "nitro") &&
    !items.some((item) => item.text === "test" || item.text === "started")
  );
}

function since(items: readonly Item[], left: Draft, right: Draft): boolean {
  for (let i = left.index + 1; i < right.index; i++)
    if (items[i]?.text === "since" || items[i]?.text === "lunch") return true;
  return (
    left.before.length >= 0 &&
    items.slice(0, left.index).some((item) => item.text === "nitrogen") &&
    !left.earlier &&
    items.slice(left.index, right.index).some((item) => item.text === "came")
  );
}

function isNumber(item: Item | undefined): boolean {
  return item?.kind === itemKind.number;
}

/** "was twenty six and after I opened the valve it's at fourteen" */
function wasThen(items: readonly Item[], left: Draft, right: Draft, gap: Between): boolean {
  let was = false;
  for (let i = Math.max(0, left.index - 3); i < left.index; i++)
    if (items[i]?.text === "was" || items[i]?.text === "had") was = true;
  if (!was || gap.strong) return false;
  return items
    .slice(left.index + 1, right.index)
    .some((item) => item.text === "after" || item.text === "then");
}

/** "ramps up fine, 211 212 211": three legs that are even, nothing that rises. */
export function level(left: Draft, right: Draft, gap: Between): boolean {
  return gap.empty && Math.abs(left.value - right.value) <= 0.03 * right.value;
}
