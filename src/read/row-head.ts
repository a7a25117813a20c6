import { itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";
import { tokenKind } from "./token.ts";

const rowHeads: ReadonlyMap<string, "voltage" | "current"> = new Map([
  ["v", "voltage"],
  ["a", "current"],
]);

/** "V: 477 / 480 / 474", "A 12.1 12.4 12.2": a letter that begins a line of values is their unit. */
export function rowHead(build: Building, i: number): number {
  const token = build.tokens[i];
  const quantity = rowHeads.get(token?.text ?? "");
  const before = build.tokens[i - 1];
  if (token === undefined || quantity === undefined) return 0;
  if (before !== undefined && before.kind !== tokenKind.line) return 0;
  const from = build.tokens[i + 1]?.text === ":" ? i + 2 : i + 1;
  let numbers = 0;
  let at = from;
  for (; at < i + 10; at++) {
    const next = build.tokens[at];
    if (next?.kind === tokenKind.number) numbers++;
    else if (!/^[/|,]$/.test(next?.text ?? "")) break;
  }
  const end = build.tokens[at];
  if (numbers < 2 || (end !== undefined && end.kind !== tokenKind.line)) return 0;
  const item = newItem(itemKind.label, token.from, token.to, token.text);
  item.label = { quantity };
  build.items.push(item);
  return i + 1;
}
