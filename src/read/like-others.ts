import type { Context } from "./context.ts";
import type { Between, Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { partDraws } from "./part-draws.ts";
import { between } from "./relate.ts";
import type { Setting } from "./settle.ts";
import { alike, isPair, shapeOf } from "./shape.ts";
import { role } from "./word.ts";

/** "ct-1 basin 78 fan 42hz": what has a name of its own, if none of ours, is not like the other value of its machine. */
export function ofAnother(items: readonly Item[], like: Draft, bare: Draft): boolean {
  if (like.subject !== bare.subject) return true;
  const before = items[bare.index - 1];
  return !(before?.kind === itemKind.word && before.roles === 0 && before.signs === undefined);
}

/** "eev coil 46 46 46 ohm", "hps ok 0.1 ohm": ohms of a part, in a row of it or right behind its name. */
export function ofComponent(list: readonly Draft[], order: number, items: readonly Item[]): void {
  const [left, draft] = [list[order - 1], list[order]];
  if (draft === undefined || draft.points !== undefined) return;
  if (left?.component === true && draft.before.length === 0 && left.named !== "resistance") {
    const gap = between(items, left, draft);
    if (gap.list || gap.empty) draft.component = true;
  }
  partDraws(list, order, items);
  if (draft.unit?.dimension !== "resistance") return;
  const near = items.slice(Math.max(0, draft.index - 3), draft.index);
  if (near.some((item) => /^(?:hps|lps|switch|sw|fuse|contacts|float)$/.test(item.text)))
    draft.component = true;
}

/** "out 0" behind "480 481 479 in": of a switch or a drive, no weather. */
export function outOfGear(draft: Draft, items: readonly Item[], context: Context): void {
  const last = context.readings[context.readings.length - 1]?.quantity;
  if (draft.place !== "outdoor_air" || draft.unit !== undefined || last !== "voltage") return;
  if (items[draft.index - 1]?.text !== "out") return;
  draft.place = undefined;
  draft.hint = undefined;
  draft.question = "quantity";
}

/** "volts 461 459 433 L1 22.4", "comp 1 4.8 kW 187": so far from the volts or kilowatts before is something else. */
export function otherSize(from: Draft, to: Draft): boolean {
  if (from.quantity === "power" && from.value > 0 && to.value > from.value * 5) return true;
  // "24.9 vac R to C, T1-T2 0.58": nor is what is so far below the control's; common practice, no source
  const most = from.value >= 90 ? 5 : 20;
  return from.quantity === "voltage" && to.value > 0 && to.value < from.value / most;
}

/** "9 bar 12 grad": a word that nothing here knows may be the second's own unit. */
export function strangeUnit(items: readonly Item[], left: Draft, right: Draft): boolean {
  const next = items[right.index + 1];
  if (left.unit?.dimension !== "pressure" && left.unit?.dimension !== "temperature") return false;
  return (
    next?.kind === itemKind.word &&
    next.roles === 0 &&
    next.label === undefined &&
    next.signs === undefined
  );
}

export function copyKind(from: Draft, to: Draft): void {
  if (from.quantity === "capacitance" && isPair(to)) return;
  if (from.quantity === "wet_bulb_temperature") {
    // "78/67 wb": beside a wet bulb the warmer one is dry
    if (to.value < from.value) return;
    to.quantity = "temperature";
    to.unit ??= from.unit;
    to.assumedUnit = true;
    return;
  }
  to.quantity = from.quantity;
  if (to.unit === undefined) {
    to.unit = from.unit;
    to.assumedUnit = from.assumedUnit;
  }
}

/** "tag says 208-230v … reading 214": a value near a rated one is of its kind. */
export function nearRating(draft: Draft, list: readonly Draft[]): void {
  const like = list.find(
    (other) =>
      other.rating !== undefined &&
      other.quantity !== undefined &&
      draft.value > other.value * 0.85 &&
      draft.value < (Number.isNaN(other.high) ? other.value : other.high) * 1.15,
  );
  // "rated load's 14.8 and L1's at 15.2"
  const leg = like?.quantity === "current" && /^[LT]\d$/.test(draft.points?.[0]?.join() ?? "");
  if (like !== undefined && draft.rating === undefined && (list.length > 2 || leg))
    copyKind(like, draft);
}

/** "want to see over 100 meg on all of them, got 3.6 on lead one": measured as it was expected. */
export function wanted(list: readonly Draft[], order: number): Draft | undefined {
  const left = list[order - 1];
  const draft = list[order];
  if (left?.rating !== "expected" || left.quantity !== "insulation_resistance") return undefined;
  return draft?.over === false && draft.value > 0 ? left : undefined;
}

/** "0.2 31 32 A", "0.2/31/32 A": the first of three legs may be dead, where its row begins with it. */
export function threeInRow(list: readonly Draft[], at: number): boolean {
  const [left, right, last] = list.slice(at, at + 3);
  if (left === undefined || right === undefined || last?.ownUnit !== true) return false;
  if (right.unit !== undefined && right.unit !== last.unit) return false;
  const step = right.index - left.index;
  if (step > 2 || last.index - right.index !== step || left.named !== undefined) return false;
  const electric = last.unit?.dimension === "current" || last.unit?.dimension === "voltage";
  return (
    electric &&
    left.value < last.value &&
    left.before.length <= 1 &&
    list[at + 3]?.index !== last.index + step
  );
}

/** "sc should be 10, its 1.5": what is measured may be far from what was expected. */
export function falls(left: Draft, draft: Draft, gap: Between): boolean {
  const rated = left.rating === "expected" || left.rating === "setpoint";
  const ratio = left.value / draft.value;
  return rated && (gap.roles & role.is) !== 0 && !gap.strong && ratio < 30 && ratio > 1 / 30;
}

function rowsOf(list: readonly Draft[], items: readonly Item[]): Draft[][] {
  const rows: Draft[][] = [];
  for (const draft of list) {
    const row = rows[rows.length - 1];
    const left = row?.[row.length - 1];
    const gap = left === undefined ? undefined : between(items, left, draft);
    const legs = left?.points?.length === 1 && draft.points?.length === 1;
    const joined =
      gap !== undefined && (gap.list || gap.empty || (legs && !gap.strong && gap.calm));
    if (row !== undefined && joined && left?.sentence === draft.sentence) row.push(draft);
    else rows.push([draft]);
  }
  return rows;
}

/** "L1 22.4 L2 22.9 L3 17.0, volts 461 459 433 … now 22.3 22.6 22.4": the row that it is like, not the one before. */
export function rowAgain(list: readonly Draft[], items: readonly Item[]): void {
  if (list.length < 4) return;
  const rows = rowsOf(list, items);
  rows.forEach((row, order) => {
    const bare = row.every(
      (one) => one.quantity === undefined && one.unit === undefined && one.named === undefined,
    );
    if (row.length < 2 || !bare || row.some((one) => /[PL]/.test(shapeOf(one)))) return;
    const likes = rows.slice(0, order).filter(
      (other) =>
        other.length === row.length &&
        other[0]?.quantity !== undefined &&
        other.every((one, at) => {
          const ratio = (row[at]?.value ?? 0) / one.value;
          return ratio > 0.5 && ratio < 2;
        }),
    );
    const [like] = likes;
    if (likes.length !== 1 || like?.[0] === undefined) return;
    for (const one of row) {
      copyKind(like[0], one);
      one.kind ??= like[0].kind;
    }
  });
}

/** "amps 22 23 17, volts 461 459 433 … now 22.3": what goes on is the last of its own size. */
export function ofItsSize(list: readonly Draft[], order: number): Draft | undefined {
  const [left, draft] = [list[order - 1], list[order]];
  if (left === undefined || draft === undefined) return undefined;
  const free = left.rating !== undefined || left.quantity === "insulation_resistance";
  if (free || !draft.now || alike(left, draft)) return left;
  const before = list.slice(0, order - 1).reverse();
  return before.find(
    (one) => one.quantity !== undefined && one.rating === undefined && alike(one, draft),
  );
}

/** Amps at most that three bare legs can mean: supplies to neutral begin above; common practice, no source. */
const mostAmps = 95;

/** "L1 13.1 L2 13.3 L3 13.2": beside volts, or where amps were read, three even legs too low for volts are amps. */
export function legsDraw(list: readonly Draft[], setting: Setting, context: Context): void {
  if (setting.insulation || setting.winding || setting.diode || context.test !== undefined) return;
  const beside =
    list.some(({ quantity }) => quantity === "voltage") ||
    context.readings.some(({ quantity }) => quantity === "current");
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const legs = row.every(
      (one, at) =>
        one.quantity === undefined &&
        one.unit === undefined &&
        one.rating === undefined &&
        one.points?.length === 1 &&
        one.points[0]?.join() === `L${at + 1}` &&
        one.value >= 1 &&
        one.value < mostAmps,
    );
    const values = row.map(({ value }) => value);
    // "comp 1 L1 18.2 L2 18.4 L3 18.1": the legs of a machine that runs
    const machine = /^(?:compressor|fan|pump|motor)/.test(row[0]?.subject ?? "");
    if (!beside && !(machine && values.every((value) => value >= 3))) continue;
    if (!legs || Math.min(...values) < Math.max(...values) * 0.6) continue;
    for (const one of row) {
      one.quantity = "current";
      one.unit = unitCalled("A");
      one.assumedUnit = true;
      one.assumedQuantity = true;
    }
  }
}

