import type { FileOut, Message, Statement, Understood } from "../model.ts";
import { withoutHoursOnUnits } from "../read/rules/hours-on-units.ts";
import { beginsTest } from "../record/clock-kinds.ts";
import { type Draft, lastJob } from "../record/entries-table.ts";
import type { InboxRow } from "../record/inbox.ts";
import { openingFrom, opensJob } from "../record/opening.ts";
import type { Route } from "../record/route.ts";
import { askedOfOther } from "./again-or-other.ts";
import { arrivedAt } from "./arrived-at.ts";
import { isBareFigures, isUnreadReport } from "./bare-figures.ts";
import { besideColleague, besidePartner } from "./beside-colleague.ts";
import { answerFacts } from "./confirm.ts";
import { askedOfConflict } from "./conflict.ts";
import { askedOfCylinder } from "./cylinder.ts";
import { decisionFor } from "./decision.ts";
import { draftFor, isWork, noteFacts, nothingRead } from "./filing.ts";
import { goesOver } from "./goes-over.ts";
import { hoursAmong, hoursAt, hoursOfEach } from "./hours-left.ts";
import { lastJobOf } from "./last-job.ts";
import { locate, locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { orderFor } from "./order-for.ts";
import { askedOfGas } from "./other-gas.ts";
import { ownTrace } from "./own-trace.ts";
import { planList } from "./plan-list.ts";
import { isPromise } from "./promise.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";
import { answeredWeight, askedOfWeight } from "./second-weight.ts";
import { planSending } from "./sends.ts";
import { siteLeft } from "./site-left.ts";
import { reachOf, splitByJob } from "./split-by-job.ts";
import { spokenBy } from "./spoken-by.ts";
import { isDeskWeather, isOfficeTalk, isTalkTo, isWeather } from "./talk-to.ts";
import { planTurning } from "./turns-to.ts";
import { figureUndone, undoFacts, undoneAt } from "./undo.ts";
import { undoUndone } from "./undo-undone.ts";
import { unlessSent } from "./unless-sent.ts";
import { worldOf } from "./world.ts";

/** What a message leads to. */
export interface Plan {
  readonly understood: Understood;
  /** the job it belongs to */
  readonly job?: number;
  readonly opened: boolean;
  readonly drafts: readonly Draft[];
  /** it has something to file and nowhere to file it, or two places */
  readonly problem?: Extract<Route, { kind: "ask" | "none" }>;
  /** messages that waited for this answer and are filed with it */
  readonly released?: readonly InboxRow[];
  /** a change of a message that has not come yet */
  readonly early?: true;
  /** ids of readings that an answer settled */
  readonly settled?: readonly string[];
  /** the message that was moved to another job */
  readonly moved?: InboxRow;
  /** the whole answer, where the message was no report of the machine */
  readonly says?: string;
  /** files that go out with it */
  readonly pictures?: readonly FileOut[];
  /** for one person alone */
  readonly private?: { readonly channel: string; readonly text: string };
  /** jobs that a question may be about */
  readonly offered?: readonly number[];
}

/** Plans what a new message adds, and to which job. */
export function planNote(memory: Memory, sent: Message): Plan {
  const message = spokenBy(memory, sent);
  const list = planList(memory, message);
  if (list !== undefined) return list;
  const first = opensJob(message.text) ? readNote(memory, message, undefined) : undefined;
  if (first !== undefined) return planOpening(memory, message, first);
  const sending = planSending(memory, message);
  if (sending !== undefined) return sending;
  const turned = planTurning(memory, message);
  if (turned !== undefined) return turned;
  // who holds the phone stands where its owner stands
  const place = locate(memory, { ...sent, text: withoutHoursOnUnits(sent.text) });
  const byThread = place.kind === "job" && place.by !== "hand";
  const located = (byThread ? undefined : besideColleague(memory, sent)) ?? place;
  const heard = readNote(memory, message, located.kind === "job" ? located.job : undefined);
  const arrived = isFree(memory, located) ? arrivedAt(memory, sent, heard) : undefined;
  const decided = located.kind === "none" ? decisionFor(memory, sent) : undefined;
  const ordered = located.kind === "none" ? orderFor(memory, sent, heard) : undefined;
  const left = located.kind === "none" ? ownTrace(memory, sent, heard) : undefined;
  const asked = located.kind === "none" ? lastJobOf(memory, sent, heard) : undefined;
  const hours =
    located.kind === "none"
      ? hoursAt(memory, message)
      : located.kind === "ask"
        ? hoursAmong(memory, message, located.candidates)
        : undefined;
  const undone = undoneAt(memory, message, { understood: heard, located });
  const partner = located.kind === "none" ? besidePartner(memory, message, heard) : undefined;
  const taken =
    undone ?? arrived ?? decided ?? ordered ?? left ?? asked ?? hours ?? partner ?? located;
  const found = unlessSent(memory, message, { understood: heard, place: taken });
  const again = found === located || found.kind !== "job";
  const understood = again ? heard : readNote(memory, message, found.job);
  if (understood.statements.some(({ kind }) => kind === "open_job")) {
    return planOpening(memory, message, understood);
  }
  if (found.kind !== "job") {
    // figures and nothing else are meant for a job, whatever they are
    const bare = message.role === "tech" && isBareFigures(message.text);
    const talk =
      isTalkTo(memory, message, understood) ||
      isOfficeTalk(message, understood) ||
      isWeather(understood);
    const files = bare || decided !== undefined || (isWork(understood, message) && !talk);
    const asks = understood.statements.some(({ kind }) => kind === "question");
    const offered = asks && found.kind === "ask" ? { offered: found.candidates } : {};
    if (isDeskWeather(message, understood))
      return { understood: nothingRead, opened: false, drafts: [] };
    return {
      understood,
      opened: false,
      drafts: [],
      ...(files ? { problem: found } : {}),
      ...offered,
    };
  }
  if (isPromise(message.text, understood)) {
    return { understood: nothingRead, job: found.job, opened: false, drafts: [] };
  }
  const going = planGoing(memory, message, understood);
  if (going !== undefined) return going;
  const weighed = askedOfWeight(memory, message, { understood, job: found.job });
  const bottled = askedOfCylinder(memory, {
    understood: weighed,
    job: found.job,
    text: message.text,
  });
  const gas = askedOfGas(memory, message, { understood: bottled, job: found.job });
  const other = askedOfOther(memory, message, { understood: gas, job: found.job });
  const told = askedOfConflict(memory, message, { understood: other, job: found.job });
  return planFiling(memory, message, { understood: told, found });
}

/** Nothing in hand, or only what is done. */
function isFree(memory: Memory, located: Route): boolean {
  if (located.kind !== "job") return located.kind === "none";
  return located.by === "hand" && jobAt(memory, located.job)?.status === "done";
}

/**
 * "Supply air 55, done, heading to the school": what is said before belongs to the job in hand,
 * the way alone to the job that it leads to.
 */
function planGoing(memory: Memory, message: Message, understood: Understood): Plan | undefined {
  const going =
    understood.statements.find((said) => said.kind === "status" && said.status === "on_the_way") ??
    goesOver(message.text, understood);
  if (going === undefined) return undefined;
  const [from, to] = reachOf(going, understood.statements, message.text);
  const rest = `${message.text.slice(0, from)} ${message.text.slice(to)}`;
  const base = locate(memory, { ...message, text: rest });
  const words = message.text.slice(from, to);
  const target = locateWords(memory, message, { words, job: -1 });
  if (base.kind !== "job" || target?.kind !== "job" || base.job === target.job) return undefined;
  const read = readNote(memory, message, base.job);
  const isGoing = (said: Statement): boolean =>
    said.kind === "status" && said.status === "on_the_way";
  const here = { ...read, statements: read.statements.filter((said) => !isGoing(said)) };
  if (isEmpty(here)) return undefined;
  const ways = read.statements.filter(isGoing);
  const there = { ...nothingRead, statements: ways.length > 0 ? ways : [going] };
  const drafts = [
    draftFor(message, base.job, noteFacts(memory, message, { understood: here, job: base.job })),
    draftFor(
      message,
      target.job,
      noteFacts(memory, { ...message, files: [] }, { understood: there, job: target.job }),
    ),
  ];
  return { understood: read, job: base.job, opened: false, drafts };
}

function planOpening(memory: Memory, message: Message, understood: Understood): Plan {
  const said = understood.statements.find((statement) => statement.kind === "open_job");
  const opens = openingFrom(message, said, worldOf(memory));
  const job = lastJob(memory.store) + 1;
  const facts = noteFacts(memory, message, { understood, opens });
  return { understood, job, opened: true, drafts: [draftFor(message, job, facts)] };
}

function planFiling(
  memory: Memory,
  message: Message,
  read: { readonly understood: Understood; readonly found: Extract<Route, { kind: "job" }> },
): Plan {
  const { understood, found } = read;
  const job = found.job;
  const restored = undoUndone(memory, message, job);
  if (restored !== undefined) return restored;
  const undo =
    figureUndone(memory, message, { understood, job }) ??
    undoFacts(memory, message, { understood, job });
  if (undo !== undefined) {
    return { understood, job, opened: false, drafts: [draftFor(message, job, undo)] };
  }
  const answer = answerFacts(memory, message, { understood, job });
  if (answer !== undefined) {
    return { understood, job, opened: false, drafts: [draftFor(message, job, answer)] };
  }
  const weight = answeredWeight(memory, message, job);
  if (weight !== undefined && understood.readings.length === 0) {
    return {
      understood: nothingRead,
      job,
      opened: false,
      drafts: [weight.draft],
      settled: [weight.reading],
    };
  }
  if (isTalkTo(memory, message, understood)) return { understood, opened: false, drafts: [] };
  if (!isWork(understood, message) && !beginsTest(message.text)) {
    // figures and nothing else are no talk: that they were not read has to be said
    const figures = message.role === "tech" && isBareFigures(message.text);
    if (isTalk(understood, found.by) && !isUnreadReport(message, understood) && !figures)
      return { understood, opened: false, drafts: [] };
    // a number that is asked about is kept, or nobody would hear its answer
    const kept = isRemark(understood) || understood.open !== undefined;
    if (!kept) return { understood, job, opened: false, drafts: [] };
  }
  const { here, elsewhere: others } = splitByJob(memory, message, read);
  const elsewhere =
    others.length > 0
      ? others
      : [
          ...siteLeft(memory, message, { understood: here, job }),
          ...hoursOfEach(memory, message, { understood: here, job }),
        ];
  const drafts = [
    ...(elsewhere.length > 0 && isEmpty(here)
      ? []
      : [draftFor(message, job, noteFacts(memory, message, { understood: here, job }))]),
    ...elsewhere.map((part) =>
      draftFor(message, part.job, noteFacts(memory, { ...message, files: [] }, part)),
    ),
  ];
  return { understood, job: drafts[0]?.job ?? job, opened: false, drafts };
}

/** A remark with numbers that were all understood as something: a size, a model, a room. */
function isRemark(understood: Understood): boolean {
  return (
    understood.unread.length === 0 &&
    understood.statements.some(({ kind }) => kind === "note") &&
    understood.statements.every(({ kind }) => kind === "note")
  );
}

/** Nothing for a record and nothing asked, outside a job's thread: talk between people. */
function isTalk(understood: Understood, by: "thread" | "name" | "hand"): boolean {
  if (by === "thread" || understood.ask.length > 0 || isRemark(understood)) return false;
  return understood.statements.every(({ kind }) => kind === "note" || kind === "confirm");
}

function isEmpty(understood: Understood): boolean {
  return understood.readings.length === 0 && understood.statements.length === 0;
}
