import type { Decision, Job, JobPart, Message, Span, Statement, Understood } from "../model.ts";
import { isDirect } from "../record/direct.ts";
import { wordsOf } from "../record/names.ts";
import { waitedFor } from "../record/parts.ts";
import type { Route } from "../record/route.ts";
import { declinedNote, foundNotFixed } from "../show/found-not-fixed.ts";
import { allJobs, type Memory } from "./memory.ts";

const no =
  /\b(?:declin(?:ed?|es|ing)|reject(?:ed|s)?|turned (?:it |that |them )?down|not approved|no go|(?:said|says) no|(?:do|does|did)(?:n['’]?t| not) want (?:it|that|them|to))\b/i;
const yes =
  /\b(?:approve[ds]?|accept(?:ed|s)?|go ahead|green ?lit|signed off|(?:said|says) (?:yes|ok(?:ay)?|go|go for it|(?:to )?do (?:it|them|the (?:job|repair|work)))|good to go|wants? (?:it|them) (?:done|fixed|replaced|changed)|gave (?:me |us )?the (?:ok(?:ay)?|green light|go))\b/i;
/** Not decided yet, or a question. */
const open =
  /\?|\b(?:if|once|when|until|till|wait(?:ing|s)?|pending|need(?:s|ed)?|has to|have to|ask(?:ed|ing)?|before|not yet|should|would|will|to be|get it)\b/i;
/** What may stand beside the decision when it names nothing. */
const small =
  /^(?:the|a|an|it|it's|its|that|that's|this|they|he|she|we|you|i|customer|client|owner|manager|tenant|landlord|office|quote|quoted|estimate|price|repair|repairs|work|job|part|parts|all|both|everything|them|on|for|by|of|to|with|from|at|is|was|are|were|been|be|has|have|had|just|ok|okay|yes|no|yep|nope|sorry|please|thanks|now|today|sir|so|and|per|po|one|ones|fyi|back|changed|his|her|their|mind|minds|after|but)$/i;

interface Decided {
  readonly decision: Decision;
  readonly said: string;
  readonly span: Span;
}

/** "Declined", "customer approved the contactor": what was made of a quote or a part. */
function decisionIn(text: string): Decided | undefined {
  const [against, favor] = [no.exec(text), yes.exec(text)];
  const match = against ?? favor;
  if (match === null || open.test(text)) return undefined;
  const span: Span = [match.index, match.index + match[0].length];
  return { decision: against === null ? "approved" : "declined", said: match[0], span };
}

/** Whether a part is named in some words, by its number or by the last word of its name. */
function isNamed(text: string, { part, number }: JobPart): boolean {
  const plain = (words: string): string => words.toLowerCase().replace(/[^a-z0-9]/g, "");
  if (number !== undefined && plain(text).includes(plain(number))) return true;
  const noun = wordsOf(part).findLast((word) => word.length > 2);
  return (
    noun !== undefined && wordsOf(text).some((word) => word.startsWith(noun.replace(/s$/, "")))
  );
}

/** Nothing is named beside the decision but the job itself: it is on all that is open. */
function isBare(text: string, { span }: Decided, job: Job | undefined): boolean {
  const rest = `${text.slice(0, span[0])} ${text.slice(span[1])}`.replace(/[$#]?\d[\d.,]*/g, " ");
  const own = new Set([...wordsOf(job?.site ?? ""), ...wordsOf(job?.equipment ?? "")]);
  const tag = (job?.equipment ?? "").toLowerCase().replace(/[^a-z]/g, "");
  return wordsOf(rest).every((word) => small.test(word) || own.has(word) || word === tag);
}

/** The parts of a job that a decision is on. */
function decidedParts(text: string, decided: Decided, job: Job): readonly JobPart[] {
  const still = waitedFor(job.parts);
  // what was declined may be wanted after all
  const refused = job.parts.filter((part) => part.decided === "declined");
  const waited = decided.decision === "declined" || still.length > 0 ? still : refused;
  const named = waited.filter((part) => isNamed(text, part));
  return named.length > 0 ? named : isBare(text, decided, job) ? waited : [];
}

/** Adds to a message what it decides of the job's parts, or of what was found and not fixed. */
export function withDecision(understood: Understood, text: string, job: Job): Understood {
  const decided = decisionIn(text);
  if (decided === undefined || understood.readings.length > 0) return understood;
  if (understood.statements.some(({ kind }) => kind === "question" || kind === "open_job")) {
    return understood;
  }
  const { decision, said, span } = decided;
  const base = { said, spans: [span], rule: "<decision>" };
  const parts = decidedParts(text, decided, job);
  const made = parts.map(
    ({ part, number, state }): Statement => ({
      ...base,
      kind: "part",
      part,
      ...(number === undefined ? {} : { number }),
      state,
      decided: decision,
    }),
  );
  const bare = decision === "declined" && isBare(text, decided, job);
  const found = bare ? foundNotFixed(job) : [];
  const notes = found.map(
    ({ what }): Statement => ({ ...base, kind: "note", about: declinedNote(what) }),
  );
  // the part that is decided on is not asked for anew by the same words
  const rest = understood.statements.filter(
    (one) => one.kind !== "part" || !parts.some((part) => one.part === part.part),
  );
  return made.length + notes.length === 0
    ? understood
    : { ...understood, statements: [...rest, ...made, ...notes] };
}

/** The office decides without naming a job: the one in that channel with something to decide, else a question. */
export function decisionFor(memory: Memory, message: Message): Route | undefined {
  const decided = message.role === "tech" ? undefined : decisionIn(message.text);
  if (decided === undefined) return undefined;
  const { text, channel } = message;
  const jobs = allJobs(memory).filter(
    (job) =>
      (job.channel === channel || isDirect(channel)) && decidedParts(text, decided, job).length > 0,
  );
  const [only, ...others] = jobs;
  if (only === undefined) return undefined;
  if (others.length === 0) return { kind: "job", job: only.job, by: "hand" };
  return { kind: "ask", candidates: jobs.map(({ job }) => job) };
}
