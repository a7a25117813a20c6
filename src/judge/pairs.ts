import type { CaseNote, Reading } from "../model.ts";
import type { Place } from "../vocabulary.ts";
import { liftShare } from "./bands.ts";
import { airPlaces, placeBeside } from "./said-places.ts";

/** Letters between two numbers that are said as a pair. */
const apart = 18;
/** What may stand between them: marks, units and small words. */
const joining =
  /^[\s,/&@+-]*(?:(?:psi|psig|bar|f|c|deg|degrees?|and|at|with|line|the|on|is|pipe|temp)[\s,/&@+-]*)*$/i;

const places: readonly (Place | undefined)[] = ["suction", "liquid"];

/** What may get a place from what is said beside it. */
const placed: ReadonlySet<string> = new Set(["pressure", "temperature", "wet_bulb_temperature"]);

/**
 * The note, with a pressure and a temperature that were said as a pair ("131 psi, 57 F suction",
 * "suction 125/54") both at the place that one of them names.
 */
export function pairPlaces(whole: CaseNote): CaseNote {
  if (!whole.readings.some(({ quantity }) => placed.has(quantity))) return whole;
  const note = whole.readings.some(isPressureInAir) ? withoutAirPlaces(whole) : whole;
  const places = placesOf(note);
  if (places.size === 0) return note;
  const readings = note.readings.map((one) => {
    const at = places.get(one);
    return at === undefined ? one : { ...one, at };
  });
  return { ...note, readings };
}

const airy: readonly (Place | undefined)[] = [
  "outdoor_air",
  "indoor_air",
  "return_air",
  "supply_air",
  "shell",
  "box",
];

/** A refrigerant's pressure at the air or the shell: words before it gave it a place that it can't have. */
function isPressureInAir(one: Reading): boolean {
  return one.quantity === "pressure" && airy.includes(one.at);
}

function withoutAirPlaces(note: CaseNote): CaseNote {
  const readings = note.readings.map((one) => {
    if (!isPressureInAir(one)) return one;
    const { at: _air, ...rest } = one;
    if (/head|discharge|high/i.test(one.said)) return { ...rest, at: "discharge" as const };
    if (/\bliquid\b/i.test(one.said)) return { ...rest, at: "liquid" as const };
    return /suction|low side/i.test(one.said) ? { ...rest, at: "suction" as const } : rest;
  });
  return { ...note, readings };
}

function placesOf(note: CaseNote): Map<Reading, Place> {
  const found = airPlaces(note);
  for (const one of note.readings) {
    const at = found.get(one) ?? placeBeside(one, note);
    if (at !== undefined) found.set(one, at);
  }
  const inOrder = note.readings
    .filter((one) => one.quantity === "pressure" || one.quantity === "temperature")
    .sort((a, b) => from(a) - from(b));
  for (const [one, at] of unnamedPairs(inOrder, note)) found.set(one, at);
  let taken = -1;
  inOrder.forEach((one, index) => {
    const next = inOrder[index + 1];
    if (next === undefined || taken === index || !areJoined(one, next, note)) return;
    const [placeless, named] = one.at === undefined ? [one, next] : [next, one];
    if (named.at === undefined || found.has(placeless) || hasPartner(named, placeless, inOrder))
      return;
    found.set(placeless, named.at);
    taken = index + 1;
  });
  return found;
}

/**
 * "128 psig / 53 F, 340 psig / 94 F liquid": a pressure and a line without a place, where the note's
 * other pair stands on the high side at a higher pressure, are the suction's.
 */
function unnamedPairs(inOrder: readonly Reading[], note: CaseNote): [Reading, Place][] {
  const atCoil = besideCoil(inOrder, note);
  if (atCoil !== undefined) return [[atCoil, "suction"]];
  const high = inOrder.find(
    (one) => one.quantity === "pressure" && (one.at === "liquid" || one.at === "discharge"),
  );
  const hasSuction = inOrder.some((one) => one.at === "suction");
  const low = inOrder.find((one) => one.quantity === "pressure" && one.at === undefined);
  if (high === undefined || low === undefined || hasSuction) return [];
  if (Number(high.value) < liftShare * Number(low.value)) return [];
  const line = inOrder[inOrder.indexOf(low) + 1];
  const pair: [Reading, Place][] = [[low, "suction"]];
  if (line === undefined || line.quantity !== "temperature" || line.at !== undefined) return pair;
  const gap = (note.text ?? "").slice(to(low), from(line));
  return gap.length <= apart && joining.test(gap) ? [...pair, [line, "suction"]] : pair;
}

/** "7 psig, coil outlet 40 F": the pressure that goes with the coil's outlet. */
function besideCoil(inOrder: readonly Reading[], note: CaseNote): Reading | undefined {
  if (inOrder.some((one) => one.quantity === "pressure" && one.at === "suction")) return undefined;
  return inOrder.find((one, index) => {
    const next = inOrder[index + 1];
    if (one.quantity !== "pressure" || one.at !== undefined || next?.at !== "evaporator_out")
      return false;
    return /^[\s,/&-]*(?:at the (?:case|coil|evap\w*|box|rack))?[\s,/&-]*$/.test(
      (note.text ?? "").slice(to(one), from(next)),
    );
  });
}

/** "120/52 F, 450 psi": the line in the middle has its pressure already. */
function hasPartner(named: Reading, placeless: Reading, all: readonly Reading[]): boolean {
  return all.some((one) => one.quantity === placeless.quantity && one.at === named.at);
}

function areJoined(first: Reading, second: Reading, note: CaseNote): boolean {
  if (first.quantity === second.quantity) return false;
  if ((first.at === undefined) === (second.at === undefined)) return false;
  const named = first.at === undefined ? second : first;
  if (!places.includes(named.at)) return false;
  const gap = (note.text ?? "").slice(to(first), from(second));
  if (gap.length > apart || !joining.test(gap)) return false;
  return (
    faces(first, second, gap) &&
    !/^\s{0,2}(?:(?:f|c|deg(?:rees?)?)\s+)?(?:out|air|ambient|return|supply|box)/i.test(
      rest(second, note),
    )
  );
}

/** "57 F suction" belongs with what stands before it, "suction 57 F" with what follows. */
function faces(first: Reading, second: Reading, gap: string): boolean {
  if (first.at === undefined) return /^[\d.(-]/.test(second.said);
  return /\bline\b/i.test(gap) || /[\d.]\s*(?:psi|psig|bar|f|c)?$/i.test(first.said);
}

function rest(reading: Reading, note: CaseNote): string {
  return (note.text ?? "").slice(to(reading), to(reading) + 12);
}

function from(reading: Reading): number {
  return reading.spans[0]?.[0] ?? 0;
}

function to(reading: Reading): number {
  return reading.spans.at(-1)?.[1] ?? 0;
}
