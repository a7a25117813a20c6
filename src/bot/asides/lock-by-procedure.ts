import { byProcedure } from "../../record/machine.ts";
import { lockGoneText } from "../../show/lock-gone.ts";
import { draftFor, noteFacts, nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import { allJobs } from "../memory.ts";
import { namesOf, personSaid } from "../people.ts";
import type { Aside } from "./aside.ts";

const lockOf =
  /\b(?:the lock of ([\p{L}'-]+?)|([\p{L}-]+?)['’]?s lock)\b[^.?]*\b(?:cut(?: off)?|removed|taken off|came off|is off|comes off)\b/iu;
const procedure = /\b(?:procedure|supervisor|authori[sz]ed|by the employer|1910\.147)\b/i;

/**
 * "Sorrel's lock was removed by the office procedure": who sits at a desk may note that an absent
 * owner's lock came off, 29 CFR 1910.147(e)(3); nobody else's word takes another's lock off the list.
 */
export const lockByProcedure: Aside = ({ memory }, message) => {
  const match = lockOf.exec(message.text);
  const name = match?.[1] ?? match?.[2];
  if (message.role === "tech" || match === null || name === undefined) return undefined;
  const owner = procedure.test(message.text) ? personSaid(memory, name) : undefined;
  if (owner === undefined) return undefined;
  const found = locate(memory, message);
  const jobs = allJobs(memory).filter(
    ({ job, machine }) =>
      machine.locks.some(({ who }) => who === owner) && (found.kind !== "job" || found.job === job),
  );
  const [job, ...others] = jobs;
  const lock = job?.machine.locks.find(({ who }) => who === owner);
  if (job === undefined || lock === undefined || others.length > 0) return undefined;
  const from = match.index;
  const understood = {
    ...nothingRead,
    statements: [
      {
        kind: "action",
        action: "unlocked",
        what: byProcedure(lock.since),
        lock: "off",
        said: match[0],
        spans: [[from, from + match[0].length]],
        rule: "<lock by procedure>",
      } as const,
    ],
  };
  return {
    understood,
    job: job.job,
    opened: false,
    drafts: [draftFor(message, job.job, noteFacts(memory, message, { understood, job: job.job }))],
    says: lockGoneText(job, owner, namesOf(memory)),
  };
};
