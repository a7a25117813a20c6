import type { Draft } from "./draft.ts";
import { alive } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";

const drives = /^(?:vfd|vsd|drive|inverter)$/;

/** "vfd 42.5hz 311v out 18.7a", "vfd 1 out 44hz": volts or hertz beside "out", where a drive is spoken of. */
function outOfIt(draft: Draft, items: readonly Item[]): boolean {
  if (draft.place !== undefined || draft.points !== undefined) return false;
  const volts = draft.unit?.dimension === "voltage";
  const ahead = items.slice(Math.max(0, draft.index - 2), draft.index);
  if ((volts || draft.unit?.dimension === "frequency") && ahead[1]?.text === "out")
    return drives.test(ahead[0]?.text ?? "");
  if (!volts || items[draft.index + 1]?.text !== "out") return false;
  const next = items[draft.index + 2];
  return next?.text !== "of" && items.slice(0, draft.index).some(({ text }) => drives.test(text));
}

/** Volts that a drive's output has at least while it runs; common practice, no source. */
const leastOutV = 40;

/** "bus 590 output's 295", "at 52 hertz and putting out 318": beside its hertz or its bus what it puts out are volts. */
function putsOut(draft: Draft, items: readonly Item[]): boolean {
  const { unit, place, points, named, value } = draft;
  const bare = [place, points, named].every((one) => one === undefined);
  if (!bare || (unit !== undefined && unit.dimension !== "voltage") || value < leastOutV)
    return false;
  let at = draft.index - 1;
  while (/^(?:is|at|it's|its|volts?|:|=)$/.test(items[at]?.text ?? "")) at--;
  const said = /^(?:output|puts|putting)$/.test(items[at]?.text ?? "");
  const told = items.slice(0, at).some((item) => {
    const hertz = item.kind === itemKind.number && item.unit?.dimension === "frequency";
    return hertz || item.label?.place === "dc_bus" || drives.test(item.text);
  });
  return said && told;
}

/** How far apart the legs of one output lie at most to be told as a row. Common practice, no source. */
const alike = 1.15;

/** "60 hertz 462 462 461 out": only a drive has hertz and, behind them, volts that come out. */
function rowOut(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((last, order) => {
    const out = items[last.index + 1]?.text === "out";
    if (!out || items[last.index + 2]?.text === "of" || last.value < leastOutV) return;
    let at = order;
    while (at >= 0 && isLeg(list[at], last)) at--;
    const hertz = list[at];
    const row = list.slice(at + 1, order + 1);
    const between = items.slice((hertz?.index ?? 0) + 1, last.index);
    if (hertz?.unit?.dimension !== "frequency" || row.length < 2) return;
    if (between.some(({ kind, text }) => kind !== itemKind.number && !/^[,/]$/.test(text))) return;
    for (const draft of row) {
      draft.named = "voltage";
      draft.hint = undefined;
      draft.place = "drive_output";
    }
  });
}

function isLeg(draft: Draft | undefined, last: Draft): boolean {
  if (draft === undefined || draft.points !== undefined) return false;
  const volts = draft.unit === undefined || draft.unit.dimension === "voltage";
  return volts && draft.value < last.value * alike && draft.value > last.value / alike;
}

/** "460v 58hz out of the drive": the volts before the hertz are the drive's too. */
export function driveOut(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = alive(drafts);
  rowOut(list, items);
  for (const draft of list) {
    const bare = putsOut(draft, items);
    if (bare) draft.hint = "voltage";
    if (bare || outOfIt(draft, items)) draft.place = "drive_output";
  }
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.place !== "drive_output" || right.behind.length === 0) return;
    if (left.index !== right.index - 1 || left.place !== undefined) return;
    if (left.unit?.dimension === "voltage" && left.points === undefined) left.place = right.place;
  });
}
