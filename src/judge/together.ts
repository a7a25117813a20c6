import type { Reading } from "../model.ts";
import { noteOf } from "./near.ts";
import { numberOf } from "./pick.ts";
import type { Scene } from "./scene.ts";
import { changesMachine } from "./stages.ts";

/** Whether two readings speak of the same state: one note, or no work on the machine between. */
export function areTogether(scene: Scene, one: Reading, other: Reading): boolean {
  const [first = 0, second = 0] = [one, other].map((each) => indexOf(scene, each)).sort(byNumber);
  if (first === second) return true;
  return !scene.notes.slice(first, second + 1).some(changesMachine);
}

/** Share that a pressure moves by before what was read beside it is of another moment. Common practice, no source. */
const moved = 0.04;

/** "head 365, liquid 98", later "head is 310 now": the pressure of the line's own moment was another. */
export function hasMovedOn(
  scene: Scene,
  all: readonly Reading[],
  [pressure, line]: readonly [Reading, Reading],
): boolean {
  const at = indexOf(scene, pressure);
  if (at <= indexOf(scene, line)) return false;
  const now = numberOf(pressure) ?? 0;
  return all.some(
    (one) =>
      one.quantity === "pressure" &&
      one.at === pressure.at &&
      indexOf(scene, one) < at &&
      Math.abs((numberOf(one) ?? now) - now) > moved * Math.abs(now),
  );
}

/** Two readings of one note, the latest that holds both; else both last ones, read once each. */
export function latestPair(
  scene: Scene,
  ones: readonly Reading[],
  others: readonly Reading[],
): readonly [Reading, Reading] | undefined {
  for (const note of [...scene.notes].reverse()) {
    const one = ones.findLast((each) => noteOf(scene, each) === note);
    const other = others.findLast((each) => noteOf(scene, each) === note);
    if (one !== undefined && other !== undefined) return [one, other];
  }
  const [one, other] = [ones[0], others[0]];
  if (one === undefined || other === undefined || ones.length + others.length > 2) return undefined;
  return areTogether(scene, one, other) ? [one, other] : undefined;
}

function indexOf(scene: Scene, reading: Reading): number {
  const note = noteOf(scene, reading);
  return note === undefined ? 0 : scene.notes.indexOf(note);
}

function byNumber(a: number, b: number): number {
  return a - b;
}
