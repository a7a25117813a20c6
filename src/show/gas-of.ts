import type { EquipmentFacts, Job, JobReading } from "../model.ts";

/** What a note of the gas that was weighed in is about: no plate of the unit. */
export const gasCharged = "gas charged";

/** The gas of one weight: as said with it, else the unit's. */
export function gasOfWeight(
  job: Job,
  equipment: EquipmentFacts,
  { message }: Pick<JobReading, "message">,
): string | null {
  const said = job.statements.findLast(
    (line) =>
      line.message === message &&
      line.statement.kind === "note" &&
      line.statement.about === gasCharged &&
      line.undone !== true &&
      line.deleted !== true,
  );
  if (said === undefined) return gasOf(job, equipment);
  const name = said.statement.said.toUpperCase().replace(/^R[- ]?/, "");
  return `R-${name}`;
}

/** The unit's refrigerant: what a technician read off the plate outweighs the office's list. */
export function gasOf(job: Job, equipment: EquipmentFacts): string | null {
  const plates = job.statements.flatMap(({ statement, undone, deleted }) =>
    statement.kind === "nameplate" &&
    statement.field === "refrigerant" &&
    undone !== true &&
    deleted !== true
      ? [statement.value]
      : [],
  );
  return plates.at(-1) ?? equipment.refrigerant ?? null;
}
