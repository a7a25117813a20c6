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
    const at = items.findIndex((item) => carries(item, sign));
    if (at < 0) return;
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
