import type { Command } from "./command.ts";
import { dbOption } from "./open-db.ts";

/** The office's files of some days or some jobs. */
export const exportCommand: Command = {
  name: "export",
  usage: "--day YYYY-MM-DD --db DB --out DIR",
  about:
    "writes jobs, readings, time, parts, refrigerant and what is due as CSV, XLSX, JSON and a report as PDF; also --from and --to, --job, --site, --unit",
  options: {
    ...dbOption,
    day: { type: "string", about: "the day, in the company's time zone" },
    from: { type: "string", about: "the first of several days" },
    to: { type: "string", about: "the last of them" },
    job: { type: "string", about: "one job, by its number" },
    site: { type: "string", about: "all jobs of a site, by its name" },
    unit: {
      type: "string",
      about: "a unit's whole history, by its tag; with --site where two share it",
    },
    out: { type: "string", about: "folder for the files, made if it is not there" },
    anonymous: {
      type: "boolean",
      about: "without people, places, serial numbers and words: a case to share",
    },
    schema: {
      type: "boolean",
      about: "prints the JSON Schema of the JSON file and does nothing else",
    },
  },
  words: [0, 0],
  run: async (given, io) => (await import("./make-export.ts")).makeExport(given, io),
};
