import type { Job, ReplyInput } from "../model.ts";
import { massUnits, massWords } from "./mass-words.ts";
import { newReadings } from "./read-back.ts";

/** A scale shows no less; common practice, no source. */
const nothingKg = 0.015;

/**
 * The charge target before the valve opens, then what is still to go. Only after the circuit was
 * emptied: a top-up of an unknown charge has no target by weight. "" where no plate charge is known.
 */
export function chargeLine(input: ReplyInput): string {
  const { job, equipment } = input;
  if (job === undefined || equipment.charge_kg === undefined || !wasEmptied(job)) return "";
  const units = massUnits(job, input.units);
  const line = input.judgement.findings.find(({ values }) => values.line_charge_kg !== undefined);
  const extra = line?.values.line_charge_kg ?? 0;
  const target = equipment.charge_kg + extra;
  const from = extra > 0 ? "plate and line" : "plate";
  const fresh = newReadings(input);
  const weighed = fresh.some(({ action }) => action === "charged");
  const left = target - job.refrigerant.charged_kg;
  if (weighed) {
    if (Math.abs(left) < nothingKg) return `Target ${massWords(target, units)} (${from}) reached.`;
    const rest = left > 0 ? `${massWords(left, units)} to go` : `${massWords(-left, units)} over`;
    return `Target ${massWords(target, units)} (${from}): ${rest}.`;
  }
  const vacuum = fresh.some(
    ({ quantity, after_s }) => quantity === "vacuum" && after_s !== undefined,
  );
  return vacuum && job.refrigerant.charged_kg === 0
    ? `Charge target ${massWords(target, units)} (${from}).`
    : "";
}

/** Under vacuum, and not only the part between the receiver and the pump. */
function wasEmptied(job: Job): boolean {
  const keptIn = job.statements.some(
    ({ statement }) => statement.kind === "action" && statement.action === "pumped_down",
  );
  if (keptIn) return false;
  return job.readings.some(
    ({ quantity, replaced_by, undone, deleted }) =>
      quantity === "vacuum" && replaced_by === undefined && undone !== true && deleted !== true,
  );
}
