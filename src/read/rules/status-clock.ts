import { isStrongBreak } from "../breaks.ts";
import { isReturn } from "../errand.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { type Clock, clockAt } from "../times.ts";
import { role } from "../word.ts";
import { textAt } from "./near.ts";

const stands = /^(?:still|holding|held|holds|sitting|steady|stuck)$/;

/** Is the number a value? The status itself ("leaving 4:20") is no label of it. */
function measured(items: readonly Item[], i: number, status: number): boolean {
  // "head's at two twenty five … sweating back": what a gauge or a thermometer shows
  const shown = i - 2 === status ? undefined : items[i - 2]?.label;
  const told = shown?.place !== undefined || shown?.quantity !== undefined;
  if (textAt(items, i - 1) === "at" && told && !items[i]?.colon) return true;
  // "still at two fifty so I'm calling it tight": where a gauge stands
  if (textAt(items, i - 1) === "at" && stands.test(textAt(items, i - 2)) && !items[i]?.colon)
    return true;
  for (let at = i - 1; at >= 0 && at >= i - 2; at--) {
    const before = items[at];
    if (before === undefined || (at === status && items[i]?.colon === true)) return false;
    if (
      before.kind === itemKind.points ||
      before.kind === itemKind.unit ||
      (before.label !== undefined &&
        before.label.thing === undefined &&
        before.label.action === undefined &&
        before.label.state === undefined)
    )
      return true;
    if ((before.roles & role.is) === 0) return false;
  }
  return false;
}

/** The clock time that goes with a status: near it, and not behind a label. */
export function clockNear(items: readonly Item[], at: number, left: boolean): Clock | undefined {
  const end = items.findIndex((item, i) => i > at && item.from >= (items[at]?.signsTo ?? 0));
  const sorted = items.map((_, i) => i).sort((a, b) => Math.abs(a - at) - Math.abs(b - at));
  for (const i of sorted) {
    if (
      Math.abs(i - at) > 14 ||
      measured(items, i, at) ||
      (left && isReturn(items, i)) ||
      items[i + 1]?.text === "/" ||
      items[i - 1]?.text === "/" ||
      headsLabel(items, i) ||
      ofAnother(items, at, i)
    )
      continue;
    if (endsToThe(items, i)) continue;
    const before = items[i - 1];
    if (before?.kind === itemKind.subject && (before.roles & role.clock) !== 0) continue;
    const prepared = /^(?:at|around|about|by|ate|its|it|til|till|was)$/.test(textAt(items, i - 1));
    const last = textAt(items, i - 1) === "now" && items[i]?.spoken && items[i + 1] === undefined;
    const near =
      prepared || last || Math.abs(i - (end < 0 ? at : end)) <= 2 || Math.abs(i - at) <= 2;
    // "quarter past ten all done": in words it takes three
    const words = clockAt(items, i, true)?.end === at;
    if (!near && !words && items[i]?.colon !== true) continue;
    const loose =
      (items[i]?.unit === undefined && (items[i]?.value ?? 0) >= 100) ||
      /^(?:at|around|about|by|ate|til|till|until)$/.test(textAt(items, i - 1)) ||
      /^(?:to|til|till|of|past|after|before)$/.test(textAt(items, i + 1));
    const clock = clockAt(items, i, loose);
    if (clock !== undefined) return clock;
  }
  return undefined;
}

/** The hour of "ten till eight": no time of its own. */
function endsToThe(items: readonly Item[], i: number): boolean {
  if (!/^(?:to|til|till|of|past|after|before)$/.test(textAt(items, i - 1))) return false;
  return items[i - 2]?.kind === itemKind.number && clockAt(items, i - 2, true)?.end === i + 1;
}

/** "back at tollgate. 300 at 71": behind a full stop a bare figure beside another is a reading. */
function ofAnother(items: readonly Item[], status: number, i: number): boolean {
  const item = items[i];
  if (item?.colon === true || item?.unit !== undefined) return false;
  const beside =
    /^(?:at|@|over)$/.test(textAt(items, i + 1)) && items[i + 2]?.kind === itemKind.number;
  const [from, to] = status < i ? [status, i] : [i, status];
  const apart = items.slice(from + 1, to).some((one) => isStrongBreak(one));
  const prepared = /^(?:at|around|about|by|ate|it'?s|til|till|until)$/.test(textAt(items, i - 1));
  return beside || (apart && !prepared && item?.kind === itemKind.number);
}

/** "when I got here, 235 line": behind the comma the figure of what is named next. */
function headsLabel(items: readonly Item[], i: number): boolean {
  return (
    items[i + 1]?.kind === itemKind.label && items[i - 1]?.text === "," && items[i]?.colon !== true
  );
}

/** "ate forty": the phone heard an hour. */
export function heardHour(note: Note): Clock | undefined {
  const { items } = note;
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    const next = items[i + 1];
    if (item?.text !== "ate" || next?.kind !== itemKind.number || next.value >= 60) continue;
    return { minutes: 480 + next.value, sure: false, from: i, end: i + 2 };
  }
  return undefined;
}
