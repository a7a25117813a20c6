import type { Job, ReplyInput, Visit } from "../../model.ts";
import { dayAndMonth, hoursAndMinutes } from "../days.ts";
import { localTime } from "../local-time.ts";
import { byOwnCount, toldHours } from "../told-hours.ts";
import { listed, personName, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostLines = 12;

/** How long each person was on the job, by their own words; who asks of himself hears his own. */
export const hours: Answer = (input, question) => {
  const { job, message } = input;
  const own = /\b(?:i|my)\b/i.test(question.about ?? question.said);
  const named = namedIn(input, question.about ?? question.said);
  const asked = (person: string): boolean =>
    (!own || person === message.person) && (named ?? person) === person;
  const jobs =
    job === undefined
      ? input.jobs.filter((one) => isToday(input, one))
      : ofSite(input, job, question.about ?? question.said);
  const lines = jobs.flatMap((one) => line(input, one, asked));
  if (lines.length > 0) return lines.slice(0, mostLines).join("\n");
  const where = job === undefined ? "today" : unitName(job);
  return sentence(`${where}: nobody said that ${own ? "you were" : "he was"} on site`);
};

/** "How long was Joren at skarvik": the one of the crew who is named. */
function namedIn({ jobs, job, names }: ReplyInput, text: string): string | undefined {
  const words = new Set(text.toLowerCase().split(/[^\p{L}'-]+/u));
  const crew = (job === undefined ? jobs : [job, ...jobs]).flatMap(({ people }) => people);
  return crew.find(
    (person) =>
      words.has(person.toLowerCase()) || words.has(personName(person, names).toLowerCase()),
  );
}

/** "Hours at sallow": of every unit that was worked on there today, unless the unit is named. */
function ofSite(input: ReplyInput, job: Job, asked: string): readonly Job[] {
  const unit = (job.equipment ?? "").toLowerCase().replace(/[^a-z0-9]/g, "");
  const named =
    unit !== "" &&
    asked
      .toLowerCase()
      .replace(/[^a-z0-9]/g, "")
      .includes(unit);
  if (named || job.site === null || input.message.role === "tech") return [job];
  return input.jobs.filter(
    (one) => one.job === job.job || (one.site === job.site && isToday(input, one)),
  );
}

const isToday = (input: ReplyInput, { visits, statements }: Job): boolean =>
  [
    ...visits.map(({ from }) => from),
    ...statements.flatMap(({ statement, at }) => (statement.kind === "labor" ? [at] : [])),
  ].some((at) => dateOf(input, at) === dateOf(input, input.message.at));

const dateOf = (input: ReplyInput, iso: string): string | undefined =>
  localTime(iso, input.time_zone)?.date;

function line(input: ReplyInput, job: Job, asked: (person: string) => boolean): readonly string[] {
  const there = job.visits.filter(({ kind, person }) => kind === "site" && asked(person));
  // hours told without a word of having come
  const tellers = job.statements
    .map(({ who }) => who)
    .filter((who) => asked(who) && toldHours(job, who) !== undefined);
  const people = [...new Set([...there.map(({ person }) => person), ...tellers])];
  if (people.length === 0) return [];
  const each = people.map((person) => {
    const his = there.filter((visit) => visit.person === person);
    const came = his.length === 0 ? personName(person, input.names) : onePerson(input, person, his);
    return `${came}${byOwnCount(job, person)}`;
  });
  const visitors = new Set(there.map(({ person }) => person)).size;
  const all = visitors > 1 ? `; ${hoursAndMinutes(total(input, there))} in all` : "";
  return [sentence(`${unitName(job)}: ${listed(each)}${all}`)];
}

function onePerson(input: ReplyInput, person: string, visits: readonly Visit[]): string {
  const open = visits.find(({ to }) => to === undefined);
  const name = personName(person, input.names);
  const since = open === undefined ? "" : `, there since ${moment(input, open.from)}`;
  return `${name} ${hoursAndMinutes(total(input, visits))}${since}`;
}

/** An open visit counts up to the question. */
function total(input: ReplyInput, visits: readonly Visit[]): number {
  return visits.reduce(
    (sum, { from, to }) => sum + Date.parse(to ?? input.message.at) - Date.parse(from),
    0,
  );
}

function moment(input: ReplyInput, iso: string): string {
  const at = localTime(iso, input.time_zone);
  if (at === undefined) return iso;
  return at.date === dateOf(input, input.message.at)
    ? at.time
    : `${dayAndMonth(at.date)} ${at.time}`;
}
