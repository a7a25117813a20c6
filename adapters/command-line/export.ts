import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { dayRecord } from "../../src/bot/day-record.ts";
import type { Bot } from "../../src/bot.ts";
import type { FileOut } from "../../src/model.ts";
import { dayFiles } from "../../src/show/exports/day.ts";
import { touchedOnDay } from "../../src/show/exports/sheet-source.ts";
import { type Command, type Exit, type Given, type Io, textOption } from "./command.ts";
import { dbOption, withBot } from "./open-db.ts";

/** A calendar day that exists, "2026-05-12"; undefined for anything else. */
function realDay(text: string | undefined): string | undefined {
  if (text === undefined || !/^\d{4}-\d\d-\d\d$/.test(text)) return undefined;
  const date = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== text
    ? undefined
    : text;
}

/** Writes each file whole or not at all, and tells its path. */
export function writeFiles(files: readonly FileOut[], folder: string, io: Io): Exit {
  try {
    mkdirSync(folder, { recursive: true });
    for (const { name, bytes } of files) {
      const path = join(folder, name);
      writeFileSync(`${path}.part`, bytes);
      renameSync(`${path}.part`, path);
      io.line(path);
    }
    return 0;
  } catch (error) {
    io.complain(`The files can't be written to ${folder}: ${reason(error)}.`);
    return 1;
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

async function exportDay(bot: Bot, day: string, out: { folder: string; io: Io }): Promise<Exit> {
  const record = dayRecord(bot.memory, day);
  if (!record.jobs.some(({ job }) => touchedOnDay(record, job))) {
    out.io.complain(`Nothing was recorded on ${day}: the files hold only their headings.`);
  }
  return writeFiles(await dayFiles(record), out.folder, out.io);
}

function run(given: Given, io: Io): Promise<Exit> {
  const day = realDay(textOption(given, "day"));
  const folder = textOption(given, "out");
  if (day === undefined) {
    io.complain("Which day? Say --day YYYY-MM-DD.");
    return Promise.resolve(2);
  }
  if (folder === undefined || folder === "") {
    io.complain("Where to? Say --out FOLDER.");
    return Promise.resolve(2);
  }
  return withBot(given, io, { readonly: true, run: (bot) => exportDay(bot, day, { folder, io }) });
}

/** The office's files of one day. */
export const exportCommand: Command = {
  name: "export",
  usage: "--day YYYY-MM-DD --db DB --out DIR",
  about: "writes a day's jobs, readings, time, parts and refrigerant as CSV and one XLSX",
  options: {
    ...dbOption,
    day: { type: "string", about: "the day, in the company's time zone" },
    out: { type: "string", about: "folder for the files, made if it is not there" },
  },
  words: [0, 0],
  run,
};
