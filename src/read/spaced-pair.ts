import { numberAt } from "./numbers.ts";
import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Volts from leg to leg of any supply of this trade are more; common practice, no source. */
const leastVolts = 90;

function isLeg(token: Token | undefined): token is Token {
  return token?.kind === tokenKind.word && /^[abc]$/.test(token.text) && !token.apostrophe;
}

/** "U V 0.55": terminals of a motor, whatever stands between them. */
function outputs(tokens: readonly Token[], i: number): boolean {
  const [first, second] = [tokens[i], tokens[i + 1]];
  const letter = (token: Token | undefined): token is Token =>
    token?.kind === tokenKind.word && /^[uvw]$/.test(token.text);
  if (!letter(first) || !letter(second) || first.text === second.text) return false;
  // "V W are the same": each of them
  if (tokens[i + 2]?.text === "are") return false;
  return first.apostrophe !== true && valueBehind(tokens, i + 2);
}

/** A figure, "open" or "the same", past a verb and an article. */
function valueBehind(tokens: readonly Token[], from: number): boolean {
  let at = from;
  while (at < from + 3 && ((tokens[at]?.word?.roles ?? 0) & (role.is | role.article)) !== 0) at++;
  const roles = tokens[at]?.word?.roles ?? 0;
  return (roles & (role.over | role.same)) !== 0 || numberAt(tokens, at) !== undefined;
}

/** Two legs as single letters and a supply's figure behind them: where that figure begins. */
function pairAt(tokens: readonly Token[], i: number): boolean {
  const [first, second] = [tokens[i], tokens[i + 1]];
  if (!isLeg(first) || !isLeg(second) || first.text === second.text) return false;
  const is = ((tokens[i + 2]?.word?.roles ?? 0) & role.is) !== 0 ? 1 : 0;
  const said = numberAt(tokens, i + 2 + is);
  return said !== undefined && said.value >= leastVolts;
}

/** "A B two oh seven B C two oh nine": legs without a joint, where more than one pair stands so. */
export function spacedPair(tokens: readonly Token[], i: number, family = ""): boolean {
  if (outputs(tokens, i) && family === "uvw") return true;
  if (outputs(tokens, i))
    return tokens.some((_, at) => at !== i && at !== i + 1 && at !== i - 1 && outputs(tokens, at));
  if (!isLeg(tokens[i]) || !pairAt(tokens, i)) return false;
  return tokens.some((_, at) => at !== i && at !== i + 1 && at !== i - 1 && pairAt(tokens, at));
}
