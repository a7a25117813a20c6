import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { alike } from "./shape.ts";

const spot = /^(?:at|on|by|off|across|over|downstairs|upstairs)$/;
const leads = /^(?:at|by)\b/;
const joints = /^(?:and|but|then|,|n|&|only|about|just)$/;
/** V; what a control circuit of 24 V can read. Common practice, no source. */
const control = { least: 18, most: 30 };

const isJoint = (item: Item | undefined): boolean => joints.test(item?.text ?? "");

/** Words that name the spot between the two, and nothing else that was measured. */
function onlySpot(items: readonly Item[], left: Draft, right: Draft): boolean {
  const words = items.slice(left.index + 1, right.index);
  return (
    words.length >= 1 &&
    words.length <= 7 &&
    words.every(
      (item) =>
        item.kind !== itemKind.number && item.kind !== itemKind.line && !isStrongBreak(item),
    )
  );
}

function isBare(draft: Draft, items: readonly Item[]): boolean {
  const { unit, points, rating, subject } = draft;
  const free = [unit, points, rating, subject].every((one) => one === undefined);
  return free && !draft.over && !draft.same && items[draft.index]?.kind === itemKind.number;
}

/** "superheat at the comp 18, at the evap 9": the spot stands before each of the two. */
function spotsBefore(items: readonly Item[], left: Draft, right: Draft): boolean {
  const ahead = items.slice(Math.max(0, left.index - 4), left.index);
  if (!ahead.some(({ text }) => leads.test(text)) || !isJoint(items[left.index + 1])) return false;
  return leads.test(items[left.index + 2]?.text ?? "") && right.index > left.index + 2;
}

/** "33 psi at the case and 22 on the line", "288 high, 60 on the suction line": how warm the pipe is. */
function isOnLine(items: readonly Item[], { index }: Draft): boolean {
  const [on, , name] = items.slice(index + 1, index + 4);
  const line = /^(?:line|pipe)$/.test(name?.text ?? "") || name?.label?.hint === "temperature";
  return line && on?.text === "on";
}

/** "fifty psi at the pump and thirty eight at the coil": the same again, at another spot, which is not the place of the first. */
export function atEach(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.rating !== undefined || left.points !== undefined) return;
    const known = left.named ?? left.hint ?? left.unit ?? left.place;
    if (known === undefined || !isBare(right, items) || right.named !== undefined) return;
    const [here, there] = [items[left.index + 1], items[right.index + 1]];
    const difference = left.named === "superheat" || left.named === "subcooling";
    const spotted = difference && spotsBefore(items, left, right);
    if (!spotted && !spot.test(here?.text ?? "") && here?.label?.place === undefined) return;
    if (!spotted && !spot.test(there?.text ?? "") && there?.label?.place !== "control") return;
    if (left.sentence !== right.sentence || !onlySpot(items, left, right)) return;
    const joined = spotted || isJoint(items[right.index - 1]);
    // "superheat twelve at the coil nineteen at the comp"
    if (!(joined || (difference && right.index >= left.index + 2)) || !alike(left, right)) return;
    const gauge = left.unit?.dimension === "pressure" || left.hint === "pressure";
    if (gauge && isOnLine(items, right) && !isOnLine(items, left)) return;
    const volts = right.place === "control" && right.value >= control.least;
    const amps = left.unit?.dimension === "current" || left.named === "current";
    if (amps && volts && right.value <= control.most) return;
    const electric = left.unit?.dimension === "voltage" || left.hint === "voltage";
    if (right.place === "control" && !electric) right.place = undefined;
    if (spotted) right.place = undefined;
    right.named = left.named;
    right.hint = left.hint;
    right.unit = left.unit;
    right.assumedUnit = left.unit !== undefined;
  });
}
