import type { Scene } from "./scene.ts";
import { textAbout } from "./text-about.ts";

/** A fan that turns the wrong way moves little air, one that opens its overload draws too much: neither is the compressor. */
const fanSigns: Readonly<Record<string, string>> = {
  hums: "fans:fan_hums",
  runs_backward: "fans:fan_backward",
  overload_trips: "fan:high_current",
};

/** The sign of a remark about a fan; one that turns the wrong way is the condenser's or the indoor one by its note's words. */
export function fanSignOf(one: Scene["seen"][number], scene: Scene): string | undefined {
  const sign = fanSigns[one.observation];
  if (sign === undefined || !isOfFan(one, scene)) return undefined;
  if (one.observation !== "runs_backward") return sign;
  const text = scene.notes.find((other) => other.statements.includes(one))?.text ?? "";
  if (/\b(?:cond\w*|outdoor|od) (?:\w+ )?fan/i.test(text)) return "fans:outdoor_fan_backward";
  return /\bblower|\b(?:evap\w*|indoor|supply) (?:\w+ )?fan/i.test(text)
    ? "fans:indoor_fan_backward"
    : sign;
}

function isOfFan(one: Scene["seen"][number], scene: Scene): boolean {
  // two fans stopped, then "other hums and is hot"
  const onlyFans = /\bfans?\b|\bblower/.test(scene.words) && !/\bcomp|scroll/.test(scene.words);
  if (one.observation === "hums" && onlyFans) return true;
  if (one.observation === "runs_backward" && saysFanAlone(one, scene)) return true;
  const words = `${one.subject ?? ""} ${textAbout(one, scene, [fanAhead, 0])}`;
  return /\b(?:fan|blower)s?\b(?!.*\b(?:comp|scroll))/i.test(words);
}

/** "fan spins but blows down through the coil, it's turning backwards": the note speaks of no other motor. */
function saysFanAlone(one: Scene["seen"][number], scene: Scene): boolean {
  const note = scene.notes.find((other) => other.statements.includes(one));
  const text = note?.text ?? "";
  if (/\b(?:flick|push|nudg)\w*|\bforwards?\b|\beither way\b/i.test(text)) return false;
  return /\bfans?\b|\bblower/i.test(text) && !/\bcomp|scroll/i.test(text);
}

/** Letters before a remark that name a fan. */
export const fanAhead = 40;
