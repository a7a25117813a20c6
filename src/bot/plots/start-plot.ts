import type { JobReading } from "../../model.ts";
import type { Plot, Series } from "../../show/plots/plot.ts";
import { measuredOf, type PlotSource, plotTitle } from "./plot-source.ts";

type Amps = JobReading & { readonly value: number };

/** Current from the start on: over seconds where they were said, else step by step as said. */
export function startPlot(source: PlotSource): Plot | undefined {
  const amps = measuredOf(source.job, "current").filter((r) => r.kind !== "dc");
  const start = amps.findLast(isStart);
  if (start === undefined) return undefined;
  const of = amps.filter((r) => r.subject === start.subject);
  const from = of.indexOf(start);
  const run = runFrom(of, from);
  const timed = run.flatMap((r): [number, number][] =>
    r.after_s === undefined ? [] : [[r.after_s, r.value]],
  );
  const steps = run.flatMap((r) => (r.series === undefined ? [r.value] : [...r.series]));
  if (timed.length < 2 && steps.length < 2) return undefined;
  const overTime = timed.length >= 2;
  const series: Series = {
    says: "as read",
    points: overTime
      ? timed.sort((a, b) => a[0] - b[0])
      : steps.map((value, index) => [index, value]),
    mark: "dot",
    line: "solid",
  };
  return {
    name: "start",
    title: plotTitle(source, start.subject, "current at start"),
    note: overTime ? "" : "In the order said; no times were given between them.",
    x: overTime
      ? { says: "seconds since start", scale: "linear", least: [0, 5] }
      : { says: "in the order said", scale: "linear", names: steps.map((_, n) => String(n + 1)) },
    y: { says: "A", scale: "linear", least: [0, 10] },
    series: [series],
    limits: limitsOf(source),
  };
}

const isStart = (r: Amps): boolean => r.state === "start" || r.stat === "peak";

/** The first start of the last run of starts, and what was read after it of the same leg. */
function runFrom(of: readonly Amps[], last: number): readonly Amps[] {
  let from = last;
  while (from > 0 && of[from - 1]?.message === of[last]?.message) from -= 1;
  const first = of.slice(0, from + 1).findLastIndex(isStart);
  const run = of.slice(Math.max(0, Math.min(first, from)));
  return run.filter((one) => !isLegOfSet(one, run));
}

/** Three legs that were read together run beside each other, not one after the other. */
function isLegOfSet(one: Amps, run: readonly Amps[]): boolean {
  if (one.after_s !== undefined || one.series !== undefined) return false;
  const together = run.filter((r) => r.message === one.message);
  return together.length > 2 && together.every((r) => !isStart(r) && r.after_s === undefined);
}

function limitsOf({ equipment }: PlotSource): Plot["limits"] {
  const plate = [
    ["locked rotor, plate", equipment.lra_A],
    ["rated load, plate", equipment.rla_A],
    ["most in operation, plate", equipment.moc_A],
  ] as const;
  return plate.flatMap(([says, at]) =>
    at === undefined ? [] : [{ at, says: `${says}: ${at} A` }],
  );
}
