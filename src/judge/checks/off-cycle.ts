import type { Finding, Reading } from "../../model.ts";
import { saturationPa } from "../../physics/saturation-pressure.ts";
import { saturationCel } from "../../physics/saturation-temperature.ts";
import { absolutePaOf, ambientPaAt, refrigerantOf } from "../circuit.ts";
import type { Figures } from "../figures.ts";
import { noteOf } from "../near.ts";
import { isBound, numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { isAtRest, isNitrogen } from "../standing.ts";

/** K that temperature and gauge may be off together at rest. Common practice, no source. */
const toleranceK = 1.7;

/**
 * The pressure of a machine at rest against saturation at its coil's temperature: above it, gas
 * that does not condense or another refrigerant; below it, little or no liquid left, or the wrong
 * refrigerant. `[]` where nothing was read at rest.
 */
export function offCycle(scene: Scene, figures: Figures): Finding[] {
  const refrigerant = refrigerantOf(scene);
  if (refrigerant === undefined) return [];
  const resting = scene.readings.filter(
    (one) => isAtRest(scene, one) && !isNitrogen(scene, one) && !isBound(one),
  );
  const pressure = resting.findLast((one) => one.quantity === "pressure");
  const temperature =
    coilTemperature(resting) ??
    coilTemperature(besideIn(scene, pressure)) ??
    coilTemperature(outdoor(scene, pressure)) ??
    coilTemperature(allAlike(scene, pressure));
  const coilCel = temperature === undefined ? undefined : numberOf(temperature);
  const pa = pressure === undefined ? undefined : absolutePaOf(pressure, ambientPaAt(scene));
  if (pa === undefined || coilCel === undefined) return [];
  const bubblePa = saturationPa(refrigerant, "bubble", coilCel);
  const bubbleCel = saturationCel(refrigerant, "bubble", pa);
  const dewCel = saturationCel(refrigerant, "dew", pa);
  if (bubblePa === undefined || bubbleCel === undefined || dewCel === undefined) return [];
  const outcome =
    bubbleCel > coilCel + toleranceK
      ? "above"
      : dewCel < coilCel - toleranceK
        ? "below"
        : "matches";
  const made = standing(outcome, pa - bubblePa, bubbleCel, figures);
  // with liquid left only another refrigerant stands lower
  return outcome === "below" && /\bglass\b.{0,12}\b(?:shows? liquid|full|solid)\b/.test(scene.words)
    ? [{ ...made, signs: ["at_rest:below", "wrong_gas:said"] }]
    : [made];
}

type Outcome = "above" | "matches" | "below";

const verdicts = {
  above:
    "more than the refrigerant alone would stand at: gas that does not condense, or another refrigerant",
  matches: "what the refrigerant alone stands at",
  below:
    "less than the refrigerant stands at with liquid left: hardly any charge, or another refrigerant",
} as const;

function standing(outcome: Outcome, overPa: number, cel: number, figures: Figures): Finding {
  const off =
    outcome === "matches"
      ? ""
      : `${figures.gauge(Math.abs(overPa))} ${overPa > 0 ? "over" : "under"} saturation, `;
  return {
    about: "system",
    check: "saturation",
    level: outcome === "matches" ? "good" : "bad",
    says: `At rest the pressure stands ${off}${verdicts[outcome]}`,
    brief:
      outcome === "matches" ? "pressure at rest fits" : `at rest ${off}not the refrigerant alone`,
    values: { saturation_Cel: cel },
    basis: "saturation at rest",
    source: "Li & Braun 2007, off-cycle check; allowance of 3 F common practice",
    signs: [`at_rest:${outcome}`],
  };
}

/** Temperatures of the pressure's own note, wherever in it the rest is told. */
function besideIn(scene: Scene, pressure: Reading | undefined): readonly Reading[] {
  const note = pressure === undefined ? undefined : noteOf(scene, pressure);
  return scene.readings.filter(
    (one) => note !== undefined && noteOf(scene, one) === note && airy.includes(one.at),
  );
}

const airy: readonly Reading["at"][] = [undefined, "outdoor_air", "indoor_air", "condenser_in"];

/** Another note's weather, where nothing was read of a running machine beside it. */
function outdoor(scene: Scene, pressure: Reading | undefined): readonly Reading[] {
  const own = pressure === undefined ? undefined : noteOf(scene, pressure);
  return scene.readings.filter(
    (one) =>
      one.at === "outdoor_air" &&
      (noteOf(scene, one) === own ||
        noteOf(scene, one)?.readings.some(({ quantity }) => quantity === "pressure") !== true),
  );
}

/** "both gauges 112", and in the next message "everything in there is 75, coil too": all of it as warm. */
function allAlike(scene: Scene, pressure: Reading | undefined): readonly Reading[] {
  const own = pressure === undefined ? undefined : noteOf(scene, pressure);
  const at = own === undefined ? -1 : scene.notes.indexOf(own);
  if (at < 0) return [];
  return [scene.notes[at - 1], scene.notes[at + 1]]
    .filter((note) => note !== undefined && alike.test(note.text ?? ""))
    .flatMap((note) => note?.readings ?? [])
    .filter((one) => airy.includes(one.at) && scene.readings.includes(one));
}

const alike =
  /\b(?:coil|condenser|everything|(?:whole|entire) (?:thing|system|unit)|all of it|metal|pipes|piping)\b/i;

/** The coil's own metal where it was read, else the air that went through it. */
function coilTemperature(readings: readonly Reading[]): Reading | undefined {
  return readings.findLast((one) => one.quantity === "temperature");
}
