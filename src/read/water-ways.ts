import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";

const enters =
  /(?:^|[ ,])(?:water|glycol|brine)(?:'?s| is)? (?:(?:goes|going|comes|coming) (?:in|back)|in|enters|entering)(?:'?s| is| at| around| about)*$/;
const leaves =
  /(?:^|[ ,])(?:water|glycol|brine)(?:'?s| is)? (?:(?:goes|going|comes|coming) out|out|leaves|leaving)(?:'?s| is| at| around| about)*$/;
const otherWay =
  /^(?:and |, ?|then |it |it's |its )*(?:(?:goes|going|comes|coming|back) )*(?:in|out|enters|entering|leaves|leaving)(?:'?s| is| at| around| about)*$/;
/** Water of a named side has words of its own; what is chilled comes and goes as water does. */
const ofSide = /\b(?:cond|condenser|tower|evap|evaporator|cdw)\b/;
const direction = /\b(?:in|back|out|enters|entering|leaves|leaving)(?:'?s)?$/;

const places = { in: "water_in", out: "water_out" } as const;

function isWarmth(item: Item | undefined): boolean {
  const { kind, unit } = item ?? {};
  return kind === itemKind.number && (unit === undefined || unit.dimension === "temperature");
}

/** The item before the figure that says which way the water goes. */
function wayBefore(items: readonly Item[], at: number, plain: string): Item | undefined {
  for (let i = at - 1; i >= 0 && i >= at - 3; i--) {
    const item = items[i];
    if (item === undefined || item.kind === itemKind.number) return undefined;
    if (direction.test(plain.slice(item.from, item.to).replace(/ at$/, ""))) return item;
  }
  return undefined;
}

/** "water 71 in": which way it goes, told behind its figure at the end of a clause. */
function behind(items: readonly Item[], at: number, plain: string): void {
  const [water, item, way, end] = items.slice(Math.max(0, at - 1), at + 3);
  if (at === 0 || item === undefined || way === undefined || !isWarmth(item)) return;
  const ends = end === undefined || end.kind === itemKind.line || /^[,.;]$/.test(end.text);
  if (
    !ends ||
    !/^(?:water|glycol|brine)$/.test(water?.text ?? "") ||
    !/^(?:in|out)$/.test(way.text)
  )
    return;
  if (ofSide.test(plain.slice(0, item.from)) || way.label?.place !== undefined) return;
  way.kind = itemKind.label;
  way.label = { place: way.text === "in" ? "water_in" : "water_out", hint: "temperature" };
}

/** "glycol goes in at -3 and comes out at -7", "water enters at 12 and leaves at 7": degrees at both ends, no times. */
export function waterWays(items: readonly Item[], plain: string): void {
  let from = 0;
  let last: keyof typeof places | undefined;
  items.forEach((item, at) => {
    if (item.kind !== itemKind.number) return;
    const words = plain.slice(from, item.from).trim();
    const told = enters.test(words) || leaves.test(words);
    const way = told ? !ofSide.test(words) : last !== undefined && otherWay.test(words);
    from = item.to;
    const named = way && isWarmth(item) ? wayBefore(items, at, plain) : undefined;
    const turned = /\b(?:in|back|enters|entering)\b/.test(words) ? "in" : "out";
    last = named === undefined ? undefined : turned;
    behind(items, at, plain);
    if (named === undefined || named.label?.place !== undefined) return;
    named.kind = itemKind.label;
    named.label = { place: places[turned], hint: "temperature" };
  });
}

/** "Flow 62 return 48", and then "no flow was 64": the way of the water that was told, and no amount of it. */
export function flowAgain(items: readonly Item[], { readings, latest }: Context): void {
  const told = readings.slice(readings.length - latest);
  if (!told.some(({ at, said }) => at === "water_out" && /^flow\b/i.test(said))) return;
  for (const [at, item] of items.entries()) {
    const figure = items.slice(at + 1, at + 4).find(({ kind }) => kind === itemKind.number);
    if (item.text !== "flow" || figure === undefined || !isWarmth(figure)) continue;
    item.kind = itemKind.label;
    item.label = { place: "water_out", hint: "temperature" };
  }
}
