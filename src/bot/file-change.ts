import type { Message } from "../model.ts";
import { type Draft, jobsFiling } from "../record/entries-table.ts";
import { findMessage, type InboxRow } from "../record/inbox.ts";
import { openingFrom, opensJob } from "../record/opening.ts";
import type { Store } from "../record/store.ts";
import { type Plan, planNote } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { planListEdit } from "./plan-list.ts";
import { readNote } from "./read-note.ts";
import { placeDraft } from "./release.ts";
import { entriesAt, jobAt } from "./rest.ts";
import { worldOf } from "./world.ts";

/** In the place of the question whose readings they are. */
const notFiled = "Taken back before it was filed.";

const tooEarly: Plan = { understood: nothingRead, opened: false, drafts: [], early: true };

/** A message was removed: what it said no longer stands, in every job that it was filed on. */
export function planDelete(
  message: Message,
  known: { readonly store: Store; readonly original: string },
): Plan {
  const { store, original } = known;
  const first = findMessage(store, message.platform, original);
  if (first === undefined) return tooEarly;
  const jobs = jobsFiling(store, original);
  // nobody is asked any more whose it is
  const waited = jobs.length === 0 && first.state === "waiting" ? { says: notFiled } : {};
  const drafts = jobs.map((job) => draftFor(message, job, { kind: "delete", message: original }));
  const [job] = jobs;
  return {
    understood: nothingRead,
    opened: false,
    drafts,
    ...(job === undefined ? {} : { job }),
    ...waited,
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
  const list = planListEdit(memory, message, original);
  if (list !== undefined) return list;
  const [job] = jobsFiling(store, original);
  if (job === undefined) return planFirstFiling(memory, message, first);
  const read = { ...message, at: first.message.at };
  const understood = readNote(memory, read, job);
  const opened = opensIt(memory, job, original);
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

/**
 * An edit of what was filed nowhere: now it may be, in its original's place, so that the next edit or a
 * deletion finds it there. Else it waits with its original, whose question is put for the new words.
 */
function planFirstFiling(
  memory: Memory,
  message: Message,
  { message: first, state }: InboxRow,
): Plan {
  const plan = planNote(memory, { ...message, at: first.at });
  if (plan.problem !== undefined) return plan;
  if (plan.drafts.length === 0 && state === "waiting") return { ...plan, says: notFiled };
  const edits = first.id;
  const drafts = plan.drafts.map((draft): Draft => {
    const { facts } = draft;
    return facts.kind === "note" ? { ...draft, at: message.at, facts: { ...facts, edits } } : draft;
  });
  const places = drafts.flatMap(({ job, facts }) =>
    facts.kind === "note" ? [placeDraft(memory, first, job)] : [],
  );
  return { ...plan, drafts: [...drafts, ...places] };
}

/** Whether a message, or an edit of it, opened a job. */
function opensIt(memory: Memory, job: number, original: string): boolean {
  const opener = jobAt(memory, job)?.opened_by;
  return (
    opener === original ||
    entriesAt(memory, job).some(
      ({ message, facts }) =>
        message === opener && facts.kind === "note" && facts.edits === original,
    )
  );
}
