import type { Finding } from "../../model.ts";
import { applicationOf, inTestOperation } from "../application.ts";
import { circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { sumsOf } from "../masses.ts";
import type { Scene } from "../scene.ts";

/** Pressures of a variable multi-zone machine as it runs: no verdict on the charge, and what would give one. */
export function chargeUndecided(scene: Scene): Finding[] {
  if (applicationOf(scene) !== "multi_zone" || inTestOperation(scene)) return [];
  if (sumsOf(scene).outKg !== 0) return [];
  return circuitsOf(scene)
    .filter((one) => one.suctionPa !== undefined || one.highPa !== undefined)
    .filter((one) => contradictionsOf(one, scene).length === 0)
    .map(({ about }) => ({
      about,
      check: "charge",
      level: "unknown",
      says: "On a variable multi-zone machine suction, head and superheat are what it holds, so they give no verdict on the charge. Weigh it, or run the forced test operation 15 to 20 minutes and read outdoor subcooling, discharge superheat and valve openings",
      brief: "no charge verdict outside test operation",
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      missing: "a weighed charge, or forced test operation settled 15 to 20 minutes",
    }));
}
