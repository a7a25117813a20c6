import type { Reading } from "../../model.ts";
import { beside } from "../near.ts";
import { perReading, type Scene } from "../scene.ts";

/** Taken while the motor tries: it shows sag, not the supply at rest. Several steps of a check ask it. */
export const isAtStart: (scene: Scene, reading: Reading) => boolean = perReading(looksAtStart);

function looksAtStart(scene: Scene, reading: Reading): boolean {
  if (reading.state === "start" || reading.stat === "minimum") return true;
  if (reading.state === "running") return false;
  const before = beside(scene, reading, [lead, 0]);
  const words = beside(scene, reading, [0, trail]);
  // the words of a figure may begin before it: "then it drops, 474 473 475 during"
  const at = Math.max(0, words.indexOf(reading.figure.number));
  const after = words.slice(at).split(/[,;]|\. /)[0] ?? "";
  return /(?:drop|fall|sag|dip|pull)s?(?:ped|ged)? (?:down )?to/.test(before) || trying.test(after);
}

/** Letters that may lead to a figure ("falls to") or follow it ("while it is stalled"). */
const lead = 14;
const trail = 60;
const trying =
  /stall|(?:when|while|as) it (?:tries|hums|starts|is locked|kicks)|on (?:the )?start|at start|\b(?:during|while (?:it )?(?:does|did) (?:it|that))$/;
