/** Words that statements are made of: each row is one sign, its index is its number. */
export const signWords: readonly (readonly [words: string, sign: string])[] = [];
