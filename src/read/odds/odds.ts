import type { QuantityName } from "../../quantities/list.ts";
import type { Place } from "../../vocabulary.ts";
import { kinds, rows, SCALE } from "./table.ts";
import { type Looked, traits } from "./traits.ts";

/**
 * How likely each kind of thing is for a number in its note, from 0 to 1, in the order of `kinds`;
 * together 1. A kind is a quantity with its place where it has one ("pressure@suction"), "none" for
 * what is no measurement, "ask" for what the technician must be asked about.
 */
export interface Odds {
  readonly kinds: Float64Array;
  /** the same by quantity, wherever measured, in the order of `quantities` */
  readonly quantities: Float64Array;
}

/** What a number can be: a quantity, "none" for no measurement, "ask" for what must be asked about. */
export type Named = QuantityName | "none" | "ask";

/** The quantities of the table, each once. */
const quantities: readonly Named[] = [...new Set(kinds.map(({ quantity }) => quantity))];
/** Where in `quantities` each of the table's kinds stands. */
const quantityAt = Uint8Array.from(kinds, ({ quantity }) => quantities.indexOf(quantity));

/** The table's rows, found by their trait: a trait looks in its slot first, then in those behind it. */
interface Rows {
  readonly bytes: Uint8Array;
  readonly traits: Int32Array;
  /** where in `bytes` the weights of the slot's trait begin; 0 where the slot is free */
  readonly starts: Int32Array;
}

/** A weight for each byte that may stand for one. */
const weights = Float64Array.from({ length: 256 }, (_, byte) => ((byte << 24) >> 24) / SCALE);

let unpacked: Rows | undefined;

/** Unpacked at the first use: four bytes of trait, one of how many, then pairs of kind and weight. */
function table(): Rows {
  if (unpacked !== undefined) return unpacked;
  const bytes = new Uint8Array(Buffer.from(rows, "base64"));
  const view = new DataView(bytes.buffer);
  const begins: number[] = [];
  for (let i = 0; i + 5 <= bytes.length; i += 5 + 2 * (bytes[i + 4] ?? 0)) begins.push(i);
  // at most half of the slots are taken, so that a look-up mostly ends at its first
  const slots = 2 ** Math.ceil(Math.log2(2 * begins.length));
  const traits = new Int32Array(slots);
  const starts = new Int32Array(slots);
  for (const begin of begins) {
    const trait = view.getInt32(begin, true);
    let slot = trait & (slots - 1);
    while (starts[slot] !== 0) slot = (slot + 1) & (slots - 1);
    traits[slot] = trait;
    starts[slot] = begin + 4;
  }
  unpacked = { bytes, traits, starts };
  return unpacked;
}

/** Adds the weights of a trait to the sums of the kinds, if the table has it. */
function addWeights(sums: Float64Array, trait: number, rows: Rows): void {
  const { bytes, traits, starts } = rows;
  const last = starts.length - 1;
  let slot = trait & last;
  let start = starts[slot] ?? 0;
  while (start !== 0 && traits[slot] !== trait) {
    slot = (slot + 1) & last;
    start = starts[slot] ?? 0;
  }
  if (start === 0) return;
  const end = start + 1 + 2 * (bytes[start] ?? 0);
  for (let i = start + 1; i < end; i += 2) {
    const kind = bytes[i] ?? 0;
    sums[kind] = (sums[kind] ?? 0) + (weights[bytes[i + 1] ?? 0] ?? 0);
  }
}

/** Of a number that nobody asks about. */
export const noOdds: Odds = { kinds: new Float64Array(), quantities: new Float64Array() };

/** The odds of the number at `at`, where the number before it is of the kind `before`. */
export function oddsOf(looked: Looked, at: number, before: string): Odds {
  const rows = table();
  const odds = new Float64Array(kinds.length);
  for (const trait of traits(looked, at, before)) addWeights(odds, trait, rows);
  let top = Number.NEGATIVE_INFINITY;
  for (const sum of odds) if (sum > top) top = sum;
  let whole = 0;
  for (let i = 0; i < odds.length; i++) {
    const power = Math.exp((odds[i] ?? 0) - top);
    odds[i] = power;
    whole += power;
  }
  const byQuantity = new Float64Array(quantities.length);
  for (let i = 0; i < odds.length; i++) {
    const odd = (odds[i] ?? 0) / whole;
    odds[i] = odd;
    const quantity = quantityAt[i] ?? 0;
    byQuantity[quantity] = (byQuantity[quantity] ?? 0) + odd;
  }
  return { kinds: odds, quantities: byQuantity };
}

/** How many numbers of a quantity the labelled notes held. */
const seenOf = new Map<Named, number>();
for (const { quantity, seen } of kinds) seenOf.set(quantity, (seenOf.get(quantity) ?? 0) + seen);

/** Has a quantity been seen often enough that its odds say something? */
export function isKnown(quantity: Named): boolean {
  return (seenOf.get(quantity) ?? 0) >= 25;
}

/** Is it learnt with the place where it was measured? */
export function isPlaced(quantity: Named | undefined): boolean {
  return quantity === "pressure" || quantity === "temperature";
}

/** A quantity with its place as one word, as the table's kinds are called. */
export function kindName(quantity: Named | undefined, place: Place | undefined): string {
  if (quantity === undefined) return "ask";
  return isPlaced(quantity) && place !== undefined ? `${quantity}@${place}` : quantity;
}

const names = kinds.map(({ quantity, place }) => kindName(quantity, place));

/** Where the greatest stands, the first of several that are equal. */
function greatest(odds: Float64Array): number {
  let best = 0;
  for (let i = 1; i < odds.length; i++) if ((odds[i] ?? 0) > (odds[best] ?? 0)) best = i;
  return best;
}

/** The likeliest of all kinds. */
export function likeliestKind(odds: Odds): string {
  return names[greatest(odds.kinds)] ?? "none";
}

/** How likely a quantity is, wherever measured. */
export function likelihood(odds: Odds, quantity: Named): number {
  return odds.quantities[quantities.indexOf(quantity)] ?? 0;
}

/** The likeliest quantity, wherever measured, and how likely it is. */
export function likeliest(odds: Odds): readonly [Named, number] {
  const best = greatest(odds.quantities);
  return [quantities[best] ?? "none", odds.quantities[best] ?? 0];
}

/** Where a quantity is likeliest measured, and how likely that is: nowhere in particular counts too. */
export function likeliestPlace(odds: Odds, quantity: Named): readonly [Place | undefined, number] {
  let best: readonly [Place | undefined, number] = [undefined, 0];
  for (const [i, kind] of kinds.entries()) {
    const odd = odds.kinds[i] ?? 0;
    if (kind.quantity === quantity && odd > best[1]) best = [kind.place, odd];
  }
  return best;
}

/** How likely exactly this quantity at this place is. */
export function likelihoodAt(odds: Odds, quantity: Named, place: Place | undefined): number {
  return odds.kinds[names.indexOf(kindName(quantity, place))] ?? 0;
}
