import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import { lastStatus } from "./back-again.ts";
import { namesSite } from "./names-site.ts";

const at =
  /^\s*(?:ok(?:ay)?,?\s+)?(?:(?:i['’]?m|we['’]?re|just|now)\s+)*at\s+(?:the\s+)?([\p{L}'’ -]+?)\s*(?:now\s*)?(?:,?\s*(?:up )?(?:on|in) the (?:roof|basement|attic|penthouse|plant room|boiler room|mechanical room|back)\s*)?(?:[,.;:!\n]|$|(?=\s(?:with|w)[/ ]))/iu;

/** "At tannery, my lock is on": only who knows the site's name can tell that he has come. */
export function withNamedArrival(
  understood: Understood,
  { text, person, role }: Pick<Message, "text" | "person" | "role">,
  job: Job,
): Understood {
  const match = at.exec(text);
  if (role !== "tech" || match === null) return understood;
  const isSite = namesSite(match[1] ?? "", job);
  const told = understood.statements.some(({ kind }) => kind === "status" || kind === "question");
  if (!isSite || told || lastStatus(job, person)?.status === "on_site") return understood;
  const span: Span = [match.index, match.index + match[0].length];
  const statement: Statement = {
    kind: "status",
    status: "on_site",
    said: match[0].trim(),
    spans: [span],
    rule: "at <site>",
  };
  return { ...understood, statements: [statement, ...understood.statements] };
}

const backTo =
  /(?:^|[,.;]\s*)(?:(?:i['’]?m|we['’]?re|ok(?:ay)?|now|and|going|then)\s+)*back to (?:the )?([\p{L}'’ -]{3,30}?)\s*(?:now\s*)?(?:[,.;:!\n]|$)/iu;

const leavingFor =
  /\b(?:leaving|leavin|setting off|setting out|off)\b[^.;!\n\d]{0,30}?(?:\bfor|, ?(?:going|headed|heading|off|moving|on)(?: over| on| out)? to) (?:the )?([\p{L}'’ -]{3,40}?)\s*(?:now\s*)?(?:[,.;:!\n]|$)/iu;

/** The way to the site that a match names. */
function wayTo(match: RegExpExecArray, rule: string): Statement {
  const span: Span = [match.index, match.index + match[0].length];
  const [said, where = ""] = match;
  return { kind: "status", status: "on_the_way", where, said: said.trim(), spans: [span], rule };
}

/** "Leaving the yard for harrow st": where he goes stands behind "for", and he has not been there. */
function withLeavingFor(
  understood: Understood,
  { text, person }: Pick<Message, "text" | "person">,
  job: Job,
): Understood | undefined {
  const match = leavingFor.exec(text);
  if (match === null || !namesSite(match[1] ?? "", job)) return undefined;
  if (lastStatus(job, person)?.status === "on_site") return undefined;
  const statuses = understood.statements.filter(({ kind }) => kind === "status");
  const others = understood.statements.filter(({ kind }) => kind !== "status");
  const goes = statuses.every((one) => one.kind === "status" && one.status === "left_site");
  if (!goes || others.some(({ kind }) => kind === "question")) return undefined;
  return { ...understood, statements: [...others, wayTo(match, "leaving for <site>")] };
}

/** "Back to the bakery", "got the tank, back to hofzicht": the way, where the site is the job's and he is not there. */
export function withNamedWay(
  understood: Understood,
  { text, person, role }: Pick<Message, "text" | "person" | "role">,
  job: Job,
): Understood {
  const leaving = role === "tech" ? withLeavingFor(understood, { text, person }, job) : undefined;
  if (leaving !== undefined) return leaving;
  const match = backTo.exec(text);
  if (role !== "tech" || match === null || !namesSite(match[1] ?? "", job)) return understood;
  const told = understood.statements.some(({ kind }) => kind === "status" || kind === "question");
  if (told || lastStatus(job, person)?.status === "on_site") return understood;
  const statement = wayTo(match, "back to <site>");
  return { ...understood, statements: [...understood.statements, statement] };
}
