import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "ran the heater an hour, 45 48 46 now": what was run, and behind the comma what was measured. */
export function ranOther(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (!/^(?:ran|run|running)$/.test(items[index]?.text ?? "") || index > draft.index) return false;
  if (!/^(?:the|its|a|my)$/.test(items[index + 1]?.text ?? "")) return false;
  return items.slice(index + 2, draft.index).some(({ text }) => /^[,.;]$/.test(text));
}
