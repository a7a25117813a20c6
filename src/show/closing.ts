import type { Job, Machine, ReplyInput, Statement } from "../model.ts";
import type { Status } from "../vocabulary.ts";
import { leftOut } from "./left-out.ts";
import { localTime } from "./local-time.ts";
import { openParts, partName } from "./open-parts.ts";
import {
  clipped,
  jobName,
  listed,
  ownLock,
  personName,
  sentence,
  sentenceCase,
  statusWords,
} from "./wording.ts";

type StatusStatement = Extract<Statement, { kind: "status" }>;

/** At most so many gaps are asked for at once: nobody answers more from a truck. */
const mostGaps = 3;

/** The status that a message says, of two the one that the job took; undefined where it says none. */
export function statusOf(input: ReplyInput): StatusStatement | undefined {
  const said = input.understood.statements.filter((s) => s.kind === "status");
  const status = said.find((s) => s.status === input.job?.status) ?? said[said.length - 1];
  // "headed to the next one": who was there leaves
  const leaves =
    status?.status === "on_the_way" && !input.late && input.job?.status === "left_site";
  return leaves ? { ...status, status: "left_site" } : status;
}

/** "Job 4 RTU-1: on site 07:40." About four words; what is still open follows at the end. */
export function statusSentence(input: ReplyInput, status: StatusStatement, job: Job): string {
  const time = statusTime(input, status);
  const words = `${statusWords[status.status]} ${time}`;
  const late = input.late ? `, filed late, stays ${statusWords[job.status]}` : "";
  return sentenceCase(sentence(`${jobName(job)}: ${words}${late}`));
}

function statusTime(input: ReplyInput, status: StatusStatement): string {
  const said = status.time;
  if (said === undefined) return localTime(input.message.at, input.time_zone)?.time ?? "";
  return localTime(said, input.time_zone)?.time ?? said;
}

const leaving = new Set<Status>(["left_site", "waiting_for_parts", "done"]);

/** Locks, gas, open circuits and bypasses that stay at the machine when someone leaves it. */
export function leftBehind(input: ReplyInput, status: Status, machine: Machine): readonly string[] {
  if (!leaving.has(status)) return [];
  const locks = machine.locks.map((l) => ownLock(l, input.names));
  const bypasses = machine.bypasses.map((b) => `bypass of ${b.what}`);
  return [...new Set([...bypasses, ...circuitLeft(machine), ...locks])];
}

function circuitLeft(machine: Machine): readonly string[] {
  if (machine.circuit === "nitrogen") return ["nitrogen in the circuit"];
  if (machine.circuit === "vacuum") return ["circuit under vacuum"];
  if (machine.circuit === "open") return ["circuit open"];
  return [];
}

/** Who else is on site, by what was said. */
function stillThere({ message, names }: ReplyInput, job: Job): readonly string[] {
  const there = job.visits.filter(
    ({ kind, to, person }) => kind === "site" && to === undefined && person !== message.person,
  );
  return [...new Set(there.map(({ person }) => personName(person, names)))];
}

/** What is left at the machine and what the file lacks, said once, when the word is "done". */
export function closingLines(input: ReplyInput, job: Job): readonly string[] {
  const status = statusOf(input)?.status;
  if (status === undefined || input.late) return [];
  const others = stillThere(input, job);
  // whoever stays looks after the machine
  if (others.length > 0 && status === "left_site")
    return [sentence(`${listed(others)} still there`)];
  // a bypass is asked about in the same breath
  const left = leftBehind(input, status, {
    ...job.machine,
    bypasses: job.machine.bypasses.slice(1),
  });
  const gaps = status === "done" ? openGaps(job).slice(0, mostGaps) : [];
  return [
    left.length === 0 ? "" : sentence(`Left there: ${listed(left)}`),
    gaps.length === 0 ? "" : sentence(`The file lacks: ${clipped(gaps.join("; "), 24)}`),
    status === "done" ? partsLeft(job) : "",
  ].filter((line) => line !== "");
}

/** A part that was asked for and never fitted: done without it, or forgotten? */
function partsLeft(job: Job): string {
  const open = openParts(job);
  if (open.length === 0) return "";
  const names = clipped(listed(open.map(partName)), 12);
  return `Not fitted, by what was told: ${names}. Say fitted, declined or waiting for parts.`;
}

/** What the file lacks and nobody said to leave out. */
export function openGaps(job: Job): readonly string[] {
  const out = leftOut(job);
  const asked = job.machine.bypasses.map(({ what }) => `${what} bypass off`);
  return job.file.gaps.filter((gap) => !out.has(gap) && !asked.includes(gap));
}

/** The question before silence: a bypassed safety must not be forgotten. */
export function leavingQuestion(input: ReplyInput, job: Job): string {
  const status = statusOf(input)?.status;
  const bypass = job.machine.bypasses[0];
  if (status === undefined || input.late || !leaving.has(status) || bypass === undefined) return "";
  if (status === "left_site" && stillThere(input, job).length > 0) return "";
  const what = bypass.what.replace(/^an? /, "");
  return `Is the ${what} bypass off? The file stays open until then.`;
}
