import type { EquipmentFacts, Job } from "../model.ts";

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
