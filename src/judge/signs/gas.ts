import type { SignGroup } from "../sign.ts";

const ours = "common practice, no source";
const group = (name: string, background: Readonly<Record<string, number>>): SignGroup => ({
  group: name,
  background,
  source: ours,
});

/** What the refrigerant and air side tests show when the cause lies elsewhere. */
export const gasSigns: readonly SignGroup[] = [
  group("superheat", { none: 0.03, low: 0.05, usual: 0.86, high: 0.06 }),
  group("subcooling", { none: 0.05, low: 0.07, usual: 0.82, high: 0.06 }),
  group("suction", { low: 0.07, usual: 0.87, high: 0.06 }),
  group("head", { low: 0.07, usual: 0.87, high: 0.06 }),
  group("ratio", { flat: 0.008, low: 0.02, usual: 0.945, high: 0.027 }),
  group("discharge", { hot: 0.04, usual: 0.93, wet: 0.03 }),
  group("at_rest", { above: 0.02, matches: 0.96, below: 0.02 }),
  group("physics", { contradicts: 0.04, agrees: 0.96 }),
  group("line_drop", { drop: 0.02, none: 0.98 }),
  group("reversing", { picks_up: 0.015, none: 0.985 }),
  group("valve_answer", { stays_shut: 0.015, stays_open: 0.015, answers: 0.97 }),
  group("bulb", { off: 0.008, seated: 0.992 }),
  group("branch", { stuck: 0.008, follows: 0.992 }),
  group("split", { low: 0.08, usual: 0.85, high: 0.07 }),
  group("static", { high: 0.08, usual: 0.92 }),
  group("evacuation", { tight: 0.93, leak: 0.02, wet: 0.015, rising: 0.035 }),
  group("hold", { drops: 0.025, holds: 0.975 }),
  group("leak_rate", { over: 0.03, under: 0.97 }),
  group("added", { again: 0.02, once: 0.98 }),
  group("openings", { wide: 0.05, usual: 0.9, narrow: 0.05 }),
  group("weighed", { short: 0.04, right: 0.93, over: 0.03 }),
  group("test_charge", { short: 0.04, right: 0.92, over: 0.04 }),
  group("pump_down", { fails: 0.015, holds: 0.985 }),
  group("unloads", { at_once: 0.015, slowly: 0.985 }),
  group("column", { wrong: 0.01, right: 0.99 }),
  group("opened", { no_vacuum: 0.02, evacuated: 0.98 }),
  group("wrong_gas", { said: 0.002, unsaid: 0.998 }),
  group("defrosting", { fails: 0.02, works: 0.98 }),
];
