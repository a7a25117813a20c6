import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const shut =
  /^(?:ok |okay |now |pump |just )*(?:isolated|valved(?: it)? off|closed(?: it)? off|off the pump|blanked(?: it)? off|pump off)(?: at| again| now)* \d+$/;
const goesOn =
  /^(?:now |still |at |it'?s |up to |about )*\d+ ?(?:,|and|now)? ?(?:it(?:'s| has)? )?(?:stopped|holding|holds|steady|flat|level|leveled|levelled|not moving|hanging|still (?:going|climbing|rising|moving|up)|climbing|rising|going up|and (?:stopped|holding|steady|climbing|rising))(?: (?:there|now|up|off|out|slowly|fast))*$/;
/** Said while the pump runs, whatever valve is closed behind it. */
const pumped =
  /^(?:(?:ok|now|still|at|it'?s|down|to|about|pump|is|we'?re|got|it|pulled|reads?|reading|gauge|says) )*\d+(?: now| and (?:falling|dropping|holding|closed|shut))?(?:,? ?(?:and |so )?(?:i )?(?:closed|shut|shutting|killed|turned|valved|isolated|blanked|closing|pump off|off the pump)\b.{0,30})?$/;
/** micron: what a pump is shut off at and what a stand reaches. Common practice, no source. */
const [least, most] = [30, 20_000];

/** "isolated 300", "1520 and stopped" while a vacuum is watched: microns, which nobody says aloud. */
export function vacuumWatched(
  drafts: readonly Draft[],
  { items, plain, context }: { items: readonly Item[]; plain: string; context: Context },
): void {
  const [only, ...others] = drafts.filter((draft) => !draft.gone);
  if (only === undefined || others.length > 0) return;
  const bare = only.unit === undefined && only.points === undefined && only.place === undefined;
  if (!bare || only.quantity !== undefined || !Number.isInteger(only.value)) return;
  if (only.value < least || only.value > most) return;
  const last = context.readings.at(-1)?.quantity;
  const text = plain.trim().replace(/[.!]+$/, "");
  const numbers = items.filter(({ kind }) => kind === itemKind.number).length;
  const fits =
    (shut.test(text) && last !== "pressure") ||
    (last === "vacuum" && goesOn.test(text)) ||
    (context.testing === "vacuum" && pumped.test(text));
  // "down to 420, shut in, came up to 780"
  const rose = only.series?.length === numbers && context.testing === "vacuum";
  if (!rose && (numbers > 1 || !fits)) return;
  only.quantity = "vacuum";
  only.assumedQuantity = true;
}
