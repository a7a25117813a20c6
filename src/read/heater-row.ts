import { clauseAround } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const heaters = /^(?:heaters?|htrs?|elements?|heating element|strip heater|def htr)$/;
const wound =
  /^(?:comp|comps|compressor|compressors|motor|motors|mtr|fan|fans|blower|pump|winding|windings)$/;

/** "htr bank 1 / A-B 19.2 / B-C 19.1 / A-C 19.3 ohms": the legs of a heater, where no motor is spoken of. */
export function heaterRow(drafts: readonly Draft[], items: readonly Item[]): void {
  const at = items.findIndex(({ text, label }) => label?.component === true && heaters.test(text));
  if (at < 0) return;
  const [from] = clauseAround(items, at);
  const stop = items.findIndex(({ text }, i) => i > at && text === ".");
  const end = stop < 0 ? items.length : stop;
  if (at - from > 2 || items.slice(from, end).some(({ text }) => wound.test(text))) return;
  const row = drafts.filter(
    ({ gone, points, index }) => !gone && points !== undefined && index > at && index < end,
  );
  const ohms = row.some(
    ({ unit, quantity }) => unit?.dimension === "resistance" || quantity === "winding_resistance",
  );
  if (!ohms) return;
  for (const draft of row) {
    const winding = draft.quantity === "winding_resistance";
    if (!winding && (draft.quantity !== undefined || draft.unit !== undefined)) continue;
    draft.quantity = "resistance";
    draft.component = true;
    draft.question = undefined;
  }
}

/** "heater 1 9.1 heater 2 9 heater 3 9.3 amps": the unit said once is of all of them. */
export function heaterUnits(drafts: readonly Draft[]): void {
  const row = drafts.filter(({ gone, subject }) => !gone && /^heater \d/.test(subject ?? ""));
  const told = row.find(({ unit, ownUnit }) => ownUnit && unit?.dimension === "current");
  if (told?.unit === undefined) return;
  for (const draft of row) {
    if (draft.ownUnit || draft.over || draft.quantity !== "resistance") continue;
    draft.quantity = "current";
    draft.unit = told.unit;
    draft.component = false;
  }
}
