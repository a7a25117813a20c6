import type { Reading } from "../../model.ts";
import { beside } from "../near.ts";
import type { Scene } from "../scene.ts";

/** Letters after a figure in which its time may stand. */
const trail = 48;

const words: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  half: 0.5,
  quarter: 0.25,
  tenth: 0.1,
};

const inSeconds =
  /\b(\d+(?:\.\d+)?|one|two|three|four|five|six|eight|ten)(?:-| )?(?:s|secs?|seconds?)\b/;
const inFractions = /\b(half|quarter|tenth)(?: of)?(?: a)?(?: |-)?sec/;
const inMilliseconds = /\b(\d+) ?(?:ms|milliseconds?)\b/;
const atOnce = /\b(?:blink|instant(?:ly)?|split second|flash|cycles?)\b/;

/** Without seconds: as long as something let it. */
const tillItOpens =
  /\b(?:till|until) (?:the |it |its )?(?:overload|internal|thermal|breaker|fuse|trips?|kicks?|drops?|goes|opens?|pops?)|\b(?:sits|stays|holds|hangs) (?:right )?there\b|\bthe whole time\b/;

/** How long a start's current held, s: as read, else as the words after it say. */
export function heldSeconds(reading: Reading, scene: Scene): number | undefined {
  if (reading.for_s !== undefined) return reading.for_s;
  const after = beside(scene, reading, [0, trail]).split(/[.;] /)[0] ?? "";
  if (tillItOpens.test(after)) return Number.POSITIVE_INFINITY;
  const milliseconds = inMilliseconds.exec(after)?.[1];
  if (milliseconds !== undefined) return Number(milliseconds) / 1000;
  const fraction = inFractions.exec(after)?.[1];
  if (fraction !== undefined) return words[fraction];
  const seconds = inSeconds.exec(after)?.[1];
  if (seconds !== undefined) return words[seconds] ?? Number(seconds);
  return atOnce.test(after) ? 0.1 : undefined;
}
