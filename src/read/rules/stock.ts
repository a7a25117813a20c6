import { endsClause, isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";
import { jugs } from "./size-words.ts";

const kinds: ReadonlySet<string> = new Set(["mass", "capacitance", "length"]);
const store = /^(?:truck|van|shop|shelf|trailer|pickup)$/;

/** "… on the truck": where it lies, a few words behind the number. */
function lies(items: readonly Item[], i: number): boolean {
  for (let at = i + 1; at < items.length && at <= i + 6; at++) {
    const item = items[at];
    if (item === undefined || endsClause(item)) return false;
    if (item.kind === itemKind.number) return false;
    if (store.test(item.text))
      return /^(?:on|in|at|left)$/.test(textAt(items, at - 1)) || led(items, at);
  }
  return false;
}

function led(items: readonly Item[], at: number): boolean {
  return (
    /^(?:the|my|his|her|our)$/.test(textAt(items, at - 1)) &&
    /^(?:on|in|at)$/.test(textAt(items, at - 2))
  );
}

/** "2 lb left in the jug", "11 lb still in the drum", "only have 2 lb left": what did not go in. */
function isLeft(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.dimension !== "mass") return false;
  // "38.2 lb left in the bottle, 9 lb went in": first of all a weight that was read
  const moved = items.slice(0, i).some(({ label }) => label?.action !== undefined);
  if (!moved && !/^(?:have|has|got)$/.test(textAt(items, i - 1))) return false;
  const gas = items[i + 1]?.kind === itemKind.code ? i + 2 : i + 1;
  if (!/^(?:left|remaining|still)$/.test(textAt(items, gas))) return false;
  const next = items[gas + 1];
  const ends = next === undefined || isStrongBreak(next) || next.text === ",";
  if (ends) return textAt(items, gas) !== "still";
  if (!/^(?:in|on)$/.test(next.text)) return false;
  return items.slice(gas + 2, gas + 5).some(({ text }) => jugs.has(text) && text !== "box");
}

const errands =
  /^(?:stopping|stop|picking|running|swinging|heading|going|grabbing|fetching|getting)$/;
const towards = /^(?:for|up|to|by|get|grab|a|an|some|another|out|the|pick)$/;

/** "stopping for a 30 uf cap": what is fetched. */
function fetched(items: readonly Item[], i: number): boolean {
  let at = i - 1;
  let words = 0;
  while (at >= 0 && towards.test(textAt(items, at))) {
    at--;
    words++;
  }
  if (words === 0 || !errands.test(textAt(items, at))) return false;
  const verb = textAt(items, at);
  const joint = textAt(items, at + 1);
  if (/^(?:grabbing|fetching)$/.test(verb)) return true;
  return joint === "for" || joint === "up" || /^(?:get|grab|pick)$/.test(textAt(items, at + 2));
}

/** "have 6 lb on the truck", "2 lb left in the jug", "stopping for a 30 uf cap": what lies there or is being fetched was not measured. */
export const stock: Rule = {
  name: "<amount> on the truck",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || !kinds.has(item.unit?.dimension ?? "")) return;
      if (lies(items, i) || isLeft(items, i) || fetched(items, i))
        state(note, stock.name, [i, i + 1], { kind: "note", about: "stock" });
    });
  },
};
