import type { CaseNote, Finding, Reading } from "../../model.ts";
import { busBands, idleBusV, loadedBusV, touchLimitV } from "../../physics/dc-bus.ts";
import { isWithin, nameplateRange } from "../../physics/supply.ts";
import type { ActionName } from "../../vocabulary.ts";
import { isAlongUnits } from "../at-units.ts";
import type { Check } from "../check.ts";
import { noteOf, noteWords, wordsNear } from "../near.ts";
import { hasPoint, numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";
import { isRunning } from "./bus-running.ts";
import { measuredBus, misreadBus } from "./shown-bus.ts";
import { lineVolts } from "./volts.ts";

/** Loaded over line below which a diode or phase is missing. Source: rectifier theory, common practice. */
const lowShare = 1.25;
/** V dc that boosting stages hold on 208 to 240 V single-phase. Source: rectifier theory, common practice. */
const boostedV = { from: 340, to: 410 } as const;
/** Over the line's peak: a boosting input stage. Source: rectifier theory. */
const boostShare = 1.48;

/** The drive's dc bus against the line, and after power off against the touch limit. */
export const dcBus: Check = {
  name: "dc_bus",
  examples: [
    {
      level: "good",
      notes: ["dc bus 650 V, line 480 481 479, running"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
    {
      level: "bad",
      notes: ["dc bus 480 V, line 480 481 479, running"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
    { level: "unknown", notes: ["dc bus 650 V"], equipment: { drive: "inverter", phases: 3 } },
  ],
  signs: ["bus:sound", "bus:low", "bus:dead", "bus:high", "drive_code:control_fault"],
  judge: (scene) => {
    const residuals = drainedReadings(scene);
    const all = busReadings(scene);
    const read = measuredBus(all, scene)
      .filter((one) => !residuals.includes(one) || one === residuals.at(-1))
      .map((one) => judgeBus(one, scene));
    return residuals.length > 0 ? read : [...read, ...misreadBus(all, scene)];
  },
};

/** Readings of the bus. */
function busReadings(scene: Scene): Reading[] {
  const all = namedBus(scene);
  return all.filter((one) => !isLineBeside(one, all, scene));
}

/** Bus over its line, from loaded to boosted a little. Source: rectifier theory; see the bands. */
const overLine = { from: 1.28, to: 1.5 } as const;

/** "bus 646 V, 468 in on all three": the line it is made of, said in one breath with it, near the plate. */
function isLineBeside(one: Reading, all: readonly Reading[], scene: Scene): boolean {
  const value = numberOf(one) ?? 0;
  if (isCarried(one, all, scene)) return true;
  const plate = nameplateRange(scene.facts.supply_V ?? 0);
  if (plate === undefined || !isWithin(value, plate)) return false;
  return all.some((bus) => {
    const ratio = (numberOf(bus) ?? 0) / value;
    const together = noteOf(scene, bus) === noteOf(scene, one);
    return together && bus !== one && ratio > overLine.from && ratio < overLine.to;
  });
}

/** "ramps up to 22.5" behind a bus of 298: its unit and place were filled in from there. */
function isCarried(one: Reading, all: readonly Reading[], scene: Scene): boolean {
  if (!one.assumed.includes("unit") || (numberOf(one) ?? 0) >= touchLimitV) return false;
  const ramps = /\bramp(?:s|ed|ing)?\b|\bc(?:omes?|ame) up slow/.test(noteWords(scene, one));
  return ramps && all.some((bus) => (numberOf(bus) ?? 0) > leastBusV);
}

/** V of any bus that is up. Common practice, no source. */
const leastBusV = 200;

function namedBus(scene: Scene): Reading[] {
  return ofQuantity(scene.readings, "voltage").filter(
    (one) =>
      numberOf(one) !== undefined &&
      (one.at === "dc_bus" || hasPoint(one, "DC+")) &&
      !isOfLeg(one) &&
      !isOfPair(one, scene),
  );
}

/** Between a rail and a leg: a diode's drop or a ripple, never what the bus holds. */
function isOfLeg(reading: Reading): boolean {
  return reading.points?.some((one) => /^[LTUVW]\d?$/.test(one)) === true;
}

/** "Bus" is also what some call the communication pair, at a fraction of the volts. */
function isOfPair(reading: Reading, scene: Scene): boolean {
  if (isAlongUnits(scene, reading)) return true;
  const low = (numberOf(reading) ?? 0) < touchLimitV;
  return low && /\banswer|\bcomms?\b|offline|indoor unit|\biu-?\d/.test(noteWords(scene, reading));
}

/** Readings of a bus that drains with the power off; what it holds now is the last of them. */
export function drainedReadings(scene: Scene): Reading[] {
  return busReadings(scene).filter((one) => isAfterPowerOff(one, scene));
}

/** Whether the power was off when it was read. */
function isAfterPowerOff(reading: Reading, scene: Scene): boolean {
  const near = wordsNear(scene, reading).replace(standsOnly, "");
  return (
    (isOff(noteOf(scene, reading), scene) ||
      offWords.test(near) ||
      isBesideDeadTest(reading, scene)) &&
    !/running|with it on|energized/.test(near)
  );
}

/** Hardly any volts in the note of a test that is done dead only, or right before it: diodes, windings, insulation. */
function isBesideDeadTest(reading: Reading, scene: Scene): boolean {
  if ((numberOf(reading) ?? touchLimitV) >= touchLimitV) return false;
  const own = noteOf(scene, reading);
  if (own === undefined) return false;
  const isFed = /\bno (?:dc )?bus\b/.test(noteWords(scene, reading)) || own.readings.some(isOfLine);
  const at = scene.notes.indexOf(own);
  return scene.notes
    .slice(at, isFed ? at + 1 : at + 2)
    .some(({ readings }) => readings.some((one) => deadTests.includes(one.quantity)));
}

/** A line that is on, read beside it: nothing was put off yet. */
function isOfLine(one: Reading): boolean {
  const bus = one.at === "dc_bus" || one.kind === "dc";
  return one.quantity === "voltage" && !bus && (numberOf(one) ?? 0) >= touchLimitV;
}

const deadTests: readonly string[] = ["diode_drop", "winding_resistance", "insulation_resistance"];

/** The last word on the power up to a note: what was locked an hour ago is off until it is put on. */
function isOff(note: CaseNote | undefined, scene: Scene): boolean {
  const until = note === undefined ? 0 : scene.notes.indexOf(note) + 1;
  const deeds = scene.notes
    .slice(0, until)
    .flatMap((one) => one.statements)
    .flatMap((one) => (one.kind === "action" && one.planned !== true ? [one.action] : []));
  const last = deeds.findLast((one) => offDeeds.has(one) || onDeeds.has(one));
  return last !== undefined && offDeeds.has(last);
}

const offDeeds = new Set<ActionName>(["power_off", "locked", "proved_dead"]);
const onDeeds = new Set<ActionName>(["power_on", "unlocked", "started", "reset"]);

const offWords =
  /power(?:ed)? (?:off|down)|after off|\boff\b|still|threw the|(?:pulled|opened|threw|dropped) the (?:disconnect|disco|main|breaker)|(?:disconnect|disco|main|breaker) (?:is |was )?(?:open|off|pulled|out)|unplugged|killed|bled|bleed|locked|waited|down to|minutes? after/;

/** What stands while the drive is fed: "335 with the comp off". */
const standsOnly = /\b(?:comp(?:ressor)?|fans?|motor|stat|thermostat)s? (?:is |was |are )?off\b/g;

function judgeBus(reading: Reading, scene: Scene): Finding {
  const bus = numberOf(reading) ?? 0;
  return isAfterPowerOff(reading, scene) ? residual(bus) : against(bus, reading, scene);
}

function residual(bus: number): Finding {
  const charged = bus >= touchLimitV;
  return {
    about: "drive",
    check: "dc_bus",
    level: charged ? "bad" : "good",
    brief: charged ? "still charged, hands out" : "under the touch limit",
    says: charged
      ? `${plain(bus)} V on the bus with the power off: still charged, wait and measure again before any hand goes in`
      : `${plain(bus)} V on the bus with the power off: under the touch limit of 50 V`,
    values: {},
    basis: "29 CFR 1910.333",
    source: "29 CFR 1910.333(a)(1): 50 V",
    signs: [],
  };
}

function against(bus: number, reading: Reading, scene: Scene): Finding {
  const measured = lineVolts(scene);
  const line = measured ?? scene.facts.supply_V;
  if (line === undefined)
    return plainFinding("unknown", `${plain(bus)} V on the bus: no line voltage known`, {
      missing: "the line voltage",
    });
  const expected = isRunning(reading, scene) ? loadedBusV(line) : idleBusV(line);
  const values = { expected_dc_bus_V: expected };
  const ratio = bus / line;
  const of = `${plain(bus)} V, ${plain(ratio)} times the ${measured === undefined ? "plate" : "line"}'s ${plain(line)} V`;
  if (bus < touchLimitV)
    return plainFinding("bad", `${of}: no bus, look at fuses, precharge and rectifier`, {
      values,
      sign: "bus:dead",
    });
  if (ratio < lowShare || (!isRunning(reading, scene) && ratio < busBands.loadedFrom))
    return plainFinding(
      "bad",
      `${of}, ${plain(expected)} V expected: a phase or a diode is missing, or the precharge`,
      {
        values,
        sign: "bus:low",
      },
    );
  if (ratio > boostShare && isBoosted(reading, scene))
    return plainFinding("good", `${of}: over the line's peak, as a boosting input stage makes it`, {
      values,
      sign: "bus:sound",
    });
  if (ratio > boostShare)
    return plainFinding(
      "watch",
      `${of}: a boosting input stage, or measure again; compare with the board's label`,
      {
        values,
        sign: "bus:high",
      },
    );
  return plainFinding("good", `${of}, ${plain(expected)} V expected`, {
    values,
    sign: "bus:sound",
  });
}

/** A boosting input stage was named, or the input is single-phase and the bus where they hold it. */
function isBoosted(reading: Reading, scene: Scene): boolean {
  const bus = numberOf(reading) ?? 0;
  const usual = scene.facts.phases === 1 && bus >= boostedV.from && bus <= boostedV.to;
  return (
    usual ||
    /boost|\bpfc\b/.test(scene.words) ||
    scene.seen.some((one) => one.observation === "bus_boosted")
  );
}

const briefs: Readonly<Record<string, string>> = {
  "bus:dead": "no bus",
  "bus:low": "low: a phase, a diode or the precharge",
  "bus:high": "over the line's peak, a boost stage?",
  "bus:sound": "as the line gives it",
};

function plainFinding(
  level: Finding["level"],
  says: string,
  extra: { values?: Record<string, number>; sign?: string; missing?: string },
): Finding {
  return {
    about: "drive",
    check: "dc_bus",
    level,
    brief: briefs[extra.sign ?? ""] ?? "no line voltage known",
    says,
    values: extra.values ?? {},
    basis: "rectifier theory",
    source:
      "rectifier theory: 1.414 times the line idle, 1.350 loaded; bands of 3 percent and 1.30 to 1.42: common practice, no source",
    signs: extra.sign === undefined ? [] : [extra.sign],
    ...(extra.missing === undefined ? {} : { missing: extra.missing }),
  };
}
