import type { Cell } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { daysBetween } from "../days.ts";
import { lastDone } from "../past.ts";
import { causeCell } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type ExportJob } from "./sheet-source.ts";

/** A second call to a unit within so many days is a return; common practice, no source. */
const returnDays = 30;

/** Units that called again soon, by cause; no person stands here. */
export const returnsSheet: SheetMaker = {
  name: "returns",
  spare: true,
  columns: [
    { name: "job", kind: "number", about: "the job that is a return" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "opened", kind: "time", about: "when it was opened" },
    { name: "return of job", kind: "number", about: "the job before it on this unit" },
    { name: "days between", kind: "number", about: "from the last word there to this opening" },
    { name: "done then", kind: "text", about: "what was fitted, repaired or cleaned" },
    {
      name: "cause then",
      kind: "text",
      about: "most likely cause, with likely, possible or put right",
    },
    {
      name: "cause now",
      kind: "text",
      about: "most likely cause, with likely, possible or put right",
    },
    { name: "lacking then", kind: "text", about: "what that file never had" },
  ],
  rows: (record) =>
    record.jobs
      .flatMap((entry) => {
        const { job, before } = entry;
        if (before === undefined) return [];
        const days = daysBetween(before.job.status_at, job.opened);
        if (days > returnDays) return [];
        return [
          [
            job.job,
            job.site,
            job.equipment,
            cellTime(record, job.opened),
            before.job.job,
            Math.max(0, days),
            lastDone(before.job),
            causeOf(before.judgement),
            causeOf(entry.judgement),
            before.job.file.gaps.join("; "),
          ],
        ];
      })
      .sort((a, b) => order(a[causeNow], b[causeNow])),
};

const causeNow = 8;

/** Returns of one cause stand together. */
const order = (a: Cell | undefined, b: Cell | undefined): number =>
  String(a ?? "") < String(b ?? "") ? -1 : String(a ?? "") > String(b ?? "") ? 1 : 0;

function causeOf(judgement: ExportJob["judgement"]): string | null {
  const [top] = namedCauses(judgement);
  return top === undefined ? null : causeCell(top);
}
