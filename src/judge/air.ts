import type { Reading } from "../model.ts";
import { moistAirFromWetBulb, wetBulbCelFromHumidity } from "../physics/moist-air.ts";
import type { QuantityName } from "../quantities/list.ts";
import type { Place } from "../vocabulary.ts";
import { applicationOf, isWaterCooled } from "./application.ts";
import { ambientPaAt } from "./circuit.ts";
import { given } from "./given.ts";
import { isAtLiquidPart } from "./liquid-part.ts";
import { isAtReversingValve } from "./near.ts";
import { isOfOthers } from "./of-others.ts";
import { isBound, numberOf } from "./pick.ts";
import { perScene, type Scene } from "./scene.ts";

/** The air about the machine as it was last read. */
export interface Air {
  readonly ambientPa: number;
  readonly outdoorCel?: number;
  readonly returnCel?: number;
  readonly supplyCel?: number;
  readonly returnWetBulbCel?: number;
  readonly supplyWetBulbCel?: number;
  readonly boxCel?: number;
  /** leaving water, cold enough to be the chilled side's */
  readonly chilledCel?: number;
  readonly airflowM3s?: number;
}

/** Air readings of the case; the room stands for the return where nothing else was read. */
export const airOf: (scene: Scene) => Air = perScene((scene) => {
  const ambientPa = ambientPaAt(scene);
  const dry = (...places: Place[]) => lastOf(scene, "temperature", places);
  const wet = (...places: Place[]) => lastOf(scene, "wet_bulb_temperature", places);
  const cold = isColdRoom(scene);
  const returnCel = mixedCel(scene) ?? (cold ? dry("return_air") : dry("return_air", "indoor_air"));
  const outdoorCel = isWaterCooled(scene) ? dry("outdoor_air") : dry("outdoor_air", "condenser_in");
  const humidity = lastOf(scene, "relative_humidity", ["return_air", "indoor_air", undefined]);
  const wetBulb =
    lastOf(scene, "wet_bulb_temperature", ["return_air", "indoor_air", undefined]) ??
    unnamedWetBulb(scene);
  const fromHumidity =
    returnCel === undefined || humidity === undefined
      ? undefined
      : wetBulbCelFromHumidity(returnCel, humidity, ambientPa);
  const supply = wet("supply_air");
  return {
    ambientPa,
    ...given({
      outdoorCel: outdoorCel ?? (plantRoom.test(scene.words) ? dry("indoor_air") : undefined),
      returnCel,
      supplyCel: dry("supply_air"),
      returnWetBulbCel: wetBulb ?? fromHumidity,
      supplyWetBulbCel: supply,
      boxCel: dry("box"),
      chilledCel: chilled(dry("water_out")),
      airflowM3s: lastOf(scene, "airflow", ["supply_air", "return_air", undefined]),
    }),
  };
});

/** "mixed air 58": with an economizer open that is what the coil breathes, whatever returns. */
function mixedCel(scene: Scene): number | undefined {
  const found = streams(scene).findLast(
    (one) =>
      one.quantity === "temperature" &&
      (one.at === undefined || one.at === "return_air") &&
      /\bmixed\b|\bmat?\b/i.test(one.said),
  );
  return found === undefined ? undefined : numberOf(found);
}

/** A cold room's coil breathes the box, never the room that its condenser stands in. */
function isColdRoom(scene: Scene): boolean {
  return ["cooler", "freezer"].includes(applicationOf(scene));
}

/** Where condensers stand indoors, its air is what they breathe. */
const plantRoom = /\b(?:plant|machine(?:ry)?|mechanical|equipment|compressor|engine) room\b/;

/** "95 out, 67 wet bulb": only a wet bulb that is itself said to be outdoors is. */
function unnamedWetBulb(scene: Scene): number | undefined {
  const found = scene.readings.findLast(
    (one) => one.quantity === "wet_bulb_temperature" && one.at === "outdoor_air",
  );
  return found === undefined || /out|amb|od/i.test(found.said) ? undefined : numberOf(found);
}

/** Cel; warmer water leaves a condenser. Common practice, no source. */
const warmestChilledCel = 18;

function chilled(cel: number | undefined): number | undefined {
  return cel !== undefined && cel <= warmestChilledCel ? cel : undefined;
}

function lastOf(
  scene: Scene,
  quantity: QuantityName,
  places: readonly (Place | undefined)[],
): number | undefined {
  const own = streams(scene).filter((one) => one.quantity === quantity);
  for (const place of places) {
    const found = own.findLast((one) => one.at === place);
    if (found !== undefined) return numberOf(found);
  }
  return undefined;
}

/** What may have been read in an air or water stream. */
const streams: (scene: Scene) => readonly Reading[] = perScene((scene) => {
  const all = scene.readings.filter(
    (one) =>
      streamed.includes(one.quantity) &&
      !isBound(one) &&
      !isAtReversingValve(scene, one) &&
      !isAtLiquidPart(scene, one),
  );
  const own = all.filter((one) => !isOfOthers(scene, one));
  const isOwn = ({ quantity, at }: Reading): boolean =>
    own.some((one) => one.quantity === quantity && one.at === at);
  return all.filter((one) => own.includes(one) || !isOwn(one));
});

const streamed: readonly QuantityName[] = [
  "temperature",
  "wet_bulb_temperature",
  "relative_humidity",
  "airflow",
];

/** Enthalpy of an air stream in J/kg dry air, where both its bulbs are known. */
export function enthalpyOf(
  dryCel: number | undefined,
  wetCel: number | undefined,
  ambientPa: number,
): number | undefined {
  if (dryCel === undefined || wetCel === undefined) return undefined;
  return moistAirFromWetBulb(dryCel, wetCel, ambientPa)?.enthalpyJPerKg;
}
