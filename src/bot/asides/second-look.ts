import { caseLines } from "../../show/second-look.ts";
import { nothingRead } from "../filing.ts";
import { lastJudgement } from "../judge-job.ts";
import { locate } from "../locate.ts";
import { namesOf, personSaid } from "../people.ts";
import { jobAt } from "../rest.ts";
import type { Aside } from "./aside.ts";
import { noteOf } from "./note-of.ts";

const asked = [
  /\b(?:second (?:look|opinion|pair of eyes))\s+(?:from|by|of|with)\s+([\p{L}'-]+)/iu,
  /\b(?:ask|get|have)\s+([\p{L}'-]+)\s+(?:to\s+)?(?:(?:for|take|have|give)\s+(?:me\s+)?)?(?:a\s+)?(?:second (?:look|opinion)|look(?: at (?:this|it))?)\b/iu,
  /^\s*([\p{L}'-]+)[\s,:]+(?:can|could|would)\s+you\s+(?:take\s+a\s+)?(?:second\s+)?look\b/iu,
];
/** What a question for a second look leaves in the record, before the name. */
export const askedOf = "second look asked of ";
export const advice = "advice";

/** An answer is looked for so long; our choice, no source. */
const bindsForMs = 24 * 3600_000;

/** "Ask Ife for a second look": the case in eight lines; what Ife answers is advice, never a reading. */
export const secondLook: Aside = ({ memory }, message) => {
  const found = locate(memory, message);
  const job = found.kind === "job" ? jobAt(memory, found.job) : undefined;
  if (job === undefined) return undefined;
  const base = { understood: nothingRead, job: job.job, opened: false };
  const name = asked
    .map((saying) => saying.exec(message.text)?.[1])
    .find((one) => one !== undefined);
  const senior = name === undefined ? undefined : personSaid(memory, name);
  if (senior !== undefined && senior !== message.person) {
    const draft = noteOf(memory, message, { job: job.job, about: `${askedOf}${senior}` });
    const judgement = lastJudgement(memory, job);
    const names = namesOf(memory);
    return {
      ...base,
      drafts: [draft],
      says: caseLines(job, judgement, { senior, from: message.person, names }),
    };
  }
  if (job.people.includes(message.person)) return undefined;
  const instant = Date.parse(message.at);
  const waits = job.statements.some(
    ({ statement, at, undone, deleted }) =>
      statement.kind === "note" &&
      statement.about === `${askedOf}${message.person}` &&
      undone !== true &&
      deleted !== true &&
      instant - Date.parse(at) <= bindsForMs &&
      instant >= Date.parse(at),
  );
  if (!waits || message.text.trim().endsWith("?")) return undefined;
  return { ...base, drafts: [noteOf(memory, message, { job: job.job, about: advice })] };
};
