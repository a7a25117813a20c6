import type { Job, Message, Statement } from "../model.ts";
import { type ListedCall, listedCalls } from "../record/call-list.ts";
import { pairedCalls } from "../record/call-pair.ts";
import { type Draft, jobsFiling, lastJob } from "../record/entries-table.ts";
import type { Opening } from "../record/entry.ts";
import { openingFrom } from "../record/opening.ts";
import { openedLine } from "../show/opened.ts";
import type { Plan } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import { allJobs, type Memory } from "./memory.ts";
import { namesOf } from "./people.ts";
import { readNote } from "./read-note.ts";
import { entriesAt } from "./rest.ts";
import { worldOf } from "./world.ts";

/** A dispatcher's list of calls opens a job for each that is not open yet. */
export function planList(memory: Memory, message: Message): Plan | undefined {
  const calls = callsIn(memory, message);
  if (calls.length === 0) return undefined;
  const drafts: Draft[] = [];
  const lines: string[] = [];
  for (const call of calls) {
    const opens = openingOf(memory, message, call);
    const known = openOn(memory, message, opens);
    const job = known?.job ?? lastJob(memory.store) + 1 + drafts.length;
    lines.push(openedLine({ job, ...(known ?? opens) }, namesOf(memory), known !== undefined));
    if (known === undefined) drafts.push(openingDraft(memory, message, { job, call, opens }));
  }
  return { understood: nothingRead, opened: true, drafts, says: lines.join("\n") };
}

/** A list of calls, or one call on several units. */
function callsIn(memory: Memory, { text, role }: Message): readonly ListedCall[] {
  const paired = pairedCalls(text);
  if (paired.length > 0 || role === "tech") return paired;
  return listedCalls(text, worldOf(memory));
}

/** A list rewritten: what each of its calls says now, in their order; undefined where it was no list. */
export function planListEdit(memory: Memory, message: Message, original: string): Plan | undefined {
  const opened = jobsFiling(memory.store, original).filter((job) =>
    entriesAt(memory, job).some(
      ({ message: by, facts }) =>
        by === original && facts.kind === "note" && facts.opens?.listed === true,
    ),
  );
  if (opened.length === 0) return undefined;
  const calls = callsIn(memory, message);
  const lines: string[] = [];
  // of another number of calls nobody can tell which is which
  const drafts =
    calls.length === opened.length
      ? calls.flatMap((call, index): readonly Draft[] => {
          const job = opened[index];
          if (job === undefined) return [];
          const opens = openingOf(memory, message, call);
          lines.push(openedLine({ job, ...opens }, namesOf(memory)));
          return [openingDraft(memory, message, { job, call, opens, edits: original })];
        })
      : [];
  const says = lines.length === 0 ? {} : { says: lines.join("\n") };
  return { understood: nothingRead, opened: false, drafts, ...says };
}

function openingOf(memory: Memory, message: Message, { text }: ListedCall): Opening {
  const alone = { ...message, text: `New job: ${withName(text)}` };
  const said = readNote(memory, alone, undefined).statements.find(
    (statement) => statement.kind === "open_job",
  );
  const { thread: _thread, ...opening } = openingFrom(alone, said, worldOf(memory));
  return { ...opening, listed: true };
}

/** ", kai" behind a call is who goes, however he is written. */
function withName(text: string): string {
  return text.replace(
    /\s*(?:,|;|\s-|\s–)\s*@?(\p{L})(\p{L}+)\s*\.?$/u,
    (_whole, first: string, rest: string) => `. ${first.toUpperCase()}${rest}`,
  );
}

function openOn(memory: Memory, message: Message, opens: Opening): Job | undefined {
  return allJobs(memory).find(
    ({ site, equipment, status, channel }) =>
      site !== null &&
      site === opens.site &&
      equipment === opens.equipment &&
      channel === message.channel &&
      status !== "done",
  );
}

function openingDraft(
  memory: Memory,
  message: Message,
  what: {
    readonly job: number;
    readonly call: ListedCall;
    readonly opens: Opening;
    readonly edits?: string;
  },
): Draft {
  const { job, call, opens, edits } = what;
  const { site, equipment, complaint, assigned } = opens;
  const statement: Statement = {
    kind: "open_job",
    ...(site === null ? {} : { site }),
    ...(equipment === null ? {} : { equipment }),
    ...(complaint === undefined ? {} : { complaint }),
    ...(assigned === undefined ? {} : { assigned }),
    said: call.text,
    spans: [call.span],
    rule: "a list of calls",
  };
  const understood = { ...nothingRead, statements: [statement] };
  return draftFor(
    message,
    job,
    noteFacts(memory, message, {
      understood,
      opens,
      ...(edits === undefined ? {} : { job, edits }),
    }),
  );
}
