import type { CaseNote, Finding, Reading } from "../../model.ts";
import { clauseOf } from "../clause.ts";
import { numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { listed } from "../words.ts";
import { controlBelowV } from "./volts.ts";

/** Lowest over highest from which lines count as all there. Common practice, no source. */
const wholeShare = 0.75;

/** Read dead or short of a phase, and whole at the same place in a later note. */
export function isRestored(
  set: readonly Reading[],
  sets: readonly (readonly Reading[])[],
  scene: Scene,
): boolean {
  const place = (one: readonly Reading[]) =>
    scene.notes.findLastIndex((note) => one.some((each) => note.readings.includes(each)));
  return (
    !isWhole(set) &&
    sets.some(
      (later) =>
        place(later) > place(set) &&
        isWhole(later) &&
        later.length >= set.length &&
        (pointsOf(later) === pointsOf(set) || isPutRight(scene.notes[place(later)])) &&
        (isUpstream(set, scene) || !isUpstream(later, scene)),
    )
  );
}

function isWhole(set: readonly Reading[]): boolean {
  const values = numbersOf(set);
  const highest = Math.max(...values);
  return highest >= controlBelowV && Math.min(...values) >= wholeShare * highest;
}

/** The note tells of what brought it back. */
function isPutRight(note: CaseNote | undefined): boolean {
  return /\b(?:now|back|reset|restored|fixed|since|new|put|swapped|replaced|tightened|closed|turned on|landed)\b/i.test(
    note?.text ?? "",
  );
}

/** Live further upstream says nothing of the dead place behind it. */
function isUpstream(set: readonly Reading[], scene: Scene): boolean {
  return set.some((one) =>
    /\b(?:panel|main|service|meter|upstream|ahead|feeder|line side|line lugs|breaker line)\b/.test(
      clauseOf(scene, one),
    ),
  );
}

/** It is whole now; that it was not is still what the call was about. V. */
export function restored(values: readonly number[], was: readonly Finding[]): Finding {
  const signs = was.flatMap((one) => one.signs ?? []);
  const lost = signs.includes("supply:phase_lost");
  return {
    about: "supply",
    check: "supply",
    level: "good",
    says: lost
      ? `${listed(values, "V")} earlier, a phase was lost; whole since: what had opened it is the question`
      : `${listed(values, "V")} earlier, live since: what had opened it is the question`,
    brief: lost ? "a phase lost earlier, whole since" : "dead earlier, live since",
    values: {},
    basis: "first principles",
    source: "first principles; common practice, no source",
    signs: [lost ? "supply:phase_lost" : "supply:dead"],
  };
}

/** Sound since it was put on again, which does not clear what had opened it. */
export function withoutSound(one: Finding): Finding {
  return { ...one, signs: (one.signs ?? []).filter((sign) => sign !== "supply:sound") };
}

/** The points of a set, in any order. */
function pointsOf(set: readonly Reading[]): string {
  return set
    .map(({ points = [] }) => [...points].sort().join("-"))
    .sort()
    .join(" ");
}
