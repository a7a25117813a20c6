import type { Finding, Reading } from "../../model.ts";
import { numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { listed } from "../words.ts";
import { controlBelowV } from "./volts.ts";

/** Read dead, and live at the same points in a later note. */
export function isRestored(
  set: readonly Reading[],
  sets: readonly (readonly Reading[])[],
  scene: Scene,
): boolean {
  const place = (one: readonly Reading[]) =>
    scene.notes.findLastIndex((note) => one.some((each) => note.readings.includes(each)));
  const isLive = (one: readonly Reading[]) => Math.max(...numbersOf(one)) >= controlBelowV;
  return (
    !isLive(set) &&
    sets.some(
      (later) => place(later) > place(set) && isLive(later) && pointsOf(later) === pointsOf(set),
    )
  );
}

/** It is live now; that it was dead is still what the call was about. V. */
export function restored(values: readonly number[]): Finding {
  return {
    about: "supply",
    check: "supply",
    level: "good",
    says: `${listed(values, "V")} earlier, live since: what had opened it is the question`,
    brief: "dead earlier, live since",
    values: {},
    basis: "first principles",
    source: "first principles; common practice, no source",
    signs: ["supply:dead"],
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
