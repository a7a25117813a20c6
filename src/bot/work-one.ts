import type { Job, Judgement, Message, ReplyInput, Understood } from "../model.ts";
import { beginsTest } from "../record/clock-kinds.ts";
import type { Draft } from "../record/entries-table.ts";
import { appendEntry, jobsFiling } from "../record/entries-table.ts";
import {
  findMessage,
  type InboxRow,
  isOvertaken,
  markMessage,
  messagesIn,
  wakeChanges,
  wasChanged,
} from "../record/inbox.ts";
import { answersTo, findOut, type OutboxRow, type Outgoing, putOut } from "../record/outbox.ts";
import { clocksOnText } from "../show/clock-words.ts";
import { dangerGiven, dangerLine } from "../show/danger.ts";
import { replyTo } from "../show/reply.ts";
import { adviceIn } from "../show/reply-parts.ts";
import { verdictChanged } from "../show/touched.ts";
import { asides } from "./asides/list.ts";
import { isMuted } from "./asides/quiet.ts";
import { alertRow, boardRow } from "./board.ts";
import { cautionedOf, note } from "./cautioned.ts";
import type { Bot } from "./desk.ts";
import { planDelete, planEdit } from "./file-change.ts";
import { type Plan, planNote } from "./file-note.ts";
import { heldBefore, isHeld } from "./held.ts";
import { judgeJob, lastJudgement } from "./judge-job.ts";
import { keptFile } from "./kept-file.ts";
import { learn, zoneFor } from "./memory.ts";
import { mendingRows } from "./mend.ts";
import { planMove } from "./move.ts";
import { putAway } from "./put-away.ts";
import { readNote } from "./read-note.ts";
import { comingsOf, isNewest, type Release, releaseDrafts, releasedBy } from "./release.ts";
import { concerned, revise } from "./replan.ts";
import { replyInput } from "./reply-input.ts";
import { jobAt } from "./rest.ts";

/** What became of one message, every stage's result. */
export interface WorkResult {
  readonly message: Message;
  readonly job: number | null;
  readonly understood?: Understood;
  readonly judgement?: Judgement;
  readonly replies: readonly OutboxRow[];
  /** why it was parked */
  readonly error?: string;
}

/** Works on one message, inside its transaction: route, read, append, fold, judge, answer, mark. */
export function workOne(bot: Bot, message: Message, nowMs?: number): WorkResult {
  const { store, memory } = bot;
  const heard = memory.heard.get(message.person) ?? 0;
  memory.heard.set(message.person, Math.max(heard, Date.parse(message.at)));
  const plan = planFor(bot, message);
  if (plan.opened) putAway(memory, Date.parse(message.at));
  const was = jobOf(bot, plan);
  const before = was === undefined ? undefined : lastJudgement(memory, was);
  append(bot, plan.drafts);
  if (plan.job !== undefined) release(bot, { job: plan.job, rows: plan.released ?? [] });
  if (plan.moved !== undefined) {
    markMessage(store, plan.moved.message, {
      state: "done",
      ...(plan.job === undefined ? {} : { job: plan.job }),
    });
  }
  mark(bot, message, plan);
  reviseLater(bot, message, plan);
  const job = jobOf(bot, plan);
  const changed = plan.drafts.length + (plan.released?.length ?? 0) > 0;
  const now = job === undefined ? undefined : changed ? judgeJob(memory, job, message.at) : before;
  const cautioned = cautionedOf(memory, message, plan.job);
  const held =
    plan.job === undefined || bot.answersTogether !== true
      ? []
      : heldBefore(bot, message, { job: plan.job, nowMs });
  const worked = { message, plan, was, before, now, cautioned, held };
  const input = replyInput(memory, worked);
  const waits = isHeld(bot, message, plan, nowMs) && dangerLine(input) === "";
  say(bot, { message, plan, was, waits }, input);
  return {
    message,
    job: plan.job ?? null,
    understood: plan.understood,
    ...(now === undefined ? {} : { judgement: now }),
    replies: answersTo(store, message.platform, message.id),
  };
}

