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
      about: "of the job's set: greatest deviation over the mean",
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
    const sets = record.jobs.filter((entry) => lineVolts(record, entry).length > 0);
    const worst = new Map<string, number>();
    for (const entry of sets) {
      const site = entry.job.site ?? "";
      worst.set(site, Math.max(worst.get(site) ?? 0, unbalanceOf(entry) ?? 0));
    }
    return sets
      .flatMap((entry) => lineVolts(record, entry).map((reading) => ({ entry, reading })))
      .map(({ entry, reading }) => {
        const unbalance = unbalanceOf(entry);
        const isWorst = unbalance !== undefined && unbalance === worst.get(entry.job.site ?? "");
        return supplyRow(record, entry, { reading, unbalance, isWorst });
      });
  },
};

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

function unbalanceOf({ judgement }: ExportJob): number | undefined {
  return judgement.findings.find(
    (f) => f.check === "supply" && f.values.unbalance_percent !== undefined,
  )?.values.unbalance_percent;
}
