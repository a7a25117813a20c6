import { roomsTold } from "../judge/checks/places.ts";
import type {
  Job,
  JobReading,
  JobStatement,
  Judgement,
  Message,
  PastValues,
  ReplyInput,
} from "../model.ts";
import { caseOf, earlierJobs, equipmentOf, siteOf } from "../record/case.ts";
import { isDirect } from "../record/direct.ts";
import { isCurrent } from "../record/readings.ts";
import { openRuleOuts } from "../record/rule-outs.ts";
import { anotherUnit } from "../record/strange-unit.ts";
import type { QuestionName } from "../vocabulary.ts";
import { boardKnown } from "./board.ts";
import { fillOf } from "./cylinder-fill.ts";
import type { Plan } from "./file-note.ts";
import { noJudgement } from "./judge-job.ts";
import { lawLines } from "./law-lines.ts";
import { answersJob } from "./locate.ts";
import { allJobs, type Memory } from "./memory.ts";
import { nextAtHand } from "./next-at-hand.ts";
import { beforeOf, sisterOf } from "./past-beside.ts";
import { baselineOf, driftOf } from "./past-values.ts";
import { namesOf } from "./people.ts";
import { waitingOf } from "./release.ts";
import { repeatsOf } from "./repeats.ts";
import { jobAt, jobsAround, threadJob } from "./rest.ts";
import { routables } from "./world.ts";

export interface Worked {
  readonly message: Message;
  readonly plan: Plan;
  /** the job as it was before this message */
  readonly was: Job | undefined;
  readonly before: Judgement | undefined;
  readonly now: Judgement | undefined;
  readonly cautioned: readonly string[];
  /** messages that left their answer to this one */
  readonly held: readonly string[];
}

const asks = ({ understood }: Plan, question: QuestionName): boolean =>
  understood.statements.some((one) => one.kind === "question" && one.question === question);

function roomsOf(memory: Memory): NonNullable<ReplyInput["rooms_told"]> {
  return Object.fromEntries(
    allJobs(memory).map((job) => [
      job.job,
      roomsTold(caseOf(job, memory.registry, jobsAround(memory, job), job.status_at)),
    ]),
  );
}

const equipmentFor = (memory: Memory, job: Job | undefined): ReplyInput["equipment"] =>
  job === undefined ? {} : equipmentOf(job, memory.registry);

/** Gathers what the reply to a message is made from. */
export function replyInput(memory: Memory, worked: Worked): ReplyInput {
  const { message, plan, was } = worked;
  const job = plan.job === undefined ? undefined : jobAt(memory, plan.job);
  const earlier = job === undefined ? [] : earlierJobs(job, jobsAround(memory, job));
  const { thread, channel } = message;
  const repeats = job === undefined ? undefined : repeatsOf(memory, job);
  const advised = job === undefined ? undefined : memory.advised.get(job.job);
  const inThread =
    (thread !== undefined && threadJob(memory, channel, thread) !== undefined) ||
    answersJob(memory, message) !== undefined;
  return {
    message,
    understood: plan.understood,
    ...(job === undefined ? {} : { job }),
    readings:
      job?.readings.filter(({ message: id }) => id === message.id || worked.held.includes(id)) ??
      [],
    replaced: replacedIn(was, job),
    withdrawn: withdrawnIn(was, job),
    confirmed: [
      ...confirmedIn(was, job),
      ...(job?.readings ?? []).filter(({ id }) => plan.settled?.includes(id) === true),
    ],
    released: [
      ...[...(plan.released ?? []), ...(plan.moved === undefined ? [] : [plan.moved])].flatMap(
        ({ message: { id } }) => (job === undefined ? [] : standingOfMessage(job, id)),
      ),
      ...(message.deletes === undefined ? [] : backIn(was, job)),
    ],
    released_statements: (plan.released ?? []).flatMap(({ message: { id } }) =>
      (job?.statements ?? []).flatMap(({ message: from, statement }) =>
        from === id ? [statement] : [],
      ),
    ),
    ...nextAtHand(worked.now ?? noJudgement, job),
    before: worked.before ?? noJudgement,
    equipment: equipmentFor(memory, job),
    site: job === undefined ? {} : siteOf(job, memory.registry),
    ...(asks(plan, "rooms") ? { rooms_told: roomsOf(memory) } : {}),
    ...(asks(plan, "law")
      ? { law: lawLines(equipmentFor(memory, job), memory.settings.units) }
      : {}),
    earlier,
    // few answers look through all of them
    get jobs() {
      return allJobs(memory);
    },
    get box_limits() {
      const { boxLimitOf } = boardKnown(memory);
      return Object.fromEntries(allJobs(memory).map((one) => [one.job, boxLimitOf?.(one)]));
    },
    ...(repeats === undefined ? {} : { repeats }),
    opened: plan.opened,
    late: isLate(message, was),
    addressed:
      inThread || message.to_bot === true || isDirect(channel) || /\bbot\b/i.test(message.text),
    ...(plan.problem === undefined
      ? offeredOf(memory, plan)
      : {
          routing: {
            candidates: candidatesOf(memory, message, plan.problem),
            again: waitsBefore(memory, message),
            ...strangeTo(message.text, candidatesOf(memory, message, plan.problem)),
          },
        }),
    cautioned: worked.cautioned,
    ...(job === undefined ? {} : { past: pastOf(job, earlier, message.id) }),
    cylinder: fillOf(memory, job, message.id),
    ...(advised === undefined ? {} : { advised }),
    rule_outs: job === undefined ? [] : ruleOutsOf(plan, job),
    codes: memory.registry.codes,
    units: memory.settings.units,
    time_zone: memory.settings.time_zone ?? offsetOf(message.at),
    names: namesOf(memory),
  };
}

