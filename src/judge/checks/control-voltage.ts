import type { Finding, Level, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { isDcPlug } from "../dc-plug.ts";
import { loosePin } from "../loose-pin.ts";
import { beside, noteOf, wordsNear } from "../near.ts";
import { openSwitch } from "../open-switch.ts";
import { hasPoint, numberOf, ofQuantity } from "../pick.ts";
import { isInPoleRow } from "../pole-row.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";
import { told } from "./told.ts";
import { controlAtLineV, controlBelowV, isOfControl } from "./volts.ts";

/** V ac of a 24 V class 2 circuit; below `lost` nothing is there. Common practice, no source. */
const limits = { lost: 5, low: 20, high: 30 } as const;

/** The control circuit's voltage, 24 V class. */
export const controlVoltage: Check = {
  name: "control_voltage",
  examples: [
    { level: "good", notes: ["26 V on the control transformer"] },
    { level: "bad", notes: ["24 volt side reads 0 V"] },
  ],
  signs: [
    "control:present",
    "control:low",
    "control:lost",
    "control:no_output",
    "control:logic_lost",
    "joint:connection_loose",
  ],
  judge: (scene) => {
    const readings = controlReadings(scene);
    const stops = inWithoutOut(readings, scene);
    const rest = stops === undefined ? readings : readings.filter((one) => isLogic(scene, one));
    return [
      ...(stops === undefined ? [] : [stops]),
      ...rest.map((one) => judgeOne(one, scene)),
      ...told(scene, "control_voltage"),
    ];
  },
};

/** Voltage goes in and none comes out on a call: board, safety or wire between. */
function inWithoutOut(readings: readonly Reading[], scene: Scene): Finding | undefined {
  const values = readings
    .filter((one) => !isLogic(scene, one))
    .flatMap((one) => numberOf(one) ?? []);
  const live = values.find((one) => one >= limits.low);
  if (live === undefined || !values.some((one) => one < limits.lost)) return;
  return {
    about: "control circuit",
    check: "control_voltage",
    level: "bad",
    brief: "voltage in, none out",
    says: `${plain(live)} V in and nothing out: the board's output, a safety or a wire in between`,
    values: {},
    basis: "common practice",
    source: "circuit reasoning; common practice, no source",
    // what stands between was found
    signs:
      loosePin.test(scene.words) || openSwitch.test(scene.words) || isOfDefrost(scene)
        ? []
        : ["control:no_output"],
  };
}

/** What a forced defrost misses is the defrost's own matter. */
function isOfDefrost(scene: Scene): boolean {
  return told(scene, "sensor").some(({ signs }) => signs?.includes("defrosting:fails"));
}

/** Readings of control voltage, ac. */
export function controlReadings(scene: Scene): Reading[] {
  return ofQuantity(scene.readings, "voltage").filter((one) => isControl(scene, one));
}

/** "board sends 340 V dc to the fan and 15 V": an electronic motor's own, no 24 V circuit. */
function isBesideDc(scene: Scene, reading: Reading): boolean {
  return (noteOf(scene, reading)?.readings ?? []).some(
    (one) => one.kind === "dc" && (numberOf(one) ?? 0) > controlBelowV,
  );
}

function isControl(scene: Scene, reading: Reading): boolean {
  const value = numberOf(reading);
  if (value === undefined) return false;
  if (value > controlBelowV) return isOfControl(scene, reading);
  // "75 to 56 across the coil": air, by whatever unit it was taken for
  if (
    reading.assumed.includes("unit") &&
    /across the (?:evap\w* )?coil/.test(wordsNear(scene, reading))
  )
    return false;
  if (isDenied(scene, reading) || isRailName(scene, reading)) return false;
  if (/^(?:\w+ )?(?:fan|blower)\b/.test(reading.subject ?? "") && isBesideDc(scene, reading))
    return false;
  if (isInPoleRow(scene, reading) || isDcPlug(noteOf(scene, reading))) return false;
  if (isLogic(scene, reading)) return true;
  if (reading.kind === "dc") return false;
  if (reading.at === "control" || hasTerminals(reading)) return true;
  const near = wordsNear(scene, reading);
  return (
    reading.at === undefined &&
    reading.points === undefined &&
    /24 ?v|control|transformer|\bcoil\b|\br ?(?:to|-|and) ?c\b|thermostat|low voltage|secondary/.test(
      near,
    ) &&
    !/pole|across the contact|line side|load side/.test(clauseOf(scene, reading))
  );
}

/** "the 5 V logic rail": its name, no reading. */
function isRailName(scene: Scene, reading: Reading): boolean {
  const number = reading.figure.number.replace(/\./g, "\\.");
  const name = new RegExp(
    `\\b${number} ?v(?:olts?)? (?:dc )?(?:and (?:3\\.3|5|12|15) ?v(?:olts?)? )?(?:suppl|rail|logic|outputs?\\b)`,
  );
  const value = numberOf(reading) ?? 0;
  return [3.3, 5, 12, 15].includes(value) && name.test(beside(scene, reading, [0, railAfter]));
}

/** Letters after a figure that may make it a rail's name. */
const railAfter = 24;

/** "no 24 volts": named because it is not there. */
function isDenied(scene: Scene, reading: Reading): boolean {
  const number = reading.figure.number.replace(/\./g, "\\.");
  const denied = new RegExp(`\\b(?:no|without|lost|missing)(?: the| any)? ${number}\\b`);
  return denied.test(beside(scene, reading, [deniedAhead, 0]));
}

/** Letters before a figure in which it is denied. */
const deniedAhead = 16;

function hasTerminals(reading: Reading): boolean {
  return hasPoint(reading, "R") && hasPoint(reading, "C");
}

/** The logic supply of a drive's or control board: 3.3, 5 or 12 V dc. */
function isLogic(scene: Scene, reading: Reading): boolean {
  return /\b(?:3\.3|5|12|15) ?v(?:olts?)? (?:dc )?(?:supply|rail|logic)|(?:logic|gate|control) (?:supply|rail|voltage) on the (?:\w+ )?board|(?:logic|gate) (?:supply|rail|voltage)|board supply/.test(
    wordsNear(scene, reading),
  );
}

function judgeOne(reading: Reading, scene: Scene): Finding {
  const value = numberOf(reading) ?? 0;
  const logic = isLogic(scene, reading) && reading.kind !== "ac";
  if (logic) return logicFinding(value, nominalLogicV(reading, scene));
  if (value < limits.lost && isWithoutCall(scene)) return uncalledFinding(value);
  if (value > controlBelowV) return atLineVolts(value);
  const level: Level = value < limits.low ? "bad" : value > limits.high ? "watch" : "good";
  const sign =
    value < limits.lost ? "control:lost" : value < limits.low ? "control:low" : "control:present";
  const words =
    value < limits.lost
      ? "no control voltage: fuse, transformer, a short in the low voltage wiring"
      : value < limits.low
        ? "low, a coil may not pull in: loaded transformer or a poor joint"
        : value > limits.high
          ? "high for a 24 V circuit"
          : "control voltage is there";
  return {
    about: "control circuit",
    check: "control_voltage",
    level,
    brief: gist(words),
    says: `${plain(value)} V: ${words}`,
    values: {},
    basis: "common practice",
    source: "common practice, no source: 20 to 30 V on a 24 V circuit",
    signs: [sign],
  };
}

function atLineVolts(value: number): Finding {
  const { low, high } = controlAtLineV;
  const words =
    value < low
      ? "low for a 120 V circuit, a coil may not pull in"
      : value > high
        ? "high for a 120 V circuit"
        : "control voltage is there";
  return {
    about: "control circuit",
    check: "control_voltage",
    level: value < low ? "bad" : value > high ? "watch" : "good",
    brief: gist(words),
    says: `${plain(value)} V: ${words}`,
    values: {},
    basis: "NEMA ICS 2",
    source: "NEMA ICS 2: a coil works from 85 to 110 percent of its volts, from memory",
    signs: [value < low ? "control:low" : "control:present"],
  };
}

/** Nothing asks for it, so none is due. */
function isWithoutCall(scene: Scene): boolean {
  return scene.seen.some((one) => one.observation === "not_calling") || uncalled.test(scene.words);
}

/** A thermostat that asks for nothing, in other words. */
const uncalled = /\b(?:stat|thermostat)(?: is| was)? (?:off|satisfied)\b|\b(?:no|without a) call\b/;

function uncalledFinding(value: number): Finding {
  return {
    about: "control circuit",
    check: "control_voltage",
    level: "good",
    brief: "none, and none is called for",
    says: `${plain(value)} V with no call: none is due`,
    values: {},
    basis: "circuit reasoning",
    source: "circuit reasoning",
    signs: [],
  };
}

/** V that the words ask of the supply: "its 15 V supply". */
function nominalLogicV(reading: Reading, scene: Scene): number {
  const [, said] =
    /\b(3\.3|5|12|15|24) ?v (?:supply|rail|logic)/.exec(wordsNear(scene, reading)) ?? [];
  return said === undefined ? leastLogicV : Number(said);
}

const leastLogicV = 3.3;
/** Share of its nominal below which a logic supply is dead. Common practice, no source. */
const deadLogicShare = 0.6;

function logicFinding(value: number, nominalV: number): Finding {
  const dead = value < deadLogicShare * nominalV;
  return {
    about: "control board",
    check: "control_voltage",
    level: dead ? "bad" : "good",
    brief: dead ? "logic supply dead" : "logic supply there",
    says: dead
      ? `${plain(value)} V on the board's logic supply: dead`
      : `${plain(value)} V logic supply is there`,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: dead ? ["control:logic_lost"] : [],
  };
}
