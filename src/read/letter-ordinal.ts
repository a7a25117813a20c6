import type { Building } from "./items.ts";
import type { Ordinal } from "./ordinal.ts";
import { phraseAt } from "./phrase.ts";
import { tokenKind } from "./token.ts";

/** "comp a suct 121": behind an article no gauge stands so, with its figure. */
function labelled(build: Building, i: number): boolean {
  const phrase = phraseAt(build.tokens, i);
  const label = phrase?.word.label;
  if (phrase === undefined || (label?.place ?? label?.quantity) === undefined) return false;
  return build.tokens[phrase.end]?.kind === tokenKind.number;
}

/** A letter as a name: "phase A", "comp B"; never an article before a noun. */
export function letterOrdinal(build: Building, i: number): Ordinal | undefined {
  const token = build.tokens[i];
  if (token?.kind !== tokenKind.word || token.text.length !== 1 || token.text > "h")
    return undefined;
  const capital = build.typed.charAt(token.from).toUpperCase();
  const isCapital = build.typed.charAt(token.from) === capital;
  const next = build.tokens[i + 1];
  // "comp A-B 1.2": two legs
  if (next?.text === "-" && /^[bc]$/.test(build.tokens[i + 2]?.text ?? "")) return undefined;
  const phase = build.tokens[i - 1]?.text === "phase" && next?.word?.number !== undefined;
  const word = next?.kind === tokenKind.word && next.word?.roles === 0 && !phase;
  if (!isCapital && token.text === "a" && word && !labelled(build, i + 1)) return undefined;
  return { text: capital, end: i + 1 };
}
