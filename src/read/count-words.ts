import { endsClause, isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { partsCounted } from "./parts-counted.ts";
import { role } from "./word.ts";

export const counts: Readonly<Record<string, number>> = {
  both: 2,
  two: 2,
  "2": 2,
  three: 3,
  "3": 3,
  four: 4,
  "4": 4,
  six: 6,
  "6": 6,
  five: 5,
  "5": 5,
};

const rooms =
  /^(?:rooms|bedrooms|bathrooms|restrooms|classrooms|apartments|apts|suites|offices|shops|kids|tenants|guys|neighbors)$/;

function countWord(items: readonly Item[], i: number, plain: string): number {
  const item = items[i];
  // "335 with both": what ran while it was read
  if (/^(?:with|w)$/.test(items[i - 1]?.text ?? "")) return 0;
  if (item?.text === "x3" || item?.text === "x2") return item.text === "x3" ? 3 : 2;
  if (ofEachLeg(items, i, plain)) return 3;
  // "600 meg each to ground": a motor's three ends
  const next = items[i + 1];
  const each = item?.text === "each" && next !== undefined;
  if (each && /^to (?:ground|gnd|earth)/.test(plain.slice(next.from))) return 3;
  // "over 550 on the other two"
  if (item?.text === "other" && next?.owner === COUNTED) return counts[next.text] ?? 0;
  if (item?.text === "others") return restOfThree(items, i);
  if (item === undefined || (item.roles & role.all) === 0) return 0;
  if (
    /^(?:sides|ways|gauges|directions|times|zones|floors|heads|units)$/.test(
      items[i + 1]?.text ?? "",
    )
  )
    return 0;
  // "both back bedrooms are hot": so many rooms
  if (items.slice(i + 1, i + 4).some(({ text }) => rooms.test(text))) return 0;
  if (howItRan(items, i)) return 0;
  for (const word of plain.slice(item.from, item.to).split(" ")) {
    const count = counts[word];
    if (count !== undefined) return count;
  }
  // "403 V between all phases": one phrase
  if (/^(?:all|every) (?:legs|phases|leads)$/.test(plain.slice(item.from, item.to))) return 3;
  if (/^all (?:the way )?a?round$/.test(plain.slice(item.from, item.to))) return 3;
  const noun = next?.text ?? "";
  return /^(?:legs|phases|leads|pairs|lines)$/.test(noun) || item.text === "across" ? 3 : 0;
}

/** "V to W OL, others .6": of three windings those that were not named; 0 where none was. */
function restOfThree(items: readonly Item[], i: number): number {
  const named = items.slice(0, i).filter(({ points }) => points?.length === 1);
  const pair = (points: Item["points"]): boolean =>
    points?.[0]?.length === 2 && !points[0].some((point) => /^(?:DC|ground)/.test(point));
  if (!named.every(({ points }) => pair(points))) return 0;
  return named.length === 1 || named.length === 2 ? 3 - named.length : 0;
}

/** "each lead", "every leg", "per phase": a machine of three. */
function ofEachLeg(items: readonly Item[], i: number, plain: string): boolean {
  const [item, next] = [items[i], items[i + 1]];
  if (item === undefined || !/^(?:each|every|per)$/.test(item.text)) return false;
  const said = plain.slice(item.from, next?.to ?? item.to);
  return /^(?:each|every|per) (?:lead|leg|phase)\b/.test(said);
}

/** "244 with both fans on": how it ran while it was measured, no count of readings. */
function howItRan(items: readonly Item[], i: number): boolean {
  const noun =
    /^(?:fans|pumps|compressors|comps|stages|blowers|circuits|doors|furnaces|boilers|heaters|burners|units|towers|chillers|systems|banks|strips|racks|ahus|rtus|heads|valves|dampers|hoses|panels|filters)$/;
  const state =
    /^(?:on|off|running|going|up|down|spinning|turning|open|shut|closed|in|firing|lit)$/;
  if (!noun.test(items[i + 1]?.text ?? "")) return false;
  // "62 at 2pm w/ both stages, …": with so many at work
  if (/^(?:with|w|on)$/.test(items[i - 1]?.text ?? "")) return true;
  return state.test(items[i + 2]?.text ?? "");
}

/** "both satisfied", "all good": what the count's things are, no more values. */
function isState(items: readonly Item[], i: number): boolean {
  // "both circuits good"
  const named = /^(?:circuits|ckts|compressors|comps|systems)$/.test(items[i + 1]?.text ?? "");
  const next = items[named ? i + 2 : i + 1];
  if (next === undefined || next.kind === itemKind.number || next.kind === itemKind.sign)
    return false;
  const word = /^(?:fine|ok|okay|good|normal|happy|holding|steady|running|cold|warm|satisfied)$/;
  return word.test(next.text);
}

/** "sub 8 both steady" behind a superheat: the two do not move. */
function isSteady(item: Item | undefined): boolean {
  return /^(?:holding|steady)$/.test(item?.text ?? "");
}

/** "wet bulb 63 dry bulb 75 both at the return": the two figures, each with its own name, are of one place. */
function ofTwoFigures(items: readonly Item[], i: number, draft: Draft, from: number): boolean {
  if (items[i]?.text !== "both" || from === 0 || i !== draft.index + 1) return false;
  if (!/^(?:at|on|in|off|from|by|taken)$/.test(items[i + 1]?.text ?? "")) return false;
  const names = draft.before.map((index) => items[index]);
  const named = names.some((item) => (item?.label?.quantity ?? item?.label?.place) !== undefined);
  return named && !names.some((item) => item?.plural === true);
}

/** "84 meg, all three": behind a comma the count must end the clause. */
function countEnds(items: readonly Item[], i: number): boolean {
  let at = i;
  if (items[at]?.text === "same" || items[at]?.text === "on") at++;
  if (((items[at]?.roles ?? 0) & role.all) === 0) return false;
  const next = items[at + 1];
  if (next === undefined || endsClause(next)) return true;
  if (!/^(?:leads|legs|phases|pairs)$/.test(next.text)) return false;
  // "79 out, all leads to ground OL": they have a value of their own
  const end = items.findIndex((item, to) => to > at && endsClause(item));
  const clause = items.slice(at, end < 0 ? undefined : end);
  return !clause.some(
    ({ kind, unit }) =>
      kind === itemKind.over || (kind === itemKind.number && unit?.dimension !== "voltage"),
  );
}

/** "oil 48 psi, all three to ground 420 meg": the count opens the value's own clause. */
function beginsClause(items: readonly Item[], i: number, from: number): boolean {
  const [before, item] = [items[i - 1], items[i]];
  // "1 stage 62 A, both stages 118 A": what both are is told behind it
  return i > from && before !== undefined && endsClause(before) && item?.text !== "both";
}

/** From a count to a value nothing but its noun and small words: "all three legs are at 476". */
function leadsTo(items: readonly Item[], from: number, to: number): boolean {
  if (
    /^(?:on|across)$/.test(items[from - 1]?.text ?? "") &&
    items[from - 2]?.kind === itemKind.number
  )
    return false;
  for (let i = from + 1; i < to; i++) {
    const item = items[i];
    if (item === undefined || item.owner === COUNTED) continue;
    const noun =
      /^(?:pulling|drawing|reading|sitting|showing|legs|leads|phases|pairs|lines|fans|of|them|em|sides|windings|run|start)$/.test(
        item.text,
      );
    const small = role.is | role.preposition | role.about | role.only | role.greater | role.less;
    // "both evap fans 0.9 A", "both run caps are reading 29.6"
    const part = item.label?.quantity === "capacitance" || item.label?.component === true;
    const fans = part || (item.label?.thing !== undefined && item.plural);
    if (!noun && !fans && (item.roles & small) === 0) return false;
  }
  return true;
}

/** "1.1 A each", "each 1.1 A": in the value's own clause and right beside it. */
function eachNear(items: readonly Item[], draft: Draft): boolean {
  for (const step of [-1, 1])
    for (let i = draft.index; Math.abs(i - draft.index) <= (step < 0 ? 3 : 2); i += step) {
      const item = items[i];
      // "0 V all legs, pressure test 450 psi"
      if (item === undefined || endsClause(item)) break;
      // "belts 2 ea, motor 11.2": the belts, not the amps
      if (item.owner === COUNTED) continue;
      if ((item.roles & role.each) !== 0 || item.text === "all") return true;
    }
  return false;
}

/** "four evap fans, 1.1 A each", "each 1.1 A, there's four": as many as were counted. */
function eachOf(items: readonly Item[], draft: Draft, plain: string): number {
  if (!eachNear(items, draft)) return 1;
  for (let i = draft.index - 1; i >= 0; i--) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item) || item.kind === itemKind.number) break;
    const count = countWord(items, i, plain);
    if (count > 0) return count;
  }
  const at = items.findIndex(
    (item) => item.owner === COUNTED && item.kind === itemKind.number && item.value <= 12,
  );
  const counted = items[at];
  if (counted === undefined) return 1;
  const between = items.slice(Math.min(at, draft.index) + 1, Math.max(at, draft.index));
  return between.some((item) => item.kind === itemKind.number && item.owner === undefined)
    ? 1
    : counted.value;
}

