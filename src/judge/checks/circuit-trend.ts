import type { Finding } from "../../model.ts";
import { kelvinPerFahrenheit } from "../../physics/constants.ts";
import { airOf } from "../air.ts";
import { applicationOf } from "../application.ts";
import { type Circuit, circuitsOf } from "../circuit.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { type Scene, sceneOf } from "../scene.ts";
import { subcoolingOf } from "./subcooling.ts";
import { superheatOf } from "./superheat.ts";

/** K, 5 F: less is weather and probes. Common practice, no source. */
const tellingK = 5 * kelvinPerFahrenheit;
/** K; farther apart two days' figures are no comparison. Common practice, no source. */
const sameWeatherK = 15 * kelvinPerFahrenheit;

/** Superheat and subcooling now against the unit's own last visit in like weather. */
export function circuitTrend(circuit: Circuit, scene: Scene): Finding[] {
  if (applicationOf(scene) === "multi_zone") return [];
  const past = pastScene(scene);
  if (past === undefined || !isSameWeather(past, scene)) return [];
  const before = circuitsOf(past).find((one) => one.about === circuit.about);
  if (before === undefined) return [];
  const figures = figuresOf(scene);
  return [
    ...change("superheat", superheatOf(before), superheatOf(circuit), figures),
    ...change("subcooling", subcoolingOf(before), subcoolingOf(circuit), figures),
  ].map((one) => ({ ...one, about: circuit.about }));
}

/** The latest earlier job on this unit that holds readings. */
function pastScene(scene: Scene): Scene | undefined {
  const past = scene.history.findLast((one) => one.notes.some((note) => note.readings.length > 0));
  if (past === undefined) return undefined;
  const { facts: equipment, site, codes } = scene;
  return sceneOf({ equipment, site, codes, notes: past.notes, history: [] });
}

function isSameWeather(past: Scene, now: Scene): boolean {
  const then = airOf(past).outdoorCel;
  const today = airOf(now).outdoorCel;
  return then === undefined || today === undefined || Math.abs(then - today) <= sameWeatherK;
}

function change(
  name: string,
  before: number | undefined,
  now: number | undefined,
  figures: Figures,
): Omit<Finding, "about">[] {
  if (before === undefined || now === undefined || Math.abs(now - before) < tellingK) return [];
  return [
    {
      check: "history",
      level: "watch",
      says: `${name === "superheat" ? "Superheat" : "Subcooling"} ${figures.difference(now)} against ${figures.difference(before)} on the last visit`,
      brief: `${name} was ${figures.difference(before)} last visit`,
      values: {},
      basis: "own history",
      source: "comparison with the unit's own earlier visit; 5 F common practice, no source",
    },
  ];
}
