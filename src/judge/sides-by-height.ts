import type { CaseNote, Reading } from "../model.ts";
import { standardAtmospherePa } from "../physics/constants.ts";
import { refrigerantNamed } from "../physics/refrigerant.ts";
import { saturationCel } from "../physics/saturation-temperature.ts";
import type { Place } from "../vocabulary.ts";
import { liftShare, probesK } from "./bands.ts";
import { comparesBoard } from "./board-words.ts";
import { nitrogenNotes, restsIn } from "./rest.ts";

/** Letters between a pressure and the line's temperature that goes with it. */
const apart = 22;
/** What may stand between them: marks, units and small words. */
const joining =
  /^[\s,/&@+-]*(?:(?:psi|psig|bar|and|at|with|line|liquid|pipe|the|there|on|is|condenser|coil|case|rack|header|evap|out|outlet)[\s,/&@+-]*)*$/i;
const ofAir = /^\s{0,2}(?:(?:f|c|deg(?:rees?)?)\s+)?(?:out|air|ambient|return|supply|box|amb)\b/i;
const otherFluid = /\b(?:oil|water|glycol|gas|manifold|tank|cylinder|cut\W?(?:in|out)|switch)\W*$/i;

/**
 * The notes, with running pressures that nobody named at the side that their height tells: the
 * lower of two is the suction's ("124 psig 50 F, 350 psig 96 F"), one beside a liquid line is the
 * high side's where liquid can be that warm there. Their lines' temperatures go with them.
 */
export function sidesByHeight(
  notes: readonly CaseNote[],
  refrigerant: string | undefined,
): readonly CaseNote[] {
  const open = notes.flatMap(openIn);
  if (open.length === 0) return notes;
  const filled = nitrogenNotes(notes);
  const of = notes.map((note) =>
    filled.has(note) || comparesBoard(note.text ?? "")
      ? []
      : linesOf(note).filter((one) => isRunningPressure(one, note)),
  );
  const all = of.flat();
  if (new Set(all.map((one) => one.subject ?? "")).size > 1) return notes;
  const found = new Map<Reading, Place>();
  notes.forEach((note, at) => {
    const here = of[at] ?? [];
    for (const one of here.filter((each) => open.includes(each))) {
      const side = sideAmong(one, here) ?? sideAmong(one, all) ?? byLine(one, note, refrigerant);
      if (side !== undefined) place({ one, side, note }, found);
    }
  });
  return found.size === 0 ? notes : notes.map((note) => withPlaces(note, found));
}

/** Pressures of a note without a place, or with one that they can't have. */
function openIn(note: CaseNote): Reading[] {
  const pressures = note.readings.filter((one) => one.quantity === "pressure");
  return pressures.filter((one) => one.at === undefined || isCaught(one, pressures));
}

type Side = "low" | "high";

/** The liquid line's place, caught from the words before it: a far lower pressure than the other there. */
function isCaught(one: Reading, all: readonly Reading[]): boolean {
  if (one.at !== "liquid" || /liquid|head|high/i.test(one.said)) return false;
  return all.some(
    (other) => other.at !== "suction" && absolutePa(other) >= liftShare * absolutePa(one),
  );
}

function isRunningPressure(one: Reading, note: CaseNote): boolean {
  if (one.quantity !== "pressure" || typeof one.value !== "number") return false;
  if (one.rating !== undefined || one.earlier === true || one.doubtful === true) return false;
  if (restsIn(note, one) || one.after_s !== undefined) return false;
  const before = (note.text ?? "").slice(0, from(one)).trimEnd();
  return !otherFluid.test(before) && !notAsItRuns.test(before.slice(-beforeLetters));
}

/** Letters before a pressure that may say that it is none of the running machine. */
const beforeLetters = 60;
/** While it is pumped down, or what a board believes. */
const notAsItRuns =
  /pump\w* (?:it |her |right )?down|stall\w*|\b(?:king|receiver)\b|closed off|front.?seat|\b(?:board|controller|display|transducer|screen)\b.{0,8}\b(?:says|reads|shows|thinks|sees)\b[^,;.]*$/i;

