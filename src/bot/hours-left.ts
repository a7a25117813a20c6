import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import { messagesAfter } from "../record/inbox.ts";
import type { Route } from "../record/route.ts";
import { lastStatus } from "./back-again.ts";
import { lastOf } from "./beside-colleague.ts";
import { hoursIn } from "./hours-in.ts";
import { gripsIn, type Memory } from "./memory.ts";
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
type Placed = Pick<Message, "text" | "person" | "at" | "role"> &
  Partial<Pick<Message, "id" | "platform" | "channel" | "thread">>;

/** The last that was said in the same place asked for the hours, and somebody else said it. */
function hoursAsked({ store }: Memory, message: Placed): boolean {
  const { platform, channel, thread, person } = message;
  if (platform === undefined || channel === undefined) return false;
  const from = new Date(Date.parse(message.at) - askedMs).toISOString();
  const place = { ...message, platform, channel, at: from, id: "", files: [] };
  const last = messagesAfter(store, place, askedMs)
    .map((row) => row.message)
    .findLast((one) => one.id !== message.id && one.thread === thread);
  return last !== undefined && last.person !== person && asks.test(last.text);
}

/** The hours that a message tells and nothing else, with their unit or as the answer to "hours?". */
function hoursTold(memory: Memory, message: Placed): Told | undefined {
  if (message.role !== "tech") return undefined;
  const hours = hoursIn(message.text);
  if (hours !== undefined) return { hours, asked: false };
  const bare = hoursIn(message.text, true);
  if (bare === undefined || !hoursAsked(memory, message)) return undefined;
  return { hours: bare, asked: true };
}

interface Told {
  readonly hours: number;
  readonly asked: boolean;
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
  const told = hoursTold(known.memory, message);
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
