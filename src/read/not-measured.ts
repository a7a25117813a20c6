import type { Draft } from "./draft.ts";

/** A number that is no reading after all: all that was guessed of it goes, it stays as written. */
export function notMeasured(draft: Draft): void {
  draft.quantity = undefined;
  draft.place = undefined;
  draft.hint = undefined;
  draft.named = undefined;
  draft.thing = "level";
}
