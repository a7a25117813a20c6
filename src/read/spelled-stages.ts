import { lookUp } from "./dictionary.ts";
import { type Token, tokenKind } from "./token.ts";

const calls = /^(?:calling|calls|call|called|for|on)$/;
const tens = /^(?:twenty|thirty)$/;
const stages: ReadonlyMap<string, string> = new Map([
  ["one", "1"],
  ["two", "2"],
]);

/** One word for the tokens from `i` to before `to`. */
function joined(tokens: readonly Token[], i: number, to: number, text: string): Token | undefined {
  const [first, last] = [tokens[i], tokens[to - 1]];
  if (first === undefined || last === undefined) return undefined;
  return { ...first, kind: tokenKind.word, text, word: lookUp(text), to: last.to };
}

/** "calling w one twenty six volts": a stage's terminal, and volts of a control circuit, never 126 of them. */
function terminalAt(tokens: readonly Token[], i: number): Token | undefined {
  const [letter, number, ten] = tokens.slice(i, i + 3);
  const stage = stages.get(number?.text ?? "");
  if (letter === undefined || stage === undefined) return undefined;
  // "w" alone is also short for "with"
  const name = letter.text === "with" && letter.to - letter.from === 1 ? "w" : letter.text;
  if (!/^[wy]$/.test(name)) return undefined;
  if (!tens.test(ten?.text ?? "") || !calls.test(tokens[i - 1]?.text ?? "")) return undefined;
  return joined(tokens, i, i + 2, `${name}${stage}`);
}

/** "calling w one": a stage's terminal that was spoken is one word. */
export function spelledStages(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; ) {
    const terminal = terminalAt(tokens, i);
    const one = terminal ?? tokens[i];
    if (one !== undefined) out.push(one);
    i += terminal === undefined ? 1 : 2;
  }
  return out;
}
