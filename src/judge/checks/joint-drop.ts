import type { CaseNote, Finding, Reading } from "../../model.ts";
import { figuresOf } from "../figures.ts";
import { isOddDrop, oddOne } from "../odd-drop.ts";
import { numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed } from "../words.ts";
import { controlBelowV, overIt } from "./volts.ts";

const joint = /\b(?:lugs?|terminals?|splices?|connections?|joints?|wire ?nuts?|terminations?)\b/i;
const drop = /\b(?:drops?|dropped|lost|loses)\b/i;

/** "drop lug to wire: L1 0.04 V, L2 2.7 V, L3 0.05 V": what each joint of a row loses under load. */
export function jointDrop(scene: Scene): Finding[] {
  return scene.notes.filter(tells).flatMap((note) => {
    const volts = ofQuantity(note.readings, "voltage", "diode_drop");
    const drops = numbersOf(volts).filter((one) => one >= 0 && one < controlBelowV);
    return isOddDrop(drops) || isBadAlone(drops, note) ? [found(drops)] : [];
  });
}

/** "5.5 V across the L1 lug": of one joint alone, where it is over the least that is odd. */
function isBadAlone(drops: readonly number[], { text }: CaseNote): boolean {
  const [lost = 0] = drops;
  return drops.length === 1 && lost >= oddOne.fromV && overIt.test((text ?? "").toLowerCase());
}

/** K of one joint over its fellows under one load, from which it is mended at once. Source: ANSI/NETA MTS table 100.18 (from memory). */
const hotK = 15;
/** "180 with the others at 105": one figure for all its fellows. */
const others = /\b(?:the |both |all )?(?:others?|rest|other two)\b/i;
const fellows =
  /\b(?:lugs?|poles?|terminals?|stabs?|studs?|splices?|fuses?|screws?|clips?|breaker|disconnect)\b/i;

/** "A lug 97, B lug 204, C lug 99 F": one joint of a row far hotter than the others. */
export function hotJoint(scene: Scene): Finding[] {
  return scene.notes.flatMap((note) => {
    if (!fellows.test(note.text ?? "")) return [];
    const degrees = note.readings.filter(
      (one) => one.quantity === "temperature" && one.rating === undefined && placed(one.at),
    );
    const cels = numbersOf(degrees).sort((a, b) => a - b);
    const [next, hottest] = cels.slice(-2);
    const coolest = cels[0];
    const both = cels.length === 2 && others.test(note.text ?? "");
    if (
      (cels.length < 3 && !both) ||
      next === undefined ||
      hottest === undefined ||
      coolest === undefined
    )
      return [];
    if (hottest - next <= hotK || next - coolest > hotK) return [];
    const over = figuresOf(scene).difference(hottest - next);
    const says = `One joint stands ${over} over its fellows under the same load: loose or burnt`;
    return [{ ...found([]), says, brief: gist(says), basis: "NETA MTS", source }];
  });
}

const source = "ANSI/NETA MTS table 100.18: over 15 K between alike parts (from memory)";

/** Metal and gear, no pipe and no air. */
function placed(at: Reading["at"]): boolean {
  return at === undefined || at === "supply";
}

function tells(note: CaseNote): boolean {
  const text = note.text ?? "";
  const lost = drop.test(text) || overIt.test(text.toLowerCase());
  return lost && joint.test(text) && !/\bpoles?\b|\bcontacts?\b/i.test(text);
}

function found(drops: readonly number[]): Finding {
  const says = `${listed(drops, "V")} lost over the joints: the one that loses most is loose or burnt`;
  return {
    about: "connection",
    check: "supply",
    level: "bad",
    brief: gist(says),
    says,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: ["joint:burnt_connection"],
  };
}
