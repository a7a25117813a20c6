import type { EquipmentFacts, UnitHabit } from "../model.ts";
import {
  followUpDays,
  leakThresholdPercent,
  repairDays,
  smallestChargePounds,
} from "../physics/leak-rules.ts";
import { massWords } from "../show/mass-words.ts";

/**
 * What the leak rules say, for a unit as the office lists it. The rule that the office chose; else both federal
 * ones in a company on pounds, and in a metric one that the office has to say. Source: as named in the lines.
 */
export function lawLines(unit: EquipmentFacts, units: UnitHabit): readonly string[] {
  const { charge_kg: charge, refrigerant } = unit;
  const holds =
    charge === undefined
      ? "no plate charge on file"
      : `plate ${massWords(charge, units)}${refrigerant === undefined ? "" : ` of ${refrigerant}`}`;
  const regime = unit.leak_regime;
  if (regime === "eu")
    return [
      `${holds}. EU 2024/573: a leak is repaired without undue delay and checked again within a month`,
    ];
  if (units === "si" && regime !== "us_82" && regime !== "us_84")
    return [`${holds}. The office has not said which leak rule holds here, ask it`];
  const percent = leakThresholdPercent(unit.use ?? "comfort_cooling");
  const from = `from ${smallestChargePounds.us_84} lb of HFC (40 CFR 84.106) or ${smallestChargePounds.us_82} lb of an ozone depleter (82.157)`;
  return [
    `${holds}. The leak rate is worked out at each addition ${from}`,
    `Over ${percent} percent a year${unit.use === undefined ? " for comfort cooling" : ""} the leak is repaired within ${repairDays.usual} days and checked within ${followUpDays} days after. The office decides`,
  ];
}
