import { type Item, itemKind } from "./item.ts";

/** V; what a silicon junction drops in a meter's diode range: service literature, common practice. */
const junctionV = { from: 0.25, to: 0.75 };
/** Drops that make a row of a bridge's legs. */
const fewestDrops = 3;

/** "rectifier 0.42 0.43 0.42": told of a bridge, three or more bare figures as a junction drops. */
function isRowOfDrops(items: readonly Item[]): boolean {
  // "with a bridge meter": what ohms are read with
  const meter = (at: number): boolean => /^(?:meter|ohmmeter)s?$/.test(items[at]?.text ?? "");
  const told = items.some(
    ({ text }, at) => /^(?:rectifiers?|bridge|ipm|igbts?|module)$/.test(text) && !meter(at + 1),
  );
  if (!told) return false;
  const bare = items.filter(({ kind, unit }) => kind === itemKind.number && unit === undefined);
  const drops = bare.filter(({ value }) => value >= junctionV.from && value <= junctionV.to);
  // ".48 .47 .48 .02": a junction that has gone short among them
  const short = ({ value }: Item): boolean => value >= 0 && value < junctionV.from;
  return (
    drops.length >= fewestDrops &&
    bare.every((one) => drops.includes(one) || one.spoken || short(one))
  );
}

/** "L1 .46 L2 .46 L3 OL both ways to P": drops of junctions, and the rail behind them. */
function dropsToRail(items: readonly Item[]): boolean {
  const rail = items.some(
    ({ text }, at) =>
      text === "to" && /^(?:p|n|plus|minus|positive|negative)$/.test(items[at + 1]?.text ?? ""),
  );
  const drops = items.filter(
    ({ kind, unit, value }) =>
      kind === itemKind.number &&
      unit === undefined &&
      value >= junctionV.from &&
      value <= junctionV.to,
  );
  return rail && drops.length > 1;
}

/** Is a bridge tried by its diodes, as the figures tell? */
export function tellsDrops(items: readonly Item[]): boolean {
  return isRowOfDrops(items) || dropsToRail(items);
}
