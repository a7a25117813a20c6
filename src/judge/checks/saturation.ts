import type { Finding } from "../../model.ts";
import { refrigerantNamed } from "../../physics/refrigerant.ts";
import { saturationTables } from "../../physics/tables/saturation.ts";
import type { Check } from "../check.ts";
import type { Circuit } from "../circuit.ts";
import { circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { type Figures, figuresOf } from "../figures.ts";
import type { Scene } from "../scene.ts";
import { coilLevels } from "./coil-levels.ts";
import { offCycle } from "./off-cycle.ts";
import { told } from "./told.ts";
import { wrongLine } from "./wrong-line.ts";

/**
 * Saturation temperatures: evaporating and condensing against the air that they work on, the
 * pressure at rest against the coil's own temperature, the wrong column of a blend's table, and
 * readings that contradict physics, which are questioned instead of judged.
 */
export const saturation: Check = {
  name: "saturation",
  examples: [
    {
      level: "good",
      notes: ["95 F out, 410 psig head, 120 psig suction"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "watch",
      notes: ["85 F out, 520 psig head"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "bad",
      notes: ["off overnight, 82 F coil, 82 F outdoor, both gauges 291 psig"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    { level: "unknown", notes: ["suction 120 psig"], equipment: { drive: "line" } },
  ],
  signs: [
    "suction:low",
    "suction:usual",
    "suction:high",
    "head:low",
    "head:usual",
    "head:high",
    "at_rest:above",
    "at_rest:matches",
    "at_rest:below",
    "physics:contradicts",
    "opened:no_vacuum",
    "wrong_gas:said",
    "column:wrong",
  ],
  judge: (scene) => {
    const figures = figuresOf(scene);
    return [
      ...unknownRefrigerant(scene),
      ...circuitsOf(scene).flatMap((circuit) => ofCircuit(circuit, scene, figures)),
      ...offCycle(scene, figures),
      ...told(scene, "saturation"),
    ];
  },
};

function ofCircuit(circuit: Circuit, scene: Scene, figures: Figures): Finding[] {
  const doubts = contradictionsOf(circuit, scene);
  const [doubt] = doubts;
  if (doubt !== undefined) return [questioned(circuit, doubt.says)];
  return [...coilLevels(circuit, scene, figures), ...wrongLine(circuit, figures)];
}

function questioned(circuit: Circuit, says: string): Finding {
  return {
    about: circuit.about,
    check: "saturation",
    level: "unknown",
    says: `${says}. That can't be: check the probe's place and contact, gauge or absolute, the unit, and which refrigerant is in it, then read again`,
    brief: "readings contradict physics, read again",
    values: {},
    basis: "saturation tables",
    source: "saturation of the refrigerant: see the tables; allowance of 5 F common practice",
    signs: ["physics:contradicts"],
    missing: "readings that fit together",
  };
}

/** Running pressures whose refrigerant nobody named; superheat and subcooling say so themselves. */
function refrigerantMissing(scene: Scene): Finding[] {
  const circuit = circuitsOf(scene).find(
    (one) => one.suctionPa !== undefined || one.highPa !== undefined,
  );
  if (circuit === undefined) return [];
  const low = circuit.suctionPa !== undefined && circuit.suctionCel !== undefined;
  const high = circuit.highPa !== undefined && circuit.liquidCel !== undefined;
  if (low || high) return [];
  return [
    {
      about: circuit.about,
      check: "saturation",
      level: "unknown",
      says: "Pressures alone mean nothing yet: name the refrigerant off the plate, and they become temperatures to compare",
      brief: "which refrigerant is in it",
      values: {},
      basis: "saturation tables",
      missing: "refrigerant",
    },
  ];
}

/** A refrigerant that the tables lack is said once, not guessed at. */
function unknownRefrigerant(scene: Scene): Finding[] {
  const said = scene.facts.refrigerant;
  if (said !== undefined && refrigerantNamed(said) !== undefined) return [];
  if (said === undefined) return refrigerantMissing(scene);
  if (!scene.readings.some((one) => one.quantity === "pressure")) return [];
  return [
    {
      about: "system",
      check: "saturation",
      level: "unknown",
      says: `No table here for ${said}: the pressures stand in the record, unjudged. Known are ${Object.keys(saturationTables).join(", ")}`,
      brief: `no table for ${said}`,
      values: {},
      basis: "saturation tables",
      missing: `saturation table of ${said}`,
    },
  ];
}
