import { type Item, isOneWord, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** Words between the figure and what it really is: "no wait that's actually the". */
const mostBetween = 7;

/** The place's label that named the figure at `at`: right before it, but for a verb. */
function nameOf(items: readonly Item[], at: number): Item | undefined {
  const before = items[at - 1];
  const verb = before?.kind === itemKind.word && (before.roles & role.is) !== 0;
  const name = items[verb ? at - 2 : at - 1];
  return name?.label?.place === undefined ? undefined : name;
}

/** Where "no, that's the return" ends behind the figure; 0 where it isn't said. */
function otherAt(items: readonly Item[], from: number): number {
  let taken = false;
  let that = false;
  for (let i = from; i < items.length && i <= from + mostBetween; i++) {
    const item = items[i];
    if (item === undefined || item.kind === itemKind.number || item.kind === itemKind.line)
      return 0;
    if (item.label?.place !== undefined) return taken && that ? i : 0;
    if (/^(?:no|nope|oops|wait|sorry)$/.test(item.text)) {
      taken = true;
      // "no that's" is one phrase
      that ||= !isOneWord(item);
    } else if (/^(?:thats|that)$/.test(item.text)) that = true;
    else if (!/^(?:[,.]|is|was|the|a|actually|really|its|i|mean|hold|on|uh|um)$/.test(item.text))
      return 0;
  }
  return 0;
}

/** "supply 58 no that's the return, supply is 54": the first figure was of the other place. */
export function thatsThe(items: Item[]): void {
  for (let at = 1; at < items.length - 2; at++) {
    if (items[at]?.kind !== itemKind.number) continue;
    const name = nameOf(items, at);
    const to = name === undefined ? 0 : otherAt(items, at + 1);
    const other = items[to];
    if (name === undefined || to === 0 || other?.label === undefined) continue;
    // "supply 58, no that's the return 58": its figure follows
    if (items[to + 1]?.kind === itemKind.number || other.apostrophe) continue;
    if (((items[to + 1]?.roles ?? 0) & role.is) !== 0) continue;
    if (other.label.place === name.label?.place || other.label.hint !== name.label?.hint) continue;
    name.label = other.label;
    const end = other.to;
    const stop = items[to + 1];
    items.splice(at + 1, to - at);
    if (stop !== undefined && stop.kind !== itemKind.sign && stop.kind !== itemKind.line) {
      const sign = {
        ...other,
        kind: itemKind.sign,
        from: end,
        to: end,
        text: ".",
        label: undefined,
      };
      items.splice(at + 1, 0, sign);
    }
  }
}
