import { type Item, isOneWord, itemKind } from "./item.ts";

/** Compressors of one rack at most. Common practice, no source. */
const most = 16;
const verb = /^(?:is|was|at|read|reads|reading|shows|:|=|only|just|now|its|makes|has)$/;

/** "net oil on 3 was 14", "oil on number 2 38", "net oil 2 38 net oil 3 14": which compressor's it is, and then its pounds. */
export function oilByNumber(items: readonly Item[]): void {
  const bare = items.filter(isOilThenTwo(items)).length > 1;
  items.forEach((item, i) => {
    if (item.label?.place !== "oil") return;
    const on = /^(?:on|for|of|in)$/.test(items[i + 1]?.text ?? "");
    let at = on ? i + 2 : i + 1;
    while (/^(?:#|number|no|the)$/.test(items[at]?.text ?? "")) at++;
    const name = items[at];
    if (!(on || at > i + 1 || bare) || !isName(name)) return;
    let value = at + 1;
    while (verb.test(items[value]?.text ?? "")) value++;
    if (items[value]?.kind !== itemKind.number) return;
    name.kind = itemKind.subject;
    name.subject = `compressor ${name.value}`;
  });
}

function isName(item: Item | undefined): item is Item {
  return (
    item?.kind === itemKind.number &&
    item.unit === undefined &&
    item.owner === undefined &&
    Number.isInteger(item.value) &&
    item.value >= 1 &&
    item.value <= most &&
    !item.fraction
  );
}

/** "oil 2 38": a small number and right behind it another. */
function isOilThenTwo(items: readonly Item[]) {
  return ({ label }: Item, i: number): boolean =>
    label?.place === "oil" && isName(items[i + 1]) && items[i + 2]?.kind === itemKind.number;
}

const poured =
  /^(?:change|changed|changing|swapped|fresh|new|dumped|drained|clean|dirty|milky|added|topped)$/;

/** "changed the pump oil, 280 at 5:20": what was poured into a pump or changed, no pressure. */
export function oilChanged(items: readonly Item[], at: number): boolean {
  const [item, next] = [items[at], items[at + 1]];
  if (item?.label?.place !== "oil" || !isOneWord(item) || next?.kind === itemKind.number)
    return false;
  if (/^(?:net|pressure|press|diff)$/.test(next?.text ?? "")) return false;
  const ahead = items.slice(Math.max(0, at - 4), at);
  // "comp 3 off on oil comp 4 18.4": what stopped it
  const [stopped, on] = ahead.slice(-2).map(({ text }) => text);
  if (/^(?:off|down|out|tripped|locked)$/.test(stopped ?? "") && on === "on") return true;
  return ahead.some(({ text }) => poured.test(text)) || poured.test(next?.text ?? "");
}
