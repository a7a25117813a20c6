import type { JobStatement, Visit } from "../model.ts";
import { statusEvents } from "./status-events.ts";

/** Stretches of travel and work of each person, from their own words; an end not said stays open. */
export function foldVisits(statements: readonly JobStatement[]): readonly Visit[] {
  const events = statusEvents(statements);
  const visits: Visit[] = [];
  const open = new Map<string, Visit>();
  const close = (who: string, to: string): void => {
    const visit = open.get(who);
    open.delete(who);
    if (visit !== undefined) visits.push({ ...visit, to });
  };
  for (const { status, who, at } of events) {
    if (status === "on_the_way") {
      // "on my way" from the site of the same job ends the visit there
      close(who, at);
      open.set(who, { person: who, kind: "travel", from: at });
    } else if (status === "on_site") {
      // said twice on the same visit: the first counts
      if (open.get(who)?.kind === "site") continue;
      close(who, at);
      open.set(who, { person: who, kind: "site", from: at });
    } else {
      close(who, at);
    }
  }
  return [...visits, ...open.values()].sort((a, b) => Date.parse(a.from) - Date.parse(b.from));
}

/** Hours on site over all people, travel apart, open visits not counted. */
export function laborHours(visits: readonly Visit[]): number {
  const ms = visits.reduce(
    (sum, { kind, from, to }) =>
      kind === "site" && to !== undefined ? sum + Date.parse(to) - Date.parse(from) : sum,
    0,
  );
  return Math.round(ms / 36_000) / 100;
}
