import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "480 steps is wide open it's at 210": what the valve has in all, not where it stands. */
export function wideOpen(items: readonly Item[], drafts: readonly Draft[]): void {
  const steps = drafts.filter(({ unit }) => unit?.dimension === "steps");
  if (drafts.length < 2) return;
  for (const draft of steps) {
    const [is, how] = items.slice(draft.index + 1, draft.index + 3).map(({ text }) => text);
    if (!/^(?:is|being)$/.test(is ?? "")) continue;
    if (/^(?:wide|full|fully|max|maximum|all)$/.test(how ?? "")) draft.rating ??= "nominal";
  }
}
