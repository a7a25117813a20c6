import type { Finding } from "../../model.ts";
import { pascalPerPsi } from "../../physics/constants.ts";
import { type PressureClass, recoveryLevelPa } from "../../physics/recovery-level.ts";
import type { Refrigerant } from "../../physics/refrigerant.ts";
import { saturationPa } from "../../physics/saturation-pressure.ts";
import { absolutePaOf, ambientPaAt, refrigerantOf } from "../circuit.ts";
import type { Figures } from "../figures.ts";
import type { Scene } from "../scene.ts";

/** Cel, 104 F, and psia at it, that classes go by. Source: 40 CFR 82.152 (limits from memory). */
const classCel = 40;
const classPsia = { medium: 170, high: 355 } as const;

/** Pa; a gauge in inches shows no less. Common practice, no source. */
const readingPa = 1_700;

/** How far the circuit was recovered before it is opened, against what is asked for its class. */
export function recoveryLevel(scene: Scene, figures: Figures): Finding[] {
  const refrigerant = refrigerantOf(scene);
  const chargeKg = scene.facts.charge_kg;
  const recovers =
    scene.done.some((one) => one.action === "recovered") || /\brecover/.test(scene.words);
  const vacuum = scene.readings.findLast(
    (one) => one.quantity === "pressure" && typeof one.value === "number" && one.value < 0,
  );
  if (!recovers || refrigerant === undefined || vacuum === undefined) return [];
  const ambientPa = ambientPaAt(scene);
  const pa = absolutePaOf(vacuum, ambientPa);
  const name = classOf(refrigerant);
  if (pa === undefined || name === undefined || chargeKg === undefined) return [];
  return [finding(pa, recoveryLevelPa(name, chargeKg), figures, ambientPa)];
}

function classOf(refrigerant: Refrigerant): PressureClass | undefined {
  const pa = saturationPa(refrigerant, "bubble", classCel);
  if (pa === undefined) return undefined;
  const psia = pa / pascalPerPsi;
  if (psia > classPsia.high) return "very_high";
  return psia > classPsia.medium ? "high" : "medium";
}

function finding(pa: number, askedPa: number, figures: Figures, ambientPa: number): Finding {
  const reached = pa <= askedPa + readingPa;
  return {
    about: "system",
    check: "charge",
    level: reached ? "good" : "watch",
    says: reached
      ? "Recovered down to the level that its class and size ask for"
      : `Not yet down to the level that its class and size ask for: ${figures.gauge(pa - askedPa)} to go, at ${figures.gauge(askedPa - ambientPa)} on the gauge`,
    brief: reached ? "recovery level reached" : "recover further before opening",
    values: {},
    basis: "40 CFR 82.156",
    source:
      "40 CFR 82.156(a) table 1, machines made after 1993-11-15; classes 82.152 (from memory)",
  };
}
