import type { Job, JobReading, Limit } from "../model.ts";
import { figures } from "./figures.ts";
import { stands } from "./standing-reading.ts";

/** 41 F. Source: Food Code 3-501.16, cold holding; state codes follow it. */
const coldHoldingCel = 5;
/** A tenth of a degree F: what was typed as 41 is not over. */
const roundingCel = 0.06;

/** Where the company set its own, that counts, below as above. */
export type BoxLimitOf = (job: Job) => Limit | undefined;

/** A box or product outside its limit, and the time of the first reading of that stretch. */
export interface ProductAtRisk {
  /** "box 46 F" */
  readonly figure: string;
  /** the limit in the unit that was said: "over 41 F", "under 1 C" */
  readonly limit: string;
  /** ISO */
  readonly since: string;
}

/** The last box or product reading where it is outside the limit; never a guess at when it began. */
export function productAtRisk(job: Job, own: Limit = {}): ProductAtRisk | undefined {
  const { least, most = coldHoldingCel } = own;
  const series = job.readings
    .filter((r) => stands(r) && r.doubtful !== true && r.quantity === "temperature")
    .filter((r) => r.at === "box" || r.at === "product")
    .sort((a, b) => Date.parse(a.taken) - Date.parse(b.taken));
  const last = series[series.length - 1];
  const sideOf = ({ value }: JobReading): "over" | "under" | undefined => {
    if (typeof value !== "number") return undefined;
    if (value > most + roundingCel) return "over";
    return least !== undefined && value < least - roundingCel ? "under" : undefined;
  };
  const side = last === undefined ? undefined : sideOf(last);
  if (last === undefined || side === undefined) return undefined;
  const before = series.findLastIndex((r) => sideOf(r) !== side);
  return {
    figure: figures([last]),
    limit: `${side} ${inUnit((side === "over" ? most : least) ?? 0, last.figure.unit)}`,
    since: series[before + 1]?.taken ?? last.taken,
  };
}

/** "41 F", "5 C": to a tenth, as thermometers show it. */
function inUnit(cel: number, unit: string): string {
  const isMetric = /^C/.test(unit);
  const value = isMetric ? cel : cel * 1.8 + 32;
  return `${Math.round(value * 10) / 10} ${isMetric ? "C" : "F"}`;
}
