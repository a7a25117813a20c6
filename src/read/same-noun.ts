import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

const any = /^(?:numbers?|readings?|reads|figures?|values?|results?)$/;

/** What the noun behind "same" is a measurement of. */
const measured: ReadonlyMap<string, RegExp> = new Map([
  ...["amps", "amp", "amperage", "current", "draw"].map((noun) => [noun, /^current$/] as const),
  ...["volts", "voltage", "voltages"].map((noun) => [noun, /^voltage$/] as const),
  ...["pressures", "pressure", "psi"].map((noun) => [noun, /^pressure$/] as const),
  ...["temps", "temp", "temperatures"].map((noun) => [noun, /^temperature$/] as const),
  ...["ohms", "resistance", "windings"].map((noun) => [noun, /resistance$/] as const),
  ...["megs", "meg", "megohms"].map((noun) => [noun, /^insulation_resistance$/] as const),
]);

/** The readings of the machine or the points that were told last. */
function lastRow({ readings }: Context): readonly Reading[] {
  const last = readings.at(-1);
  return readings.filter(({ subject }) => subject === last?.subject);
}

/** Is nothing but that told of the last, here or before? */
function alone(items: readonly Item[], at: number, of: RegExp, context: Context): boolean {
  const told = items.slice(0, at).findLast(({ kind }) => kind === itemKind.number);
  if (told !== undefined) return told.unit === undefined || of.test(told.unit.dimension);
  return lastRow(context).every(({ quantity }) => of.test(quantity));
}

/**
 * "same numbers on 2", "same amps on 2 and 3": what is the same may be named, and the number behind it is the
 * next of the row, not so many amps.
 */
export function sameNoun(items: Item[], context: Context): void {
  for (let at = items.length - 3; at >= 0; at--) {
    const [same, noun, on, next] = items.slice(at, at + 4);
    if (same === undefined || noun === undefined || (same.roles & role.same) === 0) continue;
    if (!/^(?:on|for|at)$/.test(on?.text ?? "") || next === undefined) continue;
    const digit = next.kind === itemKind.number && /^[1-9]$|^one$|^two$|^three$/.test(next.text);
    if (!(digit && next.unit === undefined) && next.kind !== itemKind.subject) continue;
    const of = measured.get(noun.text);
    if (of === undefined && !any.test(noun.text)) continue;
    if (of === undefined || alone(items, at, of, context)) {
      same.to = noun.to;
      items.splice(at + 1, 1);
    } else {
      noun.kind = itemKind.word;
      noun.unit = undefined;
      noun.label = undefined;
    }
  }
}
