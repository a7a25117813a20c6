import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { type UnitSaid, unitAt } from "./units.ts";
import { role } from "./word.ts";

/** "head is 293 amps are 22.1": past what leads to the next number. */
function behindVerb({ tokens }: Building, from: number): number {
  let at = from;
  while (((tokens[at]?.word?.roles ?? 0) & role.is) !== 0) at++;
  return at;
}

/** "118 over 340 amps are 14.2": the verb behind it makes the unit the name of what follows. */
export function areNext(build: Building, i: number, { unit, end }: UnitSaid): boolean {
  // "meg readings at a thousand volts are eleven hundred"
  if (/^(?:at|@)$/.test(build.tokens[i - 1]?.text ?? "")) return false;
  if (!/^(?:current|voltage|resistance)$/.test(unit.dimension)) return false;
  if (build.tokens[end]?.text !== "are") return false;
  return numberAt(build.tokens, end + 1) !== undefined;
}

/**
 * Behind a unit that may lead: "heater 14.6 A 209 V" has a unit of its own with the next number,
 * in "pf .81 kW 14.2 kVA 17.5" each leads one, so the last number has none behind it.
 */
export function unitsLead(build: Building, from: number): boolean {
  for (let at = behindVerb(build, from); ; ) {
    const next = numberAt(build.tokens, at);
    if (next === undefined) return false;
    const unit = unitAt(build, next.end);
    if (unit === undefined) return true;
    if (build.tokens[next.end]?.glued === true) return false;
    at = behindVerb(build, unit.end);
  }
}
