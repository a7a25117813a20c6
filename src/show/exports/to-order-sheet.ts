import type { JobPart } from "../../model.ts";
import { served } from "../board-order.ts";
import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob } from "./sheet-source.ts";

/** Parts asked for, not fitted and not declined, over all jobs: those to order first, then those on their way, then those that are here. */
export const toOrderSheet: SheetMaker = {
  name: "to order",
  spare: true,
  columns: [
    { name: "state", kind: "text", about: "to order, ordered, or here and not fitted" },
    { name: "part", kind: "text", about: "as said" },
    { name: "number", kind: "text", about: "part number, as text" },
    { name: "quantity", kind: "number", about: "where said" },
    { name: "supplier", kind: "text", about: "from the company's parts list" },
    { name: "decision", kind: "text", about: "approved, where the customer or the office said so" },
    { name: "due", kind: "text", about: "as said" },
    { name: "due_on", kind: "time", about: "the day that this means, from the day it was said" },
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "model", kind: "text", about: "of the unit, for whoever looks the part up" },
    { name: "serial", kind: "text", about: "of the unit" },
    { name: "asked by", kind: "text", about: "who said it" },
    { name: "at", kind: "time", about: "when that was said" },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) => {
    const waiting = record.jobs.flatMap((entry) =>
      entry.job.parts.flatMap((part) => {
        const state = stateOf(entry, part);
        return state === undefined ? [] : [{ entry, part, state }];
      }),
    );
    return states
      .flatMap((one) => waiting.filter(({ state }) => state === one))
      .map(({ entry, part, state }) => orderRow(record, entry, { part, state }));
  },
};

const states = ["to order", "ordered", "here"] as const;

function stateOf({ job }: ExportJob, part: JobPart): (typeof states)[number] | undefined {
  if (part.state === "needed" && part.arrived !== true) {
    return served(job, part) ? undefined : "to order";
  }
  if (part.state === "fitted" || part.decided === "declined") return undefined;
  const fitted = job.parts.some(
    (other) => other.state === "fitted" && served({ ...job, parts: [other] }, part),
  );
  return fitted ? undefined : part.arrived === true ? "here" : "ordered";
}

function orderRow(
  record: DayRecord,
  { job, equipment }: ExportJob,
  { part, state }: { readonly part: JobPart; readonly state: string },
): ReturnType<SheetMaker["rows"]>[number] {
  return [
    state,
    part.part,
    part.number ?? null,
    part.quantity ?? null,
    record.supplierOf?.(part) ?? null,
    part.decided ?? null,
    part.due ?? null,
    part.due_on ?? null,
    job.job,
    job.site,
    job.equipment,
    equipment.model ?? null,
    equipment.serial ?? null,
    personName(part.who, record.names),
    cellTime(record, part.at),
    part.message,
  ];
}
