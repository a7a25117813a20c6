import type { CaseNote, Finding, Reading } from "../../model.ts";
import { celFromFahrenheit, kelvinPerFahrenheit } from "../../physics/constants.ts";
import { applicationOf } from "../application.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { beside } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";

/** K, 18 F, between one zone's pipe and its sisters': its valve does not do what theirs do. Common practice, no source. */
const strayK = 18 * kelvinPerFahrenheit;

/** Letters before a figure that name whose pipe it is, and behind it. */
const ahead = 44;

const sisters = /\b(?:others?|the rest|remaining|sisters?|neighbou?rs?)\b[^.;]*$/;
const ownPipe =
  /\b(?:its|that|his) (?:\w+ )?(?:pipe|line|port)s?\b|\b(?:pipe|line|port)\b[^.;]*\bbranch box\b/;
const commanded =
  /\b(?:valves?|eevs?|levs?|exvs?|pmvs?)\b.{0,20}\b(?:command\w*|told|sent|called|driven|at|shows|reads)\b/;

/**
 * One zone's pipe against its sisters' in the same message, where its valve's command was told: pipes
 * that differ in the same mode differ by their valves.
 */
export function zonePipe(scene: Scene): Finding[] {
  if (applicationOf(scene) !== "multi_zone" || !commanded.test(scene.words)) return [];
  for (const note of scene.notes) {
    const temperatures = ofQuantity(note.readings, "temperature").filter(
      (one) => one.rating === undefined,
    );
    const others = temperatures.find((one) => sisters.test(beforeOf(scene, one)));
    const own = temperatures.find((one) => one !== others && ownPipe.test(beforeOf(scene, one)));
    const ownCel = celOf(own);
    const otherCel = celOf(others) ?? (own === undefined ? undefined : saidOfOthers(note, own));
    if (ownCel === undefined || otherCel === undefined) continue;
    if (Math.abs(ownCel - otherCel) >= strayK) return [found([ownCel, otherCel], figuresOf(scene))];
  }
  return [];
}

/** Figures between which a pipe's two ends are one temperature, in the unit said; warm and cold ends of a coil that works. Common practice, no source. */
const alike = 3;
const working = { coolBelowF: 64, heatAboveF: 88, coolBelowC: 18, heatAboveC: 31 } as const;
const bothEnds =
  /\b(?:pipes?|lines?)(?: \w+)? in (\d{2,3})(?:\.\d)? ?([fc])?\b.{0,16}?\bout (\d{2,3})/i;

/** One zone's coil alike at both ends and no warmer or colder than its room, its valve told open: nothing flows. */
export function withoutFlow(scene: Scene): Finding[] {
  if (applicationOf(scene) !== "multi_zone") return [];
  return scene.notes.flatMap((note) => {
    const open = note.readings.some(
      (one) =>
        (one.quantity === "valve_steps" && (numberOf(one) ?? 0) > closedSteps) ||
        (one.quantity === "valve_opening" && (numberOf(one) ?? 0) > closedPercent),
    );
    const [, first, unit, second] = bothEnds.exec(note.text ?? "") ?? [];
    if (!open || first === undefined || second === undefined) return [];
    const [into, out] = [Number(first), Number(second)];
    if (Math.abs(into - out) > alike || isWorking(into, unit)) return [];
    return [still([first, second])];
  });
}

/** Steps and percent up to which a valve counts as shut. Common practice, no source. */
const closedSteps = 100;
const closedPercent = 20;

function isWorking(value: number, unit: string | undefined): boolean {
  const celsius = unit === undefined ? value < 45 : /c/i.test(unit);
  return celsius
    ? value < working.coolBelowC || value > working.heatAboveC
    : value < working.coolBelowF || value > working.heatAboveF;
}

function still([into, out]: readonly [into: string, out: string]): Finding {
  return {
    about: "expansion valve",
    check: "valve",
    level: "bad",
    says: `${into} in and ${out} out at that coil with its valve told open: nothing flows there. Its coil and plug, its strainer, then the body`,
    brief: "no flow through that zone",
    values: {},
    basis: "common practice",
    source: "compare zones: common practice, no source",
    signs: ["valve_answer:stays_shut"],
  };
}

function beforeOf(scene: Scene, reading: Reading): string {
  return beside(scene, reading, [ahead, 0]);
}

/** "the other off rooms' pipes are 75": a figure that has no unit of its own has that of the first. */
function saidOfOthers(note: CaseNote, own: Reading): number | undefined {
  const said = /\b(?:others?|the rest)\b[^.;\d]{0,40}\b(\d{2,3})\b/i.exec(note.text ?? "")?.[1];
  if (said === undefined) return undefined;
  return own.figure.unit === "C" ? Number(said) : celFromFahrenheit(Number(said));
}

function celOf(reading: Reading | undefined): number | undefined {
  return reading === undefined ? undefined : numberOf(reading);
}

function found(
  [ownCel, otherCel]: readonly [own: number, others: number],
  figures: Figures,
): Finding {
  return {
    about: "branch box",
    check: "valve",
    level: "bad",
    says: `That zone's pipe stands at ${figures.temperature(ownCel)} where the others have ${figures.temperature(otherCel)}: its valve does not follow its command, where coil and wiring have been proven`,
    brief: "one zone's valve does not follow",
    values: {},
    basis: "common practice",
    source: "compare zones: common practice, no source",
    signs: ["branch:stuck"],
  };
}
