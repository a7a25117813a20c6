import type { Reading } from "../model.ts";
import { figureSpan, noteOf } from "./near.ts";
import { numberOf } from "./pick.ts";
import type { Scene } from "./scene.ts";

/** Both sides apart by no more stand level. Common practice, no source. */
const levelShare = 1.1;
const waited =
  /\b(?:gave|left|let|waited|sat)\b[^.;\d]{0,20}\b(?:\d+|\w+) ?(?:m|mins?|minutes?|hours?)\b|\bbefore (?:the |each |every )?start/;
const startsBehind =
  /^[^.;]{0,12}\b(?:start(?:s|ed)|kick(?:s|ed) (?:right )?on|took off|takes off|fired (?:right )?up)\b/;

/** "gave it seven min, 176 and 178, started": level before a start, no compressor that pumps nothing. */
export function standsLevel(scene: Scene, reading: Reading): boolean {
  if (reading.quantity !== "pressure") return false;
  const note = noteOf(scene, reading);
  const sides = note?.readings.filter(
    (one) => one.quantity === "pressure" && (one.at === "suction" || one.at === "discharge"),
  );
  const last = sides?.at(-1);
  if (note === undefined || sides?.length !== 2 || last === undefined || !sides.includes(reading))
    return false;
  const [low, high] = sides.flatMap((one) => numberOf(one) ?? []).sort((a, b) => a - b);
  if (low === undefined || high === undefined || high > levelShare * low) return false;
  const text = (note.text ?? "").toLowerCase();
  const [from, to] = figureSpan(text, last);
  if (/\brunning\b/.test(text.slice(0, from))) return false;
  return waited.test(text.slice(0, to)) || startsBehind.test(text.slice(to));
}
