import type { Building } from "./items.ts";

/** "R-S 4.9 S-C 3.6": behind a pair of pins another pair, no subcooling. */
export function amongPins(build: Building, i: number): boolean {
  const pair = [build.tokens[i], build.tokens[i + 2]].every((one) =>
    /^[crs]$/.test(one?.text ?? ""),
  );
  if (!pair || build.tokens[i + 1]?.text !== "-") return false;
  return build.items
    .slice(-12)
    .some(({ points }) =>
      points?.some((one) => one.length === 2 && one.every((p) => /^[CRS]$/.test(p))),
    );
}

/** "0 y to c": the other end of a thermostat's terminal that is none of our points. */
export function endsTerminals(build: Building, i: number): boolean {
  if (!/^(?:to|-|\/)$/.test(build.tokens[i - 1]?.text ?? "")) return false;
  return /^(?:y|y1|y2|o|w1|w2|rh|rc)$/.test(build.tokens[i - 2]?.text ?? "");
}
