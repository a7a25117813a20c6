import type { Job, ReplyInput } from "../../model.ts";
import { localTime } from "../local-time.ts";
import { listed, personName, sentence, statusWords } from "../wording.ts";
import type { Answer } from "./answer.ts";

/** Who is at a site, or on the way there; without a site everybody who is out. */
export const who: Answer = (input) => {
  const { job } = input;
  const jobs = job === undefined ? input.jobs : input.jobs.filter((j) => j.site === job.site);
  const there = jobs.flatMap((j) => present(input, j));
  if (there.length > 0) return there.map(sentence).join("\n");
  if (job === undefined) return "Nobody is out, by what was said.";
  const last = job.person ?? job.assigned;
  const place = job.site ?? `job ${job.job}`;
  if (last === undefined) return `Nobody is at ${place}, and nobody is named for it.`;
  return `Nobody is at ${place} now: ${personName(last, input.names)}, ${statusWords[job.status]} ${time(input, job.status_at)}.`;
};

function present(input: ReplyInput, job: Job): readonly string[] {
  const open = job.visits.filter((v) => v.to === undefined);
  const at = open.map((v) => {
    const word = v.kind === "site" ? "there" : "on the way";
    return `${personName(v.person, input.names)} ${word} since ${time(input, v.from)}`;
  });
  const place = [job.site, job.equipment].filter((w) => w !== null).join(" ");
  return at.length === 0 ? [] : [`${place}: ${listed(at)}`];
}

function time(input: ReplyInput, iso: string): string {
  return localTime(iso, input.time_zone)?.time ?? iso;
}
