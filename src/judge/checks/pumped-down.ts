import type { Finding } from "../../model.ts";
import { isPumpingDown } from "../pumping-down.ts";
import type { Scene } from "../scene.ts";

/** Pressures of a pump-down: what they say, and what they don't. */
export function pumpedDown(scene: Scene): Finding[] {
  const read = scene.readings.some(
    (one) => one.quantity === "pressure" && isPumpingDown(scene, one),
  );
  if (!read) return [];
  return [
    {
      about: "system",
      check: "compression",
      level: "unknown",
      says: "Read while it is pumped down: suction and superheat say nothing of the charge there. How far it pulls down, and whether both sides stay apart once it is stopped, tells of the compressor's valves",
      brief: "pumped down, no word on the charge",
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      missing: "pressures with the valves open and settled",
    },
  ];
}
