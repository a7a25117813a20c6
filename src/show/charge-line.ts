import type { Job, ReplyInput } from "../model.ts";
import type { Rating } from "../vocabulary.ts";
import { massUnits, massWords } from "./mass-words.ts";
import { newReadings } from "./read-back.ts";

/** A scale shows no less; common practice, no source. */
const nothingKg = 0.015;

/**
 * The charge target before the valve opens, then what is still to go. Only after the circuit was
 * emptied: a top-up of an unknown charge has no target by weight. "" where no plate charge is known.
 */
export function chargeLine(input: ReplyInput): string {
  const { job } = input;
  const full = chargeTarget(input);
  if (job === undefined || full === undefined) return "";
  const rest = leftToGo(input);
  if (rest === undefined) return "";
  const target = `${massWords(full.kg, massUnits(job, input.units))} (${full.from})`;
  const fresh = newReadings(input);
  if (fresh.some(({ action }) => action === "charged"))
    return `Target ${target}${rest === reached ? " " : ": "}${rest}.`;
  const vacuum = fresh.some(
    ({ quantity, after_s }) => quantity === "vacuum" && after_s !== undefined,
  );
  return vacuum && job.refrigerant.charged_kg === 0 ? `Charge target ${target}.` : "";
}

/** What the plate asks for, with what the line needs beyond it; undefined where no plate is known. */
export function chargeTarget({
  equipment,
  judgement,
  job,
}: ReplyInput): { readonly kg: number; readonly from: string } | undefined {
  const plate = plateTold(job) ?? equipment.charge_kg;
  if (plate === undefined) return undefined;
  const line = judgement.findings.find(({ values }) => values.line_charge_kg !== undefined);
  const told = massTold(job, "expected");
  // "target 9.8 kg" is all of it, "plus 0.6 for the pipes" what comes on top
  if (told !== undefined && told >= plate) return { kg: told, from: "told" };
  const extra = told ?? line?.values.line_charge_kg ?? 0;
  return { kg: plate + extra, from: extra > 0 ? "plate and line" : "plate" };
}

/** "Plate 9 lb each circuit": what he read off it outweighs the list. */
const plateTold = (job: Job | undefined): number | undefined => massTold(job, "nameplate_charge");

/** The weight that was told last as what the plate says or what it should be, kg. */
function massTold(job: Job | undefined, as: Rating): number | undefined {
  const value = job?.readings.findLast(
    ({ quantity, rating, replaced_by, undone, deleted }) =>
      quantity === "mass" &&
      rating === as &&
      replaced_by === undefined &&
      undone !== true &&
      deleted !== true,
  )?.value;
  return typeof value === "number" ? value : undefined;
}

const reached = "reached";

/** "9 lb 2 oz to go"; undefined where the circuit was not emptied, so that nobody knows what it held. */
export function leftToGo(input: ReplyInput): string | undefined {
  const { job } = input;
  const full = chargeTarget(input);
  if (job === undefined || full === undefined || !wasEmptied(job)) return undefined;
  const units = massUnits(job, input.units);
  const left = full.kg - job.refrigerant.charged_kg;
  if (Math.abs(left) < nothingKg) return reached;
  return left > 0 ? `${massWords(left, units)} to go` : `${massWords(-left, units)} over`;
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
