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

/** Checks worth doing next: those that can be done as the machine stands, and those that wait. */
export interface NextAtHand {
  readonly judgement: Judgement;
  readonly waiting: readonly NextCheck[];
}

/**
 * Parts the next checks by what can be done as the machine stands: nobody reads superheat on a circuit
 * under nitrogen, or running amps behind his own lock.
 */
export function nextAtHand(judgement: Judgement, job: Job | undefined): NextAtHand {
  if (job === undefined) return { judgement, waiting: [] };
  const { power, circuit } = job.machine;
  const opened = circuit === "open" || circuit === "nitrogen" || circuit === "vacuum";
  const dead = power === "locked" || power === "proven_dead";
  const fits = ({ check }: NextCheck): boolean =>
    !((opened || dead) && running.has(check)) &&
    !(opened && charging.has(check)) &&
    !(dead && (check === "supply" || check === "control_voltage"));
  return {
    judgement: { ...judgement, next: judgement.next.filter(fits) },
    waiting: judgement.next.filter((one) => !fits(one)),
  };
}
