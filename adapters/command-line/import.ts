import { readFileSync } from "node:fs";
import type { Bot } from "../../src/bot.ts";
import { importRows } from "../../src/record/import/import-rows.ts";
import type { Command, Exit, Io } from "./command.ts";
import { rowsOf } from "./csv-rows.ts";
import { dbOption, withBot } from "./open-db.ts";

function take(bot: Bot, text: string, io: Io): Exit {
  const rows = rowsOf(text);
  const imported = typeof rows === "string" ? rows : importRows(bot.store, rows);
  if (typeof imported === "string") {
    io.complain(imported);
    return 1;
  }
  const { plural, counts, bad, unused } = imported;
  io.line(
    `${plural}: ${counts.added} added, ${counts.changed} changed, ${counts.same} as before, ${bad.length} refused`,
  );
  for (const { line, reason } of bad) io.line(`line ${line}: ${reason}`);
  if (unused.length > 0) io.complain(`Columns not used: ${unused.join(", ")}.`);
  return bad.length > 0 ? 1 : 0;
}

/** Takes in the office's files. */
export const importCommand: Command = {
  name: "import",
  usage: "FILE.csv --db DB",
  about: "takes in sites, equipment, fault codes, people or cylinders; the headings tell which",
  options: dbOption,
  words: [1, 1],
  run: async (given, io) => {
    const [file = ""] = given.words;
    let text: string;
    try {
      text = readFileSync(file, "utf8");
    } catch {
      io.complain(`There is no file ${file} that can be read.`);
      return 2;
    }
    return withBot(given, io, { readonly: false, run: (bot) => take(bot, text, io) });
  },
};
