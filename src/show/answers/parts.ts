import type { Job, JobPart, ReplyInput } from "../../model.ts";
import { shortPartNames } from "../../vocabulary.ts";
import { dayAndMonth } from "../days.ts";
import { localTime } from "../local-time.ts";
import { lastOfParts, openParts, partName } from "../open-parts.ts";
import { personName, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostLines = 6;

/** What is known of a part that was asked about: its last state, who said so and when, and when it comes. */
export const parts: Answer = (input, question) => {
  const { job } = input;
  const said = (question.about ?? question.said).toLowerCase();
  const named = input.jobs.flatMap((one) => of(one, said)).filter((one) => one.named);
  const own = named.filter((one) => one.job.job === job?.job);
  const chosen = own.length > 0 ? own : named.length > 0 ? named : general(input, said);
  if (chosen.length > 0)
    return chosen
      .slice(0, mostLines)
      .map(({ job: one, part }) => sentence(`${unitName(one)}: ${words(input, part)}`))
      .join("\n");
  return job === undefined
    ? "No such part is asked for or on order, by what was told."
    : `${unitName(job)}: no such part was asked for here, by what was told.`;
};

/** "What's on order", "are the parts in": all that is waited for, of the job that is meant or of every one. */
function general({ jobs, job }: ReplyInput, said: string): readonly Found[] {
  if (used.test(said))
    return (job === undefined ? jobs : [job]).flatMap((one) =>
      lastOfParts(one)
        .filter(({ state }) => state === "fitted")
        .map((part) => ({ job: one, part, named: false })),
    );
  if (
    !/\b(?:parts|on order|ordered|order|anything|delivery|it|they|needs?|needed|want|waiting)\b/.test(
      said,
    )
  )
    return [];
  return (job === undefined ? jobs : [job]).flatMap((one) => of(one, said));
}

/** What went in, of the job that is meant or of every one. */
const used = /\b(?:used?|using|went in|put in|fit|fitted|install|installed)\b/;

interface Found {
  readonly job: Job;
  readonly part: JobPart;
  readonly named: boolean;
}

/** The job's open parts, and those fitted that are named. */
function of(job: Job, said: string): readonly Found[] {
  const open = openParts(job);
  return lastOfParts(job)
    .map((part) => ({ job, part, named: isNamed(said, part) }))
    .filter(({ part, named }) => named || (job.status !== "done" && open.includes(part)));
}

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");

function isNamed(said: string, { part, number }: JobPart): boolean {
  if (number !== undefined && plain(said).includes(plain(number))) return true;
  const thing = part.toLowerCase().replace(number?.toLowerCase() ?? "", "");
  const noun = thing.trim().split(/\s+/).at(-1)?.replace(/s$/, "") ?? "";
  const nouns = [noun, ...shortPartNames(thing.trim())];
  return (
    noun.length > 2 &&
    said.split(/[^a-z0-9]+/).some((word) => nouns.includes(word.replace(/s$/, "")))
  );
}

function words(input: ReplyInput, part: JobPart): string {
  const at = localTime(part.at, input.time_zone);
  const today = localTime(input.message.at, input.time_zone)?.date;
  const date = at === undefined || at.date === today ? "" : `${dayAndMonth(at.date)} `;
  const state = part.arrived === true ? "here" : (part.decided ?? part.state);
  const told = `${partName(part)} ${state}, ${date}${at?.time ?? ""}, ${personName(part.who, input.names)}`;
  const waits = part.state !== "fitted" && part.arrived !== true && part.decided !== "declined";
  return waits ? `${told}; ${due(part, at?.date === today)}` : told;
}

/** "Tomorrow" of yesterday is today: the day itself, where the words were said another day. */
function due({ due: said, due_on: day, state }: JobPart, sameDay: boolean): string {
  if (said !== undefined && (sameDay || day === undefined)) return `due ${said}`;
  if (day !== undefined) return `due ${dayAndMonth(day)}`;
  return state === "needed" ? "not ordered, by what was told" : "no day was told";
}
