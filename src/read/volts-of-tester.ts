import { isNumber, type Token } from "./token.ts";

const megs = /^(?:meg|megs|megged|megging|megger|meggered|insulation|ir)$/;
/** V that testers of insulation have. IEEE 43, table 1, and common practice for the lowest. */
const volts = /^(?:250|500|1000|2500|5000)$/;

/** "meg 500 v 42 45 1.8": where no other leg has its letter, V is what was tested with, as in "500v". */
export function voltsOfTester(tokens: readonly Token[]): readonly Token[] {
  if (tokens.some(({ text }) => text === "u" || text === "w")) return tokens;
  return tokens.map((token, i) => {
    const [word, set, next] = [tokens[i - 2], tokens[i - 1], tokens[i + 1]];
    const at = /^(?:at|@|with)$/.test(word?.text ?? "") ? tokens[i - 3] : word;
    if (token.text !== "v" || token.glued || !volts.test(set?.text ?? "")) return token;
    return megs.test(at?.text ?? "") && isNumber(next) ? { ...token, glued: true } : token;
  });
}
