import type { CaseNote, Reading } from "../model.ts";
import type { Place } from "../vocabulary.ts";
import { partWords } from "./part-words.ts";

/** Places by the words just before or after a number that has none. */
const spots: readonly (readonly [words: RegExp, at: Place])[] = [
  [/\b(?:big|large|fat|insulated|vapou?r) (?:line|pipe)\b/, "suction"],
  [/\b(?:small|little|skinny) (?:line|pipe)\b/, "liquid"],
  [/\b(?:coil|evap(?:orator)?) out(?:let)?\b|\bat the bulb\b/, "evaporator_out"],
  [/\breceiver\b|\bdrier (?:in|out)let\b|\bvalve inlet\b|\bat the (?:txv|valve)\b/, "liquid"],
];
/** Letters around a number that its place is looked for in. */
const near = 28;

/** The place of a temperature that the words beside it name; undefined where none does. */
export function placeBeside(reading: Reading, note: CaseNote): Place | undefined {
  if (reading.quantity !== "temperature" || reading.at !== undefined) return undefined;
  if (reading.rating !== undefined) return undefined;
  const { before, after } = besides(reading, note);
  return spots.find(([words]) => words.test(before) || words.test(after))?.[1];
}

function besides(reading: Reading, note: CaseNote): { before: string; after: string } {
  const text = (note.text ?? "").toLowerCase();
  const from = reading.spans[0]?.[0] ?? 0;
  const to = reading.spans.at(-1)?.[1] ?? 0;
  return {
    before:
      text
        .slice(Math.max(0, from - near), to)
        .split(/[,;]\s|\.\s/)
        .at(-1) ?? "",
    after: text.slice(from, to + near).split(/[,;]|\.\s/)[0] ?? "",
  };
}

/** "in 79 db 66 wb, out 58 db 56 wb": air into and out of the coil, where both are said. */
export function airPlaces(note: CaseNote): Map<Reading, Place> {
  const found = new Map<Reading, Place>();
  const text = (note.text ?? "").toLowerCase();
  const streams = [...text.matchAll(/\b(in|out)\b ?(?=\d)/g)].filter(
    ({ index }) => !partWords.test(text.slice(Math.max(0, index - near), index)),
  );
  const heads = new Set(streams.map((one) => one[1]));
  if (!heads.has("in") || !heads.has("out")) return chartPlaces(note, text);
  for (const one of note.readings) {
    if (one.at !== undefined || !/^(temperature|wet_bulb_temperature)$/.test(one.quantity))
      continue;
    const start = one.spans[0]?.[0] ?? 0;
    const stream = streams.findLast((each) => each.index <= start);
    if (stream !== undefined) found.set(one, stream[1] === "in" ? "return_air" : "supply_air");
  }
  return found;
}

/** "64 wb in, 84 db out": what a charging chart asks, indoor wet bulb and outdoor dry bulb. */
function chartPlaces(note: CaseNote, text: string): Map<Reading, Place> {
  const found = new Map<Reading, Place>();
  if (!/\bwb in(?:doors?|side)?\b/.test(text)) return found;
  const outdoors = /\bdb out(?:doors?|side)?\b/.exec(text);
  const dry = note.readings.filter((one) => one.quantity === "temperature" && one.at === undefined);
  const last = dry.findLast((one) => (one.spans[0]?.[0] ?? 0) < (outdoors?.index ?? 0));
  if (last !== undefined) found.set(last, "outdoor_air");
  return found;
}
