import type { JobReading } from "../../model.ts";
import { pascalPerPsi } from "../../physics/constants.ts";
import { nitrogenPaAtConstantVolume } from "../../physics/nitrogen.ts";
import { allowedChangePa } from "../../physics/nitrogen-hold.ts";
import type { Plot } from "../../show/plots/plot.ts";
import { measuredOf, type PlotSource, plotTitle, seconds } from "./plot-source.ts";

/** Pa absolute: less is a trickle, no test. Common practice, no source. */
const leastTestPa = 400_000;

interface Held {
  readonly atS: number;
  readonly pa: number;
  readonly cel: number | undefined;
}

/** A nitrogen hold over its hours: as read, and with the temperature taken out. */
export function nitrogenPlot(source: PlotSource): Plot | undefined {
  const held = holdOf(source);
  const [first] = held;
  if (first === undefined || held.length < 2) return undefined;
  const shown =
    source.units === "us" ? { unit: "psi", pa: pascalPerPsi } : { unit: "bar", pa: 1e5 };
  const gauge = (pa: number): number => (pa - source.ambientPa) / shown.pa;
  const hours = (atS: number): number => (atS - first.atS) / 3600;
  const compensated = held.flatMap(({ atS, pa, cel }): [number, number][] => {
    const at =
      cel === undefined || first.cel === undefined
        ? undefined
        : nitrogenPaAtConstantVolume(pa, cel, first.cel);
    return at === undefined ? [] : [[hours(atS), gauge(at)]];
  });
  const least = gauge(first.pa - allowedChangePa(first.pa, 0));
  const whole = compensated.length === held.length;
  return {
    name: "nitrogen",
    title: plotTitle(source, undefined, "nitrogen hold"),
    note: whole
      ? "Taken to the first pipe temperature by the real gas law of nitrogen."
      : "Not every pressure has a pipe temperature: what is missing cannot be compensated.",
    x: { says: "hours since the first pressure", scale: "linear" },
    y: {
      says: `${shown.unit}, gauge`,
      scale: "linear",
      least: [gauge(first.pa * 0.96), gauge(first.pa * 1.01)],
    },
    series: [
      {
        says: "as read",
        points: held.map(({ atS, pa }) => [hours(atS), gauge(pa)] as const),
        mark: "ring",
        line: "dashed",
      },
      { says: "with the temperature taken out", points: compensated, mark: "dot", line: "solid" },
    ],
    limits: [{ at: least, says: "what gauge and weather explain" }],
  };
}

/** Pressures of the last filling, each with the pipe temperature of its message. */
function holdOf({ job, ambientPa }: PlotSource): readonly Held[] {
  const filled = job.statements.findLast(
    ({ statement, undone, deleted }) =>
      statement.kind === "action" &&
      statement.action === "nitrogen_in" &&
      statement.planned !== true &&
      undone !== true &&
      deleted !== true,
  );
  if (filled === undefined) return [];
  const cels = measuredOf(job, "temperature");
  return measuredOf(job, "pressure")
    .filter((r) => r.at === undefined && seconds(r.received) >= seconds(filled.at))
    .map((r) => ({ atS: seconds(r.taken), pa: absolute(r, ambientPa), cel: celOf(r, cels) }))
    .filter(({ pa }) => pa >= leastTestPa);
}

const absolute = (reading: JobReading & { readonly value: number }, ambientPa: number): number =>
  reading.reference === "absolute" ? reading.value : reading.value + ambientPa;

function celOf(
  pressure: JobReading,
  temperatures: readonly (JobReading & { readonly value: number })[],
): number | undefined {
  return temperatures.find((one) => one.message === pressure.message)?.value;
}
