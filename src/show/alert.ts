import type { Job } from "../model.ts";
import type { BoardKnown } from "./board.ts";
import { served } from "./board-order.ts";
import { productAtRisk } from "./product.ts";
import { jobName, personName, sentence, sentenceCase } from "./wording.ts";

/**
 * A post of its own for the dispatcher, only where a message made something that a person must do
 * now: nobody let in, a part to order, a safety left bypassed, a box too warm. Else undefined: the
 * board says the rest, silently. `was`: the job before the message, absent where it opened it.
 */
export function alertText(was: Job | undefined, job: Job, known: BoardKnown): string | undefined {
  const before = new Set(was === undefined ? [] : needs(was, known));
  const fresh = needs(job, known).filter((need) => !before.has(need));
  if (fresh.length === 0) return undefined;
  return sentenceCase(sentence(`${jobName(job)}: ${fresh.join("; ")}`));
}

function needs(job: Job, { names = {}, boxLimitOf }: BoardKnown): readonly string[] {
  const who = job.person === null ? "somebody" : personName(job.person, names);
  const away = job.status === "left_site" || job.status === "waiting_for_parts";
  const risk = productAtRisk(job, boxLimitOf?.(job));
  const gone = away || job.status === "done";
  return [
    ...(job.status === "no_access" ? [`no access, ${who} stands outside`] : []),
    ...job.parts
      .filter((part) => part.state === "needed" && !served(job, part))
      .map((part) => `to order, ${[part.part, part.number].filter((w) => w).join(" ")}`),
    ...(gone ? job.machine.bypasses.map((b) => `left with the ${b.what} bypassed`) : []),
    ...(risk === undefined ? [] : [`product ${risk.limit}`]),
  ];
}
