import type { Reading, Span } from "../model.ts";
import type { QuantityName } from "../quantities/list.ts";
import { isStrongBreak } from "./breaks.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";

/** A sentence of a note: its items from `from` to before `to`. */
export type Sentence = readonly [from: number, to: number];

const figures: ReadonlySet<number> = new Set([itemKind.number, itemKind.over]);

function hasFigure(items: readonly Item[], [from, to]: Sentence): boolean {
  for (let at = from; at < to; at++) if (figures.has(items[at]?.kind ?? -1)) return true;
  return false;
}

/** The sentences that hold a figure; none where the note is a single one. */
export function sentencesOf(items: readonly Item[]): readonly Sentence[] {
  const out: Sentence[] = [];
  let from = 0;
  for (let at = 0; at <= items.length; at++) {
    const item = items[at];
    if (item !== undefined && !isStrongBreak(item)) continue;
    if (at > from) out.push([from, at]);
    from = at + 1;
  }
  return out.length < 2 ? [] : out.filter((sentence) => hasFigure(items, sentence));
}

/** "drive output", then its rows: a first sentence without a figure is a heading of those behind it. */
function isHeaded(items: readonly Item[]): boolean {
  const end = items.findIndex(isStrongBreak);
  return end > 0 && !hasFigure(items, [0, end]);
}

/** Words by which a sentence speaks of another one, wherever they stand in it. */
const ofAnother =
  /^(?:sorry|oops|actually|correction|scratch|instead|meant|wait|same|ditto|likewise|others?|rest)$/;
/** At its beginning these do too. */
const goesOn =
  /^(?:no|not|nah|nope|again|it|its|it's|that|thats|that's|this|both|all|each|those|these|them|then|now|still|and|but|so)$/;

function speaksOfAnother(items: readonly Item[]): boolean {
  return (
    items.some(({ text }) => ofAnother.test(text)) ||
    items.slice(0, 2).some(({ text }) => goesOn.test(text))
  );
}

/** Is everything that the sentence holds said by its own words? */
function standsAlone({ ask, readings, items }: Note): boolean {
  return (
    ask.length === 0 &&
    readings.length > 0 &&
    readings.every((one) => one.corrects !== true) &&
    !speaksOfAnother(items)
  );
}

/** Units of one letter that are written for several quantities. */
const manyMeanings = /^(?:[gmkfcu#"'%]|in|ma)$/i;

const ohms: ReadonlySet<QuantityName> = new Set([
  "resistance",
  "winding_resistance",
  "insulation_resistance",
  "ground_resistance",
] as readonly QuantityName[]);

const flows: ReadonlySet<QuantityName> = new Set([
  "airflow",
  "water_flow",
] as readonly QuantityName[]);
/** "suct 52": without a unit its neighbours tell whether gauge or pipe */
const ofPipes: ReadonlySet<QuantityName> = new Set([
  "pressure",
  "temperature",
] as readonly QuantityName[]);

function other(alone: Reading, whole: Reading): boolean {
  if (alone.quantity === whole.quantity || whole.corrects === true) return false;
  const alike = alone.assumed.includes("unit") ? [ohms, flows, ofPipes] : [ohms, flows];
  return !alike.some((like) => like.has(alone.quantity) && like.has(whole.quantity));
}

/** What a test is made with: it is no reading, unless a place tells what else it is of. */
const madeWith: ReadonlySet<QuantityName> = new Set([
  "voltage",
  "temperature",
  "duration",
] as readonly QuantityName[]);

const within = ({ spans }: { readonly spans: readonly Span[] }, at: number): boolean =>
  spans.some(([from, to]) => at >= from && at < to);

/** Is the figure at `at` left without a meaning that it has by its sentence? */
function isLost(note: Note, alone: Reading, at: number): boolean {
  const ofTest = madeWith.has(alone.quantity) && (alone.at === undefined || alone.at === "shell");
  if (ofTest || note.readings.some((one) => one.corrects === true)) return false;
  if (note.statements.some((one) => within(one, at))) return false;
  return !note.readings.some((one) => one.quantity === alone.quantity && within(one, at));
}

/** Do later values of a test go on at its points? */
const goesOnAt = (whole: Reading): boolean =>
  whole.after_s !== undefined || whole.earlier === true || ohms.has(whole.quantity);

/** Without the place and the points that only the sentence before told, of its own figures. */
function atItsOwn(alone: Reading, whole: Reading, before: readonly Reading[]): Reading {
  if (alone.quantity !== whole.quantity || whole.corrects === true) return whole;
  const { at, points, ...rest } = whole;
  const spot = alone.at ?? (before.some((one) => one.at === at) ? undefined : at);
  const pins =
    alone.points ??
    (goesOnAt(whole) || !before.some((one) => one.points?.join() === points?.join())
      ? points
      : undefined);
  return {
    ...rest,
    ...(spot === undefined ? {} : { at: spot }),
    ...(pins === undefined ? {} : { points: pins }),
  };
}

/** The reading with the machine that the note says it is of. */
function ofMachine(alone: Reading, whole: Reading): Reading {
  return whole.subject === undefined || alone.subject !== undefined
    ? alone
    : { ...alone, subject: whole.subject };
}

/** The reading of the same figure in the whole note that is not seen yet: one figure of several points is several readings. */
function wholeOf(
  note: Note,
  alone: Reading,
  at: number,
  seen: ReadonlySet<Reading>,
): Reading | undefined {
  const ofFigure = note.readings.filter((one) => note.figureAt.get(one) === at && !seen.has(one));
  return ofFigure.find((one) => one.points?.join() === alone.points?.join()) ?? ofFigure[0];
}

/** Puts a reading where its figure stands among the others. */
function insert(note: Note, reading: Reading, at: number): void {
  const next = note.readings.findIndex((one) => (note.figureAt.get(one) ?? -1) > at);
  note.readings.splice(next < 0 ? note.readings.length : next, 0, reading);
}

/** A figure that its sentence settles is no longer asked about. */
function settle(note: Note, at: number): void {
  const asked = note.unread.findIndex(([from, to]) => at >= from && at < to);
  if (asked >= 0) note.unread.splice(asked, 1);
  if (asked < 0 || note.unread.length > 0 || note.open === undefined) return;
  note.ask.length = 0;
  note.open = undefined;
}

/** What a sentence says by its own words stands: no unit, name or test of its neighbour makes another quantity of it. */
export function bySentence(note: Note, sentence: Note): void {
  if (!standsAlone(sentence)) return;
  const headed = isHeaded(note.items);
  const seen = new Set<Reading>();
  /** figures that the whole note took for something else */
  const mended = new Set<number>();
  for (const alone of sentence.readings) {
    const at = note.figureAt.get(alone);
    if (at === undefined) continue;
    const whole = wholeOf(note, alone, at, seen);
    if (whole === undefined) {
      const more = [...seen].some((one) => note.figureAt.get(one) === at);
      if (more ? mended.has(at) : isLost(note, alone, at)) {
        insert(note, alone, at);
        settle(note, at);
      }
      continue;
    }
    const index = note.readings.indexOf(whole);
    let by = whole;
    if (other(alone, whole)) {
      if (!manyMeanings.test(alone.figure.unit)) {
        by = ofMachine(alone, whole);
        mended.add(at);
      }
    } else if (!headed && index > 0) by = atItsOwn(alone, whole, note.readings.slice(0, index));
    note.readings[index] = by;
    note.figureAt.set(by, at);
    seen.add(by);
  }
}
