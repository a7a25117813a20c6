import type { Job } from "../../model.ts";
import { figures } from "../figures.ts";
import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";

/** What the files still lack, by the person to ask, so that each is asked once. */
export const lackingSheet: SheetMaker = {
  name: "lacking",
  spare: true,
  columns: [
    { name: "ask", kind: "text", about: "the last to speak for the job" },
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "status", kind: "text", about: "the last word of a technician" },
    { name: "what", kind: "text", about: "what the file lacks, the costliest first" },
  ],
  rows: (record) =>
    record.jobs
      .flatMap(({ job }) => {
        const who = job.person ?? job.people.at(-1) ?? job.assigned;
        const ask = who === undefined ? "nobody yet" : personName(who, record.names);
        return lacking(job).map((what) => [
          ask,
          job.job,
          job.site,
          job.equipment,
          job.status.replaceAll("_", " "),
          what,
        ]);
      })
      .sort((a, b) => (String(a[0]) < String(b[0]) ? -1 : String(a[0]) > String(b[0]) ? 1 : 0)),
};

function lacking(job: Job): readonly string[] {
  const open = job.visits.filter((v) => v.to === undefined && job.status === "done");
  const doubtful = job.readings.filter(
    (r) =>
      r.doubtful === true && r.replaced_by === undefined && r.undone !== true && r.deleted !== true,
  );
  return [
    ...job.file.gaps,
    ...doubtful.map((r) => `yes or no to ${figures([r])}`),
    ...job.unread.map(({ text }) => `what "${text}" was`),
    ...open.map((v) => `when ${v.person} left`),
  ];
}
