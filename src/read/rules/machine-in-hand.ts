import { IN_HAND } from "../../vocabulary.ts";
import { isStrongBreak } from "../breaks.ts";
import { AT_POINT } from "../context.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";

const turns =
  /^(?:now|on|onto|to|next|other|starting|start|moving|doing|over|checking|at|with|gauges|first)$/;
/** A message that turns to a machine says little else; common practice, no source. */
const WORDS = 9;

/** "comp 2:", "ok, comp 2": nothing else is said. */
function isAlone(items: readonly Item[], named: number): boolean {
  return items.every(
    ({ kind, text }, i) =>
      i === named ||
      kind === itemKind.sign ||
      /^(?:ok|okay|alright|right|so|and|then|here|first|1st|second|2nd|third|3rd)$/.test(text),
  );
}

/** "megging compressor 1 at 500 volts", "ohming out comp 2": a test that is about to begin. */
function announces(note: Note): boolean {
  return note.statements.some(
    (one) => one.kind === "note" && /^(?:insulation test|testing) /.test(one.about),
  );
}

/** "okay lead two now": the one point that is named, where no machine is. */
function pointNamed(items: readonly Item[]): number {
  const named = items.flatMap((item, i) => (item.kind === itemKind.points ? [i] : []));
  const points = items[named[0] ?? -1]?.points;
  const one = named.length === 1 && points?.length === 1 && points[0]?.length === 1;
  const machine = items.some(({ kind }) => kind === itemKind.subject);
  return one && !machine ? (named[0] ?? -1) : -1;
}

const goes = /^(?:going|moving|over|switching|hopping|headed|heading|on|now)$/;

/** "rtu2 good. going to hp4", "done with rtu2 moving to hp4": of two that are named the one that is turned to; -1 for none. */
function turnedTo(items: readonly Item[]): number {
  const at = items.findLastIndex(
    ({ kind, subject }) => kind === itemKind.subject && subject !== "",
  );
  // "going to" is one item
  const to = /^(?:to|onto|on)$/.test(items[at - 1]?.text ?? "") ? at - 2 : at - 1;
  return at > 2 && goes.test(items[to]?.text ?? "") ? at : -1;
}

/** "moving to circuit 2", "on comp B now", "comp 2" alone: the values come in the next message. */
export const machineInHand: Rule = {
  name: "<turns to> <machine>",
  apply: (note) => {
    const { items } = note;
    if (note.readings.length > 0 || note.ask.length > 0) return;
    const test = announces(note);
    // "CH-5 locked off and proved dead. megging comp 2 at 500": what is tested stands in its own sentence
    const begins = test ? items.findLastIndex((item) => isStrongBreak(item)) + 1 : 0;
    const from = begins < items.length ? begins : 0;
    if (items.length - from > WORDS) return;
    const second = turnedTo(items);
    const over = items.some(({ text }) => /^(?:done|finished|through|leaving|left)$/.test(text));
    if (over && second < 0) return;
    if (note.holds.mark || note.holds.undo) return;
    const figures = items.some(
      ({ kind, owner }) => kind === itemKind.number && owner === undefined,
    );
    if (note.holds.number && (!test || figures)) return;
    const told = note.statements.some(({ kind }) => kind !== "note" && kind !== "action");
    if (told && second < 0) return;
    const point = pointNamed(items);
    if (point >= 0 && items.some((item) => turns.test(item.text))) {
      const about = `${AT_POINT}${items[point]?.points?.[0]?.[0] ?? ""}`;
      state(note, machineInHand.name, [point, point + 1], { kind: "note", about });
      return;
    }
    const named = items.flatMap((item, i) =>
      i >= from &&
      item.kind === itemKind.subject &&
      (item.roles & role.clock) === 0 &&
      item.subject !== ""
        ? [i]
        : [],
    );
    const at = named.length > 1 && second >= 0 ? second : named[0];
    const subject = items[at ?? -1]?.subject;
    if (at === undefined || subject === undefined) return;
    if (named.length !== 1 && at !== second) return;
    if (items[at]?.owner !== undefined) return;
    if (!test && at !== second && !items.some((item) => turns.test(item.text))) {
      // a name alone answers what was asked, where something was
      if (note.context.open !== undefined || !isAlone(items, at)) return;
    }
    state(note, machineInHand.name, [at, at + 1], { kind: "note", about: `${IN_HAND}${subject}` });
  },
};
