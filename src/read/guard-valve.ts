import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { recast } from "./recast.ts";

/** "valves move, cassettes blow 55": an opening goes without a percent only right behind its word. */
export function guardValve(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "valve_opening" || draft.unit?.settles !== undefined) return;
  // "valve 100% and still 64 out"
  const before = items[draft.index - 1];
  // "eev 30 %, ten minutes later 45": the same valve again
  const again = /^(?:later|now|then)$/.test(before?.text ?? "") && draft.value <= 100;
  const told = items.slice(0, draft.index).some(({ unit }) => unit?.dimension === "percent");
  if (again && told && !draft.ownUnit) return;
  const row = before?.kind === itemKind.number || /^(?:[,/&|-]|and|to)$/.test(before?.text ?? "");
  if (!draft.ownUnit && draft.before.length === 0 && !row) draft.question = "quantity";
  if (draft.corrects || draft.before.length === 0) return;
  // "eev 480": no percent, so its motor's steps
  if (draft.value > 100 && draft.value <= 3000 && Number.isInteger(draft.value)) {
    recast(draft, "valve_steps", "steps");
    return;
  }
  const near = draft.before.some(
    (index) => draft.index - index <= 2 && items[index]?.label !== undefined,
  );
  if (!near) draft.question = "quantity";
}

const opening = /^(?:open|opened|opening|closed)$/;
const stepped = /^(?:levs?|eev|exv)s?$/;

/** "EEV at 40": a stepping valve is told in percent and in steps; what was told before of one says which. */
export function percentOrSteps(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const last = readings.findLast(({ quantity }) => quantity.startsWith("valve_"))?.quantity;
  if (last === "valve_opening") return;
  if (drafts.some((one) => one.quantity === "valve_opening" && one.ownUnit)) return;
  for (const draft of drafts) {
    if (draft.gone || draft.quantity !== "valve_opening" || draft.ownUnit || draft.corrects)
      continue;
    if (draft.value < 1 || !draft.before.some((at) => stepped.test(items[at]?.text ?? "")))
      continue;
    if (items.some(({ text }) => opening.test(text))) continue;
    if (last === "valve_steps") recast(draft, "valve_steps", "steps");
    else {
      draft.question = "unit";
      draft.unit = undefined;
    }
  }
}

/** "eev 46/46/46/OL": beside one beyond the range they are its coils' ohms. */
function coilOpen(drafts: readonly Draft[]): void {
  const row = drafts.filter((one) => one.quantity === "valve_opening" && !one.ownUnit);
  if (!row.some((one) => one.over)) return;
  for (const one of row) {
    recast(one, "resistance", "ohm");
    one.question = undefined;
  }
}

/** "eev1 at 410 eev2 at 0": beside steps the others are steps. */
function stepsTogether(drafts: readonly Draft[]): void {
  if (!drafts.some((one) => one.quantity === "valve_steps")) return;
  for (const one of drafts) {
    if (one.quantity !== "valve_opening" || one.ownUnit || one.gone) continue;
    recast(one, "valve_steps", "steps");
    one.question = undefined;
  }
}

/** Where one opening is asked about, so are those that only stand beside it. */
function askedTogether(drafts: readonly Draft[]): void {
  const asked = drafts.some(
    (one) => one.quantity === "valve_opening" && one.question !== undefined,
  );
  if (!asked) return;
  for (const draft of drafts)
    if (draft.quantity === "valve_opening" && draft.before.length === 0 && !draft.ownUnit)
      draft.question = "quantity";
}

/** What the openings of a note make of each other. */
export function valvesTogether(drafts: readonly Draft[]): void {
  coilOpen(drafts);
  stepsTogether(drafts);
  askedTogether(drafts);
}
