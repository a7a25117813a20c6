import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { noteOf, wordsNear } from "../near.ts";
import { hasPoint, numberOf, numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";
import { told } from "./told.ts";

/** V forward, diode mode. Source: service literature; 0.05 V spread: common practice, no source. */
const forward = { shorted: 0.1, from: 0.25, to: 0.75 } as const;
const spreadV = 0.06;

type Stage = "output" | "rectifier";

/** The drive's diodes, output stage and rectifier apart: shorted, open, or one odd leg. */
export const bridge: Check = {
  name: "bridge",
  examples: [
    {
      level: "good",
      notes: ["leads off, diode mode, output U V W all 0.41 to DC-"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
    {
      level: "bad",
      notes: ["leads off, diode mode, output U 0.00 to DC-, V and W 0.41"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
    {
      level: "unknown",
      notes: ["diode mode with the compressor still connected: output U V W all 0.41"],
      equipment: { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 },
    },
  ],
  signs: [
    "output:balanced",
    "swap:follows_drive",
    "swap:stays_with_motor",
    "bridge:output_sound",
    "bridge:output_shorted",
    "bridge:output_open",
    "bridge:output_odd",
    "rectifier:sound",
    "rectifier:shorted",
    "rectifier:open",
    "rectifier:odd",
  ],
  judge: (scene) => {
    // a machine across the line has no diodes: a contact's drop was meant
    const measured =
      scene.facts.drive === "line"
        ? []
        : judgeStages(
            scene.readings.filter((one) => isDiodeDrop(one, scene)),
            scene,
          );
    const heard = told(scene, "bridge");
    // the legs with a figure agree; the one that has none is told dead
    const dead = (one: Finding): boolean =>
      one.level === "good" &&
      heard.some((other) => other.about === one.about && other.level === "bad");
    const signs = measured.flatMap((one) => one.signs ?? []);
    const rest = heard.filter((one) => one.signs?.some((sign) => signs.includes(sign)) !== true);
    return [...measured.filter((one) => !dead(one)), ...rest];
  },
};

/** V between a rail and a leg, in a note of a diode test: a drop, by whatever name it was taken for. */
export function isDiodeDrop(one: Reading, scene: Scene): boolean {
  if (one.quantity === "diode_drop") return true;
  if (one.quantity !== "voltage" || (numberOf(one) ?? highestDropV) >= highestDropV) return false;
  const between = ["DC+", "DC-"].some((rail) => hasPoint(one, rail)) && one.points?.some(isLeg);
  return between === true && /\bdiodes?\b/i.test(noteOf(scene, one)?.text ?? "");
}

/** V; two diodes in a row read less. Common practice, no source. */
const highestDropV = 1.5;

function judgeStages(drops: readonly Reading[], scene: Scene): Finding[] {
  const output = drops.filter((one) => stageOf(one, scene) !== "rectifier");
  const rectifier = drops.filter((one) => stageOf(one, scene) === "rectifier");
  const unsaid = drops.some((one) => stageOf(one, scene) === undefined);
  const all = unsaid && rectifier.length === 0 ? drops : rectifier;
  return [...stageFinding("output", output, scene), ...stageFinding("rectifier", all, scene)];
}

/** Which bridge a drop belongs to; undefined where not said. */
function stageOf(reading: Reading, scene: Scene): Stage | undefined {
  const has = (points: readonly string[]) => points.some((one) => hasPoint(reading, one));
  if (has(["U", "V", "W", "T1", "T2", "T3"])) return "output";
  if (has(["L1", "L2", "L3"])) return "rectifier";
  const near = wordsNear(scene, reading);
  if (/all (?:12|twelve)|all round|all around|every/.test(near)) return;
  if (
    /rectifier|input|\bl[123]\b|\bbridge (?:is )?(?:shorted|blown)|\bl to (?:plus|minus|p|n)\b/.test(
      near,
    )
  )
    return "rectifier";
  return /output|inverter|ipm|module|\b[uvw]\b/.test(near) ? "output" : undefined;
}

function stageFinding(stage: Stage, drops: readonly Reading[], scene: Scene): Finding[] {
  if (drops.length === 0) return [];
  const broken = brokenWords(drops, scene);
  if (broken !== undefined) return [found(stage, broken)];
  const values = numbersOf(drops);
  if (values.length === 0) return [];
  const told = spreadWords(values, numbersOf(drops.filter(isOneDiode)));
  return stage === "output" && told.level === "good" && saysConnected(scene.words)
    ? [hidden(found(stage, told))]
    : [found(stage, told)];
}

/** The motor hangs on the output still: its windings tie the three legs together. */
export function saysConnected(words: string): boolean {
  return /\b(?:compressor|comp|motor|leads|plug)\b.{0,8}\b(?:still )?(?:connected|plugged in|hooked up|landed)\b/.test(
    words.replace(/\b(?:not|dis)\W?(?:connected|hooked up|plugged in)\b/g, ""),
  );
}

/** Like drops with the motor on clear nothing: one bad diode reads as the good ones do. */
function hidden(one: Finding): Finding {
  return {
    ...one,
    level: "unknown",
    says: "The legs read alike, but the motor was connected and ties them together: one bad diode hides. Repeat it with the motor leads off",
    brief: "repeat with the motor leads off",
    signs: [],
    missing: "the same test with the motor leads off",
  };
}

interface Told {
  readonly level: Finding["level"];
  readonly outcome: string;
  readonly says: string;
}

/** A leg that is shorted or open, by its own reading. */
function brokenWords(drops: readonly Reading[], scene: Scene): Told | undefined {
  const shorted = drops.filter((one) => (numberOf(one) ?? 1) < forward.shorted);
  if (shorted.length > 0) {
    const lowest = plain(Math.min(...numbersOf(shorted)));
    return {
      level: "bad",
      outcome: "shorted",
      says: `${nameOf(shorted)} reads ${lowest} V: shorted`,
    };
  }
  const open = drops.filter(
    (one) => one.over_range === true && (isBothWays(one, scene) || isBothRails(one, drops)),
  );
  if (open.length > 0)
    return {
      level: "bad",
      outcome: "open",
      says: `${nameOf(open)} open both ways: that diode is open`,
    };
  const lone = numbersOf(drops).length === 0 ? [] : loneOpen(drops, scene);
  if (lone.length === 0) return;
  return {
    level: "watch",
    outcome: "odd",
    says: `${nameOf(lone)} reads OL where the other legs conduct: turn the leads over and repeat, OL again is an open diode`,
  };
}

/** From one leg to a rail stands one diode; from rail to rail, or leg to leg, two in a row. */
function isOneDiode(reading: Reading): boolean {
  const { points } = reading;
  const toRail = points?.filter(isLeg).length === 1 && points.length > 1;
  return toRail || (numberOf(reading) ?? 1) <= forward.to;
}

/** The legs against each other; `singles`: those of one diode. */
function spreadWords(values: readonly number[], singles: readonly number[]): Told {
  const lowest = Math.min(...values);
  const range = `${plain(lowest)} to ${plain(Math.max(...values))} V`;
  if (singles.length > 1 && Math.max(...singles) - Math.min(...singles) > spreadV)
    return {
      level: "watch",
      outcome: "odd",
      says: `${range}: one leg is odd, repeat it with the motor leads off`,
    };
  if (lowest < forward.from)
    return {
      level: "watch",
      outcome: "odd",
      says: `${plain(lowest)} V is low for a diode, repeat it with the bus proven near 0 V`,
    };
  return {
    level: "good",
    outcome: "sound",
    says: `${range}: the diodes agree; that clears diodes and shorted transistors only, and with the motor still connected a bad leg hides`,
  };
}

/** OL against the diode is as it should be; only OL both ways is a fault. */
function isBothWays(reading: Reading, scene: Scene): boolean {
  return (
    /both (?:ways|directions|ways round)|either way|each way/.test(wordsNear(scene, reading)) ||
    turnedOver.test(fromOwnWords(reading, scene))
  );
}

/** "L3 OL, OL turned over": said of one leg, right behind its own figure. */
const turnedOver =
  /^(?:[ltuvw]\d? (?:to )?(?:dc[+-] )?)?ol\b(?!.*\ball\b).{0,24}\b(?:ol|open|same|too|also|still)\b.{0,12}\b(?:swapped|turned|revers\w+|flipped|the other way|leads over)\b/;
const turnedAfter = 60;

/** The note from a reading's first words on, lower case. */
function fromOwnWords(reading: Reading, scene: Scene): string {
  const [from] = reading.spans[0] ?? [0];
  const text = noteOf(scene, reading)?.text ?? "";
  return text.slice(from, from + turnedAfter).toLowerCase();
}

/** A leg that is OL to both rails while others conduct. */
function isBothRails(reading: Reading, drops: readonly Reading[]): boolean {
  const leg = reading.points?.find((point) => /^[LTUVW]\d?$/.test(point));
  if (leg === undefined || numbersOf(drops).length === 0) return false;
  const own = drops.filter((one) => hasPoint(one, leg));
  return (
    ["DC+", "DC-"].every((rail) =>
      own.some((one) => one.over_range === true && hasPoint(one, rail)),
    ) && own.every((one) => one.over_range === true)
  );
}

/** A test's rail and direction, its leg left out: "DC- to leg" is another test than "leg to DC-". */
function testOf(reading: Reading): string {
  return (reading.points ?? []).map((one) => (isLeg(one) ? "leg" : one)).join(" to ");
}

function isLeg(point: string): boolean {
  return /^[LTUVW]\d?$/.test(point);
}

/** Legs that read OL alone, while others conduct in the same test and show no OL: no reversed test of all legs. */
function loneOpen(drops: readonly Reading[], scene: Scene): Reading[] {
  const named = drops.filter((one) => one.points?.some(isLeg) === true);
  const tests = [...new Set(named.map(testOf))];
  return tests.flatMap((test) => {
    const legs = named.filter((one) => testOf(one) === test);
    const leg = (one: Reading) => one.points?.find(isLeg);
    const conducts = new Set(legs.filter((one) => numberOf(one) !== undefined).map(leg));
    const open = legs.filter((one) => one.over_range === true && !conducts.has(leg(one)));
    const turned = open.some((one) =>
      /revers|other way|swapped|against/.test(wordsNear(scene, one)),
    );
    return turned || open.length >= conducts.size ? [] : open;
  });
}

function nameOf(drops: readonly Reading[]): string {
  const names = drops.flatMap((one) => (one.points ? [one.points.join(" to ")] : []));
  return names.length === 0 ? "One leg" : [...new Set(names)].join(" and ");
}

const briefs: Readonly<Record<string, string>> = {
  sound: "the diodes agree",
  shorted: "a leg is shorted",
  open: "a diode is open",
  odd: "one leg is odd, repeat it",
};

function found(stage: Stage, { level, outcome, says }: Told): Finding {
  return {
    about: stage === "output" ? "drive output stage" : "drive rectifier",
    check: "bridge",
    level,
    brief: briefs[outcome] ?? says,
    says,
    values: {},
    basis: "common practice",
    source:
      "service literature: 0.3 to 0.7 V forward, below 0.1 V shorted; spread of 0.05 V: common practice, no source",
    signs: [stage === "output" ? `bridge:output_${outcome}` : `rectifier:${outcome}`],
  };
}
