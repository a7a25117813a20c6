import type { JobReading, JobStatement, Reading, Statement } from "../../src/model.ts";
import type { Entry, NoteFacts } from "../../src/record/entry.ts";
import { did } from "../case-builder.ts";

/** Pieces of a job's record by hand, so that folding is tested apart from reading and storing. */

export type Action = Extract<Statement, { kind: "action" }>;

/** Minute `minute` of a day, ISO. */
export const minuteOf = (minute: number): string =>
  new Date(Date.parse("2026-05-12T08:00:00Z") + minute * 60_000).toISOString();

/** An action with whatever it carries beside its name. */
export function act(action: Action["action"], more: Partial<Action> = {}): Action {
  const made = did(action);
  if (made.kind !== "action") throw new Error("no action");
  return { ...made, ...more };
}

/** A statement as it stands in a job's record. */
export const line = (minute: number, statement: Statement, who = "bram"): JobStatement => ({
  ...{ message: `m${minute}`, at: minuteOf(minute), who, statement },
});

/** A reading as it stands in a job's record; those of one minute are of one message. */
export function kept(minute: number, reading: Reading, more: Partial<JobReading> = {}): JobReading {
  const at = minuteOf(minute);
  return {
    ...{ ...reading, id: `1.${minute}.0`, message: `m${minute}`, taken: at, received: at },
    who: "bram",
    ...more,
  };
}

interface Written extends Partial<NoteFacts> {
  readonly who?: string;
  readonly text?: string;
  readonly channel?: string;
}

/** Entry number `place` of job 1, a technician's note said at minute `place`. */
export function entryOf(place: number, written: Written = {}): Entry {
  const { who = "bram", text = "", channel = "south", ...facts } = written;
  return {
    ...{ job: 1, place, at: minuteOf(place), who, platform: "test", channel, text },
    message: `m${String(place).padStart(3, "0")}`,
    facts: {
      ...{ kind: "note", role: "tech", readings: [], statements: [], unread: [], files: [] },
      ...{ replaces: [], ...facts },
    },
  };
}
