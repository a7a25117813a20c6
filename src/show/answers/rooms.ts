import type { Job, ReplyInput } from "../../model.ts";
import { localTime } from "../local-time.ts";
import { clipped, listed, personName, sentence, statusWords, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostJobs = 4;

/** "Which rooms are still out": those that were told as out, those told as fine, and the last word of any of them. */
export const rooms: Answer = (input, question) => {
  const { job } = input;
  const named = job === undefined ? (input.routing?.candidates ?? input.jobs) : [job];
  const all = named.filter((one) => placesOf(input, one).out.length > 0);
  // who asks of what is still out does not mean what is finished
  const still = /\bstill\b/i.test(question.about ?? question.said) && job === undefined;
  const jobs = still ? all.filter(({ status }) => status !== "done") : all;
  if (jobs.length > 0)
    return jobs
      .slice(0, mostJobs)
      .flatMap((one) => lines(input, one))
      .join("\n");
  const where = job === undefined ? "No open job has" : `${unitName(job)}: no`;
  return sentence(`${where} rooms told as out`);
};

interface Places {
  readonly out: readonly string[];
  readonly fine: readonly string[];
}

/** By the site's tree where it has one; else what was told last of each place. */
function placesOf({ rooms_told: told = {} }: ReplyInput, job: Job): Places {
  const known = told[job.job];
  if (known !== undefined && known.out.length > 0) return known;
  const state = new Map<string, "out" | "fine">();
  for (const { statement, undone, deleted } of job.statements) {
    if (statement.kind !== "complaint" || undone === true || deleted === true) continue;
    for (const place of statement.places) state.set(place, "out");
    for (const place of statement.fine) state.set(place, "fine");
  }
  const those = (is: "out" | "fine"): readonly string[] =>
    [...state].flatMap(([place, as]) => (as === is ? [place] : []));
  return { out: those("out"), fine: those("fine") };
}

function lines(input: ReplyInput, job: Job): readonly string[] {
  const { out, fine } = placesOf(input, job);
  const told = fine.length === 0 ? "" : `; ${listed(fine)} fine`;
  const time = localTime(job.status_at, input.time_zone)?.time ?? "";
  const who = job.person === null ? "" : `, ${personName(job.person, input.names)}`;
  return [
    sentence(
      `${unitName(job)}: ${listed(out)} told out${told}; ${statusWords[job.status]} ${time}${who}`,
    ),
    lastOf(input, job, out),
  ].filter((line) => line !== "");
}

/** The last that was said of one of those rooms behind the call. */
function lastOf(input: ReplyInput, job: Job, out: readonly string[]): string {
  const names = out.map((place) => place.toLowerCase());
  const row = job.timeline.findLast(({ kind, says }) => {
    const words = says.toLowerCase();
    const whole = (name: string): boolean =>
      new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, "u").test(words);
    return !/^(?:opened|question)$/.test(kind) && names.some(whole);
  });
  if (row === undefined) return "";
  const time = localTime(row.at, input.time_zone)?.time ?? "";
  return sentence(`${personName(row.who, input.names)} ${time}: ${clipped(row.says, 16)}`);
}

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
