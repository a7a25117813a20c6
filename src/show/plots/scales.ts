import { scaleLinear, scaleLog } from "d3-scale";
import type { Axis } from "./plot.ts";

/** From a value to its place on the page, with the ticks to write. */
export interface Scale {
  readonly at: (value: number) => number;
  readonly ticks: readonly { readonly value: number; readonly says: string }[];
}

const fewest = 4;

/** A scale over all values and limits that it must show. `place`: from and to, in pt. */
export function scaleOf(
  axis: Axis,
  values: readonly number[],
  place: readonly [from: number, to: number],
): Scale {
  if (axis.names !== undefined) return namedScale(axis.names, place);
  const shown = [...values, ...(axis.least ?? [])].filter(
    (value) => Number.isFinite(value) && (axis.scale === "linear" || value > 0),
  );
  const [low, high] = [least(shown), most(shown)];
  if (axis.scale === "log") return logScale(low, high, place);
  const scale = scaleLinear()
    .domain(low === high ? [low - 1, high + 1] : [low, high])
    .nice(fewest)
    .range([...place]);
  const format = scale.tickFormat(fewest);
  return {
    at: (value) => scale(value),
    ticks: scale.ticks(fewest).map((value) => ({ value, says: plain(format(value)) })),
  };
}

const least = (values: readonly number[]): number =>
  values.reduce((low, value) => Math.min(low, value), values[0] ?? 0);
const most = (values: readonly number[]): number =>
  values.reduce((high, value) => Math.max(high, value), values[0] ?? 1);

/** A minus that every font and every reader knows. */
const plain = (text: string): string => text.replace("\u2212", "-");

function logScale(low: number, high: number, place: readonly [number, number]): Scale {
  const from = 10 ** Math.floor(Math.log10(low));
  const to = 10 ** Math.ceil(Math.log10(high));
  const scale = scaleLog()
    .domain([from, to === from ? from * 10 : to])
    .range([...place]);
  const decades = scale
    .ticks()
    .filter((value) => Math.abs(Math.log10(value) - Math.round(Math.log10(value))) < 1e-9);
  return {
    at: (value) => scale(Math.max(value, from)),
    ticks: decades.map((value) => ({ value, says: String(Number(value.toPrecision(3))) })),
  };
}

function namedScale(names: readonly string[], [from, to]: readonly [number, number]): Scale {
  const step = (to - from) / Math.max(1, names.length);
  return {
    at: (value) => from + step * (value + 0.5),
    ticks: names.map((says, value) => ({ value, says })),
  };
}
