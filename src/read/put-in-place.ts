import { endsClause } from "./breaks.ts";
import { type Item, itemKind } from "./item.ts";

const goesOn = /^(?:n|and|&|in|on|up|down|now|ok|good|w|with)$/;

/** "new comp set, u-v .61", "unit set n wired, 402 V": put where it belongs; no figure behind is a setting. */
export function putInPlace(items: Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "set" || item.label?.rating !== "setpoint" || item.to - item.from > 3) return;
    const [before, next] = [items[i - 1], items[i + 1]];
    const machine = before?.kind === itemKind.subject || before?.label?.thing !== undefined;
    const part = machine || /^(?:unit|units|it|all|is|got|are)$/.test(before?.text ?? "");
    if (!part || next === undefined || !(endsClause(next) || goesOn.test(next.text))) return;
    if (goesOn.test(next.text) && items[i + 2]?.kind === itemKind.number) return;
    item.kind = itemKind.word;
    item.label = undefined;
  });
}
