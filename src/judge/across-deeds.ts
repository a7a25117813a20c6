import type { Finding } from "../model.ts";
import type { Check } from "./check.ts";
import { evacuation } from "./checks/evacuation.ts";
import { leakRate } from "./checks/leak-rate.ts";
import { pressureTest } from "./checks/pressure-test.ts";
import { type Evidence, findingEvidence, groupOf } from "./evidence.ts";
import type { Scene } from "./scene.ts";

/** A hold's first figure is of the note that fills the circuit, so a deed lies inside the test. */
const holds: readonly Check[] = [pressureTest, evacuation];

/**
 * The evidence with what a test shows whose figures lie on both sides of a deed: a hold that
 * neither part of the notes holds whole, and a leak rate, which is made of all that was added.
 */
export function acrossDeeds(
  all: Scene,
  parts: readonly Scene[],
  seen: readonly Evidence[],
): readonly Evidence[] {
  const split = holds.filter((check) => !parts.some((part) => byFigures(check, part).length > 0));
  const whole = [...split, leakRate].flatMap((check) => byFigures(check, all));
  const found = findingEvidence(whole);
  const groups = new Set(found.map(({ sign }) => groupOf(sign)));
  return [...seen.filter(({ sign }) => !groups.has(groupOf(sign))), ...found];
}

/** Worked out, not heard: "held" is outweighed by what the gauge says. */
function byFigures(check: Check, scene: Scene): Finding[] {
  return check
    .judge(scene)
    .filter(({ values, signs = [] }) => signs.length > 0 && Object.keys(values).length > 0);
}
