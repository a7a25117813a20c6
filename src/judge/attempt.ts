import { type Evidence, groupOf } from "./evidence.ts";

/** Share of its odds that a fault of starting keeps where nobody tells of a start. Common practice, no source. */
const untried = 0.3;

const ofStart: readonly string[] = [
  "starting",
  "start",
  "ramp",
  "dimming",
  "protection",
  "sound",
  "start_pressures",
  "cooled",
  "current",
];

/** What a fault that shows only at a start keeps of its odds: all where a start is told. */
export function attemptWeight(evidence: readonly Evidence[]): number {
  const tried = evidence.some(
    ({ sign }) =>
      ofStart.includes(groupOf(sign)) ||
      sign === "liquid:oil_foams" ||
      sign === "liquid:liquid_in_shell",
  );
  return tried ? 1 : untried;
}
