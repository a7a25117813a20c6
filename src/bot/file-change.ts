import type { Message } from "../model.ts";
import { jobsFiling } from "../record/entries-table.ts";
import { findMessage } from "../record/inbox.ts";
import { openingFrom, opensJob } from "../record/opening.ts";
import type { Store } from "../record/store.ts";
import { type Plan, planNote } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";
import { worldOf } from "./world.ts";

const tooEarly: Plan = { understood: nothingRead, opened: false, drafts: [], early: true };

/** A message was removed: what it said no longer stands, in every job that it was filed on. */
export function planDelete(
  message: Message,
  known: { readonly store: Store; readonly original: string },
): Plan {
  const { store, original } = known;
  if (findMessage(store, message.platform, original) === undefined) return tooEarly;
  const jobs = jobsFiling(store, original);
  const drafts = jobs.map((job) => draftFor(message, job, { kind: "delete", message: original }));
  const [job] = jobs;
  return {
    understood: nothingRead,
    opened: false,
    drafts,
    ...(job === undefined ? {} : { job }),
  };
}

/** A message was rewritten: the new words are read in the old one's place and stand for it. */
export function planEdit(
  memory: Memory,
  message: Message,
  known: { readonly store: Store; readonly original: string },
): Plan {
  const { store, original } = known;
  const first = findMessage(store, message.platform, original);
  if (first === undefined) return tooEarly;
  const [job] = jobsFiling(store, original);
  if (job === undefined) {
    // it was filed nowhere: now it may be; else it waits with its original
    const plan = planNote(memory, { ...message, at: first.message.at });
    return plan.problem !== undefined && first.state === "waiting" ? tooEarly : plan;
  }
  const read = { ...message, at: first.message.at };
  const understood = readNote(memory, read, job);
  const opened = jobAt(memory, job)?.opened_by === original;
  const said = understood.statements.find((statement) => statement.kind === "open_job");
  const opens =
    opened && (said !== undefined || opensJob(message.text))
      ? openingFrom(message, said, worldOf(memory))
      : undefined;
  const facts = noteFacts(memory, message, {
    understood,
    job,
    edits: original,
    ...(opens === undefined ? {} : { opens }),
  });
  return { understood, job, opened: false, drafts: [draftFor(message, job, facts)] };
}
