import type { Job, ReplyInput } from "../../model.ts";
import { toldWhen } from "../told-when.ts";
import { ownLock, personName, sentence } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostLines = 12;

/** Whose locks hang where and since when, or which safeties are bypassed: of the job that is meant, else of every unit that is locked. */
export const locks: Answer = (input, question) => {
  const { job } = input;
  const asked = job === undefined ? input.jobs : [job];
  const bypasses = /jump|bypass/i.test(question.about ?? question.said);
  const lines = asked.flatMap((one) =>
    bypasses ? bypassLines(input, one) : lockLines(input, one),
  );
  if (bypasses && lines.length === 0) return "No safety is bypassed, by what was told.";
  if (lines.length > 0) return lines.slice(0, mostLines).join("\n");
  // nobody's word is no proof that nothing hangs there
  return job === undefined
    ? "No lock is on, by what was told. That proves nothing dead."
    : `${placeOf(job)}: no lock is on, by what was told.${onceOn(input, job)} That proves nothing dead.`;
};

/** "Did we lock it out?" hears of the lock that has come off too. */
function onceOn(input: ReplyInput, job: Job): string {
  const told = job.statements.flatMap(({ statement, at, who, undone, deleted }) => {
    if (statement.kind !== "action" || statement.planned === true) return [];
    if (undone === true || deleted === true) return [];
    const on = statement.lock === "on" || statement.action === "locked";
    const off = statement.lock === "off" || statement.action === "unlocked";
    return on || off ? [{ on, at, who }] : [];
  });
  const on = told.findLast((one) => one.on);
  if (on === undefined) return "";
  const off = told.findLast((one) => !one.on && Date.parse(one.at) >= Date.parse(on.at));
  const gone = off === undefined ? "" : `, off ${toldWhen(input, off.at)}`;
  return ` ${sentence(`Last: ${personName(on.who, input.names)}'s, on ${toldWhen(input, on.at)}${gone}`)}`;
}

function lockLines(input: ReplyInput, job: Job): readonly string[] {
  return job.machine.locks.map((lock) => {
    const at = lock.where?.replace(/^(?:(?:at|on|in) )?(?:the )?/i, "");
    const where = at === undefined ? "" : ` at the ${at}`;
    const owner = ownLock(lock, input.names);
    return sentence(`${placeOf(job)}: ${owner}${where}, since ${toldWhen(input, lock.since)}`);
  });
}

function bypassLines(input: ReplyInput, job: Job): readonly string[] {
  return job.machine.bypasses.map((one) =>
    sentence(
      `${placeOf(job)}: ${one.what} bypassed by ${personName(one.who, input.names)}, since ${toldWhen(input, one.since)}`,
    ),
  );
}

function placeOf(job: Job): string {
  const unit = [job.site, job.equipment].filter((word) => word !== null).join(" ");
  return unit === "" ? `Job ${job.job}` : `Job ${job.job} ${unit}`;
}
