import { lookUp } from "./dictionary.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";

const verb = /^(?:is|was|at|about|around|only|now)$/;
/** Words of a machine's gauges: beside one of them no part of a building is spoken of, and no weight. */
const gauge =
  /^(?:suction|discharge|liquid|liquids|head|psi|psig|bar|superheat|subcool|subcooling|super|sub)$/;
const weight = /^(?:lbs?|pounds?|oz|ounces?|kg|kilos?|grams?)$/;

/** Where the figure ends that begins at `at`. */
function figureEnd(tokens: readonly Token[], at: number): number {
  let end = at;
  while (isNumber(tokens[end])) end++;
  return end;
}

/** Where a figure begins behind a name and its verb; -1 where none does. */
function figureAt(tokens: readonly Token[], name: number): number {
  let at = name + 1;
  while (verb.test(tokens[at]?.text ?? "")) at++;
  return isNumber(tokens[at]) ? at : -1;
}

/** "section 3", "section two": the number of a part of a building, no figure of a gauge. */
function numbers(tokens: readonly Token[], name: number, at: number): boolean {
  if (tokens[name]?.apostrophe === true || at > name + 1) return false;
  return figureEnd(tokens, at) === at + 1 && (tokens[at]?.value ?? 0) < 10;
}

function beside(tokens: readonly Token[], name: number): boolean {
  const letters = tokens.some(
    ({ text }, i) => text === "p" && tokens[i + 1]?.text === "s" && tokens[i + 2]?.text === "i",
  );
  return letters || tokens.some(({ text }, i) => i !== name && gauge.test(text));
}

function renamed(token: Token, text: string): Token {
  return { ...token, text, word: lookUp(text) };
}

/** "this charge is one eighty", "section's forty psi", "fourteen ants": what a phone makes of a discharge, a suction and amps. */
export function heardGauges(tokens: Token[]): void {
  for (let i = tokens.length - 1; i >= 0; i--) {
    const [before, token] = [tokens[i - 1], tokens[i]];
    if (token?.kind !== tokenKind.word) continue;
    const amps = isNumber(before) || /^(?:micro|milli|start|running)$/.test(before?.text ?? "");
    if (/^(?:ants|aunts)$/.test(token.text) && amps) tokens[i] = renamed(token, "amps");
    const at = figureAt(tokens, i);
    if (at < 0) continue;
    if (token.text === "charge" && before?.text === "this") {
      const unit = tokens[figureEnd(tokens, at)]?.text ?? "";
      const named = beside(tokens, i) || tokens.some(({ text }) => text === "section");
      if (named && !weight.test(unit))
        tokens.splice(i - 1, 2, { ...renamed(token, "discharge"), from: before.from });
    } else if (token.text === "section" && beside(tokens, i) && !numbers(tokens, i, at))
      tokens[i] = renamed(token, "suction");
  }
}
