import type { Job, JobPart, Message, Statement } from "../../model.ts";
import { isSamePart, waitedFor } from "../../record/parts.ts";
import type { Route } from "../../record/route.ts";
import { arrivedText, orderedText, whichPart } from "../../show/arrived.ts";
import { shortPartNames } from "../../vocabulary.ts";
import { draftFor, noteFacts, nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import { allJobs, type Memory } from "../memory.ts";
import { readNote } from "../read-note.ts";
import type { Aside } from "./aside.ts";

const came =
  /\b(?:arrived|came in|come in|got (?:here|in)|landed|delivered|(?:is|are|'s)\s+(?:on the (?:shelf|dock)|at the (?:shop|counter|branch)|in stock|ready for pick ?up)|on the shelf|showed up)\b/i;
/** A technician who says "the valve is in" has fitted it. */
const isHere = /\b(?:is|are|'s)\s+(?:in|here)\b/i;
const notYet =
  /\?|\b(?:not|n't|never|when|if|once|until|till|tomorrow|will|would|should|monday|tuesday|wednesday|thursday|friday|eta|due)\b/i;

/** What the office said became of a part. */
type Word = "arrived" | "ordered";
const orders = /\b(?:ordered|on order|placed the order)\b/i;

function wordIn({ text, role }: Message): Word | undefined {
  if (came.test(text) || (role !== "tech" && isHere.test(text))) return "arrived";
  return role !== "tech" && orders.test(text) ? "ordered" : undefined;
}

const day =
  "(?:mon|tues|wednes|thurs|fri|satur|sun)day|mon|tues?|wed|thur?s?|fri|tomorrow|next week";
/** What is on its way: "2 days out", "monday now". */
const comesLater = new RegExp(
  `\\b(?:ordered|on order|back ?ordered|eta|due|\\d+ (?:days?|weeks?)(?: out)?|${day})\\b`,
  "i",
);

/** A report of several things: "compressor ordered, 2 days. The board is on the shelf", "txv is 2 days out, drier is in". */
const sentences = (text: string): readonly string[] =>
  text.split(/[.;!\n]+\s+|,\s+/i).filter((one) => one.trim() !== "");

const isLater = (one: string): boolean => comesLater.test(one) && !came.test(one);

/** Do the sentences say different things of what was asked for? */
function apart(text: string): boolean {
  const all = sentences(text);
  return all.some(isLater) && all.some((one) => came.test(one) && !orders.test(one));
}

/** What became of one part: what the sentence says that names it, or the next that says anything; else the message. */
function wordOf(message: Message, part: JobPart): Word | undefined {
  const all = sentences(message.text);
  const own = all.findIndex((text) => isNumberIn(text, part) || isNameIn(text, part));
  for (const text of own < 0 ? [] : all.slice(own)) {
    const word = apart(message.text) && isLater(text) ? "ordered" : wordIn({ ...message, text });
    if (word !== undefined) return word;
  }
  return wordIn(message);
}

/** What the same message says is ordered, as the reader takes it. */
function ordersBeside(
  memory: Memory,
  message: Message,
  { job, chosen }: { readonly job: Job; readonly chosen: readonly Match[] },
): readonly Statement[] {
  if (!apart(message.text)) return [];
  return readNote(memory, message, job.job).statements.filter(
    (one) =>
      one.kind === "part" &&
      one.state === "ordered" &&
      !chosen.some(({ part }) => isSamePart(part, one)),
  );
}

interface Match {
  readonly job: Job;
  readonly part: JobPart;
}

/** "The drive is in": every job that waited for it hears so; what waits for nothing else is ready. */
export const partArrived: Aside = ({ memory }, message) => {
  const { text } = message;
  const word = wordIn(message);
  const told = apart(text) ? sentences(text).filter((one) => came.test(one)) : [text];
  if (word === undefined || told.some((one) => notYet.test(one))) return undefined;
  // an order said where its job is clear is read like any other word of that job
  if (word === "ordered" && locate(memory, message).kind === "job") return undefined;
  const found = matches(memory, message);
  if (found.length === 0) return undefined;
  const numbers = new Set(found.flatMap(({ part }) => part.number ?? []));
  const named = found.filter(({ part }) => isNumberIn(text, part));
  const all = named.length > 0 && !apart(text) ? named : found;
  const chosen = all.filter(({ part }) => wordOf(message, part) === word);
  if (named.length === 0 && numbers.size > 1 && !allParts.test(text)) {
    return { understood: nothingRead, opened: false, drafts: [], says: whichPart(found) };
  }
  if (chosen.length === 0) return undefined;
  const drafts = chosen.map(({ job, part }, index) => {
    const beside = index === 0 ? ordersBeside(memory, message, { job, chosen }) : [];
    const statements = [moved(part, word, message), ...beside];
    const understood = { ...nothingRead, statements };
    return draftFor(message, job.job, noteFacts(memory, message, { understood, job: job.job }));
  });
  const left = chosen.map(({ job, part }) => ({
    job,
    part,
    waits: waitedFor(job.parts).filter((other) => !chosen.some((one) => one.part === other)),
  }));
  const [first] = chosen;
  return {
    understood: nothingRead,
    ...(first === undefined ? {} : { job: first.job.job }),
    opened: false,
    drafts,
    says: word === "arrived" ? arrivedText(left) : orderedText(left),
  };
};

/** The parts that the message may mean: of the job that it names or stands in, else of all. */
function matches(memory: Memory, message: Message): readonly Match[] {
  const route = locate(memory, message);
  const of = (jobs: readonly Job[]): readonly Match[] =>
    jobs.flatMap((job) =>
      waitedFor(job.parts)
        .filter(
          (part) =>
            isAllOfJob(message.text, route) ||
            isNumberIn(message.text, part) ||
            isNameIn(message.text, part),
        )
        .map((part) => ({ job, part })),
    );
  const all = allJobs(memory);
  // where the job is meant, or the number is said, the part of a visit that is over counts as well
  if (route.kind === "job" && route.by !== "hand") {
    return of(all.filter(({ job }) => job === route.job));
  }
  const open = of(all.filter(({ status }) => status !== "done"));
  return open.length > 0 ? open : of(all).filter(({ part }) => isNumberIn(message.text, part));
}

const isAllOfJob = (text: string, route: Route): boolean =>
  route.kind === "job" && allParts.test(text);

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");

/** "Both parts are in", "all the parts for the school came": whatever is waited for there. */
const allParts = /\b(?:both|all|the|your|our)(?: (?:of )?the)? parts\b/i;

function isNumberIn(text: string, { number }: JobPart): boolean {
  return number !== undefined && plain(text).includes(plain(number));
}

/** The thing itself is the last word of a part's name. */
function isNameIn(text: string, { part, number }: JobPart): boolean {
  const name = number === undefined ? part : part.replace(number, "");
  const thing = name.toLowerCase().trim().split(/\s+/).at(-1)?.replace(/s$/, "") ?? "";
  if (thing.length < 3) return false;
  const words = [thing, ...shortPartNames(name.toLowerCase().trim())];
  const either = words.map((word) => word.replace(/[^a-z0-9-]/g, ".")).join("|");
  return new RegExp(`\\b(?:${either})s?\\b`, "i").test(text);
}

function moved(part: JobPart, word: Word, message: Message): Statement {
  return {
    kind: "part",
    part: part.part,
    ...(part.number === undefined ? {} : { number: part.number }),
    // what came stays what it was said to be, and is here
    state: word === "arrived" ? part.state : "ordered",
    ...(word === "arrived" ? { arrived: true } : {}),
    said: message.text,
    spans: [[0, message.text.length]],
    rule: `<part> ${word}`,
  };
}
