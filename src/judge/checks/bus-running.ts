import type { CaseNote, Reading } from "../../model.ts";
import { noteOf, noteWords } from "../near.ts";
import type { Scene } from "../scene.ts";

/** Whether the drive was running when its bus was read: then the bus is loaded. */
export function isRunning(reading: Reading, scene: Scene): boolean {
  if (reading.state !== undefined) return reading.state === "running";
  const words = noteWords(scene, reading);
  if (standing.test(words)) return false;
  return loaded.test(words) || hasRampedUp(reading, scene);
}

/** It turns, as said, or at so much speed: "60 percent, settled", "at 45 hz". */
const loaded =
  /running|runs|loaded|\b(?:at|under|on) (?:full|load|full (?:load|speed))\b|\bflat out\b|\bfull (?:speed|load|tilt|bore)\b|\bramped up\b|sits at|holding|\b(?:at )?\d{2,3} ?(?:%|percent|rps|rpm)\b[^.;]{0,12}\b(?:settled|steady|speed)\b|\bat \d{2,3} ?(?:hz|hertz|rps)\b/;

/** "climbs 2, 7, 13 and sits 16.2 at 55 hertz", and the bus behind it: up to there nothing stopped it. */
function hasRampedUp(reading: Reading, scene: Scene): boolean {
  const own = noteOf(scene, reading);
  const until = own === undefined ? 0 : scene.notes.indexOf(own) + 1;
  const notes = scene.notes.slice(0, until);
  const up = notes.findLastIndex((note) =>
    note.readings.some((one) => isRamp(one) || isSettled(one, note)),
  );
  return up >= 0 && !notes.slice(up).some((note) => stopped.test((note.text ?? "").toLowerCase()));
}

/** Amps that rose in steps to where they stay. */
function isRamp({ quantity, series = [], rating, state }: Reading): boolean {
  const rises = series.every((one, at) => at === 0 || one >= (series[at - 1] ?? one));
  return (
    quantity === "current" &&
    rating === undefined &&
    state !== "start" &&
    series.length > 2 &&
    rises
  );
}

/** "settled at 14.2 14.3 14.1": amps that stay where they came to. */
function isSettled({ quantity, rating }: Reading, { text }: CaseNote): boolean {
  const stays = /\b(?:settle[sd]?|level(?:s|ed) off|(?:sits?|steady|stays?|holds?) at)\b/i;
  return quantity === "current" && rating === undefined && stays.test(text ?? "");
}

const stopped =
  /\b(?:trip\w*|fault\w*|stop\w*|off|shuts?|dies|died|quits?|drops? out|cuts? out|alarm\w*|limit)\b/;

/** It does not run, whatever else "sits". */
const standing =
  /\b(?:never|won'?t|does(?:n'?t| not)|not) (?:\w+ ){0,2}(?:starts?|runs?|running|turns?)\b|\bcomp(?:ressor)? (?:is |was )?(?:off|stopped)\b/;
