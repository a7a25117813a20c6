import type { Building } from "./items.ts";
import { tokenKind } from "./token.ts";

const letters = /^(?:u|w|you|yew|double)$/;

/** "500 V to ground T1 310 T2 305 meg": behind a number, and with no U or W anywhere, V is its unit and no phase. */
export function isVolts(build: Building, i: number): boolean {
  if (build.tokens[i]?.text !== "v" || build.family.startsWith("uvw")) return false;
  if (build.tokens[i - 1]?.kind !== tokenKind.number) return false;
  return !build.tokens.some(({ text }) => letters.test(text));
}
