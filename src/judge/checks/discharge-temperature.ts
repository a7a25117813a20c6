import type { Finding } from "../../model.ts";
import { celFromFahrenheit, kelvinPerFahrenheit } from "../../physics/constants.ts";
import type { Check } from "../check.ts";
import { type Circuit, circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { type Figures, figuresOf } from "../figures.ts";

/** Cel, 225 F on the line 6 in from the compressor. Source: common practice, no source. */
const hottestCel = celFromFahrenheit(225);
/** Cel, 200 F: the upper end of what is usual. Source: common practice, no source. */
const warmCel = celFromFahrenheit(200);
/** K, 10 F of discharge superheat: below it liquid comes along. Source: common practice, no source. */
const wetK = 10 * kelvinPerFahrenheit;

/** Cel, 32 F: no running compressor's discharge line is colder. Common practice, no source. */
const coldestCel = 0;

/** Discharge line temperature against its limit, and its superheat. */
export const dischargeTemperature: Check = {
  name: "discharge_temperature",
  examples: [
    {
      level: "good",
      notes: ["discharge line 165 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "bad",
      notes: ["discharge line 245 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
  ],
  signs: ["discharge:hot", "discharge:usual", "discharge:wet", "sensor:off"],
  judge: (scene) => {
    const figures = figuresOf(scene);
    return circuitsOf(scene)
      .filter((one) => contradictionsOf(one, scene).length === 0)
      .flatMap((one) => finding(one, figures));
  },
};

function finding(circuit: Circuit, figures: Figures): Finding[] {
  const { dischargeCel, dewCel, about } = circuit;
  if (dischargeCel === undefined) return [];
  if (dischargeCel < coldestCel) return [tooCold(circuit, figures)];
  const overK = dewCel === undefined ? undefined : dischargeCel - dewCel;
  const outcome = dischargeCel > hottestCel ? "hot" : (overK ?? wetK) < wetK ? "wet" : "usual";
  const superheated =
    overK === undefined ? "" : `, ${figures.difference(overK)} over its dew point`;
  const warm = outcome === "usual" && dischargeCel > warmCel;
  return [
    {
      about,
      check: "discharge_temperature",
      level: outcome === "hot" ? "bad" : outcome === "wet" || warm ? "watch" : "good",
      says: `Discharge line ${figures.temperature(dischargeCel)}${superheated}: ${warm ? `warm, the limit is commonly ${figures.temperature(hottestCel)}` : words[outcome](figures)}`,
      brief: `discharge ${figures.temperature(dischargeCel)}, ${warm ? "warm" : outcome}`,
      values: {
        discharge_Cel: dischargeCel,
        ...(overK === undefined ? {} : { discharge_superheat_K: overK }),
      },
      basis: "common practice",
      source:
        "limit of 225 F at the line and 10 F of discharge superheat: common practice, no source",
      signs: [`discharge:${outcome}`],
    },
  ];
}

/** What a board believes of an open thermistor, and no line's temperature. */
function tooCold({ about, dischargeCel }: Circuit, figures: Figures): Finding {
  return {
    about,
    check: "discharge_temperature",
    level: "unknown",
    says: `Discharge line ${figures.temperature(dischargeCel ?? coldestCel)}: no running compressor shows that. Doubt the sensor or its plug before the machine, and measure the line`,
    brief: "too cold to be true, doubt the sensor",
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    missing: "the discharge line by your own thermometer",
    signs: ["sensor:off"],
  };
}

const words = {
  hot: (figures: Figures) =>
    `over the ${figures.temperature(hottestCel)} that oil is commonly held to; the valves inside are hotter still`,
  usual: () => "usual",
  wet: () => "so little superheat that liquid comes through with the gas",
} as const;
