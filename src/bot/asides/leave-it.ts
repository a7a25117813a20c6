import type { Job, Message } from "../../model.ts";
import { leftOutText } from "../../show/left-out.ts";
import { nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import { allJobs, type Memory } from "../memory.ts";
import type { Aside } from "./aside.ts";
import { noteOf } from "./note-of.ts";

const said =
  /^\s*(?:no|nah|ok(?:ay)?|just)?[\s,]*(?:leave|skip|forget|drop)\s+(?:it|that|them|those)(?:\s+(?:out|open|be|for now|as is|like that))*\s*[.!]*\s*$/i;

/** The question of the closing check is answered within so long; our choice, no source. */
const bindsForMs = 60 * 60_000;

/** The job whose closing check was just said to its author, who may have let go of it with the same word. */
function justDone(memory: Memory, message: Message): Job | undefined {
  const found = locate(memory, message);
  const instant = Date.parse(message.at);
  return allJobs(memory)
    .filter(({ job, status, status_at, person, file }) => {
      const age = instant - Date.parse(status_at);
      const meant = found.kind === "job" ? job === found.job : person === message.person;
      return meant && status === "done" && file.gaps.length > 0 && age >= 0 && age <= bindsForMs;
    })
    .sort((a, b) => Date.parse(a.status_at) - Date.parse(b.status_at))
    .at(-1);
}

/** "Leave it" after the closing check: what the file lacks stays open and is asked for no more. */
export const leaveIt: Aside = ({ memory }, message) => {
  if (!said.test(message.text)) return undefined;
  const job = justDone(memory, message);
  if (job === undefined) return undefined;
  const { gaps } = job.file;
  return {
    understood: nothingRead,
    job: job.job,
    opened: false,
    drafts: [noteOf(memory, message, { job: job.job, about: `left out: ${gaps.join("; ")}` })],
    says: leftOutText(job, gaps),
  };
};
