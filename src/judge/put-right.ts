import type { Finding, Suspect } from "../model.ts";
import { faults } from "./faults/list.ts";
import { isMended } from "./mended.ts";
import type { Scene } from "./scene.ts";
import { likelihoodRatios } from "./shown.ts";

/** How much likelier a finding is under a fault to keep it from being called put right. Common practice, no source. */
const speaksFor = 1.5;

/**
 * Marks the causes that were put right: what mends them was done, nothing tells that it was in vain,
 * and no finding made since speaks for them. They stay the call's cause.
 */
export function withPutRight(
  suspects: readonly Suspect[],
  since: readonly Finding[],
  scene: Scene,
): Suspect[] {
  const adverse = since
    .filter(({ level }) => level === "bad" || level === "watch")
    .flatMap(({ signs = [] }) => signs);
  const shows = (name: string): boolean => {
    const fault = faults.find((one) => one.fault === name);
    return (
      fault !== undefined &&
      adverse.some((sign) => (likelihoodRatios(sign).get(fault) ?? 1) > speaksFor)
    );
  };
  return suspects.map((one) =>
    isMended(one.fault, scene) && !shows(one.fault) ? { ...one, mended: true } : one,
  );
}
