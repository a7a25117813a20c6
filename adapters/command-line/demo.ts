import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { dayRecord } from "../../src/bot/day-record.ts";
import { allJobs } from "../../src/bot/memory.ts";
import { type Bot, openBot, receive, tick, work } from "../../src/bot.ts";
import type { Message } from "../../src/model.ts";
import { putFacts } from "../../src/record/registry.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { boardText } from "../../src/show/board.ts";
import { dayFiles } from "../../src/show/exports/day.ts";
import type { Exit, Io } from "./command.ts";
import {
  before,
  channel,
  day,
  equipment,
  type Line,
  lines,
  roles,
  sites,
  zone,
} from "./demo-script.ts";
import { writeFiles } from "./export.ts";
import { salt } from "./open-db.ts";

export interface DemoOptions {
  /** folder for the store and the files; a fresh one of the system's where it is not told */
  readonly folder?: string;
  /** waits so long that a person can read along; absent: no wait */
  readonly pause?: (letters: number) => Promise<void>;
}

/** Plays an invented working day through the bot and ends by naming the files that it exported. */
export async function playDemo(io: Io, options: DemoOptions = {}): Promise<Exit> {
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), "readback-demo-"));
  const opened = openStore(join(folder, "demo.db"));
  if (!opened.ok) {
    io.complain(opened.problem);
    return 1;
  }
  try {
    for (const site of sites)
      putFacts(opened.store, { kind: "site", key: keyOf(site.name), facts: site });
    for (const unit of equipment) {
      putFacts(opened.store, {
        kind: "equipment",
        key: keyOf(`${unit.site} ${unit.tag}`),
        facts: unit,
      });
    }
    return await playDay(openBot(opened.store, salt), { io, folder, ...options });
  } finally {
    closeStore(opened.store);
  }
}

const keyOf = (name: string | undefined): string => (name ?? "").toLowerCase();

interface Stage extends DemoOptions {
  readonly io: Io;
  readonly folder: string;
}

async function playDay(bot: Bot, stage: Stage): Promise<Exit> {
  const { io } = stage;
  for (const line of before) answersTo(bot, line);
  io.line("An invented day: Isla gives out the jobs, Wren and Tobin text what they measure.");
  io.line("");
  for (const line of lines) await playLine(bot, line, stage);
  io.line("The office exports the day:");
  const exit = writeFiles(await dayFiles(dayRecord(bot.memory, day)), stage.folder, io);
  io.line(`The demo's store is ${join(stage.folder, "demo.db")}.`);
  return exit;
}

async function playLine(bot: Bot, line: Line, stage: Stage): Promise<void> {
  const { io } = stage;
  const said = `${line.at}  ${capital(line.person)}: ${line.text}`;
  const answered = answersTo(bot, line);
  const shown = [said, ...answered.flatMap((text) => indented(text))];
  if (line.board === true) {
    const board = boardText(allJobs(bot.memory), momentOf(line), {});
    shown.push("", "       The dispatcher's board now:", ...indented(board));
  }
  for (const text of [...shown, ""]) {
    io.line(text);
    await stage.pause?.(text.length);
  }
}

/** The bot's answers to one message, clocks that came due before it first. */
function answersTo(bot: Bot, line: Line): readonly string[] {
  const at = momentOf(line);
  const due = tick(bot, at).map((clock) => clock.text);
  receive(bot, { message: messageOf(line) });
  return [...due, ...work(bot).flatMap((done) => done.replies.map((reply) => reply.text))];
}

function momentOf(line: Line): string {
  return line.at.includes("T") ? line.at : `${day}T${line.at}:00${zone}`;
}

function messageOf(line: Line): Message {
  const { id, person, text, thread, edits, deletes } = line;
  return {
    platform: "demo",
    id,
    at: momentOf(line),
    channel,
    person,
    role: roles[person] ?? "tech",
    text,
    files: [],
    ...(thread === undefined ? {} : { thread }),
    ...(edits === undefined ? {} : { edits }),
    ...(deletes === undefined ? {} : { deletes }),
  };
}

const indented = (text: string): readonly string[] =>
  text.split("\n").map((part) => `       | ${part}`);

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
