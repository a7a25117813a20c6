import type { Draft } from "./draft.ts";
import { alive } from "./inherit.ts";

/** "460v 58hz out of the drive": the volts before the hertz are the drive's too. */
export function driveOut(drafts: readonly Draft[]): void {
  const list = alive(drafts);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.place !== "drive_output" || right.behind.length === 0) return;
    if (left.index !== right.index - 1 || left.place !== undefined) return;
    if (left.unit?.dimension === "voltage" && left.points === undefined) left.place = right.place;
  });
}
