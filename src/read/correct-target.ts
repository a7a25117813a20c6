import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";
import { canonical } from "./make.ts";
import { firstOfFigures } from "./one-figure.ts";

/** What a correction replaces: a reading, nothing that is known, or one of several that nobody can tell apart. */
export type Target = Reading | "several" | undefined;

/** "lead 2" is what was called L2 or T2: leads are counted, whatever stands on them. */
export function isSamePoint(said: string, known: string): boolean {
  if (said === known) return true;
  const counted = /^(?:lead|leg) (\d)$/.exec(said)?.[1];
  return counted !== undefined && new RegExp(`^(?:L|T|lead |leg )${counted}$`).test(known);
}

function matches(draft: Draft, reading: Reading): boolean {
  if (reading.rating !== undefined && draft.rating === undefined) return false;
  const points = draft.points?.[0];
  if (points !== undefined) {
    if (reading.points === undefined) return false;
    const same = points.every(
      (point) => reading.points?.some((known) => isSamePoint(point, known)) === true,
    );
    if (
      !same ||
      (points.length === 2 &&
        reading.points.length === 2 &&
        !reading.points.every((point) => points.includes(point)))
    )
      return false;
    if (
      points.length === 1 &&
      reading.points.length === 2 &&
      reading.points[1] !== "ground" &&
      reading.points[0] !== points[0]
    )
      return false;
  }
  if (draft.place !== undefined && reading.at !== draft.place) return false;
  if (draft.hint === "temperature" && reading.quantity === "pressure") return false;
  if (draft.subject !== undefined && reading.subject !== draft.subject) return false;
  const named = draft.named;
  if (
    named !== undefined &&
    reading.quantity !== named &&
    !(named === "resistance" && reading.unit === "Ohm")
  )
    return false;
  if (
    draft.unit !== undefined &&
    unitCalled(reading.figure.unit)?.dimension !== draft.unit.dimension &&
    reading.figure.unit !== ""
  )
    return false;
  return true;
}

/** The correction's value and the reading's, both in what the reading was said in. */
function figures(draft: Draft, old: Reading, units: Context["units"]): readonly [number, number] {
  const figure = Number(old.figure.number);
  if (draft.unit === undefined || draft.unit.figure === old.figure.unit) {
    if (!Number.isNaN(figure)) return [draft.value, figure];
    if (draft.unit === undefined) return [Number.NaN, Number.NaN];
  }
  const value = canonical({ ...draft, quantity: old.quantity }, draft.value, units);
  return [value, old.value !== null && typeof old.value === "number" ? old.value : Number.NaN];
}

/** How far a correction's value is from the reading's, on a logarithmic scale. */
function distance(draft: Draft, old: Reading, units: Context["units"]): number {
  const [now, then] = figures(draft, old, units);
  if (now === then) return 0;
  return now > 0 && then > 0 ? Math.abs(Math.log(now / then)) : Number.POSITIVE_INFINITY;
}

/** What a slip of the thumb makes: 3 digits swapped, 2 a point or a zero, 1 a digit changed or lost; 0 none. */
export function slip(now: number, then: number): number {
  const [a, b] = [String(now), String(then)];
  if (a === b || Number.isNaN(now) || Number.isNaN(then)) return 0;
  const plain = (text: string): string => text.replace(/[.-]|0+$/g, "").replace(/^0+(?=\d)/, "");
  if (a.length === b.length) {
    const off = [...a].map((digit, at) => (digit === b[at] ? -1 : at)).filter((at) => at >= 0);
    const sorted = (text: string): string => [...text].sort().join("");
    if (off.length === 2 && sorted(a) === sorted(b)) return 3;
    if (off.length === 1 && a.length > 1) return 1;
  }
  if (plain(a) === plain(b)) return 2;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length < 2 || long.length !== short.length + 1) return 0;
  for (let i = 0; i < long.length; i++)
    if (long.slice(0, i) + long.slice(i + 1) === short) return 1;
  return 0;
}

/** A doubtful value may be that far from what was meant. */
const DOUBT = Math.log(30);
/** As near as a value misread or mistyped mostly is. */
const NEAR = Math.log(1.5);
/** The one thing that was told just now may be that far off, where what came before is no clearer. */
const TWICE = Math.log(2);
/** Nearer than most slips. */
const CLOSE = Math.log(1.2);
/** Beyond it nobody corrects the one to the other, but by a slip. */
const FAR = Math.log(5);

