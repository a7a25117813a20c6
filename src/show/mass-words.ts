import type { Job, UnitHabit } from "../model.ts";

/** kg in a pound, exact (NIST SP 811, 2008, app. B.8). */
const kgPerPound = 0.45359237;

/** "8 lb 3 oz", "3.7 kg". */
export function massWords(kg: number, units: UnitHabit): string {
  if (units === "si") return `${Math.round(kg * 100) / 100} kg`;
  const ounces = Math.round((kg / kgPerPound) * 16);
  const pounds = Math.floor(ounces / 16);
  const rest = ounces % 16;
  return [pounds > 0 ? `${pounds} lb` : "", rest > 0 || pounds === 0 ? `${rest} oz` : ""]
    .filter((part) => part !== "")
    .join(" ");
}

/** The units that the job's own weights were said in, where all of them agree; else the company's. */
export function massUnits(job: Job, habit: UnitHabit): UnitHabit {
  const said = job.readings.flatMap(({ quantity, rating, figure }) =>
    quantity === "mass" && rating === undefined && figure.unit !== "" ? [figure.unit] : [],
  );
  if (said.length === 0) return habit;
  const metric = said.map((unit) => /^k?g$|kilo|gram/i.test(unit));
  if (metric.every((one) => one)) return "si";
  return metric.some((one) => one) ? habit : "us";
}
