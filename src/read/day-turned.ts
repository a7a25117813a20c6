import { type Item, itemKind } from "./item.ts";

const turned =
  /^(?:down|dropped|drops|dropping|fell|falling|up|rose|rising|climbing|colder|cooler|warmer|hotter|changed)$/;

/** "548 now ambients down some", "outdoors got colder, 441 now": how the day went, no figure of it. */
export function dayTurned(items: readonly Item[], at: number): boolean {
  if (items[at]?.label?.place !== "outdoor_air") return false;
  const led = /^(?:got|gets|is|has|went|are|s)$/.test(items[at + 1]?.text ?? "") ? at + 2 : at + 1;
  if (!turned.test(items[led]?.text ?? "")) return false;
  const behind = items.slice(led + 1, led + 4);
  const end = behind.findIndex(
    (item) => item.kind === itemKind.sign || item.kind === itemKind.line,
  );
  return !behind.slice(0, end < 0 ? 3 : end).some(({ kind }) => kind === itemKind.number);
}
