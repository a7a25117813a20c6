import psychrolib from "psychrolib";

// The library knows one unit system at a time; nothing else in the program calls it.
psychrolib.SetUnitSystem(psychrolib.SI);

/** Cel, the dry bulbs that a technician can meet; the equations reach further. */
export const dryBulbRangeCel = [-40, 80] as const;

/** Moist air's state, for each kg of dry air. */
export interface MoistAir {
  readonly humidityRatio: number;
  readonly enthalpyJPerKg: number;
  readonly relativeHumidityPercent: number;
  readonly dewPointCel: number;
}

/**
 * The state of moist air from dry and wet bulb.
 *
 * @param dryBulbCel -40 to 80 Cel
 * @param wetBulbCel at most the dry bulb
 * @param ambientPa absolute air pressure, 30 to 120 kPa
 * Error: 0.07 kJ/kg and 0.00003 kg/kg against the Handbook's tables.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1 (Hyland & Wexler saturation pressure,
 * equation 33 and 35 wet bulb), evaluated by the psychrolib package.
 * Why: undefined for a wet bulb above the dry one or drier than dry air, where the library would
 * clamp to its smallest humidity instead of saying so.
 */
export function moistAirFromWetBulb(
  dryBulbCel: number,
  wetBulbCel: number,
  ambientPa: number,
): MoistAir | undefined {
  if (!inRange(dryBulbCel, ambientPa) || !(wetBulbCel <= dryBulbCel && wetBulbCel >= -40))
    return undefined;
  const humidityRatio = psychrolib.GetHumRatioFromTWetBulb(dryBulbCel, wetBulbCel, ambientPa);
  return humidityRatio > smallestHumidityRatio
    ? stateOf(dryBulbCel, humidityRatio, ambientPa)
    : undefined;
}

/** kg/kg; the library answers its own floor of 1e-7 where the wet bulb is impossibly low */
const smallestHumidityRatio = 2e-7;

/**
 * The state of moist air from dry bulb and relative humidity; range, error and source as above.
 * @param relativeHumidityPercent above 0, to 100
 */
export function moistAirFromHumidity(
  dryBulbCel: number,
  relativeHumidityPercent: number,
  ambientPa: number,
): MoistAir | undefined {
  if (!inRange(dryBulbCel, ambientPa)) return undefined;
  if (!(relativeHumidityPercent > 0 && relativeHumidityPercent <= 100)) return undefined;
  const relative = relativeHumidityPercent / 100;
  return stateOf(
    dryBulbCel,
    psychrolib.GetHumRatioFromRelHum(dryBulbCel, relative, ambientPa),
    ambientPa,
  );
}

/** Wet bulb, in Cel, from dry bulb and relative humidity; range and source as above, error 0.01 K. */
export function wetBulbCelFromHumidity(
  dryBulbCel: number,
  relativeHumidityPercent: number,
  ambientPa: number,
): number | undefined {
  if (!inRange(dryBulbCel, ambientPa)) return undefined;
  if (!(relativeHumidityPercent > 0 && relativeHumidityPercent <= 100)) return undefined;
  return psychrolib.GetTWetBulbFromRelHum(dryBulbCel, relativeHumidityPercent / 100, ambientPa);
}

function inRange(dryBulbCel: number, ambientPa: number): boolean {
  const [low, high] = dryBulbRangeCel;
  return dryBulbCel >= low && dryBulbCel <= high && ambientPa >= 30_000 && ambientPa <= 120_000;
}

function stateOf(dryBulbCel: number, humidityRatio: number, ambientPa: number): MoistAir {
  return {
    humidityRatio,
    enthalpyJPerKg: psychrolib.GetMoistAirEnthalpy(dryBulbCel, humidityRatio),
    relativeHumidityPercent:
      100 * psychrolib.GetRelHumFromHumRatio(dryBulbCel, humidityRatio, ambientPa),
    dewPointCel: psychrolib.GetTDewPointFromHumRatio(dryBulbCel, humidityRatio, ambientPa),
  };
}
