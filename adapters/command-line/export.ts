import { accessSync, constants, mkdirSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setFlagsFromString } from "node:v8";
import { anonymousRecord } from "../../src/bot/anonymous-record.ts";
import { exportRecord } from "../../src/bot/export-record.ts";
import { type ExportScope, knownScope, scopeName } from "../../src/bot/export-scope.ts";
import { exportSchema } from "../../src/bot/export-shape.ts";
import { knownToScope } from "../../src/bot/scope-jobs.ts";
import type { Bot } from "../../src/bot.ts";
import type { FileOut } from "../../src/model.ts";
import { sealOfBytes } from "../../src/record/sealed.ts";
import { exportFiles } from "../../src/show/exports/export-files.ts";
import { type Command, type Exit, type Given, type Io, textOption } from "./command.ts";
import { scopeOf } from "./export-scope.ts";
import { dbOption, withBot } from "./open-db.ts";

/** Writes each file whole or not at all as it comes, and tells its path. */
export async function writeFiles(
  files: AsyncIterable<FileOut>,
  folder: string,
  io: Io,
): Promise<Exit> {
  for await (const { name, type, bytes } of files) {
    const path = join(folder, name);
    const problem = tryTo(() => {
      mkdirSync(folder, { recursive: true });
      writeFileSync(`${path}.part`, bytes);
      renameSync(`${path}.part`, path);
    });
    if (problem !== undefined) {
      io.complain(`The files can't be written to ${folder}: ${problem}.`);
      return 1;
    }
    io.line(path);
    const seal = type === "application/json" ? sealOfBytes(bytes) : undefined;
    if (seal !== undefined) io.complain(`Seal of ${name} and all that it lists: ${seal}`);
  }
  return 0;
}

function tryTo(write: () => void): string | undefined {
  try {
    write();
    return undefined;
  } catch (error) {
    return reason(error);
  }
}

const reasons = new Map([
  ["ENOSPC", "the disk is full"],
  ["EACCES", "there is no permission to write there"],
  ["EPERM", "there is no permission to write there"],
  ["EROFS", "that disk is read-only"],
  ["ENOTDIR", "a part of that path is a file"],
  ["EEXIST", "there is a file of that name"],
  ["EISDIR", "there is a folder of a file's name"],
]);

function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = "code" in error ? String(error.code) : "";
  return reasons.get(code) ?? error.message;
}

async function exportScope(
  bot: Bot,
  scope: ExportScope,
  out: { readonly folder: string; readonly io: Io; readonly anonymous: boolean },
): Promise<Exit> {
  const known = knownScope(knownToScope(bot.memory, scope), scope);
  if (typeof known === "string") {
    out.io.complain(known);
    return 1;
  }
  const record = exportRecord(bot, known);
  if (record.jobs.length === 0) {
    out.io.complain(
      `Nothing was recorded on ${scopeName(known).replace(/^days? /, "")}: the files hold only their headings.`,
    );
  }
  const shared = out.anonymous ? anonymousRecord(record) : record;
  return writeFiles(exportFiles(shared), out.folder, out.io);
}

function run(given: Given, io: Io): Promise<Exit> {
  if (given.options.schema === true) {
    io.line(JSON.stringify(exportSchema(), undefined, 2));
    return Promise.resolve(0);
  }
  const scope = scopeOf(given);
  const folder = textOption(given, "out");
  if (typeof scope === "string") {
    io.complain(scope);
    return Promise.resolve(2);
  }
  if (folder === undefined || folder === "") {
    io.complain("Where to? Say --out FOLDER.");
    return Promise.resolve(2);
  }
  const anonymous = given.options.anonymous === true;
  // a large day makes much that is soon let go of: tidied up often it stays in half the memory
  setFlagsFromString("--heap-growing-percent=25");
  // an export keeps its revision; of a copy that cannot be written it is only read
  return withBot(given, io, {
    readonly: !isWritable(textOption(given, "db") ?? ""),
    run: (bot) => exportScope(bot, scope, { folder, io, anonymous }),
  });
}

/** A store that is not there is not made for the sake of an export. */
function isWritable(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    accessSync(dirname(path), constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** The office's files of some days or some jobs. */
export const exportCommand: Command = {
  name: "export",
  usage: "--day YYYY-MM-DD --db DB --out DIR",
  about:
    "writes jobs, readings, time, parts, refrigerant and what is due as CSV, XLSX, JSON and a report as PDF; also --from and --to, --job, --site, --unit",
  options: {
    ...dbOption,
    day: { type: "string", about: "the day, in the company's time zone" },
    from: { type: "string", about: "the first of several days" },
    to: { type: "string", about: "the last of them" },
    job: { type: "string", about: "one job, by its number" },
    site: { type: "string", about: "all jobs of a site, by its name" },
    unit: {
      type: "string",
      about: "a unit's whole history, by its tag; with --site where two share it",
    },
    out: { type: "string", about: "folder for the files, made if it is not there" },
    anonymous: {
      type: "boolean",
      about: "without people, places, serial numbers and words: a case to share",
    },
    schema: {
      type: "boolean",
      about: "prints the JSON Schema of the JSON file and does nothing else",
    },
  },
  words: [0, 0],
  run,
};
