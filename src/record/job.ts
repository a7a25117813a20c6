import type { Job, JobReading, JobStatement } from "../model.ts";
import { SENT } from "../vocabulary.ts";
import type { Entry, Opening } from "./entry.ts";
import { withOthers } from "./go-together.ts";
import { foldVisits, laborHours } from "./labor.ts";
import { foldMachine } from "./machine.ts";
import { foldParts } from "./parts.ts";
import { foldReadings, isCurrent } from "./readings.ts";
import { type Standing, standingOf } from "./standing.ts";
import { foldStatus } from "./status.ts";

/** Folds a job's entries, in whatever order they were written, into the job. */
export function foldJob(entries: readonly Entry[]): Job | undefined {
  const standing = standingOf(entries);
  const opener = entries.find((entry) => entry.facts.kind === "note" && entry.facts.opens);
  if (opener === undefined || opener.facts.kind !== "note") return undefined;
  const opening = openingOf(standing) ?? opener.facts.opens;
  if (opening === undefined) return undefined;
  const readings = foldReadings(standing, entries);
  const statements = statementsOf(standing);
  const alive = statements.filter((line) => line.undone !== true && line.deleted !== true);
  const visits = foldVisits(withOthers(alive, standing, [opening.assigned, opening.second]));
  return {
    job: opener.job,
    channel: opening.channel,
    ...(opening.thread === undefined ? {} : { thread: opening.thread }),
    opened_by: opener.message,
    opened: opener.at,
    site: opening.site,
    equipment: opening.equipment,
    ...(opening.complaint === undefined ? {} : { complaint: opening.complaint }),
    ...assignedIn(opening, alive),
    ...(opening.second === undefined ? {} : { second: opening.second }),
    ...foldStatus(alive, opener.at),
    people: peopleOf(standing),
    timeline: timelineOf(standing),
    readings,
    statements,
    parts: foldParts(alive),
    visits,
    labor_hours: laborHours(visits),
    refrigerant: refrigerantOf(readings),
    machine: foldMachine(alive, readings),
    clocks: [],
    file: { state: "open", gaps: [] },
    files: standing.flatMap(({ entry, note, fate }) =>
      fate === "deleted"
        ? []
        : note.files.map((file) => ({
            ...file,
            message: entry.message,
            at: entry.at,
            who: entry.who,
          })),
    ),
    unread: unreadOf(standing),
  };
}

/** The opening words as they stand now: an edit of "New job: …" may have changed the site. */
function openingOf(standing: readonly Standing[]): Opening | undefined {
  return standing.findLast(({ note, fate }) => note.opens !== undefined && fate === "stands")?.note
    .opens;
}

/** Who was sent first, or whom the desk gave it to since. */
function assignedIn({ assigned }: Opening, alive: readonly JobStatement[]): Pick<Job, "assigned"> {
  const given = alive.findLast(
    ({ statement }) => statement.kind === "note" && statement.about.startsWith(SENT),
  )?.statement;
  const now = given?.kind === "note" ? given.about.slice(SENT.length) : assigned;
  return now === undefined ? {} : { assigned: now };
}

function statementsOf(standing: readonly Standing[]): readonly JobStatement[] {
  return standing.flatMap(({ entry, note, at, fate }) =>
    note.statements.map((statement) => ({
      message: entry.message,
      at,
      who: entry.who,
      statement,
      ...(fate === "undone" || fate === "edited" || fate === "moved"
        ? { undone: true as const }
        : {}),
      ...(fate === "deleted" ? { deleted: true as const } : {}),
    })),
  );
}

/** Technicians who did or said something for the job, in order of their first word. */
function peopleOf(standing: readonly Standing[]): readonly string[] {
  const people = standing.flatMap(({ entry, note, fate }) => {
    const worked =
      note.readings.length > 0 ||
      note.files.length > 0 ||
      note.statements.some(
        ({ kind }) => kind !== "question" && kind !== "note" && kind !== "open_job",
      );
    return note.role === "tech" && worked && fate === "stands" ? [entry.who] : [];
  });
  return [...new Set(people)];
}

function timelineOf(standing: readonly Standing[]): Job["timeline"] {
  return standing
    .filter(({ fate }) => fate === "stands")
    .map(({ entry, note, at }) => ({
      at,
      who: entry.who,
      kind: kindOf(note),
      says: saidIn(note) ?? entry.text ?? "[erased]",
      message: entry.message,
    }));
}

/** Of a list of calls only this job's own: the others' troubles are none of it. */
function saidIn({ opens, statements }: Standing["note"]): string | undefined {
  return opens?.listed === true
    ? statements.find(({ kind }) => kind === "open_job")?.said
    : undefined;
}

function kindOf(note: Standing["note"]): string {
  if (note.opens !== undefined) return "opened";
  if (note.readings.length > 0) return "reading";
  return note.statements[0]?.kind ?? (note.files.length > 0 ? "file" : "note");
}

function refrigerantOf(readings: readonly JobReading[]): Job["refrigerant"] {
  const sum = (action: "recovered" | "charged"): number => {
    const kg = readings
      .filter(
        (reading) =>
          reading.quantity === "mass" &&
          reading.action === action &&
          isCurrent(reading) &&
          reading.rating === undefined &&
          reading.earlier !== true &&
          reading.doubtful !== true,
      )
      .reduce((total, { value }) => total + (typeof value === "number" ? value : 0), 0);
    return Math.round(kg * 1e6) / 1e6;
  };
  return { recovered_kg: sum("recovered"), charged_kg: sum("charged") };
}

function unreadOf(standing: readonly Standing[]): Job["unread"] {
  return standing.flatMap(({ entry, note, fate }) =>
    fate === "stands"
      ? note.unread.map(([from, to]) => ({
          message: entry.message,
          text: entry.text?.slice(from, to) ?? "[erased]",
        }))
      : [],
  );
}
