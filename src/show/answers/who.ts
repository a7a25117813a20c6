import type { Job, ReplyInput } from "../../model.ts";
import { localTime } from "../local-time.ts";
import { listed, personName, sentence, statusWords } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { status } from "./status.ts";

/** Who is at a site, or on the way there; without a site everybody who is out. */
export const who: Answer = (input, question) => {
  const { job } = input;
  const [, name] =
    /^(?:where(?:'s|s| is) ([\p{L}'-]+)|(?:which|what) (?:one|unit|job|machine) is ([\p{L}'-]+) (?:on|at)|is ([\p{L}'-]+) (?:free|available|idle|busy)\b|what(?:'?s| is) ([\p{L}'-]+) (?:doing|up to)\b|how long (?:till|until|til|before) ([\p{L}'-]+) (?:is|gets)\b|when (?:is|will) ([\p{L}'-]+) (?:be )?(?:free|done|finished)\b)/iu
      .exec(question.about ?? question.said)
      ?.filter((one) => one !== undefined) ?? [];
  const was = /^who (?:all )?(?:was|were|went|has been)\b/i.test(question.about ?? question.said);
  if (was && job !== undefined) return whoWas(input, job);
  if (
    name === undefined &&
    job !== undefined &&
    /\b(?:done|finished)\b/i.test(question.about ?? question.said)
  )
    return status(input, question);
  if (name !== undefined) return whereIs(input, name);
  if (/\b(?:free|available|idle)\b/i.test(question.about ?? question.said)) return whoIsFree(input);
  const jobs = job === undefined ? input.jobs : input.jobs.filter((j) => j.site === job.site);
  const there = jobs.flatMap((j) => present(input, j));
  if (there.length > 0) return there.map(sentence).join("\n");
  if (job === undefined) return "Nobody is out, by what was said.";
  const last = job.person ?? job.assigned;
  const place = job.site ?? `job ${job.job}`;
  if (last === undefined) return `Nobody is at ${place}, and nobody is named for it.`;
  return `Nobody is at ${place} now: ${personName(last, input.names)}, ${statusWords[job.status]} ${time(input, job.status_at)}.`;
};

/** "Who was at the school": everybody who came, with when. */
function whoWas(input: ReplyInput, job: Job): string {
  const lines = input.jobs
    .filter((one) => one.job === job.job || (job.site !== null && one.site === job.site))
    .flatMap((one) => {
      const came = one.visits
        .filter(({ kind }) => kind === "site")
        .map(({ person, from, to }) => {
          const until = to === undefined ? "still there" : `to ${time(input, to)}`;
          return `${personName(person, input.names)} ${time(input, from)} ${until}`;
        });
      const place = [one.site, one.equipment].filter((w) => w !== null).join(" ");
      return came.length === 0 ? [] : [sentence(`${place}: ${listed(came)}`)];
    });
  const place = job.site ?? `job ${job.job}`;
  return lines.length === 0 ? `Nobody said that he was at ${place}.` : lines.join("\n");
}

/** Who was heard of on the jobs at hand and is at none now. */
function whoIsFree(input: ReplyInput): string {
  const visits = visitsOf(input, () => true);
  const people = [
    ...new Set([
      ...visits.map(({ visit }) => visit.person),
      ...input.jobs.flatMap(({ assigned, second }) => [assigned ?? [], second ?? []].flat()),
    ]),
  ];
  const busy = (person: string): boolean =>
    visits.some(({ visit }) => visit.person === person && visit.to === undefined);
  const lines = people
    .filter((person) => !busy(person))
    .map((person) => {
      const waits = input.jobs.filter(
        (job) => job.status === "open" && (job.assigned === person || job.second === person),
      );
      const sent =
        waits.length === 0 ? "" : `, sent to ${listed(waits.map(({ job }) => `job ${job}`))}`;
      return sentence(`${personName(person, input.names)}: ${lastHeard(input, person)}${sent}`);
    });
  return lines.length === 0 ? "Nobody is free, by what was said." : lines.join("\n");
}

interface Stay {
  readonly job: Job;
  readonly visit: Job["visits"][number];
}

function visitsOf({ jobs }: ReplyInput, is: (person: string) => boolean): readonly Stay[] {
  return jobs.flatMap((job) =>
    job.visits.filter(({ person }) => is(person)).map((visit) => ({ job, visit })),
  );
}

/** Of visits that ended the one that ended last. */
function lastOf(visits: readonly Stay[]): Stay | undefined {
  return visits
    .toSorted((a, b) => Date.parse(a.visit.to ?? "") - Date.parse(b.visit.to ?? ""))
    .at(-1);
}

/** Where somebody was last, by what was said. */
function lastHeard(input: ReplyInput, person: string): string {
  const last = lastOf(visitsOf(input, (one) => one === person));
  const place = (job: Job): string => job.site ?? `job ${job.job}`;
  if (last !== undefined) return `left ${place(last.job)} ${time(input, last.visit.to ?? "")}`;
  const closed = input.jobs.findLast((job) => job.person === person && job.status === "done");
  if (closed === undefined) return "on no site yet";
  return `${statusWords.done} ${place(closed)} ${time(input, closed.status_at)}`;
}

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

/** Where one person is, or was last, by what was said. */
function whereIs(input: ReplyInput, name: string): string {
  const is = (person: string): boolean =>
    person.toLowerCase() === name.toLowerCase() ||
    personName(person, input.names).toLowerCase() === name.toLowerCase();
  const visits = visitsOf(input, is);
  const place = (job: Job): string =>
    [job.site, job.equipment].filter((w) => w !== null).join(" ") || `job ${job.job}`;
  const now = visits.filter(({ visit }) => visit.to === undefined);
  if (now.length > 0)
    return now
      .map(({ job, visit }) => {
        const word = visit.kind === "site" ? "at" : "on the way to";
        const who = personName(visit.person, input.names);
        return sentence(`${who} ${word} ${place(job)} since ${time(input, visit.from)}`);
      })
      .join("\n");
  const last = lastOf(visits);
  if (last === undefined) return heardOf(input, name, is);
  const who = personName(last.visit.person, input.names);
  if (last.job.status === "no_access" && last.job.person === last.visit.person)
    return sentence(
      `${who} had no access at ${place(last.job)} ${time(input, last.job.status_at)}, and is out on no job since`,
    );
  return sentence(
    `${who} is out on no job, by what was said: left ${place(last.job)} ${time(input, last.visit.to ?? "")}`,
  );
}

/** Who said nowhere that he came: the job that he spoke of last, or was sent to. */
function heardOf(input: ReplyInput, name: string, is: (person: string) => boolean): string {
  const told = input.jobs.flatMap((job) =>
    job.timeline.filter(({ who }) => is(who)).map((row) => ({ job, row })),
  );
  const last = told.toSorted((a, b) => Date.parse(a.row.at) - Date.parse(b.row.at)).at(-1);
  const place = (job: Job): string => [job.site, job.equipment].filter((w) => w !== null).join(" ");
  if (last !== undefined) {
    const who = personName(last.row.who, input.names);
    return sentence(
      `${who} wrote of ${place(last.job)} ${time(input, last.row.at)}, and did not say that he came`,
    );
  }
  const sent = input.jobs.find(
    ({ assigned, second, status }) =>
      status !== "done" && [assigned, second].some((one) => one !== undefined && is(one)),
  );
  if (sent === undefined) return `Nothing was heard of ${name} today.`;
  return `Nothing was heard of ${name} today; sent to job ${sent.job}, ${place(sent)}.`;
}