/** "compressor one legs are nineteen four nineteen one and nineteen six": three figures of a machine's legs. */
export function legsOfMachine(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const [first] = row;
    if (first === undefined || !/^(?:compressor|fan|pump|motor)/.test(first.subject ?? ""))
      continue;
    let at = first.index - 1;
    while (((items[at]?.roles ?? 0) & role.is) !== 0 || items[at]?.text === "at") at--;
    if (items[at]?.text !== "legs") continue;
    const values = row.map(({ value }) => value);
    const bare = row.every(({ quantity, named, unit, rating, points }) =>
      [quantity, named, unit, rating, points].every((one) => one === undefined),
    );
    if (!bare || Math.max(...values) >= mostAmps || Math.min(...values) < 1) continue;
    if (Math.min(...values) < Math.max(...values) * 0.6) continue;
    for (const one of row) {
      one.quantity = "current";
      one.unit = unitCalled("A");
      one.assumedUnit = true;
    }
  }
}

/** "running 14.9 A at 235": a figure far above the amps, and of a supply's size, is volts. */
export function ampsAtVolts(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  if (draft.unit !== undefined || draft.quantity !== undefined || draft.named !== undefined) return;
  if (left?.unit?.dimension !== "current" || items[draft.index - 1]?.text !== "at") return;
  // "fan two amps, outside is at 101"
  if (draft.place !== undefined) return;
  const ofSupply = draft.value >= 100 && draft.value <= 620 && draft.value > 4 * left.value;
  if (!ofSupply || between(items, left, draft).strong) return;
  draft.named = "voltage";
  draft.hint = undefined;
}

