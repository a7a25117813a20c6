import type { Word } from "./word.ts";

export const tokenKind = { word: 1, number: 2, sign: 3, line: 4, code: 5 } as const;
export type TokenKind = (typeof tokenKind)[keyof typeof tokenKind];

/** One piece of the text, as typed. */
export interface Token {
  readonly kind: TokenKind;
  readonly from: number;
  readonly to: number;
  /** in plain lower case, without a possessive ending */
  readonly text: string;
  readonly word: Word | undefined;
  /** nothing stands between it and the token before */
  readonly glued: boolean;
  /** written with "'s": "suction's", "that's" */
  readonly apostrophe: boolean;
  readonly value: number;
}

/** A number in figures or in words. */
export function isNumber(token: Token | undefined): boolean {
  return token?.kind === tokenKind.number || token?.word?.number !== undefined;
}
