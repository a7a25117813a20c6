import type { Job, JobReading } from "../../model.ts";
import { insulationFloorOhm } from "../../physics/insulation.ts";
import type { Plot, Series } from "../../show/plots/plot.ts";
import { measuredOf, type PlotSource, plotTitle } from "./plot-source.ts";

type Measured = JobReading & { readonly value: number };

const ohmPerMegohm = 1e6;
const usualFloor = { at: insulationFloorOhm / ohmPerMegohm, says: "5 megohm floor, IEEE 43" };
const mostTests = 4;

/** Insulation while the test runs, where it was timed; by lead, against earlier tests, where it was not. */
export function insulationPlots(source: PlotSource): readonly Plot[] {
  const all = measuredOf(source.job, "insulation_resistance");
  const subject = all.at(-1)?.subject;
  const now = all.filter((r) => r.subject === subject);
  const timed = now.filter((r) => r.after_s !== undefined);
  if (new Set(timed.map((r) => r.after_s)).size < 2) {
    return leadPlot(source, now, { name: "insulation", subject });
  }
  // of what was read lead by lead beside a timed test no line goes through the minutes
  const byLead = now.filter((r) => r.after_s === undefined);
  const beside =
    byLead.length < 2 ? [] : leadPlot(source, byLead, { name: "insulation-leads", subject });
  return [timedPlot(source, timed, subject), ...beside];
}

function timedPlot(
  source: PlotSource,
  readings: readonly Measured[],
  subject: string | undefined,
): Plot {
  const labels = [...new Set(readings.map(labelOf))];
  const series = labels.map(
    (label, index): Series => ({
      says: label,
      points: readings
        .filter((r) => labelOf(r) === label)
        .map((r) => [(r.after_s ?? 0) / 60, r.value / ohmPerMegohm] as const)
        .sort((a, b) => a[0] - b[0]),
      mark: marks[index % marks.length] ?? "dot",
      line: "solid",
    }),
  );
  return {
    name: "insulation",
    title: plotTitle(source, subject, "insulation while the test runs"),
    note: "Not corrected for temperature.",
    x: { says: "minutes of test voltage", scale: "linear", least: [0, 10] },
    y: { says: "megohm", scale: "log", least: [1, 1000] },
    series,
    limits: floorsOf(source),
  };
}

/** The published floor, and the company's own where it set one. */
function floorsOf({ limits }: PlotSource): Plot["limits"] {
  const own = limits.insulation?.least;
  if (own === undefined) return [usualFloor];
  const megohm = own / ohmPerMegohm;
  return [usualFloor, { at: megohm, says: `${megohm} megohm floor, the company's own` }];
}

const marks = ["dot", "ring", "cross"] as const;

const labelOf = (reading: JobReading): string =>
  reading.points?.filter((point) => point !== "ground").join(" to ") ?? "winding to ground";

/** This job's test and earlier ones, the newest first. */
function leadPlot(
  source: PlotSource,
  now: readonly Measured[],
  { name, subject }: { readonly name: string; readonly subject: string | undefined },
): readonly Plot[] {
  const earlier = [...source.earlier].reverse().flatMap((job) => testOf(job, subject));
  const tests = [...(now.length === 0 ? [] : [{ date: dateOf(now), readings: now }]), ...earlier];
  const names = [...new Set(now.map(labelOf))].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const count = tests.slice(0, mostTests).reduce((sum, test) => sum + test.readings.length, 0);
  if (now.length === 0 || count < 2) return [];
  const series = tests.slice(0, mostTests).map(
    ({ date, readings }, index): Series => ({
      says: index === 0 ? `now, ${date}` : date,
      points: readings.flatMap((r): [number, number][] => {
        const at = names.indexOf(labelOf(r));
        return at < 0 ? [] : [[at, r.value / ohmPerMegohm]];
      }),
      mark: index === 0 ? "dot" : index % 2 === 1 ? "ring" : "cross",
      line: "none",
    }),
  );
  const plot: Plot = {
    name,
    title: plotTitle(source, subject, "insulation by lead"),
    note: "To ground, as read; not corrected for temperature.",
    x: { says: "lead", scale: "linear", names },
    y: { says: "megohm", scale: "log", least: [1, 1000] },
    series: series.filter(({ points }) => points.length > 0),
    limits: floorsOf(source),
  };
  return [plot];
}

const dateOf = (readings: readonly Measured[]): string => readings.at(-1)?.taken.slice(0, 10) ?? "";

function testOf(
  job: Job,
  subject: string | undefined,
): readonly { readonly date: string; readonly readings: readonly Measured[] }[] {
  const readings = measuredOf(job, "insulation_resistance").filter((r) => r.subject === subject);
  return readings.length === 0 ? [] : [{ date: dateOf(readings), readings }];
}
