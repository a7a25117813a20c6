import { judge } from "../judge/judge.ts";
import type {
  EquipmentFacts,
  Judgement,
  Limits,
  SiteFacts,
  Understood,
  UnitHabit,
} from "../model.ts";
import { type Context, follow, startContext } from "../read/context.ts";
import { caseOf } from "../record/case.ts";
import { correctedBy, deniedIn, inherit } from "../record/corrections.ts";
import type { Entry } from "../record/entry.ts";
import { foldJob } from "../record/job.ts";
import { isCurrent } from "../record/readings.ts";
import { readText } from "./read-note.ts";

export interface NotesCase {
  readonly equipment: EquipmentFacts;
  readonly site: SiteFacts;
  readonly limits?: Limits;
  readonly notes: readonly string[];
  readonly units: UnitHabit;
  /** ISO: the moment of the last note */
  readonly at?: string;
}

/** Stands in where no time was given; the notes' order alone counts then. */
const anyTime = "2000-01-01T00:00:00Z";

/** Judges notes as if they had just been filed on a new job: corrections and undo count as there. */
export function judgeNotes(given: NotesCase): Judgement {
  const at = given.at ?? anyTime;
  let context: Context = startContext(given.units, given.at);
  let entries: readonly Entry[] = [opening(at)];
  for (const [index, text] of given.notes.entries()) {
    const understood = readText(text, context);
    context = follow(context, understood);
    entries = [...entries, entryOf({ text, at, place: index + 2, understood }, entries)];
  }
  const job = foldJob(entries);
  if (job === undefined) return { findings: [], diagnosis: [], next: [], cautions: [] };
  const made = caseOf(
    job,
    { sites: [], equipment: [], codes: [], people: [], cylinders: [], parts: [], limits: [] },
    [],
    at,
  );
  const { at: _when, ...untimed } = made;
  const known = {
    equipment: given.equipment,
    site: given.site,
    ...(given.limits === undefined ? {} : { limits: given.limits }),
  };
  // the opening is no note of anybody's
  const notes = made.notes.slice(1);
  if (given.at !== undefined) return judge({ ...made, ...known, notes });
  return judge({ ...untimed, ...known, notes: notes.map(({ at: _at, ...note }) => note) });
}

const who = "technician";
const base = { job: 1, who, platform: "judge" } as const;
const empty = { readings: [], statements: [], unread: [], files: [], replaces: [] } as const;

function opening(at: string): Entry {
  const opens = { site: null, equipment: null, channel: "judge" };
  return {
    ...base,
    place: 1,
    at,
    message: "000000",
    text: "",
    facts: { kind: "note", role: "dispatcher", opens, ...empty },
  };
}

function entryOf(
  note: {
    readonly text: string;
    readonly at: string;
    readonly place: number;
    readonly understood: Understood;
  },
  before: readonly Entry[],
): Entry {
  const { text, at, place, understood } = note;
  // ids sort as the notes do
  const message = String(place).padStart(6, "0");
  const said = { ...base, place, at, message, text };
  const undo = understood.statements.find((said) => said.kind === "undo");
  if (undo?.kind === "undo" && undo.taken !== undefined) {
    const figure = undo.taken;
    const told = foldJob(before)?.readings.filter(isCurrent) ?? [];
    const last = told.findLast((reading) => reading.figure.number === figure);
    const taken = last === undefined ? [] : [last.id];
    return { ...said, facts: { kind: "answer", readings: taken, stands: false } };
  }
  if (undo !== undefined) {
    const last = before.findLast(({ facts, place: at }) => facts.kind === "note" && at > 1);
    return { ...said, facts: { kind: "undo", places: last === undefined ? [] : [last.place] } };
  }
  const standing = foldJob(before)?.readings ?? [];
  const replaces: { was: string; by: number }[] = [];
  const readings = understood.readings.map((reading, by) => {
    const was =
      reading.corrects === true
        ? correctedBy(reading, who, standing, deniedIn(text, reading))
        : undefined;
    if (was === undefined) return reading;
    replaces.push({ was: was.id, by });
    return inherit(reading, was);
  });
  const { statements, unread_spans: unread } = understood;
  return {
    ...said,
    facts: { kind: "note", role: "tech", ...empty, readings, statements, unread, replaces },
  };
}
