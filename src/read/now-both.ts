import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";

const heat = (draft: Draft | undefined): boolean =>
  draft?.named === "superheat" || draft?.named === "subcooling";

/** "sh 22 before sc 4, now 14 and 9": behind "now" both are told again, in their order. */
export function nowBoth(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter(({ gone }) => !gone);
  const at = items.findLastIndex(({ text }) => text === "now");
  const [first, second, ...others] = list.filter(({ index }) => index > at);
  const before = list.filter(({ index }) => index < at);
  const [left, right] = before.slice(-2);
  if (at < 0 || first === undefined || second === undefined || others.length > 0) return;
  if (!heat(left) || !heat(right) || left?.named === right?.named || first.index !== at + 1) return;
  const plain = (draft: Draft): boolean =>
    isUntold({ ...draft, named: heat(draft) ? undefined : draft.named, hint: undefined });
  const joint = /^(?:and|&|\/|,)$/.test(items[first.index + 1]?.text ?? "");
  if (!joint || second.index !== first.index + 2 || !plain(first) || !plain(second)) return;
  first.named = left?.named;
  second.named = right?.named;
}
