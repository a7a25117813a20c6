import type { Draft } from "./draft.ts";

/** "the same on circuit 2, but superheat 14": by its name, where it has no place. */
function saysAnew(one: Draft, draft: Draft): boolean {
  const whose = one.subject === undefined || one.subject === draft.subject;
  return whose && one.named !== undefined && one.named === draft.named;
}

/** "same on circuit 2 but head 340": what is said of a place anew is not the same there. */
export function exceptSaid(drafts: readonly Draft[]): void {
  for (const draft of drafts) {
    if (draft.gone || !draft.same) continue;
    const points = draft.points?.[0]?.join();
    // "comp 4 same story, 0 amps": what was the same is told behind it
    const told = drafts.find(
      (one) =>
        !one.same &&
        !one.gone &&
        one.index > draft.index &&
        one.sentence === draft.sentence &&
        one.value === draft.value &&
        one.unit?.figure === draft.unit?.figure &&
        one.points === undefined,
    );
    if (told !== undefined) {
      told.subject ??= draft.subject;
      draft.gone = true;
    }
    const bare = draft.place === undefined && points === undefined;
    const anew = drafts.find(
      (one) =>
        !one.same &&
        !one.gone &&
        one.rating === undefined &&
        one.place === draft.place &&
        one.points?.[0]?.join() === points &&
        (!bare || saysAnew(one, draft)),
    );
    if (anew === undefined) continue;
    anew.subject ??= draft.subject;
    if (!bare && anew.unit === undefined && anew.named === undefined) {
      // "ditto except oil 48": of what the other one's oil was told
      anew.named = draft.named;
      anew.unit = draft.unit;
      anew.assumedUnit = draft.unit !== undefined;
    }
    draft.gone = true;
  }
}
