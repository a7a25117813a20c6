import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import type { Scene } from "../scene.ts";
import { isSwapTest } from "../swap-test.ts";

/** One line of a start-up record and how it shows in the notes. */
interface Item {
  readonly name: string;
  readonly after: "compressor" | "any";
  readonly isThere: (scene: Scene) => boolean;
}

/**
 * What a start-up record holds on a new system, and after a compressor or a board was changed.
 * Source: common practice, no source; the company's own form may ask for more.
 */
const items: readonly Item[] = [
  { name: "nitrogen hold", after: "compressor", isThere: hasNitrogen },
  { name: "vacuum and its rise", after: "compressor", isThere: (scene) => has(scene, "vacuum") },
  {
    name: "weight charged",
    after: "compressor",
    isThere: (scene) => has(scene, "mass", isCharged),
  },
  { name: "supply volts", after: "any", isThere: (scene) => has(scene, "voltage") },
  { name: "running amps", after: "any", isThere: (scene) => has(scene, "current") },
  {
    name: "suction pressure",
    after: "compressor",
    isThere: (scene) => has(scene, "pressure", at("suction")),
  },
  {
    name: "head or liquid pressure",
    after: "compressor",
    isThere: (scene) => has(scene, "pressure", at("discharge", "liquid")),
  },
  {
    name: "suction line temperature",
    after: "compressor",
    isThere: (scene) => has(scene, "temperature", at("suction")),
  },
  {
    name: "liquid line temperature",
    after: "compressor",
    isThere: (scene) => has(scene, "temperature", at("liquid")),
  },
  {
    name: "return and supply air",
    after: "any",
    isThere: (scene) =>
      has(scene, "temperature", at("supply_air", "box")) || has(scene, "temperature_difference"),
  },
];

/** A compressor or a board was changed: what of a complete start-up record is still missing. */
export const commissioning: Check = {
  name: "commissioning",
  examples: [
    {
      level: "unknown",
      notes: ["compressor replaced"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
  ],
  signs: [],
  judge: (scene) => {
    const what = changed(scene);
    if (what === undefined) return [];
    const missing = items
      .filter((one) => (one.after === "any" || what !== "board") && !one.isThere(scene))
      .map((one) => one.name);
    return [finding(what, missing)];
  },
};

function changed(scene: Scene): "compressor" | "board" | "system" | undefined {
  if (isNewSystem(scene)) return "system";
  if (scene.parts.length === 0 && scene.done.length === 0) return undefined;
  if (scene.notes.some(isSwapTest)) return undefined;
  const words = [
    ...scene.parts.filter((one) => one.state === "fitted").map((one) => one.part),
    ...scene.done.filter((one) => one.action === "replaced").map((one) => one.what ?? one.said),
  ].map((one) => one.toLowerCase());
  if (words.some((one) => /\bcomp(ressor)?\b/.test(one))) return "compressor";
  return words.some((one) => /board|inverter|drive|module/.test(one)) ? "board" : undefined;
}

/** A new machine is started up. */
export function isNewSystem(scene: Scene): boolean {
  return newSystem.test(scene.words);
}

const newSystem =
  /\b(?:start(?:ed|ing)?[- ]?up|commission(?:ed|ing)|first start)\b.{0,24}\b(?:new|brand.?new)\b|\bnew (?:system|install\w*|multi\W?zone|unit|machine)\b.{0,30}\b(?:start(?:ed|ing)?[- ]?up|commission\w*|first start)\b/;

function has(
  scene: Scene,
  quantity: Reading["quantity"],
  fits: (reading: Reading) => boolean = () => true,
): boolean {
  return scene.readings.some((one) => one.quantity === quantity && fits(one));
}

function at(...places: readonly Reading["at"][]): (reading: Reading) => boolean {
  return (reading) => places.includes(reading.at);
}

function isCharged(reading: Reading): boolean {
  return reading.action === "charged";
}

function hasNitrogen(scene: Scene): boolean {
  return (
    scene.done.some((one) => one.action === "nitrogen_in") ||
    /\b(nitrogen|n2|ofn)\b/.test(scene.words)
  );
}

function finding(what: string, missing: readonly string[]): Finding {
  const complete = missing.length === 0;
  const list = missing.join(", ");
  const after = what === "system" ? "of the new system" : `after the ${what} change`;
  return {
    about: what,
    check: "commissioning",
    level: complete ? "good" : "unknown",
    says: complete
      ? `The start-up record ${after} is complete`
      : `The start-up record ${after} still lacks ${list}`,
    brief: complete
      ? "start-up record complete"
      : `start-up record lacks ${missing.length} entries`,
    values: {},
    basis: "common practice",
    source: "contents of a start-up record: common practice, no source",
    ...(complete ? {} : { missing: list }),
  };
}
