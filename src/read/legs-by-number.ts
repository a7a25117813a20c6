import { lookUp } from "./dictionary.ts";
import { digitOf } from "./digit-pairs.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";

/** Things that are counted like legs are: "14.2 on one and 14.4 on two" may be of those. */
const machines =
  /^(?:comps?|compressors?|fans?|units?|heads?|circuits?|ckts?|pumps?|heaters?|elements?|stages?|zones?|boards?|coils?|racks?|cases?|rtus?|motors?|banks?|evaps?|jobs?|floors?|taps?)$/;
const tested = /^(?:megs?|megohms?|mohms?|gigs?|megged|megging|megger|insulation)$/;

/** "9.1 on one": does the number of a leg stand here, behind a figure? */
function numberedAt(tokens: readonly Token[], i: number, expected: number): boolean {
  const on = tokens[i - 1];
  return (
    on?.text === "on" &&
    digitOf(tokens[i]) === expected &&
    tokens[i]?.apostrophe === false &&
    !(tokens[i + 1]?.glued === true && !/^[,.;]$/.test(tokens[i + 1]?.text ?? "")) &&
    (isNumber(tokens[i - 2]) || tokens[i - 2]?.word?.unit !== undefined)
  );
}

/**
 * "9.1 on one 8.9 on two and 9 on three": three figures, each with the number of its leg behind it. A word
 * for the leg is put before each number, and a comma behind it where a figure follows. Two alone may be machines.
 */
export function legsByNumber(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }) => text === "on")) return tokens;
  const found: number[] = [];
  for (let i = 2; i < tokens.length && found.length < 3; i++)
    if (numberedAt(tokens, i, found.length + 1)) found.push(i);
  // "compressor's pulling 14 on one": whose motor it is counts nothing
  const counted = tokens.some(({ text, apostrophe }) => machines.test(text) && !apostrophe);
  if (found.length < 3 || counted) return tokens;
  const leg = tokens.some(({ text }) => tested.test(text)) ? "lead" : "leg";
  return tokens.flatMap((token, i) => {
    if (!found.includes(i)) return [token];
    const empty = { glued: false, apostrophe: false, value: Number.NaN };
    const name = {
      ...empty,
      kind: tokenKind.word,
      from: token.from,
      to: token.from,
      text: leg,
      word: lookUp(leg),
    };
    const comma = {
      ...empty,
      kind: tokenKind.sign,
      from: token.to,
      to: token.to,
      text: ",",
      word: undefined,
    };
    return isNumber(tokens[i + 1]) ? [name, token, comma] : [name, token];
  });
}
