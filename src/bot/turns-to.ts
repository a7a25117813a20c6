import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import type { Route } from "../record/route.ts";
import { IN_HAND } from "../vocabulary.ts";
import { lastStatus } from "./back-again.ts";
import type { Plan } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import { locate, locateWords } from "./locate.ts";
import { allJobs, type Memory } from "./memory.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";

/** "moving over to rtu 3", "on to rtu 3", "rtu 3 next": the last that is said. */
const turns =
  /(?:^|[.,;!\n]\s*|\b(?:and|n|then|now)\s+|\b(?:with|w)(?: the)? [a-z]{0,4} ?\d{1,2}\s+)((?:(?:im|i['’]m|gonna|going to|will|ok|now)\s+)*(?:moving|going|heading|switching|hopping|jumping|getting|starting|start|on|onto|over)(?: (?:on|over|on over))?(?: to| with| w)? [^.,;!\n]{1,30}|[^.,;!\n]{2,20} (?:next|now))\s*[.!]*\s*$/iu;

/** "back on 3, 14.1 amps", "3 is good. on 2 now. 126/350": a clause that turns, and then what is told there. */
const turnsFirst =
  /(?:^|[.;!\n]\s*)((?:(?:ok|okay|im|i['’]m|we['’]re|now|so|and|gonna|going)\s+)*(?:(?:back|over|moving|going|switching|hopping|jumping) (?:on|to|at|onto|over to)|now on|on(?= #?\d{1,2} now\b)) #?\d{1,2}(?: (?:now|again|next))?)\s*[,.;:!\n]\s*(?=\S)/iu;

interface Turned {
  readonly words: string;
  readonly from: number;
  /** what is told behind it is of the other unit */
  readonly to: number;
}

function turnedIn(text: string): Turned | undefined {
  const match = turns.exec(text);
  const words = match?.[1];
  if (match !== null && words !== undefined) {
    return { words, from: match.index + match[0].lastIndexOf(words), to: text.length };
  }
  const ahead = turnsFirst.exec(text);
  const clause = ahead?.[1];
  if (ahead === null || clause === undefined) return undefined;
  const from = ahead.index + ahead[0].indexOf(clause);
  return {
    words: clause.replace(/ (?:now|again|next)$/i, ""),
    from,
    to: ahead.index + ahead[0].length,
  };
}

/** "moving to 2": the open job of the same site whose unit has that number. */
export function byNumber(memory: Memory, words: string, base: Route): Route | undefined {
  const number = /\b(?:to|on|onto|at|with|w) #?(\d{1,2})$/i.exec(words.trim())?.[1];
  const here = base.kind === "job" ? jobAt(memory, base.job) : undefined;
  if (number === undefined || here === undefined) return undefined;
  const jobs = allJobs(memory).filter(
    ({ site, status, equipment }) =>
      site === here.site &&
      status !== "done" &&
      new RegExp(`(?<!\\d)0*${number}$`).test(equipment ?? ""),
  );
  const [only, ...others] = jobs;
  if (only === undefined || others.length > 0) return undefined;
  return { kind: "job", job: only.job, by: "name" };
}

/**
 * "rtu 2 done, half an hour. moving over to rtu 3": what is said before is of the job in hand, and the
 * other unit's job at the same site is taken in hand; who is there is on site for it.
 */
export function planTurning(memory: Memory, message: Message): Plan | undefined {
  if (message.role !== "tech" || message.thread !== undefined) return undefined;
  const turned = turnedIn(message.text);
  if (turned === undefined) return undefined;
  const rest = message.text.slice(0, turned.from);
  const base = locate(memory, { ...message, text: rest });
  const numbered = byNumber(memory, turned.words, base);
  const target = numbered ?? locateWords(memory, message, { words: turned.words, job: -1 });
  if (base.kind !== "job" || target?.kind !== "job" || base.job === target.job) return undefined;
  const [here, there] = [jobAt(memory, base.job), jobAt(memory, target.job)];
  if (here === undefined || there === undefined || here.site !== there.site) return undefined;
  // a figure behind the unit's name is a reading of that unit, and no turning alone
  const told = readNote(memory, { ...message, text: turned.words }, target.job);
  const unread = numbered === undefined ? told.unread.length : 0;
  if (told.readings.length + unread > 0 || told.statements.some(isReport)) return undefined;
  const read = readNote(memory, { ...message, text: rest }, base.job);
  const statements = read.statements.filter(({ kind }) => kind !== "note");
  const span: Span = [turned.from, turned.from + turned.words.length];
  const hand = turnsTo(message, { here, there, statements, words: turned.words, span });
  if (hand === undefined) return undefined;
  const next = withBehind(memory, message, { hand, turned, job: target.job });
  const isTold = statements.length + read.readings.length + read.unread.length > 0;
  const drafts = [
    ...(isTold
      ? [
          draftFor(
            message,
            base.job,
            noteFacts(memory, message, { understood: read, job: base.job }),
          ),
        ]
      : []),
    draftFor(
      message,
      target.job,
      noteFacts(memory, { ...message, files: [] }, { understood: next, job: target.job }),
    ),
  ];
  // what is told of the unit that he turns to is what is answered
  const goesOn = turned.to < message.text.length;
  const understood = isTold && !goesOn ? read : next;
  return { understood, job: isTold && !goesOn ? base.job : target.job, opened: false, drafts };
}

/** What stands behind the turning, read as of the unit that is turned to. */
function withBehind(
  memory: Memory,
  message: Message,
  told: { readonly hand: Understood; readonly turned: Turned; readonly job: number },
): Understood {
  const { hand, turned, job } = told;
  if (turned.to >= message.text.length) return hand;
  const text = `${" ".repeat(turned.to)}${message.text.slice(turned.to)}`;
  const read = readNote(memory, { ...message, text }, job);
  return { ...read, statements: [...hand.statements, ...read.statements] };
}

const isReport = ({ kind }: Statement): boolean => kind !== "note" && kind !== "status";

/** The other job comes in hand; on site where the first is finished, for nobody's hours count twice. */
function turnsTo(
  { person }: Message,
  told: {
    readonly here: Job;
    readonly there: Job;
    readonly statements: readonly Statement[];
    readonly words: string;
    readonly span: Span;
  },
): Understood | undefined {
  const { here, there, statements, words, span } = told;
  const ends = ({ statement }: { readonly statement: Statement | undefined }): boolean =>
    statement?.kind === "status" && statement.status === "done";
  const finished =
    statements.some((statement) => ends({ statement })) ||
    ends({ statement: lastStatus(here, person) });
  const base = { said: words, spans: [span], rule: "turns to <unit>" };
  const hand: Statement = { kind: "note", about: `${IN_HAND}${there.equipment ?? ""}`, ...base };
  const status: Statement = { kind: "status", status: "on_site", ...base };
  const isThere = lastStatus(there, person)?.status === "on_site";
  if (there.status === "done") return undefined;
  return { ...nothingRead, statements: finished && !isThere ? [status] : [hand] };
}
