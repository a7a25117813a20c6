import { everyJob, jobAt } from "../../src/bot/rest.ts";
import { showJob } from "../../src/bot/show-job.ts";
import type { Bot } from "../../src/bot.ts";
import type { Job } from "../../src/model.ts";
import { readLinks } from "../../src/record/entries-table.ts";
import { boardText } from "../../src/show/board.ts";
import type { Command, Exit, Given, Io } from "./command.ts";
import { dbOption, withBot } from "./open-db.ts";

function show(bot: Bot, given: Given, io: Io): Exit {
  if (given.options.record === true) {
    for (const link of readLinks(bot.store)) io.line(JSON.stringify(link));
    return 0;
  }
  const [word] = given.words;
  const one = word === undefined ? undefined : jobAt(bot.memory, numberOf(word));
  if (word !== undefined && one === undefined) {
    io.complain(`There is no job ${word} in this store.`);
    return 1;
  }
  for (const job of one === undefined ? everyJob(bot.memory) : [one]) {
    io.line(given.options.json === true ? JSON.stringify(showJob(bot.memory, job)) : plain(job));
  }
  return 0;
}

const numberOf = (word: string): number =>
  /^#?\d+$/.test(word) ? Number(word.replace("#", "")) : -1;

function plain(job: Job): string {
  const lines = job.timeline.map(({ at, who, says }) => `  ${at.slice(0, 16)} ${who}: ${says}`);
  return [boardText([job], job.status_at), ...lines].join("\n");
}

/** Job records out of a store. */
export const showCommand: Command = {
  name: "show",
  usage: "JOB --db DB [--json], show --all --db DB [--json]",
  about: "prints a job's record, or all of them, one a line",
  options: {
    ...dbOption,
    all: { type: "boolean", about: "every job" },
    json: { type: "boolean", about: "as JSON" },
    record: { type: "boolean", about: "with --all: the chained entries themselves, for verify" },
  },
  words: [0, 1],
  run: async (given, io) => {
    const all = given.options.all === true;
    if (all === given.words.length > 0) {
      io.complain("Say which job, or --all.");
      return 2;
    }
    return withBot(given, io, { readonly: true, run: (bot) => show(bot, given, io) });
  },
};
