import { readFileSync } from "node:fs";
import { rowsOf } from "../../adapters/command-line/csv-rows.ts";
import { relearn } from "../../src/bot/memory.ts";
import { type Bot, openBot, receive, tick, work } from "../../src/bot.ts";
import type { Message, Role } from "../../src/model.ts";
import { importRows } from "../../src/record/import/import-rows.ts";
import { openStore } from "../../src/record/store.ts";

/**
 * A conversation as a person reads it: `# title`, `= date`, then a line a message,
 * "08:02 bram (thread): text" with "edits N" or "deletes N" after the name, N the number of the
 * message it means, "(alone)" a word to the bot in a chat of its own; `> ` begins a line of the bot's. Dispatchers and the office are named below.
 */
const folder = "fixtures/conversations";
const roles: Readonly<Record<string, Role>> = { maren: "dispatcher", ibsen: "office" };
const messageLine =
  /^(\d\d:\d\d(?::\d\d)?) (\w+)(?: edits (\d+)| deletes (\d+))?(?: \((\w[\w-]*)\))?:(?: (.*))?$/;

export interface Conversation {
  readonly lines: readonly string[];
  readonly replies: readonly string[];
  /** as it stands at the end */
  readonly bot: Bot;
}

function botOfTheHouse(): Bot {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  for (const file of ["sites", "equipment", "fault-codes", "cylinders"]) {
    const rows = rowsOf(readFileSync(`${folder}/${file}.csv`, "utf8"));
    if (typeof rows === "string") throw new Error(rows);
    importRows(opened.store, rows);
  }
  const bot = openBot(opened.store, () => "salt");
  relearn(bot.memory, opened.store);
  return bot;
}

/** Plays what people say in a transcript; gives the transcript as it should read, replies and all. */
export function playConversation(
  text: string,
  /** whether the program stops and starts again before this message */
  restartsBefore: (count: number) => boolean = () => false,
): Conversation {
  let bot = botOfTheHouse();
  const lines: string[] = [];
  const replies: string[] = [];
  let date = "2026-05-12";
  let count = 0;
  const say = (mark: string, said: string): void => {
    replies.push(said);
    lines.push(...said.split("\n").map((line, index) => `> ${index === 0 ? mark : ""}${line}`));
  };
  for (const line of text.split("\n")) {
    if (line.startsWith(">") || line.trim() === "") continue;
    if (line.startsWith("= ")) date = line.slice(2).trim();
    const match = messageLine.exec(line);
    if (match === null) {
      if (!/^[#=]/.test(line)) throw new Error(`not a line of a conversation: ${line}`);
      lines.push(line);
      continue;
    }
    count += 1;
    // a new program on the same store: nothing else is carried over
    if (restartsBefore(count)) bot = openBot(bot.store, () => "salt");
    const message = messageOf(match, { id: String(count), date });
    for (const { text: asked, channel } of tick(bot, message.at)) {
      say(channel === "south" ? "(clock) " : `(clock in ${channel}) `, asked);
    }
    lines.push("", line);
    receive(bot, { message });
    for (const { error, replies: rows } of work(bot)) {
      if (error !== undefined) throw new Error(error);
      for (const row of rows) {
        const elsewhere = row.channel !== message.channel && row.kind === "reply";
        const mark = row.edits === undefined ? "" : "(mends) ";
        say(elsewhere ? `(in ${row.channel}) ${mark}` : mark, row.text);
      }
    }
  }
  return { lines, replies, bot };
}

function messageOf(
  match: RegExpExecArray,
  known: { readonly id: string; readonly date: string },
): Message {
  const [, time = "", person = "", edits, deletes, thread, text = ""] = match;
  return {
    platform: "test",
    id: known.id,
    at: `${known.date}T${time.length === 5 ? `${time}:00` : time}-05:00`,
    channel: thread === "alone" ? `direct:${person}` : "south",
    person,
    role: roles[person] ?? "tech",
    text,
    files: [],
    ...(edits === undefined ? {} : { edits }),
    ...(deletes === undefined ? {} : { deletes }),
    ...(thread === undefined || thread === "alone" ? {} : { thread }),
  };
}
