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
  readonly kinds: readonly number[];
  /** the same by quantity, wherever measured */
  readonly quantities: ReadonlyMap<Named, number>;
}

/** The table's rows: where in `bytes` the weights of a trait begin. */
interface Rows {
  readonly bytes: Uint8Array;
  readonly at: ReadonlyMap<number, number>;
}

let unpacked: Rows | undefined;

/** Unpacked at the first use: four bytes of trait, one of how many, then pairs of kind and weight. */
function table(): Rows {
  if (unpacked !== undefined) return unpacked;
  const bytes = Uint8Array.from(atob(rows), (letter) => letter.charCodeAt(0));
  const view = new DataView(bytes.buffer);
  const at = new Map<number, number>();
  for (let i = 0; i + 5 <= bytes.length; i += 5 + 2 * (bytes[i + 4] ?? 0))
    at.set(view.getInt32(i, true), i + 4);
  unpacked = { bytes, at };
  return unpacked;
}

/** The odds of the number at `at`, where the number before it is of the kind `before`. */
export function oddsOf(looked: Looked, at: number, before: string): Odds {
  const { bytes, at: starts } = table();
  const sums = new Array<number>(kinds.length).fill(0);
  for (const trait of traits(looked, at, before)) {
    const start = starts.get(trait);
    if (start === undefined) continue;
    const end = start + 1 + 2 * (bytes[start] ?? 0);
    for (let i = start + 1; i < end; i += 2) {
      const kind = bytes[i] ?? 0;
      sums[kind] = (sums[kind] ?? 0) + (((bytes[i + 1] ?? 0) << 24) >> 24) / SCALE;
    }
  }
  const top = Math.max(...sums);
  const powers = sums.map((sum) => Math.exp(sum - top));
  const whole = powers.reduce((total, power) => total + power, 0);
  const odds = powers.map((power) => power / whole);
  const quantities = new Map<Named, number>();
  kinds.forEach(({ quantity }, i) => {
    quantities.set(quantity, (quantities.get(quantity) ?? 0) + (odds[i] ?? 0));
  });
  return { kinds: odds, quantities };
}

/** What a number can be: a quantity, "none" for no measurement, "ask" for what must be asked about. */
export type Named = QuantityName | "none" | "ask";

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

/** The likeliest of all kinds. */
export function likeliestKind(odds: Odds): string {
  return names[odds.kinds.indexOf(Math.max(...odds.kinds))] ?? "none";
}

/** How likely a quantity is, wherever measured. */
export function likelihood({ quantities }: Odds, quantity: Named): number {
  return quantities.get(quantity) ?? 0;
}

/** The likeliest quantity, wherever measured, and how likely it is. */
export function likeliest({ quantities }: Odds): readonly [Named, number] {
  let best: readonly [Named, number] = ["none", 0];
  for (const one of quantities) if (one[1] > best[1]) best = one;
  return best;
}

/** Where a quantity is likeliest measured, and how likely that is: nowhere in particular counts too. */
export function likeliestPlace(odds: Odds, quantity: Named): readonly [Place | undefined, number] {
  let best: readonly [Place | undefined, number] = [undefined, 0];
  kinds.forEach((kind, i) => {
    const odd = odds.kinds[i] ?? 0;
    if (kind.quantity === quantity && odd > best[1]) best = [kind.place, odd];
  });
  return best;
}

/** How likely exactly this quantity at this place is. */
export function likelihoodAt(odds: Odds, quantity: Named, place: Place | undefined): number {
  const at = names.indexOf(kindName(quantity, place));
  return odds.kinds[at] ?? 0;
}
