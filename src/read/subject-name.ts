import type { Building } from "./items.ts";
import type { Label } from "./label.ts";
import { ordinalAt } from "./ordinal.ts";
import { phraseAt } from "./phrase.ts";

export interface SubjectSaid {
  readonly name: string;
  readonly end: number;
  readonly label: Label | undefined;
  /** a room, a door, a panel: takes its number away, says nothing of a reading */
  readonly aside: boolean;
}

/** "compressor 2", "ckt A", "RTU-1", or an aside that keeps its number to itself: "room 412". */
export function subjectAt(build: Building, i: number): SubjectSaid | undefined {
  const phrase = phraseAt(build.tokens, i);
  const noun = phrase?.word.noun;
  if (phrase === undefined || noun === undefined || noun.kind === "point") return undefined;
  const ordinal = ordinalAt(build, phrase.end, noun);
  if (ordinal === undefined) return undefined;
  const from = build.tokens[i]?.from ?? 0;
  const to = build.tokens[ordinal.end - 1]?.to ?? from;
  if (noun.kind === "tag")
    return {
      name: tagName(build.typed.slice(from, to)),
      end: ordinal.end,
      label: undefined,
      aside: false,
    };
  if (noun.kind === "aside") return { name: "", end: ordinal.end, label: undefined, aside: true };
  return {
    name: `${noun.name} ${ordinal.text}`,
    end: ordinal.end,
    label: phrase.word.label,
    aside: false,
  };
}

/** A tag stays as typed, without a possessive ending. */
function tagName(typed: string): string {
  return typed.replace(/['’]s$/u, "");
}
