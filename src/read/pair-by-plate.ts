import { type Draft, isUntold } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Shares of its plate that a supply has, and that a motor draws. Common practice, no source. */
const supply = { from: 0.75, to: 1.2 } as const;
const load = { from: 0.2, to: 1.6 } as const;

const joint = /^(?:and|&|n|\/|,)$/;

const legs = /^(?:a |amps? )?(?:(?:on|across) )?(?:all|each|every)\b(?! (?:day|time))/;

function within(draft: Draft, plate: Draft, share: { from: number; to: number }): boolean {
  const ratio = draft.value / plate.value;
  return ratio > share.from && ratio < share.to;
}

const motor = /^(?:comp|comps|compressor|fan|blower|motor|pump)\b/;
const atIt = /^(?:is|at|reads|reading|now|only|about|'|s|:)$/;

/** "comp 9.1 plate 11.2", "fan's at 2.1 plate says 2.4": what a motor has beside its plate's figure are amps. */
export function motorByPlate(drafts: readonly Draft[], items: readonly Item[]): void {
  const [left, right, more] = drafts;
  if (left === undefined || right === undefined || more !== undefined) return;
  if (!isUntold(left) || !right.plate || left.plate || !within(left, right, load)) return;
  if (right.ownUnit || right.place !== undefined || right.points !== undefined) return;
  if (right.named !== undefined && right.named !== "current") return;
  let at = left.index - 1;
  while (atIt.test(items[at]?.text ?? "")) at--;
  const head = items[at];
  if (!motor.test(head?.subject ?? head?.text ?? "")) return;
  for (const draft of [left, right]) {
    draft.quantity = "current";
    draft.named = "current";
    draft.unit = unitCalled("A");
    draft.assumedUnit = true;
  }
  right.rating ??= "nominal";
}

/** "plate 480V 62 RLA. reads 466 and 71": volts and amps in the order of the plate's, each near its own. */
export function pairByPlate(drafts: readonly Draft[], items: readonly Item[]): void {
  const rated = drafts.filter(({ rating }) => rating !== undefined);
  const volts = rated.find(({ unit }) => unit?.dimension === "voltage");
  const amps = rated.find(
    ({ unit, rating }) => unit?.dimension === "current" || rating === "RLA" || rating === "FLA",
  );
  if (volts === undefined || amps === undefined || amps.value > volts.value / 2) return;
  const bare = drafts.filter((one) => isUntold(one) && one.subject === undefined);
  const [left, right] = bare;
  if (left === undefined || right === undefined || bare.length > 2) return;
  if (right.index !== left.index + 2 || !joint.test(items[left.index + 1]?.text ?? "")) return;
  if (!within(left, volts, supply) || !within(right, amps, load) || within(right, volts, supply))
    return;
  const told = [
    { draft: left, quantity: "voltage", unit: "V" },
    { draft: right, quantity: "current", unit: "A" },
  ] as const;
  const behind = wordsFrom(items, right.index + 1, right.index + 5);
  const count = legs.test(behind) ? 3 : Math.max(left.count, right.count);
  for (const { draft, quantity, unit } of told) {
    draft.quantity = quantity;
    draft.named = quantity;
    draft.unit = unitCalled(unit);
    draft.assumedUnit = true;
    draft.count = count;
  }
}
