import type { Cell, Job } from "../../model.ts";
import { served } from "../board-order.ts";
import { figures } from "../figures.ts";
import { foundNotFixed } from "../found-not-fixed.ts";
import type { SheetMaker } from "./sheet-maker.ts";

export const openSheet: SheetMaker = {
  name: "open",
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    {
      name: "kind",
      kind: "text",
      about: "unread number, doubtful value, gap, part, found and not fixed, lock, bypass",
    },
    { name: "what", kind: "text", about: "what is open" },
    { name: "message", kind: "text", about: "message that it came with, where there is one" },
  ],
  rows: (record) =>
    record.jobs.flatMap(({ job }) =>
      openPoints(job).map(([kind, what, message]) => [
        job.job,
        job.site,
        job.equipment,
        kind,
        what,
        message,
      ]),
    ),
};

type Point = readonly [kind: string, what: string, message: Cell];

function openPoints(job: Job): readonly Point[] {
  return [
    ...job.unread.map((u): Point => ["unread number", u.text, u.message]),
    ...doubts(job),
    ...job.file.gaps.map((gap): Point => ["gap", gap, null]),
    ...job.parts
      .filter((p) => p.state === "needed" && !served(job, p))
      .map((p): Point => ["part", [p.number, p.part].filter((w) => w).join(" "), p.message]),
    ...foundNotFixed(job).map(({ what, message }): Point => ["found, not fixed", what, message]),
    ...job.machine.locks.map(
      (l): Point => [l.tag === true ? "tag" : "lock", `${l.who}, since ${l.since}`, null],
    ),
    ...job.machine.bypasses.map((b): Point => ["bypass", b.what, null]),
  ];
}

function doubts(job: Job): readonly Point[] {
  return job.readings
    .filter((r) => r.doubtful === true && r.replaced_by === undefined)
    .filter((r) => r.undone !== true && r.deleted !== true)
    .map((r): Point => ["doubtful value", figures([r]), r.message]);
}
