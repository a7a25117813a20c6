import type { Job } from "../model.ts";
import { type Mover, moverOf } from "./board-order.ts";
import { jobRow } from "./board-row.ts";
import { weekdayAndDay } from "./days.ts";
import { localTime, zoneOf } from "./local-time.ts";
import type { BoxLimitOf } from "./product.ts";

/** What a board and its alerts know beside the jobs. */
export interface BoardKnown {
  readonly names?: Readonly<Record<string, string>>;
  readonly boxLimitOf?: BoxLimitOf;
}

const headings = {
  office: "Office to act",
  crew: "Crew at work",
  others: "Waiting",
} as const satisfies Record<Mover, string>;

const order: readonly Mover[] = ["office", "crew", "others"];

/**
 * The dispatcher's board: one message, edited and never repeated. Open jobs, whoever must move
 * first at the top, a line each and at most two more where someone must act; about 46 letters wide.
 * `now`: ISO with the offset that its times are shown in.
 */
export function boardText(
  jobs: readonly Job[],
  now: string,
  { names = {}, ...known }: BoardKnown = {},
): string {
  const open = jobs.filter((job) => job.status !== "done");
  const scene = { now, zone: zoneOf(now), names, ...known };
  const shown = localTime(now, scene.zone);
  const day = shown === undefined ? "" : `${weekdayAndDay(shown.date)}, ${shown.time}`;
  const head = `Open jobs: ${open.length}. State of ${day}`;
  const groups = order.map((mover) => {
    const rows = open.filter((job) => moverOf(job, now) === mover);
    if (rows.length === 0) return [];
    const lines = rows.sort(byWait).flatMap((job) => jobRow(job, scene));
    return [`${headings[mover]}: ${rows.length}`, ...lines];
  });
  return [head, ...groups.flat(), ...doneLines(jobs, scene)].join("\n");
}

/** Whoever has waited longest for a move stands first. */
function byWait(a: Job, b: Job): number {
  return a.status_at < b.status_at ? -1 : a.status_at > b.status_at ? 1 : a.job - b.job;
}

function doneLines(jobs: readonly Job[], scene: { now: string; zone: string }): readonly string[] {
  const today = localTime(scene.now, scene.zone)?.date;
  const done = jobs.filter(
    (job) => job.status === "done" && localTime(job.status_at, scene.zone)?.date === today,
  );
  if (done.length === 0) return [];
  const gaps = done.filter((job) => job.file.gaps.length > 0);
  const lacking = gaps.slice(0, 2).map((job) => `  ${job.job} lacks ${job.file.gaps[0] ?? ""}`);
  return [`Done today: ${done.length}`, ...lacking];
}
