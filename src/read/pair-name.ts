import type { Point } from "./point-words.ts";

/** "C to A" beside phases: the first letter is a phase when the second is. */
export function pairName(first: Point, pair: { second: string }): string {
  return first.name === "C" && (pair.second === "phase A" || pair.second === "phase B")
    ? "phase C"
    : first.name;
}