/** "9.4 amps each leg 208 volts": right behind a figure with its unit the legs are of that one. */
function perLegBehind(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  if (!/^(?:each|every|per)$/.test(items[i]?.text ?? "")) return false;
  return before?.kind === itemKind.number && before.unit !== undefined;
}

/** The rule that takes counts. */
export const COUNTED = "<number> <things>";

/** "all three", "both of them" in the value's own clause: how many readings it stands for. */
export function countOf(
  items: readonly Item[],
  draft: Draft,
  bounds: readonly [number, number],
  plain: string,
): number {
  for (let i = draft.index - 1; i >= 0; i--) {
    const item = items[i];
    if (item === undefined || endsClause(item)) break;
    // "superheat 12, both run caps are 29.6": the cut between two values may stand behind their count
    if (i < bounds[0] && item.kind === itemKind.number) break;
    const count = countWord(items, i, plain);
    const led = bounds[0] === 0 || beginsClause(items, i, bounds[0]);
    if (count > 0 && perLegBehind(items, i)) return 1;
    if (count > 0) return led || leadsTo(items, i, draft.index) ? count : 1;
  }
  for (let i = draft.index + 1; i < bounds[1]; i++) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    if (item.text === "," && item.kind === itemKind.sign && !countEnds(items, i + 1)) break;
    const count = countWord(items, i, plain);
    if (count > 0 && partsCounted(draft, plain.slice(item.to, items[i + 4]?.to))) return 1;
    // "suct 11 disch 190 all four on": a circuit has two sides
    if (count > 2 && /^(?:suction|discharge|liquid)$/.test(draft.place ?? "")) return 1;
    if (count > 0 && ofTwoFigures(items, i, draft, bounds[0])) return 1;
    // "cooler 38F freezer -8F both satisfied": how both are that were measured
    if (count > 0 && isState(items, i) && (bounds[0] > 0 || isSteady(items[i + 1]))) return 1;
    if (count > 0 && perLegBehind(items, i) && i === draft.index + 1) return count;
    if (count > 0) {
      const next = items.findIndex(
        (one, at) => at > draft.index && one.kind === itemKind.number && one.owner !== COUNTED,
      );
      // "2.1 gig all leads 31 C", "… at 500 volts": how it was measured is of none of them
      const dimension = items[next]?.unit?.dimension;
      const ohms = draft.over || draft.unit?.dimension === "resistance";
      const warmth = dimension === "temperature" || (dimension === "voltage" && ohms);
      return next > 0 && !warmth && leadsTo(items, i, next) ? 1 : count;
    }
    // "480 leg to leg all three"
    const leg = /^(?:legs?|phases?|lines?|coming|incoming)$/.test(item.text);
    if (item.kind === itemKind.word && item.roles === 0 && !leg) break;
  }
  return eachOf(items, draft, plain);
}
