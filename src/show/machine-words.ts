import type { Machine } from "../model.ts";

/** "leads lifted"; "" where nobody said. */
export function leadWords(leads: Machine["leads"]): string {
  return leads === "unknown" ? "" : `leads ${leads}`;
}

/** "nitrogen in the circuit"; "" where nobody said. */
export function circuitWords(circuit: Machine["circuit"]): string {
  const words = {
    charged: "circuit charged",
    recovered: "circuit recovered",
    open: "circuit open",
    nitrogen: "nitrogen in the circuit",
    vacuum: "circuit under vacuum",
    unknown: "",
  } as const satisfies Record<Machine["circuit"], string>;
  return words[circuit];
}
