import { expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { jobPlots } from "../src/bot/reports-of.ts";
import { openBot, receive, work } from "../src/bot.ts";
import { openStore } from "../src/record/store.ts";
import type { Plot } from "../src/show/plots/plot.ts";

/** The plots of one job after messages that came at some minutes past eight. */
function plotsAfter(...said: readonly (readonly [minute: number, text: string])[]) {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const all = [[0, "New job: Gull Wharf OU-3, trips. Bram"] as const, ...said];
  for (const [index, [minute, text]] of all.entries()) {
    receive(bot, {
      message: {
        ...{ platform: "test", id: `m${index}`, channel: "south", thread: "t", text, files: [] },
        at: `2026-05-12T08:${String(minute).padStart(2, "0")}:00-05:00`,
        person: index === 0 ? "maren" : "bram",
        role: index === 0 ? "dispatcher" : "tech",
      },
    });
  }
  work(bot);
  const [job] = allJobs(bot.memory);
  if (job === undefined) throw new Error("no job");
  return jobPlots(bot.memory, job);
}

const named = (plots: readonly Plot[], name: string): Plot => {
  const found = plots.find((plot) => plot.name === name);
  if (found === undefined) throw new Error(`no plot ${name}`);
  return found;
};
const pointsOf = (plot: Plot, series = 0) =>
  plot.series[series]?.points.map(([x, y]) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10]);

test("vacuum values between isolation and a timed one stand at their minutes, with the fit", () => {
  const plots = plotsAfter(
    [30, "vacuum isolated at 340 microns"],
    [35, "360 microns"],
    [40, "at 10 minutes 380 microns"],
  );
  const plot = named(plots, "vacuum");
  expect(pointsOf(plot)).toEqual([
    [0, 340],
    [5, 360],
    [10, 380],
  ]);
  expect(plot.series.length).toBe(2);
});

test("minutes that the clock does not bear out go by the words alone", () => {
  const plots = plotsAfter(
    [30, "vacuum isolated at 340 microns"],
    [31, "at 10 minutes 380 microns"],
  );
  expect(pointsOf(named(plots, "vacuum"))).toEqual([
    [0, 340],
    [10, 380],
  ]);
});

test("three legs read after a start are no course of it", () => {
  const plots = plotsAfter(
    [10, "comp 1 start peak 27 A, then 14.1 A"],
    [12, "comp 1 running amps 13.8 14.0 13.7"],
  );
  expect(pointsOf(named(plots, "start"))).toEqual([
    [0, 27],
    [1, 14.1],
  ]);
});

test("leads that were read beside a timed test have a plot of their own, and no empty mark in its", () => {
  const plots = plotsAfter(
    [10, "comp 1 lead 1 to ground 84 meg lead 2 88 meg lead 3 91 meg at 500 V"],
    [20, "comp 1 at one minute 212 meg, ten minute 486 meg"],
  );
  const timed = named(plots, "insulation");
  expect(timed.series.map(({ points }) => points.length)).toEqual([2]);
  expect(pointsOf(named(plots, "insulation-leads"))).toEqual([
    [0, 84],
    [1, 88],
    [2, 91],
  ]);
});