const jobOf = (bot: Bot, plan: Plan): Job | undefined =>
  plan.job === undefined ? undefined : jobAt(bot.memory, plan.job);

function append(bot: Bot, drafts: readonly Draft[]): void {
  for (const draft of drafts) learn(bot.memory, [appendEntry(bot.store, draft, bot.salt())]);
}

function release(bot: Bot, released: Release): void {
  for (const row of released.rows) {
    append(bot, releaseDrafts(bot.memory, row, released));
    markMessage(bot.store, row.message, { state: "done", job: released.job });
  }
  // what changes them and was not said yet when the answer came
  for (const { message } of released.rows) wakeChanges(bot.store, message);
}

function mark(bot: Bot, message: Message, plan: Plan): void {
  const waits = plan.problem !== undefined || plan.early === true;
  markMessage(bot.store, message, { state: waits ? "waiting" : "done", job: plan.job ?? null });
  const original = message.edits ?? message.deletes;
  if (original === undefined) {
    wakeChanges(bot.store, message);
    return;
  }
  // what was rewritten elsewhere or removed waits for nobody any more
  const first = findMessage(bot.store, message.platform, original);
  if (first?.state === "waiting" && !waits)
    markMessage(bot.store, first.message, { state: "done" });
}

/** A late message, an edit or a new job may tell better where later or waiting ones belong. */
function reviseLater(bot: Bot, message: Message, plan: Plan): void {
  const { store, memory } = bot;
  const original = message.edits ?? message.deletes;
  const first =
    original === undefined ? message : findMessage(store, message.platform, original)?.message;
  if (first === undefined) return;
  const jobs = plan.drafts.map(({ job }) => job);
  const later = concerned(store, first, jobs);
  const waiting = plan.opened
    ? messagesIn(store, "waiting").filter((row) => row.message.channel === message.channel)
    : [];
  const rows = [...waiting.filter(({ seq }) => !later.some((row) => row.seq === seq)), ...later];
  for (const row of rows) {
    if (row.message.edits !== undefined || row.message.deletes !== undefined) continue;
    if (row.message.id === message.id || isGone(bot, row)) continue;
    const revision = revise(memory, row);
    if (revision === undefined) continue;
    append(bot, revision.drafts);
    markMessage(store, row.message, { state: "done", job: revision.job });
    wakeChanges(store, row.message);
  }
}

/** Filed nowhere, and what its author made of it later was worked on. */
function isGone({ store }: Bot, row: InboxRow): boolean {
  return jobsFiling(store, row.message.id).length === 0 && wasChanged(store, row.message);
}

function planFor(bot: Bot, message: Message): Plan {
  const { store, memory } = bot;
  if (message.deletes !== undefined) {
    return planDelete(message, { store, original: message.deletes });
  }
  if (message.edits !== undefined) {
    return planEdit(memory, message, { store, original: message.edits });
  }
  const moved = planMove(bot, message);
  if (moved !== undefined) return moved;
  for (const aside of asides) {
    const said = aside(bot, message);
    if (said !== undefined) return said;
  }
  const plan = planNote(memory, message);
  const moves = plan.drafts.some(
    ({ facts }) =>
      facts.kind === "note" && facts.statements.some((statement) => statement.kind === "status"),
  );
  // who asks of one job does not say where something else belongs
  const asks = plan.understood.statements.some(({ kind }) => kind === "question");
  const answers = moves ? comingsOf : releasedBy;
  const found = answers(bot, message, plan.job);
  if (asks || found === undefined) return plan;
  const { job, rows } = found;
  if (plan.job === job) return { ...plan, released: rows };
  // a bare number is no reading: it names the job
  const understood = {
    ...readNote(memory, message, job),
    readings: [],
    unread: [],
    unread_spans: [],
    // what was unclear in it is asked now that its job is known
    ask: rows
      .filter((row) => isNewest(row, rows))
      .flatMap((row) => readNote(memory, row.message, job).ask)
      .slice(0, 1),
  };
  return { understood, job, opened: false, drafts: [], released: rows };
}