/** Its side against another pressure that is far enough off. */
function sideAmong(one: Reading, others: readonly Reading[]): Side | undefined {
  const own = absolutePa(one);
  for (const other of others) {
    const pa = absolutePa(other);
    if (other === one) continue;
    if (own >= liftShare * pa && !isHigh(other)) return "high";
    if (pa >= liftShare * own && other.at !== "suction") return "low";
  }
  return undefined;
}

function isHigh(one: Reading): boolean {
  return one.at === "liquid" || one.at === "discharge";
}

/**
 * Beside a liquid line: the high side where that liquid can stand under this pressure. Beside a line as cold
 * as no discharge is, and no colder than its gas boils at this pressure: the suction ("33 psi at the case
 * and 12 F on the line").
 */
function byLine(one: Reading, note: CaseNote, name: string | undefined): Side | undefined {
  const line = lineOf(one, note);
  const refrigerant = name === undefined ? undefined : refrigerantNamed(name);
  if (refrigerant === undefined || typeof line?.value !== "number") return undefined;
  if (line.at === "liquid") {
    const bubbleCel = saturationCel(refrigerant, "bubble", absolutePa(one));
    return bubbleCel !== undefined && bubbleCel > line.value - probesK ? "high" : undefined;
  }
  if (line.at !== undefined || line.value > coldestHotGasCel) return undefined;
  if (!/\b(?:line|pipe)\b/i.test(line.said)) return undefined;
  const dewCel = saturationCel(refrigerant, "dew", absolutePa(one));
  return dewCel !== undefined && dewCel <= line.value + probesK ? "low" : undefined;
}

/** Cel, 60 F: no line that holds hot gas is as cold where a machine runs. Common practice, no source. */
const coldestHotGasCel = 15.6;

interface Found {
  readonly one: Reading;
  readonly side: Side;
  readonly note: CaseNote;
}

function place({ one, side, note }: Found, found: Map<Reading, Place>): void {
  const line = lineOf(one, note);
  const caught = one.at === "liquid" && !/liquid/i.test(line?.said ?? "liquid");
  const isLiquid = line !== undefined && (line.at === "liquid" || line.at === "condenser_out");
  const placeless = line !== undefined && (line.at === undefined || caught);
  if (side === "low") {
    found.set(one, "suction");
    if (placeless) found.set(line, "suction");
    return;
  }
  const hasLiquid = note.readings.some(
    (each) => each.quantity === "temperature" && each.at === "liquid",
  );
  found.set(one, isLiquid || placeless || hasLiquid ? "liquid" : "discharge");
  if (placeless) found.set(line, "liquid");
}

/** The temperature said in one breath with a pressure, behind it or before it. */
function lineOf(one: Reading, note: CaseNote): Reading | undefined {
  const lines = linesOf(note);
  const at = lines.indexOf(one);
  return [lines[at + 1], lines[at - 1]].find(
    (other) =>
      other !== undefined && other.quantity === "temperature" && isJoined(one, other, note),
  );
}

function isJoined(one: Reading, line: Reading, note: CaseNote): boolean {
  const text = note.text ?? "";
  const [first, second] = from(one) < from(line) ? [one, line] : [line, one];
  const gap = text.slice(to(first), from(second));
  return (
    gap.length <= apart && joining.test(gap) && !ofAir.test(text.slice(to(line), to(line) + 12))
  );
}

function withPlaces(note: CaseNote, found: ReadonlyMap<Reading, Place>): CaseNote {
  if (!note.readings.some((one) => found.has(one))) return note;
  const readings = note.readings.map((one) => {
    const at = found.get(one);
    return at === undefined ? one : { ...one, at };
  });
  return { ...note, readings };
}

/** Pressures and temperatures in the order of the words. */
function linesOf(note: CaseNote): Reading[] {
  return note.readings
    .filter((one) => one.quantity === "pressure" || one.quantity === "temperature")
    .sort((a, b) => from(a) - from(b));
}

/** Near enough for telling sides apart: at sea level. */
function absolutePa(one: Reading): number {
  const pa = typeof one.value === "number" ? one.value : 0;
  return one.reference === "absolute" ? pa : pa + standardAtmospherePa;
}

function from(one: Reading): number {
  return one.spans[0]?.[0] ?? 0;
}

function to(one: Reading): number {
  return one.spans.at(-1)?.[1] ?? 0;
}
