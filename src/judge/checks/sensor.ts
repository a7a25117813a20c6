import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { wordsNear } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, ohmWords, plain } from "../words.ts";
import { told } from "./told.ts";

/** Off the user's own table by more. Common practice, no source. */
const offShare = 0.12;
/** Ohm: below it a thermistor is shorted. Common practice, no source. */
const shortedOhm = 100;

const sensorWords = /sensor|thermistor|transducer|probe|\bntc\b/;

/** Sensors: open, shorted, or off the table that the user gave; no curve is assumed. */
export const sensor: Check = {
  name: "sensor",
  examples: [
    { level: "good", notes: ["suction sensor should be 10k at 77 F, it reads 10.1k"] },
    { level: "bad", notes: ["suction sensor should be 10k at 77 F, it reads OL"] },
    { level: "unknown", notes: ["suction sensor reads 10.1k"] },
  ],
  signs: ["sensor:sound", "sensor:open", "sensor:off", "sensor:no_signal"],
  judge: (scene) => [
    ...ofQuantity(scene.readings, "resistance")
      .filter((one) => sensorWords.test(wordsNear(scene, one)))
      .map((one) => resistanceFinding(one, scene)),
    ...signalFinding(scene),
    ...told(scene, "sensor"),
  ],
};

function found(level: Finding["level"], says: string, sign?: string, missing?: string): Finding {
  return {
    about: "sensor",
    check: "sensor",
    level,
    brief: gist(says),
    says,
    values: {},
    basis: "the given table",
    source: "the user's own table; common practice, no source",
    signs: sign === undefined ? [] : [sign],
    ...(missing === undefined ? {} : { missing }),
  };
}

function resistanceFinding(reading: Reading, scene: Scene): Finding {
  if (reading.over_range === true) return found("bad", "The sensor reads open", "sensor:open");
  const ohm = numberOf(reading) ?? 0;
  if (ohm < shortedOhm)
    return found("bad", `The sensor reads ${ohmWords(ohm)}: shorted`, "sensor:open");
  const wanted = scene.ratings.find(
    (one) => one.quantity === "resistance" && one.rating === "expected",
  );
  const wantedOhm = wanted === undefined ? undefined : numberOf(wanted);
  if (wantedOhm === undefined || wantedOhm <= 0)
    return found("unknown", `${ohmWords(ohm)}: no table given`, undefined, "the sensor's table");
  const off = (ohm - wantedOhm) / wantedOhm;
  return Math.abs(off) > offShare
    ? found(
        "bad",
        `${ohmWords(ohm)} where ${ohmWords(wantedOhm)} should be, ${plain(100 * off)} percent off`,
        "sensor:off",
      )
    : found("good", `${ohmWords(ohm)} agrees with its table`, "sensor:sound");
}

/** A transducer that is fed and sends nothing. */
function signalFinding(scene: Scene): Finding[] {
  const volts = ofQuantity(scene.readings, "voltage").filter((one) =>
    /signal|transducer/.test(wordsNear(scene, one)),
  );
  const values = volts.flatMap((one) => numberOf(one) ?? []).filter((one) => one < 30);
  const fed = values.some((one) => one > 3);
  const silent = values.some((one) => one < 0.2);
  return fed && silent
    ? [found("bad", "The transducer is fed and its signal stays at nothing", "sensor:no_signal")]
    : [];
}
