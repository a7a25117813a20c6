import type { Finding, Reading, Statement } from "../../model.ts";
import type { Check } from "../check.ts";
import { isDcPlug, isUncommanded, staysPut } from "../dc-plug.ts";
import { noteOf, wordsNear } from "../near.ts";
import { ownMotor } from "../own-motor.ts";
import { bySubject, numberOf, numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, plain } from "../words.ts";
import { isFanNote } from "./motor-currents.ts";
import { told } from "./told.ts";
import { sideOf } from "./volts.ts";

/** Over the fan's plate. Common practice, no source. */
const overPlate = 1.15;
const farOverPlate = 1.6;
/** A */
const nothingA = 0.1;

const stopped: readonly string[] = [
  "outdoor_fan_not_turning",
  "indoor_fan_not_turning",
  "fan_not_turning",
];

/** Fans: current against their plate, and voltage on one that stands. */
export const fan: Check = {
  name: "fan",
  examples: [
    { level: "good", notes: ["condenser fan draws 1.8 A, FLA 1.9"] },
    { level: "watch", notes: ["condenser fan draws 2.3 A, FLA 1.9"] },
    { level: "unknown", notes: ["condenser fan draws 1.8 A"] },
  ],
  signs: [
    "fan:turns",
    "fan:high_current",
    "fan:overloaded",
    "fan:no_current",
    "fan:stands_with_voltage",
    "swap:fan_runs_elsewhere",
  ],
  judge: (scene) => [
    ...bySubject(ofFans(scene, "current"), "fan").flatMap(([about, readings]) =>
      currentFinding(about, readings, scene),
    ),
    ...standingFinding(scene),
    ...(otherRuns(scene) ?? told(scene, "fan")),
  ],
};

function ofFans(scene: Scene, quantity: "current" | "voltage"): Reading[] {
  if (ownMotor(scene) !== undefined) return [];
  return ofQuantity(scene.readings, quantity).filter((one) =>
    one.subject === undefined
      ? quantity === "current" && isFanNote(scene, one)
      : /fan|blower/i.test(one.subject),
  );
}

function found(about: string, level: Finding["level"], says: string, sign: string): Finding {
  return {
    about,
    check: "fan",
    level,
    brief: gist(says),
    says,
    values: {},
    basis: "plate",
    source: "plate; common practice, no source",
    signs: [sign],
  };
}

function currentFinding(about: string, readings: readonly Reading[], scene: Scene): Finding[] {
  const values = numbersOf(readings);
  if (values.length === 0) return [];
  const highest = Math.max(...values);
  if (highest < nothingA) return [found(about, "watch", "The fan draws nothing", "fan:no_current")];
  const plate = scene.ratings.find((one) => one.quantity === "current" && isOfFanPlate(one, scene));
  const ratedA = plate === undefined ? undefined : numberOf(plate);
  if (ratedA === undefined)
    return [
      {
        ...found(about, "unknown", `${listed(values, "A")}: no fan rating known`, "fan:turns"),
        signs: [],
        missing: "the fan's FLA",
      },
    ];
  if (highest > farOverPlate * ratedA)
    return [
      found(
        about,
        "bad",
        `${plain(highest)} A against FLA ${plain(ratedA)}: far overloaded, a stuck shaft or a shorted winding`,
        "fan:overloaded",
      ),
    ];
  return highest > overPlate * ratedA
    ? [
        found(
          about,
          "watch",
          `${plain(highest)} A against FLA ${plain(ratedA)}: overloaded, stiff bearings or a weak capacitor`,
          "fan:high_current",
        ),
      ]
    : [found(about, "good", `${plain(highest)} A, FLA ${plain(ratedA)}`, "fan:turns")];
}

const stands =
  /\bfan ?#?(\w)\b[^.;]{0,24}\b(?:won'?t|wont|not|isn'?t|isnt|dead|stopped|stands|never|does ?n'?t|doesnt|quit)\b/;
const triedThere =
  /\bfan ?#?(\w)(?:'s)?(?: motor)?\b[^.;]{0,14}\b(?:plugged|hooked|moved|put|tried|swapped)\b[^.;]{0,24}\b(?:there|in|into|onto|on|to)\b[^.;]{0,24}\b(?:runs?|spins?|turns?|works?)\b/;

/** "fan 2 won't spin", then "fan 1 motor plugged in there runs": the output is sound, so the motor that stands is not. */
function otherRuns(scene: Scene): Finding[] | undefined {
  const [still, tried] = [stands.exec(scene.words)?.[1], triedThere.exec(scene.words)?.[1]];
  if (still === undefined || tried === undefined || still === tried) return undefined;
  const says = `Fan ${tried} runs from fan ${still}'s output, as told: the motor of fan ${still}, not what drives it`;
  return [found(`fan ${still}`, "bad", says, "fan:stands_with_voltage")];
}

/** "blower motor plate 6.4, drawing 6.9": in a note of a fan any rated amps are the fan's. */
function isOfFanPlate(one: Reading, scene: Scene): boolean {
  if (one.rating === "FLA" || /fan|blower/i.test(one.subject ?? "")) return true;
  return (one.rating === "nominal" || one.rating === "MOC") && isFanNote(scene, one);
}

/** A fan motor was fitted after the last word of one that stands. */
function isNewSince({ notes }: Scene): boolean {
  const last = (holds: (one: Statement) => boolean): number =>
    notes.findLastIndex(({ statements }) => statements.some(holds));
  const fitted = last(
    (one) => one.kind === "part" && one.state === "fitted" && /fan|blower|motor/.test(one.part),
  );
  return fitted > last((one) => one.kind === "observation" && stopped.includes(one.observation));
}

/** A fan that stands with its voltage there. */
function standingFinding(scene: Scene): Finding[] {
  const atPlug = ofQuantity(scene.readings, "voltage").filter((one) =>
    isDcPlug(noteOf(scene, one)),
  );
  const stands =
    scene.seen.some((one) => stopped.includes(one.observation)) ||
    (atPlug.length > 0 && staysPut.test(scene.words));
  if (!stands || isNewSince(scene) || isUncommanded(numbersOf(atPlug))) return [];
  const own = atPlug.length > 0 ? atPlug : ofFans(scene, "voltage");
  const said = ofQuantity(scene.readings, "voltage").filter(
    (one) =>
      sideOf(scene, one) === undefined &&
      /at (?:its|the) (?:leads|motor)|fan|blower/.test(wordsNear(scene, one)),
  );
  const volts = numbersOf(own.length > 0 ? own : said).filter((one) => one > 20);
  if (volts.length === 0) return [];
  return [
    found(
      "fan",
      "bad",
      `It stands with ${plain(Math.max(...volts))} V at it: motor, its capacitor or a stuck shaft`,
      "fan:stands_with_voltage",
    ),
  ];
}
