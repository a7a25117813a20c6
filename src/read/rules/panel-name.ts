import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Ways in one panel at most; common practice, no source. */
const WAYS = 84;
/** Panels of one kind in a building that go by a bare number; common practice, no source. */
const PANELS = 20;

const ways = /^(?:breakers?|brks?|brkrs?|bkrs?|ckts?)$/;
const letters = /^(?:lp|hp|dp|pp|rp|mdp)$/;
const leads = /^(?:in|at|on|from|of|the|panel|board|,|off)$/;
const gear = /^(?:breakers?|brks?|brkrs?|bkrs?|ckts?|circuit|panel|fed|feeds|disco|disconnect)$/;

function isName(item: Item | undefined, most: number): boolean {
  if (!freeNumber(item) || item.unit !== undefined || item.fraction) return false;
  const whole = /^\d+$/.test(item.text) || (item.spoken && !item.loose);
  return whole && Number.isInteger(item.value) && item.value >= 1 && item.value <= most;
}

/** "breaker 22", "brkrs 21,23,25": where the numbers of the ways end. */
function waysEnd(items: readonly Item[], from: number): number {
  let end = from;
  while (isName(items[end], WAYS)) {
    const joint = /^(?:,|and|&|\/|-)$/.test(textAt(items, end + 1));
    if (!joint || !isName(items[end + 2], WAYS)) return end + 1;
    end += 2;
  }
  return end;
}

/** "ckt 1 sh 9 sc 4": a circuit of the refrigerant has values, a way of a panel is there or trips. */
function hasValues(items: readonly Item[], i: number): boolean {
  if (!/^ckts?$/.test(textAt(items, i))) return false;
  return !items.some((item) => letters.test(item.text) || /^(?:panel|tripped)$/.test(item.text));
}

/** "LP-3" behind a breaker or "fed from": a panel, no gauge of the low side. */
function panelEnd(items: readonly Item[], i: number): number {
  // "panel L P two": spelled
  const spelled = letters.test(textAt(items, i) + textAt(items, i + 1));
  if ((!spelled && !letters.test(textAt(items, i))) || items[i]?.owner !== undefined) return i;
  const dash = textAt(items, i + 1) === "-" && items[i + 2]?.glued === true;
  const at = dash || spelled ? i + 2 : i + 1;
  if (!isName(items[at], PANELS)) return i;
  let before = i - 1;
  if (!dash && textAt(items, before) !== "panel") return i;
  while (leads.test(textAt(items, before)) && !gear.test(textAt(items, before))) before--;
  const number = items[before]?.kind === itemKind.number;
  return gear.test(textAt(items, number ? before - 1 : before)) ? at + 1 : i;
}

/** "breaker 22 in LP-3": a way and a panel by their numbers, nothing that was measured. */
export const panelNames: Rule = {
  name: "breaker <number> in <panel>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      const panel = panelEnd(items, i);
      if (panel > i) state(note, panelNames.name, [i, panel], { kind: "note", about: "place" });
      if (!ways.test(item.text) || item.owner !== undefined || hasValues(items, i)) return;
      const end = waysEnd(items, i + 1);
      if (end > i + 1 && items[end]?.kind !== itemKind.unit)
        state(note, panelNames.name, [i, end], { kind: "note", about: "place" });
    });
  },
};
