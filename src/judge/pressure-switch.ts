import { isBurner } from "./application.ts";
import type { Scene } from "./scene.ts";
import { textAbout } from "./text-about.ts";

/** It opened for a pressure; one that merely stands open may have failed itself. */
const tripped = /\b(?:trip\w*|(?:out|off) on|lock\w* (?:it )?out on|cut\w* out on)\b/i;
const high = /\b(?:high|hi|head|hps?|hpc)\b/i;
const low = /\b(?:low|lo|suction|lps?|lpc)\b/i;
/** Letters about a safety's remark that name it. */
const near = [14, 20] as const;

/** "3 flashes, pressure switch open" on gas heat: the draft's, and no part of the control voltage is missing. */
export function isOfDraft(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "safety_open" || !isBurner(scene)) return false;
  return /\bpress(?:ure)? ?sw/i.test(one.said) && !high.test(one.said) && !low.test(one.said);
}

/**
 * "Tripped on high pressure": the switch did what it is for, so the refrigerant circuit is in question
 * and not the control voltage behind the switch.
 */
export function pressureSwitch(one: Scene["seen"][number], scene: Scene): string | undefined {
  if (one.observation !== "safety_open" || !tripped.test(one.said)) return undefined;
  const words = high.test(one.said) || low.test(one.said) ? one.said : textAbout(one, scene, near);
  if (!/press|head|suction|\b[hl]p/i.test(words) || high.test(words) === low.test(words))
    return undefined;
  return high.test(words) ? "safety:high_pressure" : "safety:low_pressure";
}
