import type { Job, JobReading } from "../../model.ts";
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
  const span = (held.at(-1)?.atS ?? first.atS) - first.atS;
  const time = span < 2 * 3600 ? { says: "minutes", s: 60 } : { says: "hours", s: 3600 };
  const sofar = (atS: number): number => (atS - first.atS) / time.s;
  const compensated = held.flatMap(({ atS, pa, cel }): [number, number][] => {
    const at =
      cel === undefined || first.cel === undefined
        ? undefined
        : nitrogenPaAtConstantVolume(pa, cel, first.cel);
    return at === undefined ? [] : [[sofar(atS), gauge(at)]];
  });
  const least = gauge(first.pa - allowedChangePa(first.pa, 0));
  const whole = compensated.length === held.length;
  return {
    name: "nitrogen",
    title: plotTitle(source, undefined, "nitrogen hold"),
    note: whole
      ? "Taken to the first pipe temperature as a real gas."
      : "Not every pressure has a pipe temperature: what is missing cannot be compensated.",
    x: { says: `${time.says} since the first pressure`, scale: "linear" },
    y: {
      says: `${shown.unit}, gauge`,
      scale: "linear",
      least: [gauge(first.pa * 0.96), gauge(first.pa * 1.01)],
    },
    series: [
      {
        says: "as read",
        points: held.map(({ atS, pa }) => [sofar(atS), gauge(pa)] as const),
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
  const filled = lastFilling(job);
  if (filled === undefined) return [];
  const cels = measuredOf(job, "temperature");
  const held = measuredOf(job, "pressure")
    .filter((r) => r.at === undefined && seconds(r.received) >= seconds(filled))
    .map((r) => ({ atS: seconds(r.taken), pa: absolute(r, ambientPa), cel: celOf(r, cels) }))
    .filter(({ pa }) => pa >= leastTestPa);
  return held.slice(held.findLastIndex((one, index) => isRefill(held[index - 1], one)));
}

/** What ends a hold: what is read after it belongs to another one, or to none. */
const ends: ReadonlySet<string> = new Set([
  "nitrogen_out",
  "vacuum_started",
  "charged",
  "circuit_opened",
]);

/** When nitrogen was first named since the last hold ended: a later reading may name it again. */
function lastFilling(job: Job): string | undefined {
  let from: string | undefined;
  for (const { statement, at, undone, deleted } of job.statements) {
    if (statement.kind !== "action" || statement.planned === true) continue;
    if (undone === true || deleted === true) continue;
    if (statement.action === "nitrogen_in") from ??= at;
    else if (ends.has(statement.action) && hasLater(job, at)) from = undefined;
  }
  return from;
}

const hasLater = (job: Job, after: string): boolean =>
  job.statements.some(
    ({ statement, at, undone, deleted }) =>
      statement.kind === "action" &&
      statement.action === "nitrogen_in" &&
      undone !== true &&
      deleted !== true &&
      seconds(at) > seconds(after),
  );

/** Pressure that rises by more than warmth explains in a day was put in. Common practice, no source. */
const leastRefill = 1.15;

const isRefill = (before: Held | undefined, { pa }: Held): boolean =>
  before === undefined || pa > before.pa * leastRefill;

const absolute = (reading: JobReading & { readonly value: number }, ambientPa: number): number =>
  reading.reference === "absolute" ? reading.value : reading.value + ambientPa;

function celOf(
  pressure: JobReading,
  temperatures: readonly (JobReading & { readonly value: number })[],
): number | undefined {
  return temperatures.find((one) => one.message === pressure.message)?.value;
}
