import type { Machine } from "../model.ts";
import { personName } from "./wording.ts";

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

/** How a machine stands, a thing each: power, whose locks and where, leads, circuit, what is bypassed. */
export function leftWords(
  machine: Machine,
  names: Readonly<Record<string, string>>,
): readonly string[] {
  return [
    machine.power === "unknown" ? "" : `power ${machine.power.replaceAll("_", " ")}`,
    ...lockWords(machine.locks, names),
    leadWords(machine.leads),
    circuitWords(machine.circuit),
    ...machine.bypasses.map(({ what }) => `BYPASSED: ${what}`),
  ].filter((word) => word !== "");
}

/** Said of a lock that is there already: no place of its own. */
const noPlace = /^(?:still|it|again|all|everything)$/i;

/** A person's locks with the places that were named. */
function lockWords(
  locks: Machine["locks"],
  names: Readonly<Record<string, string>>,
): readonly string[] {
  const people = [...new Set(locks.map(({ who }) => who))];
  return people.map((who) => {
    const places = locks.flatMap(({ who: owner, where }) =>
      owner !== who || where === undefined || where === "" || noPlace.test(where) ? [] : [where],
    );
    const tag = locks.every((lock) => lock.who !== who || lock.tag === true);
    return [`${tag ? "tagged" : "locked"} by ${personName(who, names)}`, ...new Set(places)].join(
      ", ",
    );
  });
}
