import type { Reading } from "../../model.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { carries, signIndex } from "../signs.ts";

const sign = signIndex("undo");

/** "scratch that last entry", "undo", "never mind take that one out" */
export const undo: Rule = {
  name: "undo",
  needs: "undo",
  apply: (note) => {
    const { items } = note;
    if (oneFigure(note)) return;
    const at = items.findIndex((item) => carries(item, sign));
    // "and the one before" goes on with an undo; behind other words it is of them
    if (at < 0 || (at > 0 && /^(?:and|the|also)$/.test(items[at]?.text ?? ""))) return;
    const values = items.filter(
      (item) =>
        (item.kind === itemKind.number &&
          item.owner === undefined &&
          !smallCount(item.value) &&
          !ofTag(items, item)) ||
        item.kind === itemKind.over,
    );
    if (values.length > 0 && !isOther(note, at)) return;
    const count = items.find(
      (item) => item.kind === itemKind.number && smallCount(item.value),
    )?.value;
    let end = at + 1;
    while (end < items.length && items[end]?.kind !== itemKind.line && items[end]?.text !== ".")
      end++;
    state(
      note,
      undo.name,
      [at, end],
      count === undefined || count <= 1 ? { kind: "undo" } : { kind: "undo", count },
    );
  },
};

const takesOut =
  /^(?:(?:no|sorry|oops|wait|ok|actually|hold on)[, ]+)*(?:scratch|strike|scrap|nix|delete|ignore|disregard|forget|cancel|void|undo|take (?:back|out)) (?:that |the |my |those )?$/;

/** Was it read there, or at those points, or of that machine? */
function isNamed({ label, points, subject }: Item): ((one: Reading) => boolean) | undefined {
  if (label?.place !== undefined) return (one) => one.at === label.place;
  if (points?.length === 1) {
    const wanted = points[0] ?? [];
    return (one) => wanted.every((point, at) => one.points?.[at] === point);
  }
  return subject ? (one) => one.subject === subject : undefined;
}

/** "forget the head, gauge was off", "scratch L3": the newest that was read there. */
function namedFigure(note: Note): boolean {
  const { items, context } = note;
  const at = items.findIndex((item) => isNamed(item) !== undefined);
  const named = items[at];
  const next = items[at + 1];
  const fits = named === undefined ? undefined : isNamed(named);
  if (named === undefined || fits === undefined) return false;
  if (!takesOut.test(note.plain.slice(0, named.from))) return false;
  if (next !== undefined && next.kind !== itemKind.sign && next.text !== "reading") return false;
  const old = context.readings.findLast(fits);
  if (old === undefined) return false;
  // what is taken back is told by its figure alone
  const { figure } =
    context.readings.findLast((one) => one.figure.number === old.figure.number) ?? old;
  const several = context.readings.slice(-context.latest).filter(fits).length > 1;
  if (figure !== old.figure || (several && named.subject !== undefined)) {
    if (note.ask.length === 0) note.ask.push("Which figure do you take back?");
    return true;
  }
  state(note, undo.name, [0, items.length], { kind: "undo", taken: old.figure.number });
  return true;
}

/** "scratch the 0.9, wrong wire": the one figure of those read that is taken back, and no new one. */
function oneFigure(note: Note): boolean {
  const { items, context } = note;
  const numbers = items.filter((item) => item.kind === itemKind.number && item.owner === undefined);
  const [only, ...others] = numbers;
  if (only === undefined) return namedFigure(note);
  if (others.length > 0) return false;
  if (!takesOut.test(note.plain.slice(0, only.from))) return false;
  const figure = note.text.slice(only.from, only.numberTo);
  if (!context.readings.some((reading) => reading.figure.number === figure)) return false;
  state(note, undo.name, [0, items.length], { kind: "undo", taken: figure });
  return true;
}

/** "scratch that, wrong unit. AHU-3: sup 57 ret 75": what follows in its own sentence is of another machine. */
function isOther({ items, context }: Note, at: number): boolean {
  const stop = items.findIndex(
    ({ text, kind }, i) => i > at && (text === "." || kind === itemKind.line),
  );
  if (stop < 0 || items.slice(at, stop).some(({ kind }) => kind === itemKind.number)) return false;
  const named = items.slice(stop).find(({ kind, subject }) => kind === itemKind.subject && subject);
  const last = context.readings[context.readings.length - 1]?.subject;
  return named !== undefined && last !== undefined && named.subject !== last;
}

/** "scratch that, its ou-12s": a machine's number. */
function ofTag(items: readonly Item[], item: Item): boolean {
  const at = items.indexOf(item);
  const [tag, dash] = [items[at - 2], items[at - 1]];
  return dash?.text === "-" && dash.glued && item.glued && /^[a-z]{1,5}$/.test(tag?.text ?? "");
}

function smallCount(value: number): boolean {
  return Number.isInteger(value) && value >= 1 && value <= 5;
}
