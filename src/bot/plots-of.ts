import type { Plot } from "../show/plots/plot.ts";
import { insulationPlots } from "./plots/insulation-plot.ts";
import { nitrogenPlot } from "./plots/nitrogen-plot.ts";
import type { PlotSource } from "./plots/plot-source.ts";
import { startPlot } from "./plots/start-plot.ts";
import { vacuumPlot } from "./plots/vacuum-plot.ts";

/** What can be plotted of a job; a new plot is its file and a line here. */
const makers = [insulationPlots, startPlot, vacuumPlot, nitrogenPlot] as const;

/** The plots that a job's readings are enough for. */
export function plotsOf(source: PlotSource): readonly Plot[] {
  return makers.flatMap((make) => make(source) ?? []);
}
