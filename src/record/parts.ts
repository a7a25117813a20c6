import type { Decision, JobPart, JobStatement, PartState } from "../model.ts";
import { fullPartName } from "../vocabulary.ts";

interface Said {
  readonly part: string;
  readonly number?: string;
  readonly quantity?: number;
  readonly state: PartState;
  readonly due?: string;
  readonly due_on?: string;
  readonly arrived?: true;
  readonly decided?: Decision;
}

/** One row for each part and state that was said; a later mention finds the part by number or name. */
export function foldParts(statements: readonly JobStatement[]): readonly JobPart[] {
  const rows: JobPart[] = [];
  const byOthers = new Set(
    statements.flatMap(({ statement, message }) =>
      statement.kind === "observation" && statement.observation === "line_work_done"
        ? [message]
        : [],
    ),
  );
  for (const { statement, who, at, message } of statements) {
    const said = partSaid(statement);
    // what the utility replaced is no part of the job
    if (said === undefined || (said.state === "fitted" && byOthers.has(message))) continue;
    if (statement.kind === "action" && isNamedFuller(said, statements, message)) continue;
    const known =
      rows.find((row) => isSamePart(row, said)) ??
      waitingAs(rows, said) ??
      justFitted(rows, said, at);
    const number = said.number ?? known?.number;
    const name =
      said.part === "" ? (known?.part ?? "part") : (known?.part ?? fullPartName(said.part));
    const row: JobPart = {
      part: name,
      state: said.state,
      who,
      at,
      message,
      ...(number === undefined ? {} : { number }),
      ...(said.quantity === undefined ? {} : { quantity: said.quantity }),
      ...(said.due === undefined ? {} : { due: said.due }),
      ...(said.due_on === undefined ? {} : { due_on: said.due_on }),
      ...(said.arrived === undefined ? {} : { arrived: said.arrived }),
      ...(said.decided === undefined ? {} : { decided: said.decided }),
    };
    const again = rows.findIndex((old) => old.state === row.state && isSamePart(old, row));
    if (again < 0) rows.push(row);
    else if (isTold(row, said)) rows[again] = { ...rows[again], ...row };
  }
  return rows;
}

/** "Core swapped" beside "valve core" in the same message: one thing, under its fuller name. */
function isNamedFuller(said: Said, statements: readonly JobStatement[], message: string): boolean {
  const own = ` ${singular(withoutNumber(said.part))}`;
  return statements.some(
    (one) =>
      one.message === message &&
      one.statement.kind === "part" &&
      one.statement.state === "fitted" &&
      singular(one.statement.part).endsWith(own),
  );
}

/** "New motor in" where a condenser fan motor was asked for: the one part that waits under a fuller name. */
function waitingAs(rows: readonly JobPart[], said: Said): JobPart | undefined {
  if (said.part === "") return undefined;
  const own = ` ${singular(withoutNumber(said.part))}`;
  const asked = rows.filter(
    (row, index) =>
      row.state !== "fitted" &&
      !rows.some((one) => isDeclined(one, row)) &&
      !rows.some((one) => one.state === "fitted" && isSamePart(one, row)) &&
      rows.findIndex((one) => isSamePart(one, row)) === index,
  );
  const [only, ...others] = asked.filter((row) => {
    const name = ` ${singular(row.part)}`;
    const unlike = row.number !== undefined && said.number !== undefined;
    return !unlike && (name.endsWith(own) || own.endsWith(name));
  });
  return others.length === 0 ? only : undefined;
}

/** "heater 2 replaced": which of them was changed, where a heater was asked for. */
const withoutNumber = (part: string): string =>
  part.replace(/^((?!compressor|circuit)[^\d]{3,}) \d{1,2}$/, "$1");

const againMs = 60 * 60_000;

/** "Got a defrost sensor, putting it in", then "new sensor in": within the hour the one part that was fitted. */
function justFitted(rows: readonly JobPart[], said: Said, at: string): JobPart | undefined {
  if (said.state !== "fitted" || said.part === "" || said.number !== undefined) return undefined;
  const own = ` ${singular(said.part)}`;
  const [only, ...others] = rows.filter(
    (row) =>
      row.state === "fitted" &&
      singular(row.part).endsWith(own) &&
      Math.abs(Date.parse(at) - Date.parse(row.at)) <= againMs,
  );
  return others.length === 0 ? only : undefined;
}

/** A later mention that says more of the part than its name. */
const isTold = (row: JobPart, said: Said): boolean =>
  row.number !== undefined ||
  row.due !== undefined ||
  row.arrived === true ||
  said.decided !== undefined;

/** Something replaced is a part fitted, unless only the words "replaced" and no thing were said. */
function partSaid(statement: JobStatement["statement"]): Said | undefined {
  if (statement.kind === "part") return statement;
  if (statement.kind !== "action" || statement.action !== "replaced") return undefined;
  if (statement.what === undefined || statement.planned === true) return undefined;
  if (/^(?:too|also|it|that|this|them|those|both|all|one|ones|everything)$/i.test(statement.what))
    return undefined;
  // what his own tool runs on
  if (/^(?:vac(?:uum)? )?pump oil$/i.test(statement.what)) return undefined;
  return { part: statement.what, state: "fitted" };
}

/** Parts that a job still waits for: asked for or ordered, not declined, not here, not fitted. */
export function waitedFor(parts: readonly JobPart[]): readonly JobPart[] {
  const had = parts.filter(({ state, arrived }) => state === "fitted" || arrived === true);
  const open = parts.filter(
    (part) =>
      part.state !== "fitted" &&
      part.arrived !== true &&
      !had.some((one) => isSamePart(one, part)) &&
      !parts.some((one) => isDeclined(one, part)),
  );
  return open.filter((part, index) => open.findIndex((one) => isSamePart(one, part)) === index);
}

/** Whether the last word on a part is that nobody wants it. */
function isDeclined(one: JobPart, part: JobPart): boolean {
  const later = Date.parse(part.at) > Date.parse(one.at) && part.decided !== "declined";
  return one.decided === "declined" && isSamePart(one, part) && !later;
}

export function isSamePart(row: JobPart, said: Pick<Said, "part" | "number">): boolean {
  if (row.number !== undefined && said.number !== undefined) {
    return plain(row.number) === plain(said.number);
  }
  if (said.part === "") return false;
  return singular(row.part) === singular(said.part);
}

const plain = (number: string): string => number.toLowerCase().replace(/[^a-z0-9]/g, "");

/** "filters" and "filter" are one part; "compressor 1" and "compressor" are not told apart by name alone. */
const singular = (name: string): string =>
  fullPartName(
    name
      .toLowerCase()
      .replace(/^(new|a|an|the|another) /, "")
      .replace(/s$/, ""),
  );
