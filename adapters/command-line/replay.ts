import { createReadStream, statSync } from "node:fs";
import type { Readable } from "node:stream";
import { z } from "zod";
import { type Bot, jobOf, receive, tick, work } from "../../src/bot.ts";
import { answersTo, markOut, type OutboxRow, unsent } from "../../src/record/outbox.ts";
import type { Command, Exit, Io } from "./command.ts";
import { linesOf, parseLine } from "./lines.ts";
import { dbOption, withBot } from "./open-db.ts";
import { messageOf, platform, type ReplayLine, replayShape } from "./replay-line.ts";

function shown(row: OutboxRow): object {
  const { id, channel, thread, text, files, edits } = row;
  return {
    id,
    channel,
    ...(thread === undefined ? {} : { thread }),
    text,
    files: files.map(({ name, type, size }) => ({ name, type, size })),
    ...(edits === undefined ? {} : { edits }),
  };
}

const detailShape = z.object({ job: z.number(), due: z.string() });

/** A clock's question as it is told. */
function rung({ channel, thread, text, detail }: OutboxRow): object {
  const { due, job } = detailShape.parse(JSON.parse(detail ?? "{}"));
  return { due, job, channel, ...(thread === undefined ? {} : { thread }), text };
}

/** One line of the script: clocks that came due before it, then the message and what is said to it. */
function play(bot: Bot, line: ReplayLine, io: Io): Exit {
  const { message, bytes } = messageOf(line);
  tick(bot, message.at);
  const clocks = unsent(bot.store, platform).filter(({ kind }) => kind === "clock");
  receive(bot, { message, bytes });
  const results = work(bot);
  // an answer that was not told before a crash is told now
  const worked = [message.id, ...results.map((result) => result.message.id)];
  const rows = [...new Set(worked)]
    .flatMap((id) => answersTo(bot.store, platform, id))
    .filter(({ state, kind }) => state !== "sent" && kind === "reply");
  const failed = results.find((result) => result.message.id === message.id)?.error;
  io.line(
    JSON.stringify({
      id: message.id,
      job: jobOf(bot, message),
      replies: rows.map(shown),
      ...(clocks.length === 0 ? {} : { clocks: clocks.map(rung) }),
      ...(failed === undefined
        ? {}
        : { error: "This message could not be worked on; it is kept." }),
    }),
  );
  for (const row of [...rows, ...clocks]) markOut(bot.store, row.id, { state: "sent" });
  if (failed === undefined) return 0;
  io.complain(failed);
  return 1;
}

/** Plays a scripted chat into a store. */
export const replayCommand: Command = {
  name: "replay",
  usage: "FILE --db DB",
  about:
    "plays a scripted chat (NDJSON, one message a line; - is standard input) and prints the replies",
  options: dbOption,
  words: [1, 1],
  run: async (given, io) => {
    const [file = "-"] = given.words;
    const input = source(file, io);
    if (typeof input === "string") {
      io.complain(input);
      return 2;
    }
    return withBot(given, io, {
      readonly: false,
      run: async (bot) => {
        let exit: Exit = 0;
        for await (const text of linesOf(input)) {
          if (text.trim() === "") continue;
          const parsed = parseLine(text, replayShape);
          if (parsed.ok) {
            if (play(bot, parsed.value, io) !== 0) exit = 1;
          } else {
            exit = 1;
            io.line(JSON.stringify({ id: parsed.id, error: parsed.error }));
          }
        }
        return exit;
      },
    });
  },
};

function source(file: string, io: Io): Readable | string {
  if (file === "-") return io.input;
  try {
    if (statSync(file).isFile()) return createReadStream(file);
  } catch {
    // told below
  }
  return `There is no file ${file}.`;
}
