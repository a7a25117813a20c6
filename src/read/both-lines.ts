import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { lineCel, within } from "./line-range.ts";

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
export function bothLines(
  list: readonly Draft[],
  items: readonly Item[],
  { readings, latest }: Context,
): void {
  const at = bothLinesAt(items);
  if (at < 0) return;
  const told = list.filter(({ index }) => index < at);
  // "118 suct 290 hd", then "lines 62 and 95"
  const before = readings.slice(readings.length - latest);
  const sides = ["suction", "discharge"].every(
    (place) =>
      told.some((one) => one.place === place) ||
      before.some((one) => one.quantity === "pressure" && one.at === place),
  );
  if (!sides) return;
  for (const draft of list) {
    if (draft.index !== at && draft.index !== at + 2) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    draft.place = draft.index === at ? "suction" : "liquid";
    draft.named = "temperature";
    draft.hint = "temperature";
  }
}

/**
 * "LP 8 HP 25 discharge 78 suction 9": in a metric house, behind both gauges by their letters, a side's own
 * name leads the warmth of its line, for no side has two pressures.
 */
export function linesOfLetters(list: readonly Draft[], items: readonly Item[]): void {
  const gauge = (letters: RegExp): Draft | undefined =>
    list.find((one) => one.before.some((index) => letters.test(items[index]?.text ?? "")));
  const [low, high] = [gauge(/^lp$/), gauge(/^hp$/)];
  if (low?.place !== "suction" || high?.place !== "discharge") return;
  for (const draft of list) {
    const place = draft.place;
    if (place !== "suction" && place !== "discharge" && place !== "liquid") continue;
    if (draft === low || draft === high || draft.index < Math.max(low.index, high.index)) continue;
    const named = draft.before.some((index) =>
      /^(?:suct|disch|liq)/.test(items[index]?.text ?? ""),
    );
    const free = draft.unit ?? draft.named ?? draft.rating ?? draft.points ?? draft.after;
    const other = draft.subject !== undefined && draft.subject !== low.subject;
    if (!named || free !== undefined || other || draft.now || draft.earlier) continue;
    if (!within(draft.value, lineCel[place])) continue;
    draft.named = "temperature";
    draft.hint = "temperature";
  }
}
