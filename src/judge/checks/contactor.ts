import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { beside, figureSpan, noteOf, wordsNear } from "../near.ts";
import { isOddDrop } from "../odd-drop.ts";
import { numberOf, numbersOf, ofQuantity } from "../pick.ts";
import { isInPoleRow } from "../pole-row.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, plain } from "../words.ts";
import { controlReadings } from "./control-voltage.ts";
import { isOfFuses } from "./fuse-sides.ts";
import { told } from "./told.ts";
import { allVoltages, controlAtLineV, controlBelowV, isAcrossContact, sideOf } from "./volts.ts";

/** V lost over a closed contact: the first is worth a look, the second worn contacts, the third a failed pole. Common practice, no source. */
const contactDropV = { watch: 1, worn: 2, bad: 5 } as const;
/** Share of the line's volts lost behind a closed contactor with a pole open; the motor feeds some back. Common practice, no source. */
const poleOpenShare = 0.3;
/** V on the coil that should pull it in. Common practice, no source. */
const pullInV = 18;

/** The contactor: coil, contacts, and whether it follows its coil. */
export const contactor: Check = {
  name: "contactor",
  examples: [
    {
      level: "good",
      notes: ["contactor pulled in, line side 480, load side 479.8"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "watch",
      notes: ["3 V across the contactor, pulled in"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["contactor pulled in, line side 480, load side 455"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
  ],
  signs: [
    "contactor:coil_open",
    "contactor:coil_sound",
    "contactor:no_pull_in",
    "contactor:drop",
    "contactor:pole_open",
    "contactor:welded",
    "contactor:passes",
  ],
  judge: (scene) => [
    ...coilFindings(scene),
    ...pullInFindings(scene),
    ...contactFindings(scene),
    ...told(scene, "contactor"),
  ],
};

function found(level: Finding["level"], says: string, sign: string): Finding {
  return {
    about: "contactor",
    check: "contactor",
    level,
    brief: gist(says),
    says,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: [sign],
  };
}

function coilFindings(scene: Scene): Finding[] {
  return ofQuantity(scene.readings, "resistance", "winding_resistance")
    .filter((one) => isCoil(one, scene))
    .map((one) => {
      if (one.over_range === true)
        return found(
          "bad",
          "The contactor coil reads open: it cannot pull in",
          "contactor:coil_open",
        );
      const ohm = numberOf(one) ?? 0;
      return ohm < 1
        ? found("bad", `The contactor coil reads ${plain(ohm)} ohm: shorted`, "contactor:coil_open")
        : found("good", `The contactor coil reads ${plain(ohm)} ohm`, "contactor:coil_sound");
    });
}

/** Ohm; more is no coil. Common practice, no source. */
const mostCoilOhm = 3000;

function isCoil(reading: Reading, scene: Scene): boolean {
  if ((numberOf(reading) ?? 0) > mostCoilOhm) return false;
  if (reading.subject !== undefined) return /contactor|coil/i.test(reading.subject);
  const near = wordsNear(scene, reading);
  return (
    reading.quantity === "resistance" &&
    /contactor|\bcoil\b/.test(near) &&
    !/sensor|therm/.test(near) &&
    // "on BB-3, coil in there reads 0.2 ohm": a branch box has valves, no contactor
    (!/\b(?:valve|solenoid|sol|eev|exv|txv) coil|\bbb-?\d|\bbranch|\bport\b/.test(near) ||
      /contactor/.test(near))
  );
}

/** Enough for a coil of 24 V, or of 120 V. */
function isFed(coilV: number): boolean {
  return coilV > controlBelowV ? coilV >= controlAtLineV.low : coilV >= pullInV;
}

/** Its coil has voltage and it does not move, or none and it passes. */
function pullInFindings(scene: Scene): Finding[] {
  const seen = scene.seen.map((one) => one.observation);
  const coilV = Math.max(...numbersOf(controlReadings(scene)));
  if (!Number.isFinite(coilV)) return [];
  const staysOut = seen.includes("contactor_not_pulling_in") || told(scene, "contactor").length > 0;
  if (staysOut && isFed(coilV))
    return [
      found("bad", `${plain(coilV)} V on the coil and it does not pull in`, "contactor:no_pull_in"),
    ];
  if (isFed(coilV) && isDeadBehind(scene))
    return [
      found(
        "bad",
        `${plain(coilV)} V on the coil, the line side live and the load side dead: it does not close its contacts`,
        "contactor:no_pull_in",
      ),
    ];
  const passes = seen.includes("contactor_welded") || loadSideLive(scene);
  if (coilV < 5 && passes)
    return [
      found(
        "bad",
        "It passes with no voltage on its coil: the contacts are welded or held",
        "contactor:welded",
      ),
    ];
  return [];
}

/** Volts ahead of it, none behind it. */
function isDeadBehind(scene: Scene): boolean {
  const load = sideVolts(scene, "load");
  return (
    load.length > 0 &&
    Math.max(...load) < deadV &&
    sideVolts(scene, "line").some((one) => one > controlBelowV)
  );
}

/** V that an open contact may still show. Common practice, no source. */
const deadV = 15;

function loadSideLive(scene: Scene): boolean {
  return (
    sideVolts(scene, "load").some((one) => one > controlBelowV) &&
    /plunger out|not pulled|open contactor|keeps (?:right )?on running|still runs/.test(scene.words)
  );
}

function sideVolts(scene: Scene, side: "line" | "load"): number[] {
  return numbersOf(allVoltages(scene).filter((one) => sideOf(scene, one) === side));
}

/** "32 V gone over the left pole" */
function isSaidOfPole(scene: Scene, reading: Reading): boolean {
  // "volts 239 running, contactor drop 0.03 V": the line's own volts are not lost anywhere
  if (reading.state === "running" && (numberOf(reading) ?? 0) >= controlBelowV) return false;
  const near = beside(scene, reading, [34, 34]);
  if (isOfPoleRow(scene, reading) || isInPoleRow(scene, reading)) return true;
  return /(?:over|across|through|drops?(?: on)?) (?:the |a |that |each )?(?:\w+ )?(?:pole|contact|points)|contactor drops?|\bv a pole|contact(?:or|s)?\b.*\b(?:over|across) (?:it|l ?[123](?! ?(?:and|to|&|[-/lt])))\b/.test(
    near,
  );
}

/** "the other two under 0.2": what the sound poles lose, where it was told with the bad one. */
function othersTold(scene: Scene): number[] {
  const told =
    /\b(?:loses|drops?|lost)\b(?:[^.;]|\.\d)*\b(?:others?|rest)(?: two| poles?)*(?: are| is| all| both)?(?: under| below| less than| about| around| at)? (0?\.\d+)\b/.exec(
      scene.words,
    )?.[1];
  return told === undefined ? [] : [Number(told)];
}

/** "drop across pole 1 0.05 V, pole 2 0.04 V, pole 3 3.8 V": each pole's own, once a drop is told of. */
function isOfPoleRow(scene: Scene, reading: Reading): boolean {
  const text = noteOf(scene, reading)?.text ?? "";
  if ((numberOf(reading) ?? 0) >= controlBelowV || !rowOfPoles.test(text)) return false;
  const [from] = figureSpan(text, reading);
  return poleBefore.test(text.slice(0, from));
}

const rowOfPoles =
  /\b(?:drops?|lost|loses|across)\b[^.]*\bpoles?\b|\bpoles?\b[^.]*\b(?:drops?|loses)\b/i;
const poleBefore =
  /\b(?:poles? (?:\d|[a-c]|one|two|three)|(?:the )?(?:other|rest|remaining)(?: \w+)?|l ?[123]|left|right|middle)(?: pole)?(?: is| at| only| under| below)?[ :,=]*$/i;

/** An open contactor passes nothing and is no fault. */
function saysClosed(scene: Scene): boolean {
  if (scene.seen.some((one) => one.observation === "contactor_pulls_in")) return true;
  return isFed(Math.max(...numbersOf(controlReadings(scene)))) && saidIn.test(scene.words);
}

/** "coil has 24 V and it's pulled in", with no contactor named beside it. */
const saidIn = /\b(?:it'?s|its|and|with it) (?:is )?(?:pulled in|in|made|closed)\b(?! the)/;

function drawsCurrent(scene: Scene): boolean {
  return numbersOf(ofQuantity(scene.readings, "current")).some((one) => one > leastMotorA);
}

/** A; less may be a fan's or a stray reading. Common practice, no source. */
const leastMotorA = 3;

/** Share of the line's volts by which two rows read one after the other differ anyway. Common practice, no source. */
const rowsApart = 0.012;

/** What is lost between two rows, leg by leg where both have as many; rows that agree as well as two rows can lose nothing. */
function rowsLost(line: readonly number[], load: readonly number[]): number[] {
  const legs = line.length === load.length && line.length > 1;
  const drop = legs
    ? Math.max(...line.map((volts, leg) => volts - (load[leg] ?? volts)))
    : Math.max(...line) - Math.min(...load);
  return [line.length > 1 && drop < rowsApart * Math.max(...line) ? 0 : Math.max(drop, 0)];
}

function contactFindings(scene: Scene): Finding[] {
  const across = numbersOf(
    ofQuantity(scene.readings, "voltage", "diode_drop").filter(
      (one) => isAcrossContact(one) || isSaidOfPole(scene, one),
    ),
  );
  across.push(...(across.length === 1 ? othersTold(scene) : []));
  const line = sideVolts(scene, "line");
  const load = sideVolts(scene, "load");
  const closed = Math.max(...load) >= controlBelowV || saysClosed(scene);
  const both = line.length > 0 && load.length > 0 && !isOfFuses(scene);
  const lost = both && closed ? rowsLost(line, load) : [];
  const drops = [...across, ...lost];
  if (drops.length === 0) return [];
  const drop = Math.max(...drops);
  if (drop >= controlBelowV && lost.length === 0 && saysClosed(scene))
    return [
      found(
        "bad",
        `${listed(drops, "V")} across the poles with the contactor in: that pole does not close`,
        "contactor:pole_open",
      ),
    ];
  // a motor that draws current has its poles closed: the line's volts were meant
  if (drop >= controlBelowV && lost.length === 0 && drawsCurrent(scene)) return [];
  if (drop >= controlBelowV && lost.length === 0)
    return [
      found("watch", `${listed(drops, "V")} across the poles: that pole is open`, "contactor:drop"),
    ];
  if (lost.length > 0 && drop >= poleOpenShare * Math.max(...line))
    return [
      found(
        "bad",
        `${plain(drop)} V lost over the contacts: a pole does not close`,
        "contactor:pole_open",
      ),
    ];
  if (drop >= contactDropV.bad || isOddDrop(across))
    return [
      found(
        "bad",
        `${plain(drop)} V lost over the contacts: burnt or not closing`,
        "contactor:drop",
      ),
    ];
  if (Math.max(...across, 0) >= contactDropV.worn)
    return [
      found(
        "watch",
        `${plain(drop)} V lost over the contacts: worn, it heats that pole`,
        "contactor:drop",
      ),
    ];
  return drop >= contactDropV.watch
    ? [found("watch", `${plain(drop)} V lost over the contacts: worn`, "contactor:passes")]
    : [found("good", `${plain(drop)} V lost over the contacts`, "contactor:passes")];
}
