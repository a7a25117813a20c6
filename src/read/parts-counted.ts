import type { Draft } from "./draft.ts";

/** Parts that have amps, volts, ohms and turns, but no pressure and no warmth of the refrigerant. */
const parts =
  /^\s*(?:[a-z]+\s+){0,3}(?:fans|blowers|belts|doors|motors|mtrs|pumps|heaters|htrs|contactors|breakers|fuses|dampers|louvers|filters|drains|pans|bearings|wheels|relays|alarms|lights)\b/;
const gauged: ReadonlySet<string> = new Set(["pressure", "temperature", "superheat", "subcooling"]);
/** "suct 48 n both evap fans turnin": how the parts are, no second suction. */
export function partsCounted(draft: Draft, behind: string): boolean {
  const { unit, named, hint, place } = draft;
  const gauge =
    unit === undefined
      ? gauged.has(named ?? hint ?? (place === "liquid" ? "temperature" : ""))
      : unit.dimension === "pressure" || unit.dimension === "temperature";
  return gauge && parts.test(behind);
}
