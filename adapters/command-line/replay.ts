import type { Command } from "./command.ts";
import { dbOption } from "./open-db.ts";

/** Plays a scripted chat into a store. */
export const replayCommand: Command = {
  name: "replay",
  usage: "FILE --db DB",
  about:
    "plays a scripted chat (NDJSON, one message a line; - is standard input) and prints the replies",
  options: dbOption,
  words: [1, 1],
  run: async (given, io) => (await import("./play-script.ts")).playScript(given, io),
};
