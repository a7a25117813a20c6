import type { Unit } from "../../quantities/quantity.ts";
import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import type { Note, Rule } from "../note.ts";
import { textAt } from "./near.ts";

function isTime(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit?.dimension === "time";
}

function paced(items: readonly Item[], i: number): boolean {
  const before = textAt(items, i - 1);
  if (
    before === "after" &&
    items[i + 1]?.kind === itemKind.number &&
    items[i + 1]?.unit === undefined
  )
    return true;
  return (
    (before === "at" || before === "after" || before === "@") &&
    items[i - 2]?.kind === itemKind.number &&
    items[i - 2]?.owner === undefined
  );
}

/** "15 mins = 205, 30 = 212": each time before its value, the unit said once. */
function timesFirst(items: readonly Item[]): void {
  let unit: Unit | undefined;
  items.forEach((item, i) => {
    if (item.kind !== itemKind.number || item.owner !== undefined) return;
    if (textAt(items, i + 1) !== "=" || items[i + 2]?.kind !== itemKind.number) return;
    if (item.unit?.dimension === "time") unit = item.unit;
    else if (unit !== undefined && item.unit === undefined && item.value <= 120) item.unit = unit;
  });
}

/** The unit of the times that values of this message are paced by: "1450 at 2 minutes". */
function unitOf(items: readonly Item[]): Unit | undefined {
  const at = items.findIndex((item, i) => isTime(item) && paced(items, i));
  return at < 0 ? undefined : items[at]?.unit;
}

/** Minutes at which insulation is read. */
const minutes: ReadonlySet<number> = new Set([1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 30, 60]);

/** "1m 33", "10m 41": in a test, a small number with "m" directly before a bare value is minutes. */
function minuteRows(items: readonly Item[], typed: string): void {
  const minute = unitCalled("min");
  items.forEach((item, i) => {
    const next = items[i + 1];
    if (
      item.kind !== itemKind.number ||
      item.unit?.figure !== "megohm" ||
      item.value > 60 ||
      !Number.isInteger(item.value)
    )
      return;
    if (item.to !== item.unitFrom + 1 || next?.kind !== itemKind.number || next.owner !== undefined)
      return;
    // "line 42m 9.5/15.9": metres
    if (
      /^(?:lines?|pipes?|piping|pipework|tubes?|tubing|lift|run|length|height|rise|lineset|copper)$/.test(
        textAt(items, i - 1),
      )
    )
      return;
    const lower = typed.charAt(item.unitFrom) === "m";
    const told = next.unit?.dimension === "resistance" && lower && minutes.has(item.value);
    if (next.unit !== undefined && !told) return;
    item.unit = minute;
  });
}

/** "1/10 min: 420/980 meg": the unit of the second time holds for the first. */
function strokedTimes(items: readonly Item[]): void {
  items.forEach((item, i) => {
    const [first, stroke] = [items[i - 2], items[i - 1]];
    if (
      !isTime(item) ||
      !/^(?:\/|and|&)$/.test(stroke?.text ?? "") ||
      first?.kind !== itemKind.number
    )
      return;
    if (first.unit === undefined && first.owner === undefined && first.value < item.value)
      first.unit = item.unit;
  });
}

/** "480/500/505 5 10 15min": a rising row before a time that has its unit, where as many values stand ahead. */
function rowOfTimes(items: readonly Item[]): void {
  const end = items.findIndex((item, i) => isTime(item) && plainBefore(items, i));
  if (end < 0) return;
  let from = end;
  while (plainBefore(items, from)) from--;
  const count = end - from + 1;
  const values = items.slice(0, from).filter((item) => item.kind === itemKind.number);
  if (count < 2 || values.length < count) return;
  for (let i = from; i < end; i++) {
    const item = items[i];
    if (item !== undefined) item.unit = items[end]?.unit;
  }
}

/** Stands a smaller whole number without a unit right before it? */
function plainBefore(items: readonly Item[], i: number): boolean {
  const [left, item] = [items[i - 1], items[i]];
  if (left?.kind !== itemKind.number || left.unit !== undefined || item === undefined) return false;
  return left.owner === undefined && Number.isInteger(left.value) && left.value < item.value;
}

