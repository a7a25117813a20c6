import { type Item, itemKind } from "../item.ts";
import { role } from "../word.ts";
import { textAt } from "./near.ts";

/** A and V that switchgear is made for; common practice, no source. */
const gearAmps: ReadonlySet<number> = new Set([15, 20, 25, 30, 35, 40, 50, 60, 75, 90, 100]);
const gearVolts: ReadonlySet<number> = new Set([24, 110, 115, 120, 208, 220, 230, 240, 277, 480]);

function isOneSize(item: Item | undefined): boolean {
  if (item?.kind !== itemKind.number) return false;
  if (item.unit?.dimension === "current") return gearAmps.has(item.value);
  return item.unit?.dimension === "voltage" && gearVolts.has(item.value);
}

/** "24v 2 pole contactor", "2p 30a 24v relay": the end of a row of sizes that has the gear behind it; 0 without. */
export function rowEnd(items: readonly Item[], i: number): number {
  if (!isOneSize(items[i])) return 0;
  let at = i + 1;
  for (;;)
    if (poles(items, at - 1)) at += 2;
    else if (isOneSize(items[at])) at++;
    else break;
  const rowed = at > i + 1 || items[i - 1]?.owner !== undefined;
  const ends = /^(?:contactors?|relay|breaker|disconnect|disco)$/.test(textAt(items, at));
  return rowed && ends ? at + 1 : 0;
}

/** "40a 2p": amps and poles. */
export function poles(items: readonly Item[], i: number): boolean {
  return (
    /^(?:[1234]|one|two|three|four)$/.test(textAt(items, i + 1)) &&
    /^(?:p|pole)$/.test(textAt(items, i + 2))
  );
}

/** "637 volts transformer 24.8", "646 volts circuit 2 bus 658": what was read, and then another thing with a figure of its own. */
export function readThenNext(items: readonly Item[], i: number, plain: string): boolean {
  const [article, own, next] = items.slice(Math.max(0, i - 1), i + 2);
  if (i === 0 || own === undefined || next === undefined) return false;
  if (!/s$/.test(plain.slice(own.from, own.to)) || /^(?:an?|new)$/.test(article?.text ?? ""))
    return false;
  if (next.kind === itemKind.subject && / \w{1,2}$/.test(next.subject ?? "")) return true;
  const verb = ((items[i + 2]?.roles ?? 0) & (role.is | role.preposition)) !== 0;
  const value = items[i + (verb ? 3 : 2)];
  const gives = /^(?:transformer|xfmr)$/.test(next.text);
  return gives && value?.kind === itemKind.number && value.owner === undefined;
}

/** "14 amps three's at 9": the number has a value of its own, it counts no poles. */
export function tellsOwn(items: readonly Item[], i: number): boolean {
  return items[i]?.apostrophe === true || ((items[i + 1]?.roles ?? 0) & role.is) !== 0;
}
