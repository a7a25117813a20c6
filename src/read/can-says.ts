import type { Token } from "./token.ts";

/** "the can says forty": what is printed on a capacitor, no frame of a motor. */
export function canSays(tokens: readonly Token[], i: number): boolean {
  return (
    tokens[i]?.text === "can" &&
    /^(?:says|said|reads|is|marked|rated)$/.test(tokens[i + 1]?.text ?? "")
  );
}
