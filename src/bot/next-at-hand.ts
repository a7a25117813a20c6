import type { Job, Judgement, NextCheck } from "../model.ts";

/** Checks that need the machine running on its refrigerant. */
const running: ReadonlySet<NextCheck["check"]> = new Set([
  "superheat",
  "subcooling",
  "saturation",
  "compression",
  "discharge_temperature",
  "circuit_pattern",
  "temperature_split",
  "running_current",
  "start_current",
] as const);

/** What is left to weigh only once the circuit has been tested and emptied. */
const charging: ReadonlySet<NextCheck["check"]> = new Set(["charge", "airflow"] as const);

/**
 * The next checks that can be done as the machine stands: nobody reads superheat on a circuit under
 * nitrogen, or running amps behind his own lock. All of them where nothing else is left to say.
 */
export function nextAtHand(judgement: Judgement, job: Job | undefined): Judgement {
  if (job === undefined) return judgement;
  const { power, circuit } = job.machine;
  const opened = circuit === "open" || circuit === "nitrogen" || circuit === "vacuum";
  const dead = power === "locked" || power === "proven_dead";
  if (!opened && !dead) return judgement;
  const fits = ({ check }: NextCheck): boolean =>
    !running.has(check) &&
    !(opened && charging.has(check)) &&
    !(dead && (check === "supply" || check === "control_voltage"));
  const next = judgement.next.filter(fits);
  return next.length === 0 ? judgement : { ...judgement, next };
}
