import type { Finding, Reading } from "../../model.ts";
import { unbalancePercent } from "../../physics/unbalance.ts";
import type { Check } from "../check.ts";
import { numbersOf, ofQuantity, setsOf } from "../pick.ts";
import { listed, plain } from "../words.ts";
import { isDriveOutputVoltage } from "./volts.ts";

/** Percent between the output lines of a drive. Common practice, no source. */
const evenPercent = 4;
const unevenPercent = 10;

/** The three voltages that a drive makes, against each other. */
export const driveOutput: Check = {
  name: "bridge",
  examples: [
    {
      level: "good",
      notes: ["motor unplugged, drive output U-V 210, V-W 211, U-W 210"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
    {
      level: "bad",
      notes: ["motor unplugged, drive output U-V 214, V-W 97, U-W 95"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
  ],
  signs: ["output:balanced", "output:unbalanced", "output:none"],
  judge: (scene) => {
    const volts = ofQuantity(scene.readings, "voltage").filter((one) =>
      isDriveOutputVoltage(scene, one),
    );
    const told = commanded.test(scene.words);
    return setsOf(scene.notes, volts).flatMap((set) =>
      told && isNothing(set) ? [nothingOut] : outputFinding(set),
    );
  },
};

const commanded =
  /\brun (?:command|signal|call|order)\b(?! (?:is )?(?:missing|lost|off|gone))|\bcommanded (?:on|to run)\b|\b(?:told|called|asked) to run\b|\b(?:asking|asks|call\w*|command\w*|told|wants)\b.{0,16}\b\d+ ?hz\b/;

/** V, under which a drive's output is none. Common practice, no source. */
const nothingV = 5;

function isNothing(readings: readonly Reading[]): boolean {
  const values = numbersOf(readings);
  return values.length === 3 && Math.max(...values) < nothingV;
}

const nothingOut: Finding = {
  about: "drive output stage",
  check: "bridge",
  level: "bad",
  brief: "no output though told to run",
  says: "Told to run, and all three output lines stay dead: nothing is switched",
  values: {},
  basis: "common practice",
  source: "common practice, no source",
  signs: ["output:none"],
};

/** V, from which a pair of a drive's output is switched. Common practice, no source. */
const liveV = 30;

/** "0 V on W, 210 U-V only": one line is never switched. */
function oneDead(values: readonly number[]): Finding {
  return {
    about: "drive output stage",
    check: "bridge",
    level: "bad",
    brief: "one output line dead",
    says: `${listed(values, "V")} out of the drive: one line is not switched`,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: ["output:unbalanced"],
  };
}

function outputFinding(readings: readonly Reading[]): Finding[] {
  const values = numbersOf(readings);
  const unbalance = unbalancePercent(values);
  if (values.length === 2 && Math.min(...values) < nothingV && Math.max(...values) > liveV)
    return [oneDead(values)];
  if (values.length !== 3 || unbalance === undefined) return [];
  const level = unbalance <= evenPercent ? "good" : unbalance > unevenPercent ? "bad" : "watch";
  const says =
    level === "good" ? "even" : `${plain(unbalance)} percent apart: an arm does not switch`;
  return [
    {
      about: "drive output stage",
      check: "bridge",
      level,
      brief: level === "good" ? "even output" : "uneven output",
      says: `${listed(values, "V")} out of the drive: ${says}`,
      values: { unbalance_percent: unbalance },
      basis: "common practice",
      source: "common practice, no source: 4 and 10 percent",
      signs: [level === "good" ? "output:balanced" : "output:unbalanced"],
    },
  ];
}
