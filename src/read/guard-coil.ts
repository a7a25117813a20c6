import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { recast } from "./recast.ts";

/** Volts that a contactor's coil is made for, from its lowest to its highest; common practice, no source. */
export const coilVolts: readonly (readonly [low: number, high: number])[] = [
  [15, 30],
  [95, 132],
  [187, 264],
];

function asVolts(draft: Draft): void {
  recast(draft, "voltage", "V");
  draft.assumedUnit = true;
}

/** "contactor pulls in at 24.6", "pulls in fine now, 25.8": what its coil needs, nothing that it draws. */
function pullsIn(draft: Draft, items: readonly Item[]): boolean {
  const before = items.slice(Math.max(0, draft.index - 6), draft.index);
  const verb = before.findLastIndex(({ text }) => /^pull/.test(text));
  if (verb < 0 || before[verb + 1]?.text !== "in") return false;
  return before
    .slice(verb + 2)
    .every(({ text }) =>
      /^(?:at|@|fine|ok|okay|good|now|again|solid|strong|hard|nice|,)$/.test(text),
    );
}

/** What current goes through and loses volts at. */
const contacts =
  /^(?:contactor|contactors|contacts?|disconnect|disco|breaker|fuse|fuses|pole|poles|lug|lugs|splice|joint)$/;
/** V at most that a contact is told to drop; common practice, no source. */
const mostDrop = 10;

/** "drop across contactor .08 .07 .31": volts, no degrees between two airs. */
export function dropOfContacts(drafts: readonly Draft[], items: readonly Item[]): void {
  const row = drafts.filter(
    (one) => one.quantity === "temperature_difference" && one.assumedUnit && !one.gone,
  );
  if (row.length === 0 || !items.some(({ text }) => contacts.test(text))) return;
  if (row.every(({ value }) => value < mostDrop)) for (const one of row) asVolts(one);
}

/** Amps that only a verb made: beside a coil that closes, or across a contact, they are volts. */
export function guardCoil(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "current" || !draft.assumedUnit || draft.rating !== undefined) return;
  if (pullsIn(draft, items)) {
    if (coilVolts.some(([low, high]) => draft.value >= low && draft.value <= high)) asVolts(draft);
    else draft.question = "quantity";
  }
  // "drops .3 across the L2 pole"
  if (items[draft.index + 1]?.text === "across" && draft.named === undefined) asVolts(draft);
}

const switched = /^(?:contactors?|contactr|relay|starter|solenoid|sv)$/;

/** "contactor's pulled in, 24.6 on the coil", "relay coil has 25": what the coil of a switch is fed with. */
export function onCoil(drafts: readonly Draft[], items: readonly Item[], units: UnitHabit): void {
  const named = items.some(({ text }) => switched.test(text));
  // "24.6 on coil" alone: no air over a coil is as cold in degrees F, where nothing else is told
  const alone =
    units === "us" &&
    drafts.length === 1 &&
    !items.some(({ text }) =>
      /^(?:off|in|air|db|wb|evap|cond|condenser|evaporator|indoor|outdoor|deg|degrees)$/.test(text),
    );
  if (!named && !alone) return;
  for (const draft of drafts) {
    if (draft.unit !== undefined || draft.points !== undefined || draft.over) continue;
    const behind = wordsFrom(items, draft.index + 1, draft.index + 4);
    const before = wordsFrom(items, draft.index - 3, draft.index);
    const next = items[draft.index + 1];
    const whole = alone && next?.text === "on" && next.label?.place === "return_air";
    const told =
      whole ||
      /^(?:on|at|across|to) (?:the |its )?coil\b/.test(behind) ||
      /\bcoil (?:has|gets|is getting|got|at|reads|is|with)(?: only)?$/.test(before);
    if (
      !told ||
      !coilVolts
        .slice(0, named ? 3 : 1)
        .some(([low, high]) => draft.value >= low && draft.value <= high)
    )
      continue;
    draft.named = "voltage";
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.action = undefined;
    draft.hint = undefined;
    draft.place = undefined;
  }
}
