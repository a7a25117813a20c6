import type { Finding } from "../../model.ts";
import { applicationOf } from "../application.ts";
import { bands } from "../bands.ts";
import type { Check } from "../check.ts";
import { type Circuit, circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import type { Scene } from "../scene.ts";
import { circuitTrend } from "./circuit-trend.ts";
import { subcoolingOf } from "./subcooling.ts";
import { superheatOf } from "./superheat.ts";

/**
 * Superheat and subcooling taken together: which way the pair points, airflow before charge. Not
 * on a variable multi-zone machine, which holds both.
 */
export const circuitPattern: Check = {
  name: "circuit_pattern",
  examples: [
    {
      level: "watch",
      notes: ["suction 95 psig 65 F, liquid 290 psig 93 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
  ],
  signs: [],
  judge: (scene) =>
    circuitsOf(scene)
      .filter((one) => contradictionsOf(one, scene).length === 0)
      .flatMap((one) => [...ofCircuit(one, scene), ...circuitTrend(one, scene)]),
};

function ofCircuit(circuit: Circuit, scene: Scene): Finding[] {
  if (applicationOf(scene) === "multi_zone") return [];
  const superheatK = superheatOf(circuit);
  const subcoolingK = subcoolingOf(circuit);
  if (superheatK === undefined || subcoolingK === undefined) return [];
  const row = rows.find((one) => one.fits(superheatK, subcoolingK));
  return row === undefined ? [] : [finding(circuit, row)];
}

interface Row {
  readonly fits: (superheatK: number, subcoolingK: number) => boolean;
  readonly says: string;
  readonly brief: string;
}

const { subcooling } = bands;
const band = bands.superheat.expansion_valve;

/** The published tables' rows, by the two features that tell most; the first that fits speaks. */
const rows: readonly Row[] = [
  {
    fits: (superheatK, subcoolingK) => superheatK > band.to && subcoolingK < subcooling.from,
    says: "High superheat with next to no subcooling: too little refrigerant circulates and none is stored, as in a short charge. Prove airflow first, then look for the leak and weigh",
    brief: "points to a short charge",
  },
  {
    fits: (superheatK, subcoolingK) => superheatK > band.to && subcoolingK >= subcooling.from,
    says: "High superheat while liquid stands behind it: something holds it back, drier, solenoid, screen or the valve itself. Feel along the liquid line for a drop",
    brief: "liquid held back",
  },
  {
    fits: (superheatK, subcoolingK) =>
      superheatK < bands.floodbackK &&
      subcoolingK <= subcooling.to &&
      subcoolingK >= subcooling.from,
    says: "Hardly any superheat with usual subcooling: little heat reaches the coil or the valve feeds too much. Airflow and load first, then the bulb",
    brief: "little air or a valve too far open",
  },
  {
    fits: (_superheatK, subcoolingK) => subcoolingK > subcooling.to,
    says: "Liquid backs up in the condenser: too much charge, or gas in it that does not condense. The pressure at rest against the coil's temperature tells them apart",
    brief: "liquid backs up in the condenser",
  },
];

function finding(circuit: Circuit, row: Row): Finding {
  return {
    about: circuit.about,
    check: "circuit_pattern",
    level: "watch",
    says: row.says,
    brief: row.brief,
    values: {},
    basis: "fault tables",
    source:
      "Rossi & Braun 1997, Chen & Braun 2001 (directions of change of single-speed units in cooling)",
  };
}
