import { know } from "./dictionary.ts";
import type { Token } from "./token.ts";

/** The lists that a word stands in, by their numbers. */
const waiting = new Map<string, number[]>();
let lists = 0;

/** Notes a list of words, "|" between them, as the scanner cuts them; its number is where `headsOf` tells of it. */
export function waitFor(words: string): number {
  know(words);
  for (const word of words.split("|")) {
    const found = waiting.get(word);
    if (found === undefined) waiting.set(word, [lists]);
    else found.push(lists);
  }
  return lists++;
}

/** For each list, by its number: 1 where one of its words stands in the message. */
export function headsOf(tokens: readonly Token[]): Uint8Array {
  const heads = new Uint8Array(lists);
  for (const { text } of tokens) {
    const found = waiting.get(text);
    if (found !== undefined) for (const list of found) heads[list] = 1;
  }
  return heads;
}
