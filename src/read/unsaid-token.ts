import { lookUp } from "./dictionary.ts";
import { type Token, tokenKind } from "./token.ts";

const unsaid = { glued: false, apostrophe: false, value: Number.NaN } as const;

/** A word that nobody said, put in where it is understood; it covers nothing of the text. */
export function wordAt(at: number, text: string): Token {
  return { ...unsaid, kind: tokenKind.word, from: at, to: at, text, word: lookUp(text) };
}

/** A sign that nobody said. */
export function signAt(at: number, text: string): Token {
  return { ...unsaid, kind: tokenKind.sign, from: at, to: at, text, word: undefined };
}

/** A comma that nobody said. */
export const commaAt = (at: number): Token => signAt(at, ",");
