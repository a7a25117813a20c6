import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Index of the first figure of "line temps 54 and 97", "lines 12/38"; -1 where both lines are not told so. */
export function bothLinesAt(items: readonly Item[]): number {
  for (const [i, { text }] of items.entries()) {
    if (!/^(?:lines?|pipes?)$/.test(text)) continue;
    let at = i + 1;
    while (/^(?:temps?|temperatures?|are|is|at|:|were)$/.test(items[at]?.text ?? "")) at++;
    const several =
      text.endsWith("s") || items.slice(i, at).some((one) => /^temp.*s$/.test(one.text));
    const [low, joint, high] = items.slice(at, at + 3);
    const bare = [low, high].every(
      (one) => one?.kind === itemKind.number && one.owner === undefined,
    );
    const joined = /^(?:and|&|\/|,)$/.test(joint?.text ?? "");
    if (several && bare && joined && (low?.value ?? 0) < (high?.value ?? 0)) return at;
  }
  return -1;
}

/** "LP 8.2 HP 25.4, line temps 9 and 36": with both sides' gauges told, the colder line is the suction's, told first. */
export function bothLines(list: readonly Draft[], items: readonly Item[]): void {
  const at = bothLinesAt(items);
  if (at < 0) return;
  const told = list.filter(({ index }) => index < at);
  const sides = ["suction", "discharge"].every((place) => told.some((one) => one.place === place));
  if (!sides) return;
  for (const draft of list) {
    if (draft.index !== at && draft.index !== at + 2) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    draft.place = draft.index === at ? "suction" : "liquid";
    draft.named = "temperature";
    draft.hint = "temperature";
  }
}
