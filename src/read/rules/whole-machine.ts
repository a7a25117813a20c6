import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";

const wholeMachine =
  /^(?:rtu|ahu|ou|odu|cu|hp|ac|wic|wif|rk|chiller|unit|system|rack|walk-in|rooftop|tower|boiler)(?:\b|\d)/i;

/** A machine by its kind alone: "chiller is done". */
const machines =
  /^(?:chiller|boiler|furnace|rack|rooftop|freezer|cooler|walkin|walk-in|unit|system|machine)$/;

/** "done with rtu 5", "finished up with unit 3": a machine, and no part of its work. */
export function doneWithMachine(items: readonly Item[], at: number): boolean {
  const [machine, behind] = items.slice(at, at + 2);
  // "done w 12", "finished w/ this one": a machine by its number, or the one in hand
  const number = machine?.kind === itemKind.number && machine.unit === undefined;
  const ends = behind === undefined || behind.kind === itemKind.sign || isStrongBreak(behind);
  if (number && Number.isInteger(machine.value)) return ends;
  // "done w both", "finished with everything"
  if (/^(?:both|everything|all)$/.test(machine?.text ?? "")) {
    const units = /^(?:units?|machines?|of|here|there|now|and)$/.test(behind?.text ?? "");
    return ends || units || behind?.text === ",";
  }
  if (
    /^(?:this|that)$/.test(machine?.text ?? "") &&
    /^(?:one|unit|job|call)$/.test(behind?.text ?? "")
  )
    return true;
  if (machine?.kind !== itemKind.subject || !wholeMachine.test(machine.subject ?? "")) return false;
  return (
    behind === undefined ||
    behind.kind === itemKind.sign ||
    isStrongBreak(behind) ||
    /^(?:and|n|now|today|here|at|headed|heading|going|,)$/.test(behind.text)
  );
}

/** "job is done", "OU-2 is done": all of it, not "the filter is done". */
export function isWhole(item: Item | undefined): boolean {
  if (item?.text === "job" || machines.test(item?.text ?? "")) return true;
  return item?.kind === itemKind.subject && wholeMachine.test(item.subject ?? "");
}
