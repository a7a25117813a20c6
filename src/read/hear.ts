import { lookUp } from "./dictionary.ts";
import type { Token } from "./token.ts";

const heardBefore: Readonly<Record<string, string>> = {
  for: "four",
  fore: "four",
  too: "two",
  won: "one",
  ate: "eight",
};

/** "for hundred meg": before a hundred the phone wrote a word for a digit. */
export function hearDigit(tokens: Token[]): void {
  const last = tokens[tokens.length - 1];
  const digit = heardBefore[last?.text ?? ""];
  if (last === undefined || digit === undefined || last.apostrophe) return;
  tokens[tokens.length - 1] = { ...last, text: digit, word: lookUp(digit) };
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
