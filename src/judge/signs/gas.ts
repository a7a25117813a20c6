import type { SignGroup } from "../sign.ts";

const ours = "common practice, no source";
const group = (name: string, background: Readonly<Record<string, number>>): SignGroup => ({
  group: name,
  background,
  source: ours,
});

/** What the refrigerant and air side tests show when the cause lies elsewhere. */
export const gasSigns: readonly SignGroup[] = [
  group("superheat", { none: 0.05, low: 0.06, usual: 0.79, high: 0.1 }),
  group("subcooling", { none: 0.08, usual: 0.82, high: 0.1 }),
  group("suction", { low: 0.12, usual: 0.78, high: 0.1 }),
  group("head", { low: 0.1, usual: 0.78, high: 0.12 }),
  group("ratio", { low: 0.03, usual: 0.93, high: 0.04 }),
  group("discharge", { hot: 0.05, usual: 0.92, wet: 0.03 }),
  group("at_rest", { above: 0.03, matches: 0.94, below: 0.03 }),
  group("physics", { contradicts: 0.04, agrees: 0.96 }),
  group("line_drop", { drop: 0.03, none: 0.97 }),
  group("reversing", { picks_up: 0.02, none: 0.98 }),
  group("valve_answer", { stays_shut: 0.02, stays_open: 0.02, answers: 0.96 }),
  group("bulb", { off: 0.01, seated: 0.99 }),
  group("branch", { stuck: 0.01, follows: 0.99 }),
  group("split", { low: 0.12, usual: 0.8, high: 0.08 }),
  group("static", { high: 0.12, usual: 0.88 }),
  group("evacuation", { tight: 0.84, leak: 0.06, wet: 0.05, rising: 0.05 }),
  group("hold", { drops: 0.06, holds: 0.94 }),
  group("leak_rate", { over: 0.2, under: 0.8 }),
  group("weighed", { short: 0.06, right: 0.9, over: 0.04 }),
  group("test_charge", { short: 0.06, right: 0.88, over: 0.06 }),
  group("pump_down", { fails: 0.02, holds: 0.98 }),
  group("unloads", { at_once: 0.02, slowly: 0.98 }),
  group("opened", { no_vacuum: 0.02, evacuated: 0.98 }),
  group("wrong_gas", { said: 0.005, unsaid: 0.995 }),
  group("defrosting", { fails: 0.02, works: 0.98 }),
];
