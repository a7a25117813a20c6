import type { Message, Statement, Understood } from "../model.ts";
import { hoursOnUnits, withoutHoursOnUnits } from "../read/rules/hours-on-units.ts";
import type { Route } from "../record/route.ts";
import { nothingRead } from "./filing.ts";
import { locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { byNumber } from "./turns-to.ts";

interface Part {
  readonly job: number;
  readonly understood: Understood;
}

/** "done at the daycare, heading to the chapel": each status goes to the job that its words name. */
export function splitByJob(
  memory: Memory,
  message: Message,
  read: { readonly understood: Understood; readonly found: Extract<Route, { kind: "job" }> },
): { readonly here: Understood; readonly elsewhere: readonly Part[] } {
  const { understood, found } = read;
  const owners = understood.statements.map((statement) => {
    if (statement.rule === hoursOnUnits.name && statement.kind === "labor")
      return hoursOf(memory, message, { statement, all: understood.statements, job: found.job });
    if (statement.kind !== "status") return found.job;
    const ahead = unitsApart(understood.statements, message.text)
      ? clauseBefore(statement, message.text)
      : undefined;
    const words =
      ahead ?? statement.where ?? wordsAround(statement, understood.statements, message.text);
    const named = locateWords(memory, message, { words, job: found.job });
    if (named?.kind === "job") return named.job;
    return isWayOn(statement, understood.statements) ? undefined : found.job;
  });
  const others = [...new Set(owners)].flatMap((job) =>
    job === undefined || job === found.job ? [] : [job],
  );
  const keep = (job: number): readonly Statement[] =>
    understood.statements.filter((_, index) => owners[index] === job);
  return {
    here: { ...understood, statements: keep(found.job) },
    elsewhere: others.map((job) => ({
      job,
      understood: { ...nothingRead, statements: keep(job) },
    })),
  };
}

/** "RTU-2 done, HP-4 waiting on the coil": two statuses, and each clause begins with its unit. */
function unitsApart(statements: readonly Statement[], text: string): boolean {
  const told = statements.filter(({ kind }) => kind === "status");
  return told.length === 2 && told.every((one) => /\d/.test(clauseBefore(one, text)));
}

/** The words of a status' own clause that stand before it. */
function clauseBefore({ spans }: Statement, text: string): string {
  const before = text.slice(0, spans[0]?.[0] ?? 0);
  return before.slice(
    Math.max(...[",", ";", ".", "\n"].map((mark) => before.lastIndexOf(mark))) + 1,
  );
}

/** "1.75 on rtu 1 and .5 on 2": the job of the unit that stands behind the hours. */
function hoursOf(
  memory: Memory,
  message: Message,
  told: { readonly statement: Statement; readonly all: readonly Statement[]; readonly job: number },
): number {
  const from = told.statement.spans[0]?.[1] ?? 0;
  const starts = told.all
    .filter(({ kind }) => kind === "labor")
    .map(({ spans }) => spans[0]?.[0] ?? 0)
    .filter((start) => start > from);
  const words = message.text.slice(from, Math.min(message.text.length, ...starts));
  const unit = words.trim().replace(/^on (?:the )?|[,;.! ]+$|,? (?:and|n)$/gi, "");
  const here: Route = { kind: "job", job: told.job, by: "hand" };
  const named =
    byNumber(memory, `on ${unit}`, here) ??
    locateWords(memory, message, { words: unit, job: told.job });
  return named?.kind === "job" ? named.job : told.job;
}

/** "done here, heading to the next one": the way leads to a job that nobody named, not back to this one. */
function isWayOn(statement: Statement, all: readonly Statement[]): boolean {
  const before = all.slice(0, all.indexOf(statement));
  return (
    statement.kind === "status" &&
    statement.status === "on_the_way" &&
    before.some((one) => one.kind === "status" && one.status === "done")
  );
}

/** A status with the words after it, up to where the next one starts; the first from the beginning. */
function wordsAround(statement: Statement, all: readonly Statement[], whole: string): string {
  const text = withoutHoursOnUnits(whole);
  const [from, to] = reachOf(statement, all, text);
  const isFirst = !all.some(({ kind, spans }) => kind === "status" && (spans[0]?.[0] ?? 0) < from);
  return text.slice(isFirst ? 0 : from, to);
}

/** Where a status and the words after it stand. */
export function reachOf(
  statement: Statement,
  all: readonly Statement[],
  text: string,
): readonly [from: number, to: number] {
  const from = statement.spans[0]?.[0] ?? 0;
  const starts = all
    .filter(({ kind }) => kind === "status")
    .map(({ spans }) => spans[0]?.[0] ?? 0)
    .filter((other) => other > from);
  return [from, Math.min(text.length, ...starts)];
}
