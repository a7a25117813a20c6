import type { Command } from "./command.ts";

/** What each case's notes mean. */
export const judgeCommand: Command = {
  name: "judge",
  usage: "",
  about:
    "judges cases (NDJSON lines on standard input): findings, diagnosis, next checks, cautions",
  options: {},
  words: [0, 0],
  run: async (_given, io) => (await import("./judge-cases.ts")).judgeCases(io),
};
