import type { Token } from "./token.ts";

const gaugeWord = /^(?:suct|suction|suc|lp|low|head|hp|disch|discharge|liq|liquid|ll|high)$/;
const electric = /^(?:v|vac|volts?|voltage|amps?|a|ohms?|legs?|phases?|leads?|l[123]|megs?)$/;

/** "suction 1.9 bar, line 2, head 13.2": between two gauges how warm the line is, no leg of the supply. */
export function amongGauges(tokens: readonly Token[], i: number, end: number): boolean {
  const near = tokens.slice(Math.max(0, i - 12), end + 12);
  if (tokens[i]?.text !== "line" || near.some(({ text }) => electric.test(text))) return false;
  const before = tokens.slice(Math.max(0, i - 5), i).some(({ text }) => gaugeWord.test(text));
  const next = tokens[tokens[end]?.text === "," ? end + 1 : end];
  return before && (next === undefined || gaugeWord.test(next.text));
}
