import { createReadStream, statSync } from "node:fs";
import type { Readable } from "node:stream";
import { z } from "zod";
import { type Bot, jobOf, receive, tick, work } from "../../src/bot.ts";
import { answersTo, markOut, type OutboxRow, unsent } from "../../src/record/outbox.ts";
import { transact } from "../../src/record/store.ts";
import type { Exit, Given, Io } from "./command.ts";
import { lineGroupsOf, parseLine } from "./lines.ts";
import { withBot } from "./open-db.ts";
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

/** So many lines that have arrived are kept by one write to the disk; our choice, no source. */
const mostTogether = 32;

/** What a line of the script is answered with. */
interface Answered {
  readonly exit: Exit;
  readonly line: object;
  readonly complaint?: string;
  /** what the line tells */
  readonly rows: readonly OutboxRow[];
}

/**
 * One line of the script: clocks that came due before it, then the message and what is said to it.
 * `told`: outbox ids that lines of the same group tell.
 */
function play(bot: Bot, line: ReplayLine, told: ReadonlySet<string>): Answered {
  const { message, bytes } = messageOf(line);
  tick(bot, message.at);
  const fresh = (row: OutboxRow): boolean => row.state !== "sent" && !told.has(row.id);
  const clocks = unsent(bot.store, platform).filter((row) => row.kind === "clock" && fresh(row));
  receive(bot, { message, bytes });
  const results = work(bot);
  // an answer that was not told before a crash is told now
  const worked = [message.id, ...results.map((result) => result.message.id)];
  const replies = [...new Set(worked)]
    .flatMap((id) => answersTo(bot.store, platform, id))
    .filter((row) => row.kind === "reply" && fresh(row));
  const failed = results.find((result) => result.message.id === message.id)?.error;
  return {
    exit: failed === undefined ? 0 : 1,
    line: {
      id: message.id,
      job: jobOf(bot, message),
      replies: replies.map(shown),
      ...(clocks.length === 0 ? {} : { clocks: clocks.map(rung) }),
      ...(failed === undefined
        ? {}
        : { error: "This message could not be worked on; it is kept." }),
    },
    ...(failed === undefined ? {} : { complaint: failed }),
    rows: [...replies, ...clocks],
  };
}

function answerLine(bot: Bot, text: string, told: ReadonlySet<string>): Answered {
  const parsed = parseLine(text, replayShape);
  if (parsed.ok) return play(bot, parsed.value, told);
  return { exit: 1, line: { id: parsed.id, error: parsed.error }, rows: [] };
}

/** Lines that came together: all of them are on the disk before the first answer is told. */
function playTogether(bot: Bot, lines: readonly string[], io: Io): Exit {
  const told = new Set<string>();
  const answers = transact(bot.store, () =>
    lines
      .filter((text) => text.trim() !== "")
      .map((text) => {
        const answer = answerLine(bot, text, told);
        for (const { id } of answer.rows) told.add(id);
        return answer;
      }),
  );
  for (const { line, complaint } of answers) {
    io.line(JSON.stringify(line));
    if (complaint !== undefined) io.complain(complaint);
  }
  if (told.size > 0) {
    transact(bot.store, () => {
      for (const id of told) markOut(bot.store, id, { state: "sent" });
    });
  }
  return answers.some(({ exit }) => exit !== 0) ? 1 : 0;
}

/** Plays the script of a file, or of standard input, into a store. */
export async function playScript(given: Given, io: Io): Promise<Exit> {
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
      for await (const lines of lineGroupsOf(input, mostTogether)) {
        if (playTogether(bot, lines, io) !== 0) exit = 1;
      }
      return exit;
    },
  });
}

function source(file: string, io: Io): Readable | string {
  if (file === "-") return io.input;
  try {
    if (statSync(file).isFile()) return createReadStream(file);
  } catch {
    // told below
  }
  return `There is no file ${file}.`;
}
