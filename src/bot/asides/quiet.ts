import type { Job, Message } from "../../model.ts";
import { mutedText } from "../../show/muted.ts";
import { nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import type { Memory } from "../memory.ts";
import { entriesAt, jobAt } from "../rest.ts";
import type { Aside } from "./aside.ts";
import { noteOf } from "./note-of.ts";

const on =
  /^\s*(?:(?:read ?back|bot)[\s,:]+)?(?:please\s+)?(?:be |keep |stay )?(?:quiet|silent|hush|mute)(?:\s+(?:please|for today|now|here))*\s*[.!]*\s*$/i;
const off =
  /^\s*(?:(?:read ?back|bot)[\s,:]+)?(?:unmute|(?:you (?:can|may) )?(?:talk|speak)(?: again| now)?)\s*[.!]*\s*$/i;

const about = { on: "quiet", off: "not quiet" } as const;

/** "Quiet": answers in that thread stop for the day, but for danger, clocks and what is asked. */
export const quiet: Aside = ({ memory }, message) => {
  const word = on.test(message.text) ? "on" : off.test(message.text) ? "off" : undefined;
  if (word === undefined) return undefined;
  const found = locate(memory, message);
  const job = found.kind === "job" ? jobAt(memory, found.job) : undefined;
  if (job === undefined) return { understood: nothingRead, opened: false, drafts: [] };
  return {
    understood: nothingRead,
    job: job.job,
    opened: false,
    drafts: [noteOf(memory, message, { job: job.job, about: about[word] })],
    says: mutedText(word, job),
  };
};

/** Whether somebody asked for quiet in a message's thread this day. */
export function isMuted(memory: Memory, message: Message, job: Job | undefined): boolean {
  if (job === undefined) return false;
  const day = message.at.slice(0, 10);
  const said = entriesAt(memory, job.job).flatMap(({ facts, at, thread, channel }) =>
    facts.kind === "note" &&
    at.slice(0, 10) === day &&
    channel === message.channel &&
    thread === message.thread
      ? facts.statements.filter((one) => one.kind === "note" && one.rule === "<aside>")
      : [],
  );
  const last = said.findLast(
    (one) => one.kind === "note" && Object.values(about).some((w) => w === one.about),
  );
  return last?.kind === "note" && last.about === about.on;
}
