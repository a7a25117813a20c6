import type { JobReading } from "../../model.ts";
import { pascalPerMicron } from "../../physics/constants.ts";
import {
  type Decay,
  type DecayPoint,
  decayLimits,
  vacuumDecay,
} from "../../physics/vacuum-decay.ts";
import type { Plot, Series } from "../../show/plots/plot.ts";
import { measuredOf, type PlotSource, plotTitle, seconds } from "./plot-source.ts";

/** The last standing vacuum against its limit, with the curve that its shape follows. */
export function vacuumPlot(source: PlotSource): Plot | undefined {
  const stand = lastStand(source);
  const own = source.limits.vacuum_hold?.most;
  const decay = vacuumDecay(stand, own);
  if (decay === undefined) return undefined;
  const points = stand.map(({ afterS, absolutePa }) => [afterS / 60, micron(absolutePa)] as const);
  return {
    name: "vacuum",
    title: plotTitle(source, undefined, "vacuum after isolation"),
    note: notes[decay.shape],
    x: { says: "minutes since isolation", scale: "linear", least: [0, 5] },
    y: { says: "micron", scale: "linear", least: [0, 600] },
    series: [{ says: "as read", points, mark: "dot", line: "none" }, ...fitted(stand, decay)],
    limits: [
      own === undefined
        ? { at: micron(decayLimits.holdPa), says: "500 micron hold, common practice" }
        : { at: micron(own), says: `${Math.round(micron(own))} micron hold, the company's own` },
    ],
  };
}

const notes = {
  tight: "Stays below the hold: tight and dry by it.",
  above_hold: "Levels off above the hold: no leak by its shape, not proven dry.",
  leak: "Rises straight on: the curve of a leak.",
  wet: "Levels off high: the curve of moisture, or of refrigerant in oil.",
  short: "Too short or too few readings to tell a leak from moisture.",
} as const;

const micron = (pa: number): number => pa / pascalPerMicron;

/** The points of the last stand: by the seconds said, else by the clock from the lowest reading on. */
function lastStand({ job }: PlotSource): readonly DecayPoint[] {
  const readings = measuredOf(job, "vacuum");
  const timed = readings.some((r) => r.after_s !== undefined);
  if (!timed) {
    const lowest = readings.reduce((low, r) => Math.min(low, r.value), Number.POSITIVE_INFINITY);
    const from = readings.findLastIndex((r) => r.value === lowest);
    const stand = readings.slice(Math.max(0, from));
    const start = stand[0] === undefined ? 0 : seconds(stand[0].taken);
    return increasing(
      stand.map((r) => ({ afterS: seconds(r.taken) - start, absolutePa: r.value })),
    );
  }
  let points: DecayPoint[] = [];
  let untimed: Vacuum[] = [];
  for (const reading of readings) {
    const { value, after_s, series } = reading;
    if (after_s === undefined) {
      untimed.push(reading);
      points = [];
      continue;
    }
    // a time that goes back begins a new stand
    if (after_s <= (points.at(-1)?.afterS ?? -1)) points = [];
    if (points.length === 0) points = beforeOf(reading, series?.[0], untimed);
    points.push({ afterS: after_s, absolutePa: value });
    untimed = [];
  }
  return points;
}

type Vacuum = JobReading & { readonly value: number };

/** s that a reading may have been sent late. */
const lateS = 90;

/**
 * What stands before the first timed reading: the value that it rose from, and what was read between by
 * the clock, where the clock bears the minutes out.
 */
function beforeOf(
  timed: Vacuum,
  rose: number | undefined,
  untimed: readonly Vacuum[],
): DecayPoint[] {
  const afterS = timed.after_s ?? 0;
  const last = rose ?? untimed.at(-1)?.value;
  if (afterS <= 0 || last === undefined) return [];
  const start = seconds(timed.taken) - afterS;
  const first = untimed.findIndex((r) => Math.abs(seconds(r.taken) - start) <= lateS);
  if (rose !== undefined || first < 0) return [{ afterS: 0, absolutePa: last }];
  const stand = untimed.slice(first).map((r, index) => ({
    afterS: index === 0 ? 0 : seconds(r.taken) - start,
    absolutePa: r.value,
  }));
  return [...increasing(stand.filter((point) => point.afterS < afterS))];
}

/** Two readings of one moment are one point. */
function increasing(points: readonly DecayPoint[]): readonly DecayPoint[] {
  return points.filter(
    (point, index) => index === 0 || point.afterS > (points[index - 1]?.afterS ?? 0),
  );
}

/** The curve of the shape: a straight line for a leak, one that levels off for moisture. */
function fitted(stand: readonly DecayPoint[], decay: Decay): readonly Series[] {
  const last = stand.at(-1);
  const [first] = stand;
  if (decay.shape === "short" || first === undefined || last === undefined || stand.length < 3) {
    return [];
  }
  const curve = curveOf(stand, decay.restsAtPa);
  const steps = 60;
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    const afterS = first.afterS + ((last.afterS - first.afterS) * step) / steps;
    return [afterS / 60, micron(curve(afterS))] as const;
  });
  const rest = decay.restsAtPa;
  const says =
    rest === undefined
      ? `fit: straight, ${Math.round(micron(decay.paPerMin))} micron a minute`
      : `fit: levels off near ${Math.round(micron(rest))} micron`;
  return [{ says, points, mark: "none", line: "dashed" }];
}

/** p0 + k t by least squares; or p1 - (p1 - p0) exp(-t / tau), tau by least squares of its logarithm. */
function curveOf(
  stand: readonly DecayPoint[],
  restPa: number | undefined,
): (afterS: number) => number {
  if (restPa === undefined) {
    const { slope, from } = leastSquares(stand.map((p) => [p.afterS, p.absolutePa]));
    return (afterS) => from + slope * afterS;
  }
  const logs = stand.flatMap(({ afterS, absolutePa }): [number, number][] =>
    restPa - absolutePa > restPa * 1e-3 ? [[afterS, Math.log(restPa - absolutePa)]] : [],
  );
  if (logs.length < 2) {
    const mean = stand.reduce((sum, p) => sum + p.absolutePa, 0) / stand.length;
    return () => mean;
  }
  const { slope, from } = leastSquares(logs);
  return (afterS) => restPa - Math.exp(from + Math.min(0, slope) * afterS);
}

function leastSquares(points: readonly (readonly [number, number])[]): {
  readonly slope: number;
  readonly from: number;
} {
  const n = points.length;
  const mean = (index: 0 | 1): number => points.reduce((sum, p) => sum + p[index], 0) / n;
  const [mx, my] = [mean(0), mean(1)];
  const over = points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  const under = points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
  const slope = under === 0 ? 0 : over / under;
  return { slope, from: my - slope * mx };
}
