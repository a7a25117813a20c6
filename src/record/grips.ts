import type { Statement } from "../model.ts";
import { IN_HAND, type Status } from "../vocabulary.ts";
import { alongWith } from "./along-with.ts";
import type { Entry, NoteFacts } from "./entry.ts";
import type { Grip } from "./hand.ts";
import { opensLater } from "./opens-later.ts";
import { standingOf } from "./standing.ts";
import { isAway } from "./status-events.ts";
import { takesOver } from "./takes-over.ts";

export interface PersonGrip extends Grip {
  readonly channel: string;
  readonly who: string;
  /** `who` is a name as somebody else said it */
  readonly named?: true;
}

/** "moving to rtu 2": what is of that machine from here on, and it has a job of its own. */
function turnsToMachine(said: Statement): boolean {
  return said.kind === "note" && said.about.startsWith(IN_HAND);
}

/** What is measured, done or seen there; no question, no hours and no order of a part. */
function tellsWork({ readings, statements }: NoteFacts): boolean {
  return (
    readings.length > 0 ||
    statements.some(({ kind }) => kind === "action" || kind === "observation")
  );
}

/** How the people of a job took it in hand and let it go, from what still stands. */
export function gripsOf(
  entries: readonly Entry[],
  site: string | null = null,
): readonly PersonGrip[] {
  const at = site === null ? {} : { site };
  const sent = entries.flatMap(({ facts }) =>
    facts.kind === "note" ? [facts.opens?.assigned ?? [], facts.opens?.second ?? []].flat() : [],
  );
  const stood = new Map<string, Status>();
  return standingOf(entries).flatMap(({ entry, note, instant, fate }): readonly PersonGrip[] => {
    if (fate !== "stands" || note.role !== "tech" || entry.channel === undefined) return [];
    // a technician who opens a job and sends nobody else is on it himself
    if (note.opens !== undefined) {
      const { assigned, thread } = note.opens;
      if (assigned !== undefined && assigned !== entry.who) return [];
      const { job, message, channel, who } = entry;
      // what he writes next is of it, unless it waits for later or has a thread of its own
      const now = thread === undefined && !opensLater.test(entry.text ?? "");
      return [{ job, message, channel, who, instant, kind: now ? "take" : "name", ...at }];
    }
    // hours that are told afterwards take nothing in hand again
    const hours =
      note.statements.length > 0 && note.statements.every(({ kind }) => kind === "labor");
    if (hours && note.readings.length === 0) return [];
    const statuses = note.statements.flatMap((said) =>
      said.kind === "status" ? [said.status] : [],
    );
    // "done, leaving" may be understood as one word
    const leaves =
      statuses.includes("done") &&
      /\b(?:leav|left|gone|heading|off to|out of here)|\b(?:out|offsite|off site)\s*[.!]*\s*$/i.test(
        entry.text ?? "",
      );
    // who fetches a part comes back to the same job
    const errand = note.statements.some((said) => said.kind === "status" && said.errand === true);
    const kind =
      (statuses.includes("left_site") && !errand) || leaves
        ? "drop"
        : statuses.includes("on_site") ||
            statuses.includes("on_the_way") ||
            note.statements.some(takesOver) ||
            note.statements.some(turnsToMachine)
          ? "take"
          : statuses.includes("done")
            ? "done"
            : "name";
    const { job, message, channel, who } = entry;
    // "rolling out", said by who is there, names no place to go to
    const rolls =
      (stood.get(entry.who) === "on_site" || statuses.includes("done")) &&
      note.statements.some(
        (said) => said.kind === "status" && said.status === "on_the_way" && isAway(said.where),
      );
    for (const status of statuses) stood.set(entry.who, rolls ? "left_site" : status);
    // "left at 8, back at 9 on site": the last word counts
    const last = statuses.at(-1);
    const back = kind === "drop" && (last === "on_site" || last === "on_the_way");
    const held = rolls ? "drop" : back ? "take" : kind;
    const works = tellsWork(note) ? { works: true as const } : {};
    const his = sent.includes(who) ? { sent: true as const } : {};
    const own: PersonGrip = {
      ...{ job, message, channel, who, instant, kind: held },
      ...{ ...at, ...works, ...his },
    };
    const other = statuses.includes("on_site") ? alongWith(entry.text ?? "") : undefined;
    return other === undefined ? [own] : [own, { ...own, who: other, named: true }];
  });
}
