import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** What a test may be of, the cable or what hangs on it; "to the comp", "comp end lifted" only say where. */
const named =
  /(?<!\b(?:to|at|from|with)(?: the)? )\b(?:(cables?|feeders?|wires?|wiring|harness|whip|conductors?|run)|comp\w*|motors?|windings?|pumps?|shell)\b(?! (?:end|side|leads?|off|lifted|unhooked|disconnected|unplugged|ends))/g;
const alone = /\b(?:alone|by itself|by themselves|on (?:its|their) own|only|just the)\b/;

/** "cable alone 0.3 meg", "the feeder reads 2 meg on its own": megohms of a cable that nothing hangs on are none of the winding's. */
export function cableAlone(list: readonly Draft[], items: readonly Item[]): void {
  testGoesOn(list, items);
  for (const draft of list) {
    const megohms = draft.unit?.dimension === "resistance" && draft.unit.factor >= 1e3;
    if (!megohms && draft.quantity !== "insulation_resistance") continue;
    if (draft.subject !== undefined) continue;
    const isNear = ({ kind, text }: Item): boolean => !isStop(text) && kind !== itemKind.line;
    const from = items.slice(0, draft.index).findLastIndex((one) => !isNear(one)) + 1;
    const ahead = wordsOf(items.slice(from, draft.index));
    const behind = items.slice(draft.index + 1);
    const to = behind.findIndex((one) => !isNear(one) || one.kind === itemKind.number);
    const after = wordsOf(to < 0 ? behind : behind.slice(0, to));
    if ([...ahead.matchAll(named)].at(-1)?.[1] === undefined) continue;
    if (alone.test(ahead) || /^(?:to ground )?(?:alone|by itself|on its own)\b/.test(after))
      draft.subject = "cable";
  }
}

/** "megs 0.2 to ground, the cable by itself 310": the same test of the cable, and no volts of it. */
function testGoesOn(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    const before = list[order - 1];
    const tested =
      before?.quantity === "insulation_resistance" || before?.named === "insulation_resistance";
    if (before === undefined || !tested || draft.unit !== undefined) return;
    if (draft.named !== undefined || draft.points !== undefined || draft.place !== undefined)
      return;
    const gap = wordsOf(items.slice(before.index + 1, draft.index));
    if (
      !/\b(?:cables?|feeders?|wir(?:es?|ing)|whip|harness) (?:is |reads? |was )*(?:alone|by itself|on its own)(?: (?:is|reads?|was|at))?$/.test(
        gap,
      )
    )
      return;
    draft.named = "insulation_resistance";
    draft.unit = before.unit;
    draft.assumedUnit = true;
  });
}

const isStop = (text: string): boolean => /^[.;]$/.test(text);
const wordsOf = (items: readonly Item[]): string => items.map((one) => one.text).join(" ");
