import { lookUp } from "./dictionary.ts";
import { forHundreds } from "./for-hundreds.ts";
import { figureHeard } from "./hear-figure.ts";
import { heardApart } from "./heard-apart.ts";
import { heardGauges } from "./heard-gauges.ts";
import { lostApostrophes } from "./lost-apostrophe.ts";
import { dropOddStops } from "./odd-stops.ts";
import { splitFigures } from "./split-figures.ts";
import type { Token } from "./token.ts";

const heardBefore: ReadonlyMap<string, string> = new Map([
  ["for", "four"],
  ["fore", "four"],
  ["too", "two"],
  ["won", "one"],
  ["ate", "eight"],
]);

/** "for hundred meg": before a hundred the phone wrote a word for a digit. */
export function hearDigit(tokens: Token[]): void {
  const last = tokens[tokens.length - 1];
  const digit = heardBefore.get(last?.text ?? "");
  if (last === undefined || digit === undefined || last.apostrophe) return;
  tokens[tokens.length - 1] = { ...last, text: digit, word: lookUp(digit) };
}

/** "sub cooling is for and super heat's ate": behind a heat's name the phone wrote a word for its figure. */
export function hearFigures(tokens: Token[]): void {
  heardApart(tokens);
  heardGauges(tokens);
  dropOddStops(tokens);
  lostApostrophes(tokens);
  splitFigures(tokens);
  forHundreds(tokens);
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token?.text === "buck") hundred(tokens, i);
    const heard = figureHeard(tokens, i);
    if (token !== undefined && heard !== undefined) {
      tokens[i] = { ...token, text: heard, word: lookUp(heard) };
      continue;
    }
    const digit = heardBefore.get(token?.text ?? "");
    if (token === undefined || digit === undefined || token.text === "too") continue;
    const next = tokens[i + 1];
    const ends =
      next === undefined ||
      /^(?:and|so|but|then|degrees|sub|super|subcool|superheat|,|\.)$/.test(next.text);
    if (!ends || !behindHeat(tokens, i)) continue;
    tokens[i] = { ...token, text: digit, word: lookUp(digit) };
  }
}

/** "low side's a buck twenty": a hundred and twenty. */
function hundred(tokens: Token[], i: number): void {
  const [article, token] = [tokens[i - 1], tokens[i]];
  const next = tokens[i + 1]?.word?.number?.kind;
  if (token === undefined || article?.text !== "a") return;
  if (next !== "tens" && next !== "teen" && next !== "oh" && next !== "ones") return;
  tokens[i] = { ...token, text: "hundred", word: lookUp("hundred") };
}

function behindHeat(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1];
  const verb = /^(?:is|at|was|about)$/.test(before?.text ?? "");
  if (token(before) && before?.apostrophe !== true && tokens[i]?.text === "for") return false;
  return token(verb ? tokens[i - 2] : before);
}

function token(one: Token | undefined): boolean {
  return /^(?:heat|superheat|cool|cooling|subcool|subcooling|sh|sc)$/.test(one?.text ?? "");
}

/** "under a meg", "over a gig": behind a bound the article counts. */
export function oneOf(tokens: Token[]): void {
  const [bound, article] = tokens.slice(-2);
  if (article === undefined || (article.text !== "a" && article.text !== "an")) return;
  const bounds =
    /^(?:under|over|above|below|than|about|around|almost|nearly|barely|maybe|like|roughly|only|just)$/;
  if (!bounds.test(bound?.text ?? "")) return;
  tokens[tokens.length - 1] = { ...article, text: "one", word: lookUp("one") };
}
