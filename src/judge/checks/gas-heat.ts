import type { Finding, Reading } from "../../model.ts";
import { airOf } from "../air.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { isFlameCurrent, numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";

/** A; a flame rod that carries less soon drops its board out, and one that carries so much holds it. Common practice, no source. */
const flameA = { least: 1e-6, sound: 1.5e-6 } as const;

/** A furnace by its plate: how far the air warms, and what its flame carries. */
export const gasHeat: Check = {
  name: "gas_heat",
  examples: [
    { level: "good", notes: ["rise 48, plate 35 to 65"] },
    { level: "watch", notes: ["flame signal 1.2 microamps"] },
    { level: "bad", notes: ["rise 71, plate max 60"] },
    { level: "unknown", notes: ["gas heat rise 48"] },
  ],
  signs: ["split:high"],
  judge: (scene) => [...riseFindings(scene, figuresOf(scene)), ...flameFindings(scene)],
};

function found(level: Finding["level"], says: string, basis: string): Finding {
  return {
    about: "air",
    check: "gas_heat",
    level,
    brief: gist(says),
    says,
    values: {},
    basis,
    source: basis === "plate" ? "the plate's rise" : "common practice, no source",
    signs: [],
  };
}

const isRise = (scene: Scene, one: Reading): boolean =>
  one.quantity === "temperature_difference" && /\brise\b/.test(clauseOf(scene, one));

/** The rise that the plate allows: a range, or the most of it. */
export function plateRise(scene: Scene): { from: number; to: number } | undefined {
  const plate = scene.ratings.findLast(
    ({ quantity, rating }) => quantity === "temperature_difference" && rating === "nominal",
  );
  const value = plate === undefined ? undefined : numberOf(plate);
  if (plate === undefined || value === undefined) return undefined;
  return plate.high === undefined ? { from: 0, to: value } : { from: value, to: plate.high };
}

/** K that the air gains: as it was said, else between return and supply. */
function riseK(scene: Scene): number | undefined {
  const said = scene.readings.findLast((one) => isRise(scene, one));
  if (said !== undefined) return numberOf(said);
  const { returnCel, supplyCel } = airOf(scene);
  if (returnCel === undefined || supplyCel === undefined || supplyCel <= returnCel)
    return undefined;
  return supplyCel - returnCel;
}

/** Words that tell that gas burns. */
const burns = /\b(?:gas|furnace|manifold|flame|burners?|inducer|heat exchanger)\b/;

function riseFindings(scene: Scene, figures: Figures): Finding[] {
  const rise = riseK(scene);
  const plate = plateRise(scene);
  if (rise === undefined) return [];
  if (plate === undefined) {
    const told = scene.readings.some((one) => isRise(scene, one)) && burns.test(scene.words);
    if (!told) return [];
    const says = `Rise ${figures.difference(rise)}: no rise of the plate known`;
    return [{ ...found("unknown", says, "plate"), missing: "the plate's rise" }];
  }
  const allowed =
    plate.from > 0
      ? `${figures.difference(plate.from)} to ${figures.difference(plate.to)}`
      : `up to ${figures.difference(plate.to)}`;
  const figure = `Rise ${figures.difference(rise)}, the plate allows ${allowed}`;
  const over = `${figure}: too little air for the fire; filter, coil, blower speed and manifold pressure`;
  if (rise > plate.to) return [{ ...found("bad", over, "plate"), signs: ["split:high"] }];
  return rise < plate.from
    ? [found("watch", `${figure}: too much air, or too little fire`, "plate")]
    : [
        {
          ...found("good", figure, "plate"),
          brief: `rise ${figures.difference(rise)}, inside the plate's`,
        },
      ];
}

function flameFindings(scene: Scene): Finding[] {
  const last = scene.readings.findLast(isFlameCurrent);
  const ampere = last === undefined ? undefined : numberOf(last);
  if (ampere === undefined) return [];
  const figure = `Flame ${plain(ampere * 1e6)} microamp`;
  if (ampere < flameA.least)
    return [
      found(
        "bad",
        `${figure}: about where a board loses the flame; clean the rod, then its wire, ground and place in the flame`,
        "common practice",
      ),
    ];
  return ampere < flameA.sound
    ? [found("watch", `${figure}: weak, clean the rod and look at its ground`, "common practice")]
    : [found("good", `${figure}: enough for most boards`, "common practice")];
}
