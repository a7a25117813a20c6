import type { Status } from "../../vocabulary.ts";
import type { Item } from "../item.ts";
import type { Note } from "../note.ts";
import { clockAt } from "../times.ts";
import { isStatus, type Seen, statusOf } from "./status-words.ts";

/** Items between a status and its time at most: "got there at about 8:15". */
const reach = 3;

function hasClock(items: readonly Item[], at: number): boolean {
  const behind = items.findIndex((item, i) => i > at && item.from >= (items[at]?.signsTo ?? 0));
  const from = behind < 0 ? at + 1 : behind;
  for (let i = from; i < Math.min(items.length, from + reach); i++)
    if (clockAt(items, i, true) !== undefined) return true;
  return false;
}

/** "in 7:30 out 10:15", and no more: how a time sheet says it. */
function sheet(items: readonly Item[]): readonly Seen[] {
  const [first] = items;
  const out = items.findIndex(({ text }) => text === "out");
  const plain = items.every(({ text, colon }) => colon || /^(?:in|out|at|,|and|n|-)$/.test(text));
  if (first?.text !== "in" || out < 2 || !plain) return [];
  if (!hasClock(items, 0) || !hasClock(items, out)) return [];
  return [
    { status: "on_site", at: 0 },
    { status: "left_site", at: out },
  ];
}

function gone(note: Note, i: number): Status | undefined {
  const item = note.items[i];
  if (item === undefined || item.owner !== undefined) return undefined;
  if (/^(?:left|departed|departing)$/.test(item.text)) return "left_site";
  const status = statusOf(item);
  const leaves = status === "left_site" || status === "done";
  return leaves && isStatus(note, i, status) ? status : undefined;
}

/** "got there 8:15 left 11:40": when he came and when he went, each with its time; else nothing. */
export function comeAndGone(note: Note): readonly Seen[] {
  const { items } = note;
  if (note.holds.mark) return [];
  const onSheet = sheet(items);
  if (onSheet.length > 0) return onSheet;
  const came = items.findIndex(
    (item, i) =>
      item.owner === undefined &&
      item.signs !== undefined &&
      statusOf(item) === "on_site" &&
      isStatus(note, i, "on_site") &&
      hasClock(items, i),
  );
  if (came < 0) return [];
  for (let i = came + 1; i < items.length; i++) {
    const status = gone(note, i);
    if (status === undefined || !hasClock(items, i)) continue;
    return [
      { status: "on_site", at: came },
      { status, at: i },
    ];
  }
  return [];
}
