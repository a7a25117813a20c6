import type { Finding, Reading } from "../../model.ts";
import { clauseOf } from "../clause.ts";
import { noteWords } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { ohmWords } from "../words.ts";

const valve = /\b(?:valve|solenoid|sol|eev|exv|lev|pmv|stepper|stator|reversing|rv|4.?way|port)\b/;
const magnet = /\b(?:coil|solenoid|stator|stepper|winding|magnet)s?\b/;
const open =
  /\b(?:coil|solenoid|stator|magnet)s?\b.{0,16}\b(?:is |are |reads? |tests? |meters? |shows? |measures? |was )(?:wide )?(?:open|ol|o\.l\.|infinite|burnt open)\b/;
const moves = /\bopen(?:s|ed|ing)? (?:and|or|up|fully|when|at|but|\d)/;

/** A coil of a valve by its ohms, or by the word: "solenoid coil OL", "the valve coil is open". */
export function valveCoil(scene: Scene): Finding[] {
  const read = ofQuantity(scene.readings, "resistance", "winding_resistance").find(
    (one) => isOpen(one) && isOfValve(clauseOf(scene, one), noteWords(scene, one)),
  );
  const note = scene.words
    .split("\n")
    .find((line) => open.test(line) && isOfValve(line, line) && !moves.test(line));
  const words = read === undefined ? note : noteWords(scene, read);
  if (words === undefined || isRenewed(scene, words)) return [];
  const ohm = read === undefined ? undefined : numberOf(read);
  const is = ohm === undefined ? "open" : `shorted, ${ohmWords(ohm)}`;
  return [
    {
      about: "valve coil",
      check: "valve",
      level: "bad",
      says: `The valve's coil reads ${is}: nothing can move that valve. Power off, a known good coil of a neighbor on it, and see whether the pipe answers; then a new coil, and its output and plug before it burns the next`,
      brief: `valve coil ${ohm === undefined ? "open" : "shorted"}`,
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      signs: [`valve_coil:${outcomeOf(`${scene.words} ${scene.facts.kind ?? ""}`, words)}`],
    },
  ];
}

/** Ohm under which a coil of a valve is shorted. Common practice, no source. */
const shortedOhm = 1;

function isOpen(one: Reading): boolean {
  return one.over_range === true || (numberOf(one) ?? shortedOhm) < shortedOhm;
}

function isOfValve(clause: string, note: string): boolean {
  if (/\b(?:comp\w*|fan|blower|motor|contactor|sensor|thermistor|transformer)\b/.test(clause))
    return false;
  return valve.test(note) && (magnet.test(clause) || magnet.test(note));
}

function outcomeOf(all: string, note: string): string {
  if (/\b(?:eev|exv|lev|pmv|stepper|stator|expansion)\b/.test(note)) return "expansion_open";
  if (/\breversing\b|\brv\b|\b4.?way\b|\bgas valve\b|\bliquid\b/.test(note)) return "open";
  return /\b(?:port|branch|changeover|zone)\b/.test(all) ? "branch_open" : "open";
}

/** "new coil on, heats": put right behind it. */
function isRenewed(scene: Scene, note: string): boolean {
  const notes = scene.words.split("\n");
  return notes
    .slice(notes.indexOf(note) + 1)
    .some((line) =>
      /\b(?:new|replaced|changed) (?:the |that |its )?(?:coil|stator|solenoid)\b|\b(?:coil|stator|solenoid) (?:is |was )?(?:replaced|changed)\b/.test(
        line,
      ),
    );
}