/** Puts the answer, what it mends, the alert and the board in the outbox. */
function say(
  bot: Bot,
  worked: {
    readonly message: Message;
    readonly plan: Plan;
    readonly was: Job | undefined;
    /** its answer is left to a later message */
    readonly waits: boolean;
  },
  input: ReplyInput,
): void {
  const { store, memory } = bot;
  const { message, plan, was } = worked;
  const text = worked.waits ? undefined : (plan.says ?? spokenText(bot, worked, input));
  if (plan.private !== undefined) putOut(store, privateRow(message, plan.private));
  const stands = standsFor(bot, message, input);
  // the answer to an older edit would stand over what holds now
  const speaks = text !== undefined && !isOvertaken(store, message);
  if (speaks) answer(bot, worked, { text, caution: dangerGiven(input), edits: stands });
  const answered = speaks && stands !== undefined ? { answered: stands } : {};
  for (const row of mendingRows(store, { message, input, was, ...answered })) putOut(store, row);
  const alert = alertRow(memory, message, { was, job: jobOf(bot, plan) });
  if (alert !== undefined) putOut(store, alert);
  const board = bot.boardElsewhere === true ? undefined : boardRow(memory, store, message.at);
  if (board !== undefined) putOut(store, board);
}

/** The answer; where quiet was asked for, danger and what was asked alone. */
function spokenText(
  bot: Bot,
  { message, plan }: { readonly message: Message; readonly plan: Plan },
  input: ReplyInput,
): string | undefined {
  const asks = input.understood.statements.some(({ kind }) => kind === "question");
  const muted = !asks && isMuted(bot.memory, message, input.job);
  if (!muted) return replyTo(input) ?? clocksOn(bot, message, plan);
  const danger = dangerLine(input);
  return danger === "" ? undefined : danger;
}

function privateRow(
  { platform, id }: Message,
  { channel, text }: NonNullable<Plan["private"]>,
): Outgoing {
  return { id: `private:${platform}:${id}`, platform, channel, kind: "alert", text, files: [] };
}

/** A message that begins a timed test and says nothing else is answered with when it will be asked. */
function clocksOn(bot: Bot, message: Message, plan: Plan): string | undefined {
  const job = jobOf(bot, plan);
  if (job === undefined || !beginsTest(message.text)) return undefined;
  const started = (bot.memory.clocks.get(job.job) ?? []).filter(
    ({ since }) => since === message.at,
  );
  const shown = { time_zone: zoneFor(bot.memory, job) };
  return started.length === 0 ? undefined : clocksOnText(started, job, shown);
}

/**
 * The reply that the answer to an edit or a deletion takes the place of: a chat tells nobody of an
 * edit, so that a verdict that is another now gets a post of its own.
 */
function standsFor(bot: Bot, message: Message, input: ReplyInput): string | undefined {
  const changed = message.edits ?? message.deletes;
  if (changed === undefined || verdictChanged(input)) return undefined;
  const earlier = findOut(bot.store, `reply:${message.platform}:${changed}:0`);
  return earlier === undefined ? undefined : (earlier.edits ?? earlier.id);
}

/** Puts the reply in the outbox. */
function answer(
  bot: Bot,
  worked: { readonly message: Message; readonly plan: Plan },
  said: {
    readonly text: string;
    readonly caution: string | undefined;
    /** the reply that it stands for */
    readonly edits: string | undefined;
  },
): void {
  const { message, plan } = worked;
  const detail = {
    job: plan.job,
    person: message.person,
    day: message.at.slice(0, 10),
    caution: said.caution,
    next: adviceIn(said.text),
  };
  note(bot.memory, detail);
  putOut(bot.store, {
    id: `reply:${message.platform}:${message.id}:0`,
    platform: message.platform,
    channel: message.channel,
    ...(message.thread === undefined ? {} : { thread: message.thread }),
    kind: "reply",
    answers: message.id,
    text: said.text,
    files: (plan.pictures ?? []).map((picture) => keptFile(bot, picture)),
    ...(said.edits === undefined ? {} : { edits: said.edits }),
    detail: JSON.stringify(detail),
  });
}
