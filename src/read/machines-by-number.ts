import { endsClause } from "./breaks.ts";
import { type Item, itemKind } from "./item.ts";

/** Machines of one kind that stand beside each other at most. Our choice, no source. */
const most = 24;
const joint = /^(?:,|and|&|n|\+)$/;
const state = /^(?:are|is|both|all|read|reads|show|shows|at)$/;
const draws = /^(?:draw|draws|drawing|drew|pull|pulls|pulling|pulled)$/;
const runs = /^(?:running|fine|ok|okay|good|off|dead)$/;
const apiece = /^(?:each|apiece|both|ea)$/;

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

/** "drawing 2.9 each", "all at 3.1a", "are running": one figure or state that several have. */
function toldOfSeveral(items: readonly Item[], from: number): boolean {
  let at = from;
  while (draws.test(items[at]?.text ?? "") || state.test(items[at]?.text ?? "")) at++;
  const figure = items[at];
  if (runs.test(figure?.text ?? "")) return true;
  if (at === from || figure?.kind !== itemKind.number) return false;
  const said = items.slice(from, at).some(({ text }) => !/^(?:are|is)$/.test(text));
  return (said && figure.unit !== undefined) || apiece.test(items[at + 1]?.text ?? "");
}

/**
 * "heater 1 34 ohms, 2 and 3 open", "fan 3 dead, 1 & 2 drawing 2.9 each": small numbers at the head of a
 * clause that ends in "open", or in a figure that each has, are its fellows.
 */
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
    const each = names.length > 1 && toldOfSeveral(items, to);
    while (names.length > 0 && state.test(items[to]?.text ?? "")) to++;
    const open = names.length > 0 && items[to]?.kind === itemKind.over;
    const family = open || each ? familyBefore(items, at) : "";
    if (family === "") continue;
    for (const name of names) {
      name.kind = itemKind.subject;
      name.subject = `${family}${name.value}`;
    }
  }
}
