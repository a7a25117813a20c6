import { lookUp } from "./dictionary.ts";
import { type Token, tokenKind } from "./token.ts";

const unsaid = { glued: false, apostrophe: false, value: Number.NaN } as const;

/** A word that nobody said, put in where it is understood; it covers nothing of the text. */
export function wordAt(at: number, text: string): Token {
  return { ...unsaid, kind: tokenKind.word, from: at, to: at, text, word: lookUp(text) };
}

/** A comma that nobody said. */
export function commaAt(at: number): Token {
  return { ...unsaid, kind: tokenKind.sign, from: at, to: at, text: ",", word: undefined };
}
