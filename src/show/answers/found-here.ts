import type { Job, ReplyInput } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { localTime } from "../local-time.ts";
import { openParts, partWords } from "../open-parts.ts";
import { worstFirst } from "../touched.ts";
import { findingSentence } from "../verdict.ts";
import {
  causeSentence,
  clipped,
  listed,
  personName,
  sentence,
  statusWords,
  unitName,
} from "../wording.ts";
import { said } from "./summary.ts";

/** What was found on the job in hand: what was seen, the likely cause, what is bad, what it waits for; "" where nothing was. */
export function foundHere(input: ReplyInput, job: Job): string {
  const seen = said(job, "observation");
  const done = said(job, "action");
  const [top] = namedCauses(input.judgement);
  const bad = worstFirst(input.judgement.findings).filter(({ level }) => level === "bad");
  const needed = openParts(job);
  const lines = [
    seen.length === 0 ? "" : sentence(`Seen: ${clipped(seen.join("; "), 24)}`),
    top === undefined ? "" : sentence(causeSentence(top)),
    ...bad.slice(0, 2).map((finding) => findingSentence(finding, 16)),
    done.length === 0 ? "" : sentence(`Done: ${clipped(done.join("; "), 24)}`),
    needed.length === 0 ? "" : sentence(`Parts: ${listed(needed.map(partWords))}`),
  ].filter((line) => line !== "");
  if (lines.length === 0) return "";
  const who = listed(job.people.map((one) => personName(one, input.names)));
  const time = localTime(job.status_at, input.time_zone)?.time ?? "";
  const head = `${unitName(job)}, ${who === "" ? "" : `${who}, `}${statusWords[job.status]} ${time}:`;
  return [head, ...lines].join("\n");
}
