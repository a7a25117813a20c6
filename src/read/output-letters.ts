import { isNumber, type Token } from "./token.ts";
import { commaAt } from "./unsaid-token.ts";

const row = ["u", "v", "w"] as const;

/** Is it a motor's three ends in their order, and behind them what was read: "u v w to earth 250", "u v w 250"? */
function beginsRow(tokens: readonly Token[], i: number): boolean {
  if (!row.every((letter, step) => tokens[i + step]?.text === letter)) return false;
  if (tokens[i + 1]?.glued === true || tokens[i + 2]?.glued === true) return false;
  const next = tokens[i + 3];
  const ground = /^(?:to|-)$/.test(next?.text ?? "");
  const at = ground ? i + 5 : i + 3;
  const three = [0, 1, 2].map((step) => tokens.slice(at).filter(isNumber)[step]);
  return (ground || isNumber(next)) && three.every((one) => one !== undefined);
}

/** "u v w to earth 250 260 255 meg": the three are a list, as if they were typed "u/v/w". */
export function outputLetters(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((_, i) => beginsRow(tokens, i));
  if (at < 0) return tokens;
  return tokens.flatMap((token, i) => {
    if (i !== at + 1 && i !== at + 2) return [token];
    return [
      { ...commaAt(token.from), text: "/", glued: true },
      { ...token, glued: true },
    ];
  });
}
