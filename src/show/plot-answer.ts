import type { Plot } from "./plots/plot.ts";
import { sentence } from "./wording.ts";

/** What people call a plot, and what it is made from. */
export const plotNeeds = {
  vacuum: "two vacuum readings with their times after isolation",
  insulation: "the leads of one test, or one lead at two times",
  start: "a current at start and one after it",
  nitrogen: "two pressures after the nitrogen went in",
} as const;
export type PlotName = keyof typeof plotNeeds;

/** Above the picture, or in its place: what it shows, or what it would need. */
export function plotAnswer(unit: string, plots: readonly Plot[], asked: PlotName | "all"): string {
  if (plots.length > 0) {
    return plots.map(({ title, note }) => [sentence(title), note].join(" ").trim()).join("\n");
  }
  return asked === "all"
    ? `${unit}: nothing to plot yet.`
    : `${unit}: no ${asked} plot yet. It needs ${plotNeeds[asked]}.`;
}

/** Where no job is meant that is known. */
export const plotOfWhat = "A plot of which job? Say plot the vacuum of, and the unit.";
