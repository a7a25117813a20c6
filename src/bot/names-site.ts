import type { Job } from "../model.ts";
import { sameWord, wordsOf } from "../record/names.ts";

/** Whether words name a job's site and nothing else: "tannery" is Tannery Lofts. */
export function namesSite(words: string, { site }: Pick<Job, "site">): boolean {
  const known = wordsOf(site ?? "");
  const named = wordsOf(words).filter((word) => word.length > 2 && word !== "the");
  return named.length > 0 && named.every((word) => known.some((name) => sameWord(word, name)));
}
