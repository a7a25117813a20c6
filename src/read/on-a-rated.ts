import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const compressors = /^(?:comp|compressor|scroll|recip|rotary)$/;
const motors = /^(?:motor|fan|blower)$/;

/** "pulls 4.9 on an 11 amp comp": what the machine is called by is its plate's, not what it draws. */
export function onARated(list: readonly Draft[], items: readonly Item[]): void {
  ofRating(list, items);
  ofCan(list, items);
  aCapacitor(list, items);
  onAMotor(list, items);
  for (const draft of list) {
    if (draft.unit?.figure !== "A" || draft.rating !== undefined || draft.points !== undefined)
      continue;
    const [on, article, machine] = [-2, -1, 1].map((step) => items[draft.index + step]?.text ?? "");
    if (!/^(?:on|for|with|of|is)$/.test(on ?? "") || !/^an?$/.test(article ?? "")) continue;
    if (compressors.test(machine ?? "")) draft.rating = "RLA";
    else if (motors.test(machine ?? "")) draft.rating = "FLA";
  }
}

/** Microfarads of a can, as capacitors are sold: IEC 60252-1's preferred values and what the trade stocks; from memory. */
const cans: ReadonlySet<number> = new Set([
  2, 3, 4, 5, 6, 7.5, 10, 12.5, 15, 17.5, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80,
]);

/** "cap 45.2 on 45", "fan cap 4.9 on 5": behind "on" stands what is printed on the can. */
function ofCan(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.rating !== undefined || right.rating !== undefined) return;
    if (right.index !== left.index + 2 || items[left.index + 1]?.text !== "on") return;
    const cap = [left, right].some(
      ({ named, quantity, unit }) =>
        (named ?? quantity) === "capacitance" || unit?.dimension === "capacitance",
    );
    if (cap && cans.has(right.value) && left.value < right.value * 1.3) right.rating = "nominal";
  });
}

const became = /^(?:installed|replaced|changed|swapped|was|in|bad|blown|failed|ordered)$/;

/** "the fan has a 7.5 mfd capacitor": what it is called by, in a size that is sold. */
function aCapacitor(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit?.dimension !== "capacitance" || draft.rating !== undefined) continue;
    const behind = items.slice(draft.index + 1, draft.index + 3);
    const capacitor = behind.some(({ label }) => label?.quantity === "capacitance");
    const led =
      /^(?:an?|new|blown|bad|old|weak|swapped|replaced|changed|installed|fitted|need|ordered|for|the|out|to|had|found)$/;
    const noun = items[draft.index + 1]?.label?.quantity === "capacitance" ? 2 : 3;
    const done = became.test(items[draft.index + noun]?.text ?? "");
    const handled = done || led.test(items[draft.index - 1]?.text ?? "");
    if (handled && capacitor && cans.has(draft.value)) draft.rating = "nominal";
  }
}

/** How far over its plate a motor is met at most, and how far under. Common practice, no source. */
const ofPlate = { from: 0.25, to: 1.6 } as const;
const driven = /^(?:fan|blower|inducer|motor|pump|comp|compressor|evap|condenser)\b/;

/** "blower pulling 7.8 on an 8.2", "fan 1.1 on a 1.2": what a motor draws, and the amps that it is made for. */
function onAMotor(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.unit !== undefined || right.named !== undefined) return;
    if (right.rating !== undefined || right.points !== undefined || left.rating !== undefined)
      return;
    const [on, article] = items.slice(right.index - 2, right.index).map(({ text }) => text);
    const between = right.index - left.index;
    if (on !== "on" || !/^an?$/.test(article ?? "") || between > 4) return;
    const amps = left.unit?.dimension === "current" || left.named === "current";
    const hinted = left.hint === "current" && left.unit === undefined;
    const led = items.slice(Math.max(0, left.index - 4), left.index);
    const motor = led.some(
      (item) =>
        driven.test(item.text) ||
        driven.test(item.subject ?? "") ||
        driven.test(item.label?.thing ?? ""),
    );
    const free = left.unit === undefined && left.named === undefined && left.points === undefined;
    const far = left.value / right.value;
    if (!(amps || hinted || (motor && free)) || far < ofPlate.from || far > ofPlate.to) return;
    takeFor(right, "current", "A");
    right.rating = "nominal";
    right.subject ??= left.subject;
    right.thing ??= left.thing;
    if (!amps) takeFor(left, "current", "A");
  });
}

/** "amps 7 of 19": the second is the plate's. */
function ofRating(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.unit?.figure !== "A" || left.rating !== undefined) return;
    if (right.unit !== undefined && right.rating !== "nominal") return;
    if (right.index !== left.index + 2 || items[left.index + 1]?.text !== "of") return;
    if (right.points !== undefined || right.value < left.value) return;
    right.unit = left.unit;
    right.rating = "nominal";
  });
}
