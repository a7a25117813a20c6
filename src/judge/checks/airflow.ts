import type { Finding, Reading } from "../../model.ts";
import { airflowM3sFromHeat, sensibleW, totalW } from "../../physics/air-heat.ts";
import { pascalPerInchOfWater } from "../../physics/constants.ts";
import { airOf, enthalpyOf } from "../air.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { noteOf } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { told } from "./told.ts";

/** Pa, where the plate names none: 0.9 in. Most are rated at 0.5, larger ones up to 0.8. Common practice, no source. */
const highStaticPa = 0.9 * pascalPerInchOfWater;
/** Pa, half of it is where most blowers are rated. Common practice, no source. */
const ratedStaticPa = 0.5 * pascalPerInchOfWater;
/** share over the plate's rating that filters and weather explain. Common practice, no source. */
const overRating = 1.3;

/** Air side: airflow and the heat that it carries, airflow from a known heat, static pressure. */
export const airflow: Check = {
  name: "airflow",
  examples: [
    {
      level: "good",
      notes: ["total static 0.48 in wc, rated 0.5"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "bad",
      notes: ["total static 1.1 in wc, rated 0.5"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
  ],
  signs: [
    "static:high",
    "static:usual",
    "outdoor_air:outdoor_coil_dirty",
    "fans:outdoor_fan_backward",
    "draft:switch_open",
    "indoor_air:indoor_coil_dirty",
  ],
  judge: (scene) => {
    const figures = figuresOf(scene);
    return [
      ...carriedHeat(scene, figures),
      ...fromElectricHeat(scene, figures),
      ...staticPressure(scene, figures),
      ...told(scene, "airflow"),
    ];
  },
};

function carriedHeat(scene: Scene, figures: Figures): Finding[] {
  const air = airOf(scene);
  const { airflowM3s, returnCel, supplyCel, ambientPa } = air;
  if (airflowM3s === undefined) return [];
  if (returnCel === undefined || supplyCel === undefined)
    return [withoutSplit(airflowM3s, figures)];
  const differenceK = Math.abs(returnCel - supplyCel);
  const sensible = sensibleW(airflowM3s, differenceK, ambientPa);
  const back = enthalpyOf(returnCel, air.returnWetBulbCel, ambientPa);
  const out = enthalpyOf(supplyCel, air.supplyWetBulbCel, ambientPa);
  const total =
    back === undefined || out === undefined
      ? undefined
      : totalW(airflowM3s, Math.abs(back - out), ambientPa);
  const sum = total === undefined ? "" : `, ${figures.heat(total)} in all with the moisture`;
  return [
    {
      about: "air",
      check: "airflow",
      level: "good",
      says: `${figures.airflow(airflowM3s)} over ${figures.difference(differenceK)} carries ${figures.heat(sensible)} sensible${sum}, at this altitude's density`,
      brief: `${figures.heat(total ?? sensible)} ${total === undefined ? "sensible" : "in all"}`,
      values: {
        airflow_m3s: airflowM3s,
        sensible_W: sensible,
        ...(total === undefined ? {} : { total_W: total }),
      },
      basis: "sensible heat 1.08",
      source:
        "ASHRAE Handbook Fundamentals: 1.08 Btu/h a cfm and F of dry standard air, 4.5 for enthalpy",
    },
  ];
}

function withoutSplit(airflowM3s: number, figures: Figures): Finding {
  return {
    about: "air",
    check: "airflow",
    level: "unknown",
    says: `${figures.airflow(airflowM3s)} stands in the record; return and supply temperature would tell what it carries`,
    brief: "return and supply temperature missing",
    values: { airflow_m3s: airflowM3s },
    basis: "sensible heat",
    missing: "return and supply temperature",
  };
}

/** K that the air gains: between return and supply, else as it was said. */
function riseOf(scene: Scene): number | undefined {
  const { returnCel, supplyCel } = airOf(scene);
  if (returnCel !== undefined && supplyCel !== undefined) return supplyCel - returnCel;
  const said = scene.readings.findLast(
    (one) => one.quantity === "temperature_difference" && /\brise\b/.test(clauseOf(scene, one)),
  );
  return said === undefined ? undefined : numberOf(said);
}

/** Airflow out of an electric heater's power and its rise. */
function fromElectricHeat(scene: Scene, figures: Figures): Finding[] {
  const air = airOf(scene);
  const riseK = riseOf(scene);
  if (air.airflowM3s !== undefined || riseK === undefined) return [];
  if (
    !/\b(electric heat|heat ?strips?|strips?|heaters?|elements?|duct heater|kw)\b/.test(scene.words)
  )
    return [];
  const watt = heaterW(scene);
  if (watt === undefined) return [];
  const found = airflowM3sFromHeat(watt, riseK, air.ambientPa);
  if (found === undefined) return [];
  return [
    {
      about: "air",
      check: "airflow",
      level: "good",
      says: `${figures.heat(watt)} of electric heat over a rise of ${figures.difference(riseK)} makes ${figures.airflow(found)}`,
      brief: `${figures.airflow(found)} by electric heat`,
      values: { airflow_m3s: found },
      basis: "sensible heat",
      source: "watts times 3.412 over 1.08 and the rise: common practice; density by altitude",
    },
  ];
}

/** The heater's power: read as power, else volts times amps of a resistive load. */
function heaterW(scene: Scene): number | undefined {
  const said = ofQuantity(scene.readings, "power").at(-1);
  if (said !== undefined) return numberOf(said);
  const volts = ofQuantity(scene.readings, "voltage").at(-1);
  const amps = ofQuantity(scene.readings, "current").at(-1);
  const volt = volts === undefined ? undefined : numberOf(volts);
  const ampere = amps === undefined ? undefined : numberOf(amps);
  if (volt === undefined || ampere === undefined) return undefined;
  return volt * ampere * (scene.facts.phases === 3 ? Math.sqrt(3) : 1);
}

/** "inlet 7.1 in manifold 3.5", "draft .4": inches of a gas train or a flue, which no blower moves. */
function isOfFire(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading)?.text ?? "";
  // "manifold 3.4, supply 7.1": the gas on both sides of its valve
  if (
    /\b(?:manifold|gas valve|regulator)\b/i.test(note) &&
    !/\b(?:static|duct|esp|tesp|filters?|coil|cfm)\b/i.test(note)
  )
    return true;
  // "inducer runs, -0.4 in at the port", and later "cleared. -0.9 now"
  const flue = /\b(?:inducer|flue|draft|draught|chimney)\b/i;
  if (
    flue.test(scene.words) &&
    !/\b(?:static|duct|esp|tesp|filters?|coil|return|supply)\b/i.test(note)
  )
    return true;
  const words = clauseOf(scene, reading);
  const train =
    /\b(?:gas|manifold|inlet|burner|orifice|propane|draft|draught|flue|vent|chimney|stack|inducer)\b/.test(
      words,
    );
  return train && !/\b(?:static|duct|esp|filter|coil|return|supply)\b/.test(words);
}

const isHeldAt = ({ quantity, rating }: Reading): boolean =>
  quantity === "static_pressure" && rating === "setpoint";

/** The static that the blower works against: its last reading, or both its sides where they were read together. */
function totalPa(scene: Scene): number | undefined {
  const all = ofQuantity(scene.readings, "static_pressure").filter((one) => !isOfFire(scene, one));
  // "static .78 total, filter alone .31": a part of it says nothing of the whole
  const whole = all.filter((one) => !isOfPart(scene, one));
  const last = (whole.length > 0 ? whole : all).at(-1);
  const pa = last === undefined ? undefined : numberOf(last);
  if (last === undefined || pa === undefined) return undefined;
  const beside = whole.filter((one) => noteOf(scene, one) === noteOf(scene, last));
  const [one, other, ...more] = beside.map((reading) => numberOf(reading) ?? Number.NaN);
  if (one === undefined || other === undefined || more.length > 0) return Math.abs(pa);
  const places = beside.map(({ at }) => at);
  const sides = places.includes("supply_air") && places.includes("return_air");
  // "static is plus .4 and minus .55": what the blower pushes and what it pulls
  return one * other < 0 || sides ? Math.abs(one) + Math.abs(other) : Math.abs(pa);
}

function isOfPart(scene: Scene, reading: Reading): boolean {
  const words = clauseOf(scene, reading);
  return /\b(?:filters?|coil|drop|dp|alone|across)\b/.test(words) && !/\btotal\b/.test(words);
}

function staticPressure(scene: Scene, figures: Figures): Finding[] {
  const pa = totalPa(scene);
  if (pa === undefined) return [];
  const plate = scene.ratings.findLast(
    (one) =>
      one.quantity === "static_pressure" && one.rating !== "setpoint" && !isOfFire(scene, one),
  );
  // what a fan is held at by its control is no plate's, and a duct's is no total
  const held = scene.ratings.some((one) => isHeldAt(one) && !isOfFire(scene, one));
  if (plate === undefined && held) return [];
  const ratedPa = plate === undefined ? undefined : numberOf(plate);
  const limitPa = ratedPa === undefined ? highStaticPa : ratedPa * overRating;
  const high = Math.abs(pa) > limitPa;
  const against =
    ratedPa === undefined
      ? `where the plate is silent about ${figures.staticPressure(ratedStaticPa)} is common and over ${figures.staticPressure(highStaticPa)} is too much`
      : `against a rating of ${figures.staticPressure(ratedPa)}`;
  return [
    {
      about: "air",
      check: "airflow",
      level: high ? "bad" : "good",
      says: `Static ${figures.staticPressure(Math.abs(pa))}, ${against}${high ? ": the blower is choked, so look at filter, coil, dampers and duct" : ""}`,
      brief: `static ${figures.staticPressure(Math.abs(pa))}, ${high ? "high" : "usual"}`,
      values: { static_Pa: Math.abs(pa) },
      basis: ratedPa === undefined ? "common practice" : "plate rating",
      source: "blower ratings of 0.5 to 0.8 in: common practice, no source",
      signs: [high ? "static:high" : "static:usual"],
    },
  ];
}
