import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

export const rests = /^(?:idle|idling|sitting|resting|unloaded|standing)$/;
export const loads = /^(?:load|loads|loaded|under|running|start|startup|going|starts|kicks)$/;
const befores = /^(?:before|b4|bfr|befor|bfore)$/;
const recovers = /^(?:back|recovers|recovered|returns|returned|recovering)$/;

const sags = /^(?:sag|sags|sagged|sagging|dips?|dipped|drops?|dropped|falls?|fell|pulls)$/;
const starts = /^(?:start|starts|started|starting|startup|kicks|kicked|kick|kicking)$/;

function told(items: readonly Item[], from: number, to: number, words: RegExp): boolean {
  return items.slice(Math.max(0, from), to).some(({ text }) => words.test(text));
}

/** Where the clause of the item begins. */
function clauseStart(items: readonly Item[], index: number): number {
  return items.slice(0, index).findLastIndex((item) => isStrongBreak(item)) + 1;
}

/**
 * "325 idle drops to 290 under load", "before cleaning head was 410 after it's 355", "sagged to 191 then back
 * up to 206": one thing in two states, each with its figure, and no change of one reading.
 */
export function twoStates(items: readonly Item[], left: Draft, right: Draft): boolean {
  const gap = [left.index + 1, right.index] as const;
  const behind = right.index + 1;
  const between = told(items, ...gap, rests);
  const loaded = right.state !== undefined || told(items, behind, right.index + 6, loads);
  const rested =
    (between && loaded) ||
    (left.state === "running" && (between || told(items, behind, right.index + 3, rests)));
  const begin = Math.max(clauseStart(items, left.index), left.index - 6);
  const mended = told(items, begin, left.index, befores) && told(items, ...gap, /^(?:after|aftr)$/);
  const fell = left.stat === "minimum" || told(items, left.index - 3, left.index, sags);
  const sagged = fell && told(items, ...gap, recovers);
  return rested || mended || sagged;
}

/** "sagged to 191 when the compressor kicked on then back up to 206": how far it falls as it starts. */
export function sagsAtStart(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((left, order) => {
    const right = list[order + 1];
    if (left.gone || left.state !== undefined) return;
    if (left.stat !== "minimum" && !told(items, left.index - 3, left.index, sags)) return;
    const end = Math.min(right?.index ?? items.length, left.index + 7);
    const back = items.slice(left.index + 1, end).findIndex(({ text }) => recovers.test(text));
    const at = items
      .slice(left.index + 1, back < 0 ? end : left.index + 1 + back)
      .findIndex(({ text }) => starts.test(text));
    if (at < 0 || !told(items, left.index + 1, left.index + 1 + at, /^(?:on|when|at|as|every)$/))
      if (at !== 0) return;
    left.state = "start";
    const word = left.index + 1 + at;
    if (right === undefined || right.state !== "start") return;
    if (!right.before.includes(word) && back < 0) return;
    right.state = undefined;
    right.before = right.before.filter((index) => index > word);
  });
}

const joins = /^(?:and|then|but|it|is|was|under|drops|dropped|dips|falls|sags|down|to|at)$/;

/** "bus is 642 sitting and 621 with both running": the second figure is of the bus as well. */
export function busAgain(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.place !== "dc_bus" || right.quantity !== "voltage" || right.place !== undefined)
      return;
    if (right.points !== undefined || right.rating !== undefined || right.ownUnit) return;
    const ratio = right.value / left.value;
    if (!(ratio > 0.7 && ratio < 1.4) || right.before.length > 0) return;
    const words = items.slice(left.index + 1, right.index);
    const running = ({ label }: Item): boolean => label?.state === "running";
    // "430 loaded, idle was 560": a comma, where the state is told
    const states = words.some(({ text }) => rests.test(text));
    const joint = (one: Item): boolean =>
      joins.test(one.text) || rests.test(one.text) || running(one) || (states && one.text === ",");
    if (!words.every(joint)) return;
    right.place = "dc_bus";
    right.kind ??= left.kind;
  });
}
