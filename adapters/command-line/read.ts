import type { Command } from "./command.ts";

/** What is understood of each text. */
export const readCommand: Command = {
  name: "read",
  usage: '["some text"]',
  about:
    "reads notes (NDJSON lines on standard input, or the words given) and prints what is understood",
  options: {
    units: { type: "string", about: "us or si: the company's habit, with words" },
    verbose: { type: "boolean", short: "v", about: "with words: tokens, rules and spans too" },
  },
  words: [0, Number.POSITIVE_INFINITY],
  // the reader takes longer to load than most commands to do their work
  run: async (given, io) => (await import("./read-notes.ts")).readNotes(given, io),
};
