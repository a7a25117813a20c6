import type { Finding, Reading } from "../../model.ts";
import { isAlongUnits } from "../at-units.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { noteOf, noteWords, wordsNear } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";
import { told } from "./told.ts";

/** V dc: below it a pair is dead; and of what a living pair shows, the share that is enough. Common practice, no source. */
const deadV = 2;
const share = 0.6;

const pairWords =
  /\bcomms?\b|communicat|\bpair\b|transmission|\bdata (?:line|wire|bus)\b|\bf1|\bp1|\bnetwork/;

/** The communication pair: one place against another, and with a unit unplugged. */
export const communication: Check = {
  name: "communication",
  examples: [
    { level: "good", notes: ["comm pair 14 V dc at the outdoor and 13.9 V dc at indoor 4"] },
    { level: "bad", notes: ["comm pair 14 V dc at indoor 3 and 0 V dc at indoor 4"] },
  ],
  signs: [
    "communication:alive",
    "communication:pulled_down",
    "communication:dead_part",
    "network:communication_lost",
    "network:communication_returns_unplugged",
    "network:dead_unloaded",
    "cable:cable_damaged",
    "joint:connection_loose",
    "well:fine",
  ],
  judge: (scene) => {
    const volts = pairVolts(scene);
    const measured = volts.length === 0 ? [] : [pairFinding(volts, scene)];
    return [...measured, ...told(scene, "communication")];
  },
};

/** The whole pair, measured again: what any place of it showed before is past. */
const wholePair = /\b(?:both|all) (?:the )?(?:ends|places|units|heads|boxes)\b|\beverywhere\b/;

function pairVolts(scene: Scene): number[] {
  const all = ofQuantity(scene.readings, "voltage").filter((one) => isPair(one, scene));
  const whole = all.findLast((one) => wholePair.test(noteWords(scene, one)));
  const from = whole === undefined ? undefined : noteOf(scene, whole);
  const at = from === undefined ? 0 : all.findIndex((one) => noteOf(scene, one) === from);
  const pairs = all.slice(at);
  // read again at a place that has a name, the last counts
  const last = pairs.filter(
    (one, at) =>
      one.subject === undefined ||
      isUnplugged(scene) ||
      !pairs
        .slice(at + 1)
        .some(
          (later) => later.subject === one.subject && noteOf(scene, later) !== noteOf(scene, one),
        ),
  );
  return last.flatMap((one) => numberOf(one) ?? []);
}

const isUnplugged = (scene: Scene): boolean =>
  scene.seen.some((one) => one.observation === "communication_returns_unplugged") ||
  /unplug|disconnect|pulled/.test(scene.words);

/** "power at BB-1 0 V, comm pair 0.3 Vdc": the first is no value of the pair. */
function isPower(reading: Reading, scene: Scene): boolean {
  const own = clauseOf(scene, reading);
  return reading.kind !== "dc" && /\bpower\b|\bsupply\b|\bfeed\b/.test(own) && !pairWords.test(own);
}

/** Low dc voltage said with the pair; a mains or bus voltage beside it is another matter. */
function isPair(reading: Reading, scene: Scene): boolean {
  if (isAlongUnits(scene, reading)) return true;
  const value = numberOf(reading);
  if (value === undefined || value > 60 || reading.kind === "ac" || reading.at === "dc_bus")
    return false;
  if (isPower(reading, scene)) return false;
  // "comms ok, U V W give 0 volts": what the drive puts out
  if (reading.points?.some((one) => /^[UVWT]\d?$/.test(one)) === true) return false;
  if (/signal(?! pair)|transducer|sensor|supply on/.test(wordsNear(scene, reading))) return false;
  return (
    pairWords.test(noteWords(scene, reading)) ||
    (reading.kind === "dc" && pairWords.test(scene.words))
  );
}

function pairFinding(volts: readonly number[], scene: Scene): Finding {
  const highest = Math.max(...volts);
  const lowest = Math.min(...volts);
  const base = {
    about: "communication",
    check: "communication",
    values: {},
    basis: "common practice",
    source: "common practice, no source: one place of a pair against another",
  } as const;
  if (lowest >= share * highest && highest > deadV)
    return {
      ...base,
      level: "good",
      brief: "the pair is alive",
      says: `${plain(lowest)} V on the pair: alive`,
      signs: ["communication:alive"],
    };
  const returns = scene.seen.some((one) => one.observation === "communication_returns_unplugged");
  if (returns)
    return {
      ...base,
      level: "bad",
      brief: "that unit pulls the pair down",
      says: `${plain(lowest)} V on the pair, ${plain(highest)} V with that unit unplugged: its board pulls the pair down`,
      signs: ["communication:pulled_down"],
    };
  const says =
    highest > deadV
      ? `${plain(highest)} V in one place and ${plain(lowest)} V in another: broken, shorted or pulled down between`
      : `${plain(lowest)} V on the pair: dead`;
  return { ...base, level: "bad", brief: gist(says), says, signs: ["communication:dead_part"] };
}
