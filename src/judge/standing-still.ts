import type { Reading } from "../model.ts";
import { standardAtmospherePa } from "../physics/constants.ts";
import { applicationOf } from "./application.ts";
import { ratioBand } from "./bands.ts";
import { figureSpan, noteOf } from "./near.ts";
import { numberOf } from "./pick.ts";
import { perScene, type Scene } from "./scene.ts";

const thing = String.raw`\b(?:comp(?:ressor)?s?|scroll|unit|system|machine|condens(?:er|ing unit)|outdoor(?: unit)?|rtu)(?:[ -]?#?(?:\d|[ab]\b))?`;
const still = [
  String.raw`(?:'s|is|was)? ?(?:just |still |completely |totally )?(?:not (?:running|coming on|starting|turning)|dead|off\b(?! (?:by|\d))|locked out|out on (?:the )?(?:overload|internal))`,
  "(?:isn'?t|wasn'?t|aren'?t) (?:running|coming on|starting|turning)",
  String.raw`(?:won'?t|will not|doesn'?t|does not|didn'?t|did not) (?:start|run|come on|kick on|turn)\b(?! (?:for|more|long|longer|right|well|properly|over|past|sometimes))`,
  "(?:doesn'?t|won'?t|isn'?t)(?= ?(?:[,.;]|$))",
  "never (?:came|comes|kicks|kicked) on|never start(?:s|ed)",
].join("|");
const stopped = new RegExp(
  String.raw`${thing} ?(?:${still})|\bno power\b(?! (?:to|at|on|from))`,
  "gim",
);
const numbered = /(?:[ -]#?)(\d|[ab])\b/i;

const denied =
  /\b(?:not|never|n'?t|isn'?t|wasn'?t|aren'?t|won'?t|doesn'?t|didn'?t|fans? (?:is |are |still )?)\s?(?:running|runs?|started|starts?|turning|come on|came on|kick(?:ed)? on)\b/gi;
const running =
  /\b(?:running|runs|ran|restarted|started|starts|back on|came (?:back )?on|kicked (?:back )?on|fired up|pumping|loads? up)\b/i;

const mayStand: (scene: Scene) => boolean = perScene((scene) => scene.words.search(stopped) >= 0);

/** The compressor that a note says stands still, by its number or letter where it has one; undefined where none does. */
function stoppedIn(text: string): string | undefined {
  const last = [...text.matchAll(stopped)].at(-1);
  return last === undefined ? undefined : (numbered.exec(last[0])?.[1] ?? "").toLowerCase();
}

function tellsRunning(text: string): boolean {
  return running.test(text.replace(denied, " "));
}

/** Up to this reading the last word is that its compressor stands still, and nothing in its note runs. */
function isTold(scene: Scene, reading: Reading): boolean {
  const own = noteOf(scene, reading);
  if (own === undefined || tellsRunning(own.text ?? "")) return false;
  const before = scene.notes.slice(0, scene.notes.indexOf(own)).map(({ text }) => text ?? "");
  const said = [...before, (own.text ?? "").slice(0, figureSpan(own.text ?? "", reading)[0])];
  const at = said.findLastIndex((text) => stoppedIn(text) !== undefined || tellsRunning(text));
  const last = said[at] ?? "";
  const which = tellsRunning(last) ? undefined : stoppedIn(last);
  if (which === undefined) return false;
  const unit = /(?:compressor|circuit) (\w)/.exec(reading.subject ?? "")?.[1]?.toLowerCase();
  return which === "" || unit === undefined || unit === which;
}

/**
 * Both sides read while the compressor is told to stand still, too close for one that pumps: they say
 * nothing of how it runs. Further apart they were read as it ran.
 */
export function standsStill(scene: Scene, reading: Reading): boolean {
  if (reading.quantity !== "pressure" || !mayStand(scene)) return false;
  const sides = noteOf(scene, reading)?.readings.filter(
    ({ quantity, at }) =>
      quantity === "pressure" && (at === "suction" || at === "discharge" || at === "liquid"),
  );
  if (sides === undefined || sides.length !== 2 || !sides.includes(reading)) return false;
  const [low, high] = sides.flatMap((one) => numberOf(one) ?? []).sort((a, b) => a - b);
  if (low === undefined || high === undefined) return false;
  const ratio = (high + standardAtmospherePa) / (low + standardAtmospherePa);
  return ratio < ratioBand[applicationOf(scene)].from && isTold(scene, reading);
}