/** Of readings that a bare value could replace: the one that a slip leads to, else the only near one. */
function mostLikely(draft: Draft, list: readonly Reading[], units: Context["units"]): Target {
  const rows = list
    .map((old) => ({
      old,
      slip: slip(...figures(draft, old, units)),
      far: distance(draft, old, units),
    }))
    .filter((row) => row.far > 0);
  const best = Math.max(0, ...rows.map((row) => row.slip));
  const slips = rows.filter((row) => row.slip === best && best > 0);
  // "correction 24,1" behind an LP of 4,1 and an HP of 25: nearer than a digit that was lost
  const [nearest] = rows.filter((row) => row.far < CLOSE);
  if (best === 1 && nearest !== undefined && slips.every((row) => row.far > FAR)) {
    return rows.filter((row) => row.far < CLOSE).length === 1 ? nearest.old : "several";
  }
  if (slips.length === 1) return slips[0]?.old;
  const close = (slips.length > 0 ? slips : rows)
    .filter((row) => row.far < NEAR)
    .sort((a, b) => a.far - b.far);
  const [first, second] = close;
  if (first === undefined) return slips.length > 0 ? "several" : undefined;
  const other = second !== undefined && second.old.quantity !== first.old.quantity;
  return second === undefined || (other && second.far > first.far * 2.5) ? first.old : "several";
}

/** The reading that a bare value replaces: a doubtful one, one of the last message, one before. */
function bareTarget(draft: Draft, fitting: readonly Reading[], context: Context): Target {
  const { units } = context;
  const doubtful = fitting.filter((old) => old.doubtful === true).pop();
  if (doubtful !== undefined && distance(draft, doubtful, units) < DOUBT) return doubtful;
  const latest = context.readings.slice(-Math.max(1, context.latest));
  const recent = fitting.filter((old) => latest.includes(old));
  const found = mostLikely(draft, recent, units);
  if (found !== undefined) return found;
  const before = mostLikely(
    draft,
    fitting.filter((old) => !latest.includes(old)),
    units,
  );
  const [only] = recent;
  // "box 9", "no that's 6" behind a row of amps near it: of those before nobody could tell which
  const close = only !== undefined && recent.length === 1 && distance(draft, only, units) < TWICE;
  if (before === "several" && close) return only;
  if (before !== undefined) return before;
  if (only === undefined || recent.length > 1) return recent.length > 1 ? "several" : undefined;
  const two = Number.isNaN(Number(only.figure.number));
  return two || draft.unit !== undefined || distance(draft, only, units) < FAR ? only : undefined;
}

/** Which of the job's readings a correction replaces. */
export function target(draft: Draft, context: Context): Target {
  const fitting = context.readings.filter((reading) => matches(draft, reading));
  const labelled =
    draft.points !== undefined ||
    draft.place !== undefined ||
    draft.subject !== undefined ||
    draft.named !== undefined;
  if (!labelled) return bareTarget(draft, firstOfFigures(fitting), context);
  const last = fitting[fitting.length - 1];
  const quantities = new Set(fitting.map((reading) => reading.quantity));
  if (quantities.size < 2 || draft.named !== undefined || draft.unit !== undefined) return last;
  const latest = [...quantities].map((name) =>
    fitting.filter((reading) => reading.quantity === name).pop(),
  );
  const list = latest.filter((reading) => reading !== undefined);
  return mostLikely(draft, list, context.units) ?? clearlyNearest(draft, list, context.units);
}

/** "no, suction 122" after 62 psi and 40 F: far from both, and of them clearly nearer to one. */
function clearlyNearest(
  draft: Draft,
  list: readonly Reading[],
  units: Context["units"],
): Reading | undefined {
  const rows = list
    .map((old) => ({ old, far: distance(draft, old, units) }))
    .sort((a, b) => a.far - b.far);
  const [first, second] = rows;
  if (first === undefined || first.far >= FAR) return undefined;
  return second === undefined || second.far > first.far * 1.5 ? first.old : undefined;
}

const sorry = /^\s*(?:sorry|oops|whoops|correction|typo|my bad|my mistake|woops|apologies)\b/;
/** Of what was written, and never of what a machine should do: "head should read 353, fat fingered it". */
const slipOfHand =
  /\b(?:typos?|typoed|fat[- ]?finger(?:ed|s)?|mistyped|misread|miswrote|misspoke|transposed|autocorrect(?:ed)?|wrong key|my (?:typo|mistake))\b/;

/** "sorry, the discharge should read 304": what should have been written, not what is expected. */
export function saysSorry(plain: string): boolean {
  return sorry.test(plain) || slipOfHand.test(plain);
}