/** "28 v left after 10m", "200 after 1m": behind "after" nobody means ohms, where another value is told. */
function afterMinutes(items: readonly Item[], typed: string): void {
  const minute = unitCalled("min");
  items.forEach((item, i) => {
    if (item.kind !== itemKind.number || item.unit?.figure !== "megohm") return;
    if (item.to !== item.unitFrom + 1 || typed.charAt(item.unitFrom) !== "m") return;
    if (item.owner !== undefined || !minutes.has(item.value)) return;
    const told = items.some((one) => one !== item && one.kind === itemKind.number);
    if (told && /^(?:after|within)$/.test(textAt(items, i - 1))) item.unit = minute;
  });
}

/** "after ten it's up at 720" while a vacuum or an insulation is being watched: minutes. */
function alone({ items, context }: Note): void {
  const last = context.readings[context.readings.length - 1]?.quantity;
  if (last !== "vacuum" && last !== "insulation_resistance") return;
  const free = items.filter((item) => item.kind === itemKind.number && item.owner === undefined);
  const second = free[1];
  // "520 after 10"
  const late = second !== undefined && textAt(items, items.indexOf(second) - 1) === "after";
  const [time, value] = late ? [second, free[0]] : free;
  if (time === undefined || value === undefined || free.length !== 2) return;
  if (time.unit !== undefined || !minutes.has(time.value) || time.value < 2) return;
  if (!/^(?:after|at|@)$/.test(textAt(items, items.indexOf(time) - 1))) return;
  const told = value.unit === undefined || value.unit.dimension !== "time";
  if (told && value.value > time.value) time.unit = unitCalled("min");
}

/** "410 at ten, 455 at 20" while a vacuum is watched, or an insulation that was timed: minutes. */
function watched({ items, context }: Note): void {
  const last = context.readings[context.readings.length - 1];
  const timed = last?.quantity === "insulation_resistance" && last.after_s !== undefined;
  if (last?.quantity !== "vacuum" && !timed) return;
  const free = items.filter((item) => item.kind === itemKind.number && item.owner === undefined);
  if (free.length === 0 || free.length % 2 !== 0) return;
  const times = free.filter((_, order) => order % 2 === 1);
  const all = times.every((time, order) => {
    const value = free[order * 2];
    const at = items.indexOf(time);
    const bare = time.unit === undefined && minutes.has(time.value);
    return bare && /^(?:at|@)$/.test(textAt(items, at - 1)) && items[at - 2] === value;
  });
  if (all) for (const time of times) time.unit = unitCalled("min");
}

/** "after a minute it's 94, after ten it's 121" while a test is watched: a time before each value, in minutes. */
function watchedAhead({ items, context }: Note): void {
  const last = context.readings[context.readings.length - 1]?.quantity;
  if (last !== "vacuum" && last !== "insulation_resistance") return;
  const free = items.filter((item) => item.kind === itemKind.number && item.owner === undefined);
  if (free.length < 4 || free.length % 2 !== 0) return;
  const times = free.filter((_, order) => order % 2 === 0);
  const all = times.every((time, order) => {
    const value = free[order * 2 + 1];
    const bare = time.unit === undefined && minutes.has(time.value);
    const told = value !== undefined && value.unit?.dimension !== "time";
    const lead = textAt(items, items.indexOf(time) - 1);
    return (bare || isTime(time)) && told && /^(?:after|at|@)$/.test(lead);
  });
  if (all) for (const time of times) time.unit ??= unitCalled("min");
}

/** "55 meg at the minute mark": one of it. */
function markOfOne(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.kind !== itemKind.unit || item.unit?.dimension !== "time") return;
    if (textAt(items, i + 1) !== "mark" || !/\bthe$|^at$/.test(plainEnd(items, i))) return;
    item.kind = itemKind.number;
    item.value = 1;
    item.numberTo = item.to;
  });
}

function plainEnd(items: readonly Item[], i: number): string {
  const before = items[i - 1];
  return before?.kind === itemKind.word ? before.text : "";
}

/** "1450 at 2 minutes, 2480 at 4, 3530 at 6": the unit said once holds for all its times. */
export const pacedTimes: Rule = {
  name: "<value> at <time>, <value> at <time>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    markOfOne(items);
    minuteRows(items, note.text);
    afterMinutes(items, note.text);
    strokedTimes(items);
    rowOfTimes(items);
    watchedAhead(note);
    alone(note);
    watched(note);
    timesFirst(items);
    const unit = unitOf(items);
    if (unit === undefined) return;
    items.forEach((item, i) => {
      if (
        item.kind === itemKind.number &&
        item.unit === undefined &&
        item.owner === undefined &&
        item.value <= 120 &&
        paced(items, i)
      )
        item.unit = unit;
    });
  },
};
