import type { Job, JobPart } from "../model.ts";

/** "drive 60-12E4". */
export function partName({ part, number }: Pick<JobPart, "part" | "number">): string {
  return number === undefined || part.includes(number) ? part : `${part} ${number}`;
}

function sameThing(a: JobPart, b: JobPart): boolean {
  return a.number !== undefined && b.number !== undefined
    ? a.number === b.number
    : a.part === b.part;
}

/** Each part of a job once, as it was last said to be, in the order of their first mention. */
export function lastOfParts(job: Job): readonly JobPart[] {
  const rows: JobPart[] = [];
  for (const part of job.parts) {
    const known = rows.findIndex((one) => sameThing(one, part));
    const old = rows[known];
    if (old === undefined) rows.push(part);
    else if (part.at >= old.at) rows[known] = part;
  }
  return rows;
}

/** Parts that are not fitted and that nobody declined. */
export function openParts(job: Job): readonly JobPart[] {
  return lastOfParts(job).filter(
    ({ state, decided }) => state !== "fitted" && decided !== "declined",
  );
}

/** "drive 60-12E4 ordered, due Thu", "contactor here". */
export function partWords(part: JobPart): string {
  if (part.arrived === true) return `${partName(part)} here`;
  const due = part.due === undefined ? "" : `, due ${part.due}`;
  const decided = part.decided === undefined ? "" : `, ${part.decided}`;
  return `${partName(part)} ${part.state}${decided}${due}`;
}

/** Whether a job waited for parts and all of them are here. */
export function partsAreIn(job: Job): boolean {
  const open = openParts(job);
  return (
    job.status === "waiting_for_parts" &&
    open.length > 0 &&
    open.every(({ arrived }) => arrived === true)
  );
}
