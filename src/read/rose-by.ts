import { type Item, itemKind } from "./item.ts";

/** Verbs of a change; behind them a figure without "to" tells by how much, not where it stands. */
const verbs =
  /^(?:climbed|climbs|jumped|jumps|rose|rises|fell|falls|gained|gains|picked up|came up|came down|went up|went down|crept up|increased|decreased|up by|down by|climbed by|rose by|fell by|dropped by|increased by)$/;

/** The words right before a figure, whether they are one item or two. */
export function roseBy(items: readonly Item[], i: number, plain: string): boolean {
  const [first, second] = [items[i - 2], items[i - 1]];
  if (second === undefined) return false;
  const led = second.to - second.from;
  const phrase = /^(?:went|came|crept|picked)$/.test(second.text) && led > 6 && led < 10;
  const one =
    plain === "" ? (phrase ? "went up" : second.text) : plain.slice(second.from, second.to);
  const two = first === undefined ? "" : `${first.text} ${second.text}`;
  if (!verbs.test(one) && !verbs.test(two)) return false;
  const next = items[i + 1];
  // "climbed 12, 14, 16": a row of values
  const row = next?.text === "," && items[i + 2]?.kind === itemKind.number;
  return !row && next?.kind !== itemKind.number && !/^(?:to|from|-)$/.test(next?.text ?? "");
}
