import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { exportRecord } from "../../src/bot/export-record.ts";
import { allJobs } from "../../src/bot/memory.ts";
import { type Bot, openBot, receive, tick, work } from "../../src/bot.ts";
import type { Message } from "../../src/model.ts";
import { saidOf } from "../../src/record/outbox.ts";
import { putFacts } from "../../src/record/registry.ts";
import { writeSetting } from "../../src/record/settings.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { boardText } from "../../src/show/board.ts";
import { exportFiles } from "../../src/show/exports/export-files.ts";
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
import { salt } from "./open-db.ts";
import { writeFiles } from "./write-files.ts";

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
    writeSetting(opened.store, "board_channel", "dispatch");
    writeSetting(opened.store, "board_platform", "demo");
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
  for (const line of before) played(bot, line);
  io.line("An invented day: Isla gives out the jobs, Wren and Tobin text what they measure.");
  io.line("");
  for (const line of lines) await playLine(bot, line, stage);
  io.line("The office exports the day:");
  const files = exportFiles(exportRecord(bot, { kind: "day", day }));
  const exit = await writeFiles(files, stage.folder, io);
  io.line(`The demo's store is ${join(stage.folder, "demo.db")}.`);
  return exit;
}

async function playLine(bot: Bot, line: Line, stage: Stage): Promise<void> {
  const { io } = stage;
  const { due, answers, alerts } = played(bot, line);
  const shown = [
    ...due.flatMap(({ at, text }) => [`${at.slice(11, 16)}  a clock comes due`, ...indented(text)]),
    `${line.at}  ${capital(line.person)}: ${line.text}`,
    ...answers.flatMap(indented),
    ...alerts.map((text) => `       to the dispatcher: ${text}`),
  ];
  if (line.board === true) {
    const board = boardText(allJobs(bot.memory), momentOf(line), {});
    shown.push("", "       The dispatcher's board now:", ...indented(board));
  }
  for (const text of [...shown, ""]) {
    io.line(text);
    await stage.pause?.(text.length);
  }
}

interface Played {
  readonly due: readonly { readonly at: string; readonly text: string }[];
  readonly answers: readonly string[];
  readonly alerts: readonly string[];
}

/** One message through the bot: clocks that came due before it, its answers, what it calls for. */
function played(bot: Bot, line: Line): Played {
  const known = saidOf(bot.store, "alert").length;
  const due = tick(bot, momentOf(line)).map((clock) => ({ at: clock.due, text: clock.text }));
  receive(bot, { message: messageOf(line) });
  const replies = work(bot).flatMap((done) => done.replies);
  // an earlier answer is mended where it stands: only what changed is told here
  const answers = replies.map(({ text, edits }) =>
    edits === undefined ? text : `(in the answer above) ${text.split("\n").at(-1) ?? ""}`,
  );
  const alerts = saidOf(bot.store, "alert").slice(known);
  return { due, answers, alerts: alerts.map(({ text }) => text) };
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
