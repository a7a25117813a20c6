import type { Finding } from "../../model.ts";
import { noteWords } from "../near.ts";
import { numberOf } from "../pick.ts";
import { perScene, type Scene } from "../scene.ts";
import { plain } from "../words.ts";
import { allVoltages, controlBelowV, sideOf } from "./volts.ts";

/**
 * Share of the line side below which a pair behind a fuse is dead: what hangs on the two live lines
 * feeds about half back to the third. Circuit reasoning; common practice, no source.
 */
const deadShare = 0.6;

/** Both sides of fuses, a breaker or a disconnect were read, not of a contactor. */
export const isOfFuses: (scene: Scene) => boolean = perScene((scene) => {
  if (!named.test(scene.words)) return false;
  return allVoltages(scene).some((one) => {
    if (sideOf(scene, one) !== "load") return false;
    const words = noteWords(scene, one);
    if (sideOfThem.test(words)) return true;
    if (/contactor/.test(words)) return false;
    return named.test(words) || lineWords(scene).some((each) => named.test(each));
  });
});

/** The notes that tell the line side: "line side of the fuse block 483 481 484", and the load side in the next. */
function lineWords(scene: Scene): string[] {
  const line = allVoltages(scene).filter((one) => sideOf(scene, one) === "line");
  return line.map((one) => noteWords(scene, one)).filter((words) => !/contactor/.test(words));
}

const fresh =
  /\b(?:new|replaced|changed|swapped|put in|installed)\b.{0,16}\b(?:fuses?|breaker|disconnect|disco)\b|\b(?:fuses?|breaker|disconnect|disco)\b.{0,8}\b(?:replaced|changed|swapped)\b/;

/** "contactors in, 481 483 0 load side of the disco" */
const sideOfThem =
  /\b(?:load|line) side of (?:the |a )?(?:main )?(?:fuses?|breaker|disconnect|disco)\b/;

const named = /\bfuses?\b|\bbreaker\b|\bdisconnect\b|\bdisco\b/;

/** Whole ahead of a fuse and dead behind it: that line is lost there. */
export function fuseSides(scene: Scene): Finding[] {
  if (!isOfFuses(scene)) return [];
  const renewed = scene.notes.findLastIndex((note) => fresh.test((note.text ?? "").toLowerCase()));
  const of = (side: "line" | "load") =>
    allVoltages(scene).flatMap((one) => {
      const note = scene.notes.findIndex(({ readings }) => readings.includes(one));
      // "new fuses in": what was dead behind the old ones is past
      if (side === "load" && note < renewed) return [];
      return sideOf(scene, one) === side ? (numberOf(one) ?? []) : [];
    });
  const [line, load] = [of("line"), of("load")];
  const lowest = Math.min(...load);
  if (line.length === 0 || Math.min(...line) < controlBelowV) return [];
  if (lowest > deadShare * Math.max(...line)) return [];
  return [
    {
      about: "supply",
      check: "supply",
      level: "bad",
      says: `${plain(Math.max(...line))} V ahead of the fuse or breaker and ${plain(lowest)} V behind it: one line is lost there. Find what opened it before it is closed again`,
      brief: "a line lost at fuse or breaker",
      values: {},
      basis: "circuit reasoning",
      source: "circuit reasoning; common practice, no source",
      signs: ["supply:phase_lost"],
    },
  ];
}
