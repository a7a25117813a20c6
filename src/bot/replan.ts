import type { Message, Reading } from "../model.ts";
import { type Draft, jobsFiling } from "../record/entries-table.ts";
import type { Entry } from "../record/entry.ts";
import { type InboxRow, messagesAfter } from "../record/inbox.ts";
import { standingOf } from "../record/standing.ts";
import type { Store } from "../record/store.ts";
import { planNote } from "./file-note.ts";
import { draftFor } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { entriesAt } from "./rest.ts";

/** A late message is looked at with what came up to so long after it; our choice, no source. */
const withinMs = 24 * 3600_000;

/** What becomes of a message that was worked on before an earlier one arrived. */
export interface Revision {
  readonly row: InboxRow;
  readonly job: number;
  readonly drafts: readonly Draft[];
}

/** Messages that a late or changed one may concern: its author's, and its job's. */
export function concerned(
  store: Store,
  late: Message,
  jobs: readonly number[],
): readonly InboxRow[] {
  return messagesAfter(store, late, withinMs).filter(
    ({ message, job, state }) =>
      message.edits === undefined &&
      message.deletes === undefined &&
      (message.person === late.person ||
        (job !== null && jobs.includes(job)) ||
        state === "waiting"),
  );
}

/** Reads and routes a message anew; undefined where nothing about it changes. */
export function revise(memory: Memory, row: InboxRow): Revision | undefined {
  const plan = planNote(memory, row.message);
  if (plan.opened || plan.job === undefined) return undefined;
  const notes = plan.drafts.filter(({ facts }) => facts.kind === "note");
  if (notes.length !== plan.drafts.length || notes.length === 0) return undefined;
  const standing = standingEntries(memory, row.message);
  // taken back by its author: it stays so
  if (standing.length === 0 && wasFiled(memory, row.message)) return undefined;
  // "the heater is in", said by the office: no reading of the words made it
  if (standing.some(isByAside)) return undefined;
  const drafts = notes.flatMap((draft): readonly Draft[] => {
    const known = standing.find(({ job }) => job === draft.job);
    if (known === undefined) return [draft];
    if (sameFacts(known, draft)) return [];
    // read anew in the light of what came late: it stands for the first reading
    return draft.facts.kind === "note"
      ? [{ ...draft, facts: { ...draft.facts, edits: row.message.id } }]
      : [];
  });
  const moves = standing
    .filter(({ job }) => !notes.some((draft) => draft.job === job))
    .map(({ job }) =>
      draftFor(row.message, job, { kind: "move", message: row.message.id, to: plan.job ?? job }),
    );
  if (drafts.length + moves.length === 0) return undefined;
  return { row, job: plan.job, drafts: [...drafts, ...moves] };
}

const byAside = /^<(?:aside>|lock by procedure>|part> (?:arrived|ordered)$)/;

function isByAside({ facts }: Entry): boolean {
  return facts.kind === "note" && facts.statements.some(({ rule }) => byAside.test(rule));
}

function wasFiled(memory: Memory, message: Message): boolean {
  return jobsFiling(memory.store, message.id).length > 0;
}

function standingEntries(memory: Memory, message: Message): readonly Entry[] {
  return jobsFiling(memory.store, message.id).flatMap((job) =>
    standingOf(entriesAt(memory, job))
      .filter(({ entry, fate }) => fate === "stands" && entry.message === message.id)
      .map(({ entry }) => entry),
  );
}

function sameFacts(entry: Entry, draft: Draft): boolean {
  const { facts: before } = entry;
  const { facts: after } = draft;
  if (before.kind !== "note" || after.kind !== "note") return false;
  const parts = ({ readings, statements, unread, replaces }: typeof before): string =>
    JSON.stringify(inOrder([readings.map(meaning), statements, unread, replaces]));
  return parts(before) === parts(after);
}

/** What a reading says, whatever was filled in to say it. */
function meaning(reading: Reading): unknown {
  const { figure: _figure, assumed: _assumed, rule: _rule, ...rest } = reading;
  // a pressure is gauge unless it is said to be absolute
  return rest.reference === "gauge" ? { ...rest, reference: undefined } : rest;
}

/** The same with the names of every object in order: what was read back from the store has another. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== "object" || value === null) return value;
  const pairs = Object.entries(value).filter(([, item]) => item !== undefined);
  pairs.sort(([a], [b]) => (a < b ? -1 : 1));
  return pairs.map(([key, item]) => [key, inOrder(item)]);
}
