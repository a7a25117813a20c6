import type { Job, Message, Statement, Understood } from "../model.ts";
import { alongWith } from "../record/along-with.ts";
import { type Grip, holdsForMs, inHand } from "../record/hand.ts";
import type { Route } from "../record/route.ts";
import { lastStatus } from "./back-again.ts";
import { allJobs, gripsIn, type Memory } from "./memory.ts";
import { personSaid } from "./people.ts";

const here =
  /^\s*(?:(?:ok(?:ay)?|im|i['’]m|we['’]re|now|just|up|over|back)[ ,]+)*(?:here|there|on site|arrived|got here)\s+(?:now\s+)?(?=w(?:ith)?[/ ])/iu;
const helps =
  /^\s*(?:(?:ok(?:ay)?|im|i['’]m|now)[ ,]+)*helping\s+@?(\p{L}[\p{L}'-]+)\s*(?:[,.!;:\n]|now\b|$)/iu;

/** "With lio", "im w/ lio now": nothing else is said, and a colleague is named. */
const withHim =
  /^\s*(?:(?:ok(?:ay)?|im|i['’]m|now|just|and)[ ,]+)*(?:w|with)[/ ]+@?(\p{L}[\p{L}'-]+)(?: (?:now|here|there))?(?:,? (?:over )?at (?:the )?[\p{L}'’ -]{3,30})?\s*[.!]?\s*$/iu;

/** "Here with Otis" is at the job that Otis has in hand, or had last, whatever its author had himself. */
export function besideColleague(
  memory: Memory,
  { text, channel, person, at, role }: Message,
): Extract<Route, { kind: "job" }> | undefined {
  if (role !== "tech") return undefined;
  // "here Otis" is said to him, and tells nothing of his job
  const name = here.test(text)
    ? alongWith(text)
    : (helps.exec(text)?.[1] ?? withHim.exec(text)?.[1]);
  const who = name === undefined ? undefined : personSaid(memory, name);
  if (who === undefined || who === person) return undefined;
  const now = Date.parse(at);
  const grips = gripsIn(memory, channel, who);
  const job = inHand(grips, now) ?? lastOf(grips, now);
  return job === undefined ? undefined : { kind: "job", job, by: "name" };
}

/** The job that somebody spoke of last, though he has left it. */
export function lastOf(grips: readonly Grip[], now: number): number | undefined {
  const recent = grips.filter(({ instant }) => instant <= now && now - instant <= holdsForMs);
  const last = recent.reduce<Grip | undefined>(
    (newest, grip) => (newest === undefined || grip.instant >= newest.instant ? grip : newest),
    undefined,
  );
  return last?.job;
}

/** "With lio": who is beside a colleague has come to his job. */
export function withColleague(
  understood: Understood,
  { text, person, role }: Pick<Message, "text" | "person" | "role">,
  known: { readonly memory: Memory; readonly job: Job },
): Understood {
  const partner = known.job.second === person ? known.job.assigned : known.job.second;
  const who = isToo(text) ? partner : personSaid(known.memory, withHim.exec(text)?.[1] ?? "");
  if (role !== "tech" || who === undefined || who === person) return understood;
  const told = understood.statements.some(({ kind }) => kind === "status" || kind === "question");
  const own = lastStatus(known.job, person)?.status === "on_site";
  if (told || own || !isOn(known.job, who)) return understood;
  const status: Statement = {
    kind: "status",
    status: "on_site",
    said: text,
    spans: [[0, text.length]],
    rule: "with <colleague>",
  };
  return { ...understood, statements: [status], skipped: [] };
}

/** Somebody who is there, on his way there, or was sent there. */
function isOn(job: Job, who: string): boolean {
  const last = lastStatus(job, who)?.status;
  return last === "on_site" || last === "on_the_way" || job.assigned === who || job.second === who;
}

/**
 * Two were sent and one said that they are there: what the other tells of the machine, with nothing
 * in hand, is of that job.
 */
export function besidePartner(
  memory: Memory,
  { person, channel, at, role, text }: Message,
  understood: Understood,
): Extract<Route, { kind: "job" }> | undefined {
  const works =
    understood.readings.length > 0 ||
    understood.statements.some(({ kind }) => kind === "action" || kind === "observation");
  const comes = isToo(text);
  if (role !== "tech" || !(works || comes)) return undefined;
  const jobs = allJobs(memory).filter((job) => {
    const sent = job.second === person ? job.assigned : job.second;
    const isHis = job.assigned === person || job.second === person;
    if (!isHis || sent === undefined || job.channel !== channel) return false;
    return isThere(job, sent, at) || (!comes && worksThere(job, sent, at));
  });
  const [only, ...others] = jobs;
  return only === undefined || others.length > 0
    ? undefined
    : { kind: "job", job: only.job, by: "hand" };
}

/** "Here too", "me too": where the other of the two is. */
const isToo = (text: string): boolean =>
  /^\s*(?:(?:and|im|i['’]m) )?(?:(?:me|here|same) (?:too|also|here)|also here)\s*[.!]?\s*$/i.test(
    text,
  );

/** He told of the work there, and has neither finished nor gone. */
function worksThere({ timeline, status }: Job, who: string, at: string): boolean {
  const now = Date.parse(at);
  return (
    status !== "done" &&
    timeline.some(
      (row) =>
        row.who === who &&
        /^(?:reading|action|observation)$/.test(row.kind) &&
        Date.parse(row.at) <= now &&
        now - Date.parse(row.at) <= holdsForMs,
    )
  );
}

/** On site by his own word, and not gone since. */
function isThere({ visits }: Job, who: string, at: string): boolean {
  return visits.some(
    ({ person, kind, from, to }) =>
      person === who && kind === "site" && to === undefined && Date.parse(from) <= Date.parse(at),
  );
}
