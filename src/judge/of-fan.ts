import type { Scene } from "./scene.ts";
import { textAbout } from "./text-about.ts";

/** A fan that turns the wrong way moves little air, one that opens its overload draws too much: neither is the compressor. */
export const fanSigns: Readonly<Record<string, string>> = {
  hums: "fans:fan_hums",
  runs_backward: "fans:fan_slow",
  overload_trips: "fan:high_current",
};

export function isOfFan(one: Scene["seen"][number], scene: Scene): boolean {
  // two fans stopped, then "other hums and is hot"
  const onlyFans = /\bfans?\b|\bblower/.test(scene.words) && !/\bcomp|scroll/.test(scene.words);
  if (one.observation === "hums" && onlyFans) return true;
  const words = `${one.subject ?? ""} ${textAbout(one, scene, [fanAhead, 0])}`;
  return /\b(?:fan|blower)s?\b(?!.*\b(?:comp|scroll))/i.test(words);
}

/** Letters before a remark that name a fan. */
export const fanAhead = 40;