function ruleOutsOf({ understood }: Plan, job: Job): readonly string[] {
  const named = understood.statements.flatMap((one) =>
    one.kind === "part" && one.state === "needed" && one.decided === undefined
      ? openRuleOuts(job, one.part)
      : [],
  );
  return [...new Set(named)];
}

function pastOf(job: Job, earlier: readonly Job[], message: string): PastValues {
  return {
    baseline: baselineOf(job, earlier, message),
    drift: driftOf(job, earlier, message),
    before: beforeOf(job, earlier, message),
    sister: sisterOf(job, message),
  };
}

/** Something else of his waits there already; what a message edits is itself. */
function waitsBefore({ store }: Memory, message: Message): boolean {
  const root = message.edits ?? message.id;
  return waitingOf(store, message).some(({ message: { id, edits } }) => (edits ?? id) !== root);
}

function candidatesOf(
  memory: Memory,
  message: Message,
  problem: NonNullable<Plan["problem"]>,
): readonly Job[] {
  if (problem.kind === "none") return openHere(memory, message);
  return problem.candidates.flatMap((job) => jobAt(memory, job) ?? []);
}

/** A unit that the message names and that is not the one job's that it could be for. */
function strangeTo(text: string, jobs: readonly Job[]): { readonly unit?: string } {
  const [only, ...others] = jobs;
  if (others.length > 0 || only?.equipment === null || only === undefined) return {};
  const unit = anotherUnit(text, only.equipment);
  return unit === undefined ? {} : { unit };
}

/** A question of a site with several jobs is about one of those. */
function offeredOf(memory: Memory, { offered }: Plan): Pick<ReplyInput, "routing"> {
  if (offered === undefined) return {};
  return {
    routing: { candidates: offered.flatMap((job) => jobAt(memory, job) ?? []), again: false },
  };
}

/** So few open jobs of the channel that naming them all helps. */
const mostNamed = 3;

/** Where nothing tells the job: the channel's open ones that nobody else was sent to. */
function openHere(memory: Memory, message: Message): readonly Job[] {
  const open = allJobs(memory).filter(
    (job) =>
      job.status !== "done" &&
      (job.channel === message.channel || isDirect(message.channel)) &&
      Date.parse(job.opened) <= Date.parse(message.at) &&
      // the office speaks of anybody's
      (message.role !== "tech" ||
        job.assigned === undefined ||
        job.assigned === message.person ||
        job.second === message.person),
  );
  // "Rory after the deli": the deli's comes first
  const queued = new Set(routables(memory, open).flatMap((one) => (one.queued ? [one.job] : [])));
  const first = open.filter(({ job, status }) => !queued.has(job) && status === "open");
  if (queued.size > 0 && first.length === 1 && open.length === queued.size + 1) return first;
  return open.length <= mostNamed ? open : [];
}

/** Readings that stood before and don't now. */
function replacedIn(was: Job | undefined, job: Job | undefined): ReplyInput["replaced"] {
  if (was === undefined || job === undefined) return [];
  const now = new Map(job.readings.map((reading) => [reading.id, reading]));
  return was.readings.flatMap((old) => {
    const after = now.get(old.id);
    if (!isCurrent(old) || after === undefined || isCurrent(after)) return [];
    const by = after.replaced_by === undefined ? undefined : now.get(after.replaced_by);
    return [by === undefined ? { old } : { old, by }];
  });
}

function withdrawnIn(was: Job | undefined, job: Job | undefined): readonly JobStatement[] {
  if (was === undefined || job === undefined) return [];
  const key = ({ message, statement }: JobStatement): string =>
    `${message} ${statement.kind} ${JSON.stringify(statement.spans)}`;
  const stands = (line: JobStatement): boolean => line.undone !== true && line.deleted !== true;
  const now = new Set(job.statements.filter(stands).map(key));
  return was.statements.filter((line) => stands(line) && !now.has(key(line)));
}

/** Doubtful before, and settled now. */
function confirmedIn(was: Job | undefined, job: Job | undefined): readonly JobReading[] {
  const doubted = new Set(
    was?.readings.filter((old) => old.doubtful === true && isCurrent(old)).map(({ id }) => id),
  );
  return (job?.readings ?? []).filter(
    (reading) => doubted.has(reading.id) && reading.doubtful !== true && isCurrent(reading),
  );
}

/** Out of the record, or settled, before: what a removal of a removal, or of a "yes", brings back. */
function backIn(was: Job | undefined, job: Job | undefined): readonly JobReading[] {
  const before = new Map(was?.readings.map((old) => [old.id, old]));
  return (job?.readings ?? []).filter((reading) => {
    const old = before.get(reading.id);
    if (old === undefined || !isCurrent(reading)) return false;
    return !isCurrent(old) || (reading.doubtful === true && old.doubtful !== true);
  });
}

function isLate(message: Message, was: Job | undefined): boolean {
  const last = was?.timeline.at(-1);
  return last !== undefined && Date.parse(message.at) < Date.parse(last.at);
}

/** "-05:00" of an ISO time. */
export function offsetOf(at: string): string {
  const offset = /(?:Z|[+-]\d{2}:\d{2})$/.exec(at)?.[0] ?? "+00:00";
  return offset === "Z" ? "+00:00" : offset;
}

/** Ids of readings that a message left standing. */
export function standingOfMessage(job: Job, message: string): readonly JobReading[] {
  return job.readings.filter((reading) => reading.message === message && isCurrent(reading));
}
