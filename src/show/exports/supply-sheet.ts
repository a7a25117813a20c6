import type { JobReading } from "../../model.ts";
import { stands } from "../standing-reading.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob, onDay } from "./sheet-source.ts";

/** Line voltages by building: for the utility, when the same building stands out. */
export const supplySheet: SheetMaker = {
  name: "supply",
  spare: true,
  columns: [
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "at", kind: "time", about: "the time said, else the message's" },
    { name: "points", kind: "text", about: "between what" },
    { name: "V", kind: "number", about: "as measured" },
    { name: "state", kind: "text", about: "start or running, where said" },
    { name: "plate V", kind: "number", about: "from the office's list" },
    {
      name: "unbalance percent",
      kind: "number",
      about: "of the three read together: greatest deviation over the mean",
    },
    {
      name: "worst of site",
      kind: "text",
      about: "yes: the greatest unbalance of these rows at the site",
    },
    { name: "job", kind: "number", about: "job number" },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) => {
    const jobs = record.jobs.map((entry) => ({ entry, sets: setsOf(lineVolts(record, entry)) }));
    const worst = new Map<string, number>();
    for (const { entry, sets } of jobs) {
      const site = entry.job.site ?? "";
      const all = sets.map((set) => unbalanceOf(set) ?? 0);
      worst.set(site, Math.max(worst.get(site) ?? 0, ...all));
    }
    return jobs.flatMap(({ entry, sets }) =>
      sets.flatMap((set) => {
        const unbalance = unbalanceOf(set);
        const isWorst = unbalance !== undefined && unbalance === worst.get(entry.job.site ?? "");
        return set.map((reading) => supplyRow(record, entry, { reading, unbalance, isWorst }));
      }),
    );
  },
};

/** Voltages of one look at the supply come within so long; our choice, no source. */
const togetherMs = 10 * 60_000;

/** Voltages that were read together; the same pair read again begins the next set. */
function setsOf(readings: readonly JobReading[]): readonly (readonly JobReading[])[] {
  const sets: JobReading[][] = [];
  for (const reading of [...readings].sort((a, b) => Date.parse(a.taken) - Date.parse(b.taken))) {
    const set = sets.at(-1);
    const last = set?.at(-1);
    const near =
      last !== undefined && Date.parse(reading.taken) - Date.parse(last.taken) <= togetherMs;
    const again =
      reading.points === undefined
        ? last?.message !== reading.message
        : set?.some((one) => pairOf(one) === pairOf(reading)) === true;
    if (set !== undefined && near && !again) set.push(reading);
    else sets.push([reading]);
  }
  return sets;
}

const pairOf = ({ points }: JobReading): string => [...(points ?? [])].sort().join();

function supplyRow(
  record: DayRecord,
  { job, equipment }: ExportJob,
  row: {
    readonly reading: JobReading;
    readonly unbalance: number | undefined;
    readonly isWorst: boolean;
  },
): ReturnType<SheetMaker["rows"]>[number] {
  const { reading, unbalance, isWorst } = row;
  return [
    job.site,
    job.equipment,
    cellTime(record, reading.taken),
    reading.points?.join(" to ") ?? "not said",
    typeof reading.value === "number" ? reading.value : null,
    reading.state ?? null,
    equipment.supply_V ?? null,
    unbalance === undefined ? null : Number(unbalance.toPrecision(3)),
    isWorst ? "yes" : null,
    job.job,
    reading.message,
  ];
}

/** Voltages of the line side: between lines, or said of the supply; no control, bus or drive output. */
function lineVolts(record: DayRecord, { job }: ExportJob): readonly JobReading[] {
  return job.readings.filter(
    (r) =>
      r.quantity === "voltage" &&
      typeof r.value === "number" &&
      r.value > 50 &&
      stands(r) &&
      r.doubtful !== true &&
      r.kind !== "dc" &&
      (r.at === undefined || r.at === "supply") &&
      (r.points === undefined || r.points.every((point) => /^(L[123]|N|phase .)$/.test(point))) &&
      onDay(record, r.taken),
  );
}

/** Percent: greatest deviation from the mean over the mean; of three alone. Source: NEMA MG 1. */
function unbalanceOf(set: readonly JobReading[]): number | undefined {
  const volts = set.flatMap(({ value }) => (typeof value === "number" ? [value] : []));
  const between = set.every(({ points }) => points === undefined || points.every(isLine));
  if (volts.length !== 3 || !between) return undefined;
  const mean = volts.reduce((sum, one) => sum + one, 0) / volts.length;
  return (100 * Math.max(...volts.map((one) => Math.abs(one - mean)))) / mean;
}

const isLine = (point: string): boolean => point !== "N";
