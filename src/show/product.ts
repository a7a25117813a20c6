import type { Job, JobReading, Limit } from "../model.ts";
import { figures } from "./figures.ts";
import { stands } from "./standing-reading.ts";

/** 41 F. Source: Food Code 3-501.16, cold holding; state codes follow it. */
const coldHoldingCel = 5;
/** A tenth of a degree F: what was typed as 41 is not over. */
const roundingCel = 0.06;

/** Where the company set its own, that counts, below as above. */
export type BoxLimitOf = (job: Job) => Limit | undefined;

/** A box or product outside its limit from one reading to the first that is inside again. */
export interface WarmStretch {
  /** the newest reading outside: "box 46 F" */
  readonly figure: string;
  /** the limit in the unit that was said: "over 41 F", "under 1 C" */
  readonly limit: string;
  /** ISO, the first reading outside; never a guess at when it began */
  readonly since: string;
  /** the first reading inside again, and when; absent: it is outside still */
  readonly back?: { readonly figure: string; readonly at: string };
}

/** The box or product that is outside its limit now, the longest so. */
export function productAtRisk(job: Job, own: Limit = {}): WarmStretch | undefined {
  return warmStretches(job, own)
    .filter(({ back }) => back === undefined)
    .toSorted((a, b) => Date.parse(a.since) - Date.parse(b.since))[0];
}

/** Every stretch outside the limit, each box by itself, oldest first. */
export function warmStretches(job: Job, own: Limit = {}): readonly WarmStretch[] {
  return seriesOf(job)
    .flatMap((series) => stretchesOf(series, own))
    .toSorted((a, b) => Date.parse(a.since) - Date.parse(b.since));
}

/** Box and product temperatures of one box each; who names none goes on with the last named. */
function seriesOf(job: Job): readonly (readonly JobReading[])[] {
  const all = job.readings
    .filter((r) => stands(r) && r.doubtful !== true && r.quantity === "temperature")
    .filter((r) => (r.at === "box" || r.at === "product") && typeof r.value === "number")
    .toSorted((a, b) => Date.parse(a.taken) - Date.parse(b.taken));
  const series = new Map<string, JobReading[]>();
  const apart = toldApart(all);
  let name = "";
  for (const reading of all) {
    // the first named is what was meant before it had a name
    if (reading.subject !== undefined && name === "" && series.has("")) {
      series.set(reading.subject, series.get("") ?? []);
      series.delete("");
    }
    name = reading.subject ?? name;
    const ware = reading.subject === undefined ? (wares.exec(reading.said)?.[0] ?? "") : "";
    const own = ware === "" ? name : ware.toLowerCase();
    const key = apart && reading.at === "product" ? `${own} product` : own;
    series.set(key, [...(series.get(key) ?? []), reading]);
  }
  return [...series.values()];
}

/** "Meat 9 veg 4 fish 1": each case by what lies in it. */
const wares =
  /\b(?:deli|dairy|meat|produce|veg|bakery|fish|seafood|beer|cheese|poultry|juice|milk|island|prep)\b/i;

/** "Dairy 46, product 44": told side by side, so neither stands for the other. */
function toldApart(all: readonly JobReading[]): boolean {
  const boxes = new Set(all.filter(({ at }) => at === "box").map(({ message }) => message));
  return all.some(({ at, message }) => at === "product" && boxes.has(message));
}

function stretchesOf(
  series: readonly JobReading[],
  { least, most = coldHoldingCel }: Limit,
): readonly WarmStretch[] {
  const sideOf = ({ value }: JobReading): "over" | "under" | undefined => {
    if (typeof value !== "number") return undefined;
    if (value > most + roundingCel) return "over";
    return least !== undefined && value < least - roundingCel ? "under" : undefined;
  };
  const stretches: WarmStretch[] = [];
  let first = 0;
  while (first < series.length) {
    const from = series[first];
    const side = from === undefined ? undefined : sideOf(from);
    const next = series.findIndex((one, at) => at > first && sideOf(one) !== side);
    const end = next < 0 ? series.length : next;
    const [last, back] = [series[end - 1], series[end]];
    if (from !== undefined && last !== undefined && side !== undefined) {
      stretches.push({
        figure: figures([last]),
        limit: `${side} ${inUnit((side === "over" ? most : least) ?? 0, last.figure.unit)}`,
        since: from.taken,
        ...(back === undefined ? {} : { back: { figure: figures([back]), at: back.taken } }),
      });
    }
    first = end;
  }
  return stretches;
}

/** How warm a box may be at most, the company's own limit or the code's: "41 F". */
export const limitWords = (own: number | undefined, unit: string): string =>
  inUnit(own ?? coldHoldingCel, unit);

/** "41 F", "5 C": to a tenth, as thermometers show it. */
function inUnit(cel: number, unit: string): string {
  const isMetric = /^C/.test(unit);
  const value = isMetric ? cel : cel * 1.8 + 32;
  return `${Math.round(value * 10) / 10} ${isMetric ? "C" : "F"}`;
}
