import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import { shortPartNames } from "../vocabulary.ts";
import { hoursIn } from "./hours-in.ts";

const back =
  /^\s*(?:ok(?:ay)?,?\s+)?(?:i['’]?m\s+|we['’]?re\s+)?back(?:\s+(?:now|again|here))?\s*[.!]?\s*$/i;

const out = /\b(?:heading|headed|headin|rolling|rollin) out\b([^\p{L}\p{N}]*)(.*)$/iu;

/** "Lock stays on. Out": a word of its own at the end. */
const outAtEnd = /(?:^|[.!;,\n]\s*)out\s*[.!]*\s*$/i;

/** "Away now, back in the morning", "we're off": who is there goes. */
const awayNow =
  /(?:^|[.!;,\n]\s*)(?:(?:and |ok )?(?:i['’]?m|we['’]?re|that['’]?s me) (?:away|off)|away)(?: now| home| then)*\s*(?=$|[.!;,\n])/iu;

/** "Leaving it over night, locked. 2 hrs": who counts his hours goes. */
const restsOverNight =
  /\b(?:leaving|left|letting) it (?:sit |stand |on (?:it )?|hold |(?:on|under|with) (?:pressure|nitrogen|nitro|n2|gas|vacuum|vac|test) (?:on )?|pressurized |charged )?(?:over ?night|(?:for|til|till|until) (?:tonight|the night|morning|tomorrow|[a-z]+day))\b/i;
const countsHours = ({ statements }: Understood): boolean =>
  statements.some(({ kind }) => kind === "labor");

/** "Disconnect locked, leaving it on pressure overnight": nobody works on behind a lock of his own. */
const staysAway = (understood: Understood): boolean =>
  countsHours(understood) ||
  understood.statements.some((one) => one.kind === "action" && one.lock === "on");

const outThen = /^(.*(?:^|[.!;,\n]\s*))out\s*[.!,]\s*([^.!]{1,24}(?:\.\d+[^.!]{0,12})?[.!]*)$/is;

function withHoursOut(
  understood: Understood,
  told: {
    readonly text: string;
    readonly ahead: string;
    readonly tail: string;
    readonly hours: number;
  },
): Understood {
  const { text, ahead, tail, hours } = told;
  const from = ahead.length;
  const behind: Span = [text.length - tail.length, text.length];
  const left: Statement = {
    kind: "status",
    status: "left_site",
    said: text.slice(from, from + 3),
    spans: [[from, from + 3]],
    rule: "out",
  };
  const labor: Statement = {
    kind: "labor",
    hours,
    said: tail,
    spans: [behind],
    rule: "out, <hours>",
  };
  const counted = understood.statements.some(({ kind }) => kind === "labor");
  const within = ([a, b]: Span): boolean => a >= behind[0] && b <= behind[1];
  const kept = understood.unread_spans.filter((span) => !within(span));
  return {
    ...understood,
    statements: [...understood.statements, left, ...(counted ? [] : [labor])],
    unread: kept.map(([a, b]) => text.slice(a, b)),
    unread_spans: kept,
  };
}

function leftSaid(understood: Understood, match: RegExpExecArray, rule: string): Understood {
  const left: Statement = {
    kind: "status",
    status: "left_site",
    said: match[0].replace(/^[\s.!;,]+/, ""),
    spans: [[match.index, match.index + match[0].length]],
    rule,
  };
  return { ...understood, statements: [...understood.statements, left] };
}

/** "Heading out", of who is on site: he leaves, and is not on his way to it. */
export function withLeaving(
  understood: Understood,
  message: Pick<Message, "text" | "person">,
  job: Job,
): Understood {
  const { text } = message;
  const told = understood.statements.some(({ kind }) => kind === "status" || kind === "question");
  const [, , behind = ""] = out.exec(text) ?? [];
  const hours = hoursIn(behind);
  const goes = out.test(text) && (behind === "" || hours !== undefined);
  // "new belt on. out. 45 min": his hours behind the word
  const [whole, ahead = "", tail = ""] = (!told && outThen.exec(text)) || [];
  const spent = whole === undefined ? undefined : hoursIn(tail);
  if (spent !== undefined && lastStatus(job, message.person)?.status === "on_site")
    return withHoursOut(understood, { text, ahead, tail, hours: spent });
  const ends = !told && outAtEnd.test(text);
  const rests = !told && restsOverNight.exec(text);
  if (rests && lastStatus(job, message.person)?.status === "on_site" && staysAway(understood)) {
    return leftSaid(understood, rests, "leaving it overnight");
  }
  const gone = told ? null : awayNow.exec(text);
  if (gone !== null && lastStatus(job, message.person)?.status === "on_site")
    return leftSaid(understood, gone, "away now");
  if ((!goes && !ends) || lastStatus(job, message.person)?.status !== "on_site") return understood;
  if (ends) {
    const from = text.search(/out\s*[.!]*\s*$/i);
    const said = text.slice(from, from + 3);
    const left: Statement = {
      kind: "status",
      status: "left_site",
      said,
      spans: [[from, from + 3]],
      rule: "out",
    };
    return { ...understood, statements: [...understood.statements, left] };
  }
  const statements = understood.statements.map((statement) =>
    statement.kind === "status" && statement.status === "on_the_way"
      ? { ...statement, status: "left_site" as const }
      : statement,
  );
  const counted = statements.some(({ kind }) => kind === "labor");
  if (hours === undefined || counted) return { ...understood, statements };
  // "heading out, 1.5 hrs": no length of a way, for he is there
  const from = text.length - behind.length;
  const spans: readonly Span[] = [[from, text.length]];
  const labor: Statement = {
    kind: "labor",
    hours,
    said: behind,
    spans,
    rule: "heading out, <hours>",
  };
  return { ...understood, statements: [...statements, labor] };
}

/** What somebody said last of where he is, on one job. */
export function lastStatus(job: Job, person: string): StatusSaid | undefined {
  const last = job.statements.findLast(
    ({ who, statement, undone, deleted }) =>
      who === person && statement.kind === "status" && undone !== true && deleted !== true,
  )?.statement;
  return last?.kind === "status" ? last : undefined;
}

/** "Back w the float": he went for what the job waits for. */
const withPart =
  /^\s*(?:ok(?:ay)?,?\s+)?(?:i['’]?m\s+|we['’]?re\s+)?back\s+(?:here\s+)?(?:w|with)[/ ]\s*(?:the|a|an|your|our|that|those|all the)?\s*[\p{L} -]{3,30}[.!]?\s*$/iu;

function bringsPart(text: string, { parts }: Job): boolean {
  const words = text.toLowerCase().split(/[^\p{L}]+/u);
  return parts.some(({ part, state }) => {
    const noun = part.toLowerCase().split(" ").at(-1)?.replace(/s$/, "") ?? "";
    const names = [noun, ...shortPartNames(part)];
    return state !== "fitted" && words.some((word) => names.includes(word.replace(/s$/, "")));
  });
}

type StatusSaid = Extract<Statement, { kind: "status" }>;

/** "Back", of who went to fetch something from this job: he is on site again. */
export function withBackAgain(
  understood: Understood,
  message: Pick<Message, "text" | "person">,
  job: Job,
): Understood {
  if (
    (!back.test(message.text) && !withPart.test(message.text)) ||
    understood.statements.some(({ kind }) => kind === "status")
  ) {
    return understood;
  }
  const brings = withPart.test(message.text) && bringsPart(message.text, job);
  if (!brings && lastStatus(job, message.person)?.errand !== true) return understood;
  const span: Span = [0, message.text.length];
  const statement: Statement = {
    kind: "status",
    status: "on_site",
    said: message.text,
    spans: [span],
    rule: "back from an errand",
  };
  return { ...understood, statements: [...understood.statements, statement], skipped: [] };
}
