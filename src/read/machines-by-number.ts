import { endsClause } from "./breaks.ts";
import { type Item, itemKind } from "./item.ts";

/** Machines of one kind that stand beside each other at most. Our choice, no source. */
const most = 24;
const joint = /^(?:,|and|&|n|\+)$/;
const state = /^(?:are|is|both|all|read|reads|show|shows)$/;

function isName(item: Item | undefined): item is Item {
  return (
    item?.kind === itemKind.number &&
    item.unit === undefined &&
    /^\d{1,2}$/.test(item.text) &&
    item.value >= 1 &&
    item.value <= most
  );
}

/** "heater 1": the kind of the last machine named before, as "heater "; empty where none is. */
function familyBefore(items: readonly Item[], at: number): string {
  const last = items.slice(0, at).findLast(({ kind }) => kind === itemKind.subject);
  return /^(.*\D )\d{1,2}$/.exec(last?.subject ?? "")?.[1] ?? "";
}

/** "heater 1 34 ohms, 2 and 3 open": small numbers at the head of a clause that ends in "open" are its fellows. */
export function machinesByNumber(items: readonly Item[]): void {
  for (let at = 1; at < items.length - 1; at++) {
    const before = items[at - 1];
    if (before === undefined || !endsClause(before)) continue;
    const names: Item[] = [];
    let to = at;
    for (let one = items[to]; isName(one); one = items[to]) {
      names.push(one);
      to++;
      if (joint.test(items[to]?.text ?? "") && isName(items[to + 1])) to++;
    }
    while (names.length > 0 && state.test(items[to]?.text ?? "")) to++;
    const family =
      names.length > 0 && items[to]?.kind === itemKind.over ? familyBefore(items, at) : "";
    if (family === "") continue;
    for (const name of names) {
      name.kind = itemKind.subject;
      name.subject = `${family}${name.value}`;
    }
  }
}
