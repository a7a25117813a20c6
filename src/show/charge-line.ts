import type { Job, ReplyInput, UnitHabit } from "../model.ts";
import { newReadings } from "./read-back.ts";

/** kg in a pound, exact (NIST SP 811, 2008, app. B.8). */
const kgPerPound = 0.45359237;
/** A scale shows no less; common practice, no source. */
const nothingKg = 0.015;

/**
 * The charge target before the valve opens, then what is still to go. Only after the circuit was
 * emptied: a top-up of an unknown charge has no target by weight. "" where no plate charge is known.
 */
export function chargeLine(input: ReplyInput): string {
  const { job, equipment, units } = input;
  if (job === undefined || equipment.charge_kg === undefined || !wasEmptied(job)) return "";
  const line = input.judgement.findings.find(
    ({ values }) => values["line_charge_kg"] !== undefined,
  );
  const extra = line?.values["line_charge_kg"] ?? 0;
  const target = equipment.charge_kg + extra;
  const from = extra > 0 ? "plate and line" : "plate";
  const fresh = newReadings(input);
  const weighed = fresh.some(({ action }) => action === "charged");
  const left = target - job.refrigerant.charged_kg;
  if (weighed) {
    if (Math.abs(left) < nothingKg) return `Target ${mass(target, units)} (${from}) reached.`;
    const rest = left > 0 ? `${mass(left, units)} to go` : `${mass(-left, units)} over`;
    return `Target ${mass(target, units)} (${from}): ${rest}.`;
  }
  const vacuum = fresh.some(
    ({ quantity, after_s }) => quantity === "vacuum" && after_s !== undefined,
  );
  return vacuum && job.refrigerant.charged_kg === 0
    ? `Charge target ${mass(target, units)} (${from}).`
    : "";
}

function wasEmptied(job: Job): boolean {
  return job.readings.some(
    ({ quantity, replaced_by, undone, deleted }) =>
      quantity === "vacuum" && replaced_by === undefined && undone !== true && deleted !== true,
  );
}

/** "8 lb 3 oz", "3.7 kg". */
function mass(kg: number, units: UnitHabit): string {
  if (units === "si") return `${Math.round(kg * 100) / 100} kg`;
  const ounces = Math.round((kg / kgPerPound) * 16);
  const pounds = Math.floor(ounces / 16);
  const rest = ounces % 16;
  return [pounds > 0 ? `${pounds} lb` : "", rest > 0 || pounds === 0 ? `${rest} oz` : ""]
    .filter((part) => part !== "")
    .join(" ");
}
