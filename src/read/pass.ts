import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { waitFor } from "./heads.ts";
import type { Item } from "./item.ts";
import type { Note } from "./note.ts";

/** The values of a message on their way to readings, and what stands around them. */
export interface Values {
  readonly note: Note;
  readonly drafts: Draft[];
  readonly items: readonly Item[];
  readonly context: Context;
  /** one value alone is no pair, row or list: what looks from one to the next finds nothing there */
  readonly several: boolean;
}

/** One look at the values; each mends what a way of saying makes of them. */
export interface Pass {
  readonly look: (values: Values) => void;
  /** words of which one must stand in the message, "|" between them; any message where none are given */
  readonly heads?: string;
  /** there must be more than one value */
  readonly several?: true;
}

/** A pass that knows where `Note.heads` tells of its words; -1 where it waits for none. */
export interface Waiting {
  readonly pass: Pass;
  readonly list: number;
}

export function passes(...list: readonly Pass[]): readonly Waiting[] {
  return list.map((pass) => ({
    pass,
    list: pass.heads === undefined ? -1 : waitFor(pass.heads),
  }));
}

/** Does what the message holds give the pass a chance? */
export function isDue({ pass, list }: Waiting, { note, several }: Values): boolean {
  return (list < 0 || note.heads[list] === 1) && (several || pass.several !== true);
}

/** Takes the passes of a list in their order, those that what the message holds gives a chance. */
export function take(list: readonly Waiting[], values: Values): void {
  for (const one of list) if (isDue(one, values)) one.pass.look(values);
}
