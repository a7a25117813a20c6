import type { Job, JobReading } from "../model.ts";
import { figures } from "./figures.ts";
import { stands } from "./standing-reading.ts";

/** 41 F. Source: Food Code 3-501.16, cold holding; state codes follow it. */
const coldHoldingCel = 5;
/** A tenth of a degree F: what was typed as 41 is not over. */
const roundingCel = 0.06;

/** A box or product that is too warm, and the time of the first reading of that stretch. */
export interface ProductAtRisk {
  /** "box 46 F" */
  readonly figure: string;
  /** the limit in the unit that was said: "41 F", "5 C" */
  readonly limit: string;
  /** ISO */
  readonly since: string;
}

/** The last box or product reading where it is over the limit; never a guess at when it began. */
export function productAtRisk(job: Job): ProductAtRisk | undefined {
  const series = job.readings
    .filter((r) => stands(r) && r.doubtful !== true && r.quantity === "temperature")
    .filter((r) => r.at === "box" || r.at === "product")
    .sort((a, b) => Date.parse(a.taken) - Date.parse(b.taken));
  const last = series[series.length - 1];
  if (last === undefined || !over(last)) return undefined;
  const cooler = series.findLastIndex((r) => !over(r));
  const limit = /^C/.test(last.figure.unit) ? "5 C" : "41 F";
  return { figure: figures([last]), limit, since: series[cooler + 1]?.taken ?? last.taken };
}

function over(reading: JobReading): boolean {
  return typeof reading.value === "number" && reading.value > coldHoldingCel + roundingCel;
}
