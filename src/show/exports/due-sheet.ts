import type { SheetMaker } from "./sheet-maker.ts";

export const dueSheet: SheetMaker = {
  name: "due",
  spare: true,
  columns: [
    { name: "due", kind: "time", about: "the day by which it is commonly asked for" },
    { name: "job", kind: "number", about: "job that it follows from" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "what", kind: "text", about: "what is due" },
    { name: "state", kind: "text", about: "open or done; done by what the record proves alone" },
    { name: "proof", kind: "text", about: "what closed it, or what would" },
    { name: "basis", kind: "text", about: "the rule; whether it applies is the office's to say" },
  ],
  rows: (record) =>
    [...(record.due ?? [])]
      .sort((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : a.job - b.job))
      .map((item) => {
        const job = record.jobs.find((entry) => entry.job.job === item.job)?.job;
        return [
          item.due,
          item.job,
          job?.site ?? null,
          job?.equipment ?? null,
          item.what,
          item.state,
          item.proof,
          item.basis,
        ];
      }),
};
