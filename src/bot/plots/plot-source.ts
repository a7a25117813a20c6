import type { EquipmentFacts, Job, JobReading, Limits, UnitHabit } from "../../model.ts";

/** What a plot is made from. */
export interface PlotSource {
  readonly job: Job;
  readonly equipment: EquipmentFacts;
  /** earlier jobs on the same unit, oldest first */
  readonly earlier: readonly Job[];
  readonly units: UnitHabit;
  /** the company's own */
  readonly limits: Limits;
  /** Pa of the air at the site */
  readonly ambientPa: number;
}

/** Readings of a quantity that stand and are not doubted, with a number, in order of time. */
export function measuredOf(
  job: Job,
  quantity: JobReading["quantity"],
): readonly (JobReading & { readonly value: number })[] {
  return job.readings.flatMap((r) =>
    r.quantity === quantity &&
    typeof r.value === "number" &&
    r.replaced_by === undefined &&
    r.undone !== true &&
    r.deleted !== true &&
    r.doubtful !== true &&
    r.rating === undefined &&
    r.earlier !== true
      ? [{ ...r, value: r.value }]
      : [],
  );
}

/** "RTU-2 compressor 1: insulation by lead". */
export function plotTitle({ job }: PlotSource, subject: string | undefined, says: string): string {
  const unit = job.equipment ?? job.site ?? `Job ${job.job}`;
  const words = subject === undefined || subject === unit ? [unit] : [unit, subject];
  return `${words.join(" ")}: ${says}`;
}

export const seconds = (iso: string): number => Date.parse(iso) / 1000;
