import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import { messagesAfter } from "../record/inbox.ts";
import type { Route } from "../record/route.ts";
import { lastStatus } from "./back-again.ts";
import { lastOf } from "./beside-colleague.ts";
import { nothingRead } from "./filing.ts";
import { hoursIn, isForEach } from "./hours-in.ts";
import { allJobs, gripsIn, type Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

/** Hours told alone are of the job just left; later they may be the day's. Our choice, no source. */
const justLeftMs = 60 * 60_000;
function hasLeft(job: Job, { person, at }: Pick<Message, "person" | "at">): boolean {
  const status = lastStatus(job, person)?.status;
  if (status === undefined || status === "on_site" || status === "on_the_way") return false;
  const since = Date.parse(at) - Date.parse(job.status_at);
  return since >= 0 && since <= justLeftMs;
}

const asks =
  /\b(?:how (?:many|much) (?:hours|hrs|time)|how long|hours|hrs)\b[^.!]{0,30}\?|^\s*(?:\p{L}+[,:]? )?(?:hours|hrs)\s*[?.]?\s*$/iu;

/** An answer comes no later than this; our choice, no source. */
const askedMs = 10 * 60_000;

/** Where and by whom something was said, as far as it is known. */
export type Placed = Pick<Message, "text" | "person" | "at" | "role"> &
  Partial<Pick<Message, "id" | "platform" | "channel" | "thread">>;

/** The last that was said in the same place asked for the hours, and somebody else said it. */
function hoursAsked(memory: Memory, message: Placed): boolean {
  const last = lastBefore(memory, message);
  return last !== undefined && last.person !== message.person && asks.test(last.text);
}

/** What was written last in the same place, no longer ago than an answer takes. */
export function lastBefore({ store }: Memory, message: Placed): Message | undefined {
  const { platform, channel, thread } = message;
  if (platform === undefined || channel === undefined) return undefined;
  const from = new Date(Date.parse(message.at) - askedMs).toISOString();
  const place = { ...message, platform, channel, at: from, id: "", files: [] };
  return messagesAfter(store, place, askedMs)
    .map((row) => row.message)
    .findLast((one) => one.id !== message.id && one.thread === thread);
}

/** The hours that a message tells and nothing else, with their unit or as the answer to "hours?". */
function hoursTold(memory: Memory, message: Placed, job?: Job): Told | undefined {
  if (message.role !== "tech") return undefined;
  const hours = hoursIn(message.text);
  if (hours !== undefined) return { hours, asked: false };
  const named = job === undefined ? message.text : withoutNames(message.text, job);
  const there = named === message.text ? undefined : hoursIn(named);
  if (there !== undefined) return { hours: there, asked: true };
  const bare = hoursIn(message.text, true);
  if (bare === undefined || !hoursAsked(memory, message)) return undefined;
  return { hours: bare, asked: true };
}

interface Told {
  readonly hours: number;
  /** they were asked for, or the job is named beside them */
  readonly asked: boolean;
}

/** "4 hrs goslin", "hp-3 was 45 min": what is left beside the names of a job's unit and site. */
function withoutNames(text: string, { site, equipment }: Job): string {
  const tag = (equipment ?? "").match(/[a-z]+|\d+/gi)?.join("[\\s._#-]*") ?? "";
  const names = [
    ...(tag === "" ? [] : [tag]),
    ...(site ?? "").split(/[^\p{L}\p{N}]+/u).filter((word) => word.length > 2),
  ];
  if (names.length === 0) return text;
  const named = new RegExp(
    `(?:\\b(?:on|at|for|over at|in)\\s+)?(?:\\bthe\\s+)?(?<![\\p{L}\\p{N}])(?:${names.join("|")})(?![\\p{L}\\p{N}])(?:['’]s)?[,:]?`,
    "giu",
  );
  return text.replace(named, " ").replace(/\s+/g, " ").trim();
}

/** "3.5 hrs" of who has just left: of the job that he left. */
export function hoursAt(memory: Memory, message: Message): Route | undefined {
  const told = hoursTold(memory, message);
  if (told === undefined) return undefined;
  const job = lastOf(gripsIn(memory, message.channel, message.person), Date.parse(message.at));
  const known = job === undefined ? undefined : jobAt(memory, job);
  if (job === undefined || known === undefined) return undefined;
  if (!told.asked && !hasLeft(known, message)) return undefined;
  return { kind: "job", job, by: "hand" };
}

/** Hours alone behind a farewell are how long he was there, no reading of the machine. */
export function withHoursLeft(
  understood: Understood,
  message: Placed,
  known: { readonly memory: Memory; readonly job: Job },
): Understood {
  const told = hoursTold(known.memory, message, known.job);
  if (told === undefined || (!told.asked && !hasLeft(known.job, message))) return understood;
  const { hours } = told;
  if (understood.statements.some(({ kind }) => kind === "labor")) return understood;
  const from = message.text.search(/\S/);
  const said = message.text.trim();
  const span: Span = [from, from + said.length];
  const labor: Statement = { kind: "labor", hours, said, spans: [span], rule: "<hours> alone" };
  return {
    readings: [],
    statements: [labor],
    unread: [],
    unread_spans: [],
    ask: [],
    skipped: [],
  };
}

/** "Half hr each", "20 min on each": of the other jobs of that site that he has just left as well. */
export function hoursOfEach(
  memory: Memory,
  message: Message,
  told: { readonly understood: Understood; readonly job: number },
): readonly { readonly job: number; readonly understood: Understood }[] {
  const { understood, job } = told;
  const labor = understood.statements.filter(({ kind }) => kind === "labor");
  const here = jobAt(memory, job);
  if (labor.length !== 1 || !isForEach(message.text) || here === undefined) return [];
  return allJobs(memory)
    .filter(
      (other) =>
        other.job !== job &&
        other.site !== null &&
        other.site === here.site &&
        other.people.includes(message.person) &&
        hasLeft(other, message),
    )
    .map((other) => ({ job: other.job, understood: { ...nothingRead, statements: labor } }));
}

/** "1.5 hr each at the school", where two jobs are: each that he worked on; else the one that he left last. */
export function hoursAmong(
  memory: Memory,
  message: Message,
  candidates: readonly number[],
): Route | undefined {
  if (message.role !== "tech") return undefined;
  const worked = candidates.filter((job) => {
    const known = jobAt(memory, job);
    return (
      known?.people.includes(message.person) === true &&
      hoursTold(memory, message, known) !== undefined
    );
  });
  if (worked.length === 0) return undefined;
  const last = lastOf(gripsIn(memory, message.channel, message.person), Date.parse(message.at));
  const chosen = worked.find((job) => job === last) ?? worked.at(-1);
  const sure = isForEach(message.text) || worked.length === 1;
  return chosen === undefined || !sure ? undefined : { kind: "job", job: chosen, by: "name" };
}