/** "sp 62# dp 248#": side by side the letters are the pressures of suction and discharge. */
export function lettersOfGauges(list: readonly Draft[], items: readonly Item[]): void {
  const at = (letters: string): Draft | undefined =>
    list.find(
      (one) =>
        items[one.index - 1]?.text === letters &&
        (one.unit === undefined || one.unit.dimension === "pressure" || one.unit.figure === "lb"),
    );
  const [suction, discharge] = [at("sp") ?? at("ps"), at("dp") ?? at("pd")];
  if (suction === undefined || discharge === undefined || suction.value >= discharge.value) return;
  for (const [one, place] of [
    [suction, "suction"],
    [discharge, "discharge"],
  ] as const) {
    one.place = place;
    one.named = "pressure";
    one.rating = undefined;
    if (one.unit?.figure === "lb") one.unit = unitCalled("psi");
  }
}

/** "it pulled 19.4 on L1": what is drawn on a leg of the supply is amps. */
export function pulledOnLeg(draft: Draft, items: readonly Item[]): void {
  if (draft.unit !== undefined || draft.quantity !== undefined || draft.named !== undefined) return;
  if (draft.points === undefined || !draft.points.every((one) => /^L[123]$/.test(one.join())))
    return;
  const [verb, before] = [items[draft.index - 1]?.text ?? "", items[draft.index - 2]?.text ?? ""];
  const pulls = /^(?:pulled|pulls|pulling|pull|drew|draws|drawing|draw)$/;
  if (!pulls.test(verb) && !(pulls.test(before) && /^(?:about|around|like|only)$/.test(verb)))
    return;
  draft.named = "current";
  draft.hint = undefined;
}

/** "drawing 18.6 on L1 and 18.9 on L2": the verb holds for the next leg. */
export function pulledOnNext(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  if (draft.unit !== undefined || draft.named !== undefined || draft.hint !== undefined) return;
  const legs = [left?.points, draft.points].every(
    (points) => points?.length === 1 && /^L[123]$/.test(points[0]?.join() ?? ""),
  );
  if (!legs || left?.named !== "current" || !alike(left, draft)) return;
  const gap = between(items, left, draft);
  if (gap.strong || !gap.calm) return;
  draft.named = "current";
  draft.state ??= left?.state;
}
