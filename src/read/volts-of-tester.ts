import { numberAt } from "./numbers.ts";
import { isNumber, type Token } from "./token.ts";

const megs = /^(?:meg|megs|megged|megging|megger|meggered|insulation|ir)$/;
/** V that testers of insulation have. IEEE 43, table 1, and common practice for the lowest. */
const volts = /^(?:250|500|1000|2500|5000)$/;

/** Where a tester's volts end that begin behind its word, typed or spoken; 0 where none stand there. */
function voltsEnd(tokens: readonly Token[], i: number): number {
  if (!megs.test(tokens[i]?.text ?? "")) return 0;
  const at = /^(?:at|@|with)$/.test(tokens[i + 1]?.text ?? "") ? i + 2 : i + 1;
  const said = isNumber(tokens[at]) ? numberAt(tokens, at) : undefined;
  return said !== undefined && volts.test(String(said.value)) ? said.end : 0;
}

/** "meg 500 v 42 45 1.8": where no other leg has its letter, V is what was tested with, as in "500v". */
export function voltsOfTester(tokens: readonly Token[]): readonly Token[] {
  if (tokens.some(({ text }) => text === "u" || text === "w")) return tokens;
  const ends = new Set(tokens.map((_, i) => voltsEnd(tokens, i)));
  return tokens.map((token, i) => {
    if (token.text !== "v" || token.glued || !ends.has(i) || !isNumber(tokens[i + 1])) return token;
    return { ...token, glued: true };
  });
}
