import type { Building } from "./items.ts";
import { tokenKind } from "./token.ts";

const waters = /^(?:water|chw|cw|hw|hhw|glycol|brine|chilled|loop|tower|barrel)$/;

/** "chilled water 12.1 in, 7.3 out": both sides of a water, no inches. */
export function outBehind({ tokens }: Building, i: number): boolean {
  let at = i + 1;
  while (/^[-,/]$/.test(tokens[at]?.text ?? "")) at++;
  const [number, out] = tokens.slice(at, at + 2);
  if (number?.kind !== tokenKind.number || out?.text !== "out") return false;
  return tokens.slice(Math.max(0, i - 6), i).some(({ text }) => waters.test(text));
}
