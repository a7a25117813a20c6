import { touchLimitV } from "../../physics/dc-bus.ts";
import type { ActionName, ObservationName } from "../../vocabulary.ts";
import { drainedReadings } from "../checks/dc-bus.ts";
import { hasPoint, numberOf, ofQuantity } from "../pick.ts";
import { replacesCompressor } from "../replaces-compressor.ts";
import { perScene, type Scene } from "../scene.ts";

/** What cautions look for in a scene. */

type Near = 1 | 2 | 3;

/** The nearest of the conditions that hold. */
export function nearest(...conditions: readonly (readonly [near: Near, holds: boolean])[]) {
  let found: Near | undefined;
  for (const [near, holds] of conditions)
    if (holds && (found === undefined || near > found)) found = near;
  return found;
}

/** The notes' words match. */
export function said(scene: Scene, pattern: RegExp): boolean {
  return pattern.test(scene.words);
}

export function seenAny(scene: Scene, ...names: readonly ObservationName[]): boolean {
  return scene.seen.some((one) => names.includes(one.observation));
}

/** Done to the circuit, by an action or a mass. */
export function doneAny(scene: Scene, ...names: readonly ActionName[]): boolean {
  const masses = scene.readings.some(
    (one) => one.quantity === "mass" && names.some((name) => name === one.action),
  );
  return masses || scene.done.some((one) => names.includes(one.action));
}

/** An insulation test was made or is meant. */
export const insulationTested: (scene: Scene) => boolean = perScene((scene) => {
  const measured = ofQuantity(scene.readings, "insulation_resistance").length > 0;
  return measured || said(scene, /\bmeg(?:ger|ged|ohm)?\b|insulation test|hi-?pot/);
});

/** Ohm; the lowest reading to ground. */
export const lowestToGroundOhm: (scene: Scene) => number | undefined = perScene((scene) => {
  // what was measured on the old compressor says nothing of the new one
  const fitted = scene.notes.findLastIndex(replacesCompressor);
  const old = new Set(scene.notes.slice(0, Math.max(fitted, 0)).flatMap((note) => note.readings));
  const ohms = ofQuantity(
    scene.readings.filter((one) => !old.has(one)),
    "insulation_resistance",
    "winding_resistance",
    "resistance",
  )
    .filter((one) => one.quantity === "insulation_resistance" || hasPoint(one, "ground"))
    .flatMap((one) => numberOf(one) ?? []);
  return ohms.length === 0 ? undefined : Math.min(...ohms);
});

/** Flammability classes A2L, A2 and A3 that the trade meets. Source: ANSI/ASHRAE 34. */
const flammable =
  /r-?(?:32|454[abc]?|452b|455a|1234yf|1234ze|290|600a|1270|466a)\b|a2l|\ba3\b|propane|isobutane|flammable/i;

export const flammableGas: (scene: Scene) => boolean = perScene(
  (scene) => flammable.test(scene.facts.refrigerant ?? "") || flammable.test(scene.words),
);

/** V on a dc bus with the power off, where it is at or over the touch limit. */
export function chargedBusV(scene: Scene): number | undefined {
  const volts = drainedReadings(scene).flatMap((one) => numberOf(one) ?? []);
  const last = volts.at(-1);
  return last !== undefined && last >= touchLimitV ? last : undefined;
}

/** Hands go into an inverter unit, or its diodes were tested. */
export const busWork: (scene: Scene) => boolean = perScene((scene) => {
  const inverter = scene.facts.drive === "inverter" || said(scene, /inverter|\bvfd\b|\bdrive\b/);
  const hands =
    /cover(?:'?s)? (?:is )?(?:off|coming off)|(?:pull|remov|tak|open|drop)(?:ing)? (?:off )?(?:the|its|that) (?:\w+ )?(?:cover|lid|panel)|going (?:back )?in|pull (?:the|that) (?:board|module)|(?:swap|change|replace|pull)(?:ping|ing)? (?:the )?(?:board|module|drive|ipm)|get at it/;
  return inverter && said(scene, hands);
});

/** Outdoor air at or above, Cel. */
export function temperatureAtLeast(scene: Scene, cel: number): boolean {
  return ofQuantity(scene.readings, "temperature").some(
    (one) => one.at === "outdoor_air" && (numberOf(one) ?? Number.NEGATIVE_INFINITY) >= cel,
  );
}

/** The last that was said of the circuit is a vacuum. */
export function underVacuum(scene: Scene): boolean {
  const states = scene.done.flatMap((one) => one.circuit ?? []);
  const last = states[states.length - 1];
  return last === undefined ? ofQuantity(scene.readings, "vacuum").length > 0 : last === "vacuum";
}
