import { readFileSync } from "node:fs";
import type { Bot } from "../../src/bot.ts";
import { type Imported, importRows } from "../../src/record/import/import-rows.ts";
import type { Command, Exit, Io } from "./command.ts";
import { dbOption, withBot } from "./open-db.ts";
import { type SheetRows, sheetRows } from "./sheet-rows.ts";

/** An import that lasts longer tells how far it is, ms. */
const patience = 1000;

function take(bot: Bot, sheets: readonly SheetRows[], how: { dry: boolean; io: Io }): Exit {
  const { dry, io } = how;
  const began = performance.now();
  const progress = (done: number, of: number): void => {
    if (performance.now() - began > patience) io.complain(`${done} of ${of} rows are done.`);
  };
  const results = sheets.map(({ name, rows, delimiter }) => ({
    name,
    imported: importRows(bot.store, rows, { dry, delimiter, progress }),
  }));
  const known = results.filter(({ imported }) => typeof imported !== "string");
  // a workbook may have sheets of other things beside the lists
  const told = known.length === 0 ? results : known;
  for (const { name } of results.filter((one) => !told.includes(one)))
    io.complain(`Sheet "${name}" holds no list that is known; it was left alone.`);
  const exits = told.map(({ name, imported }) =>
    tell(imported, { sheet: told.length > 1 ? `${name}, ` : "", dry, io }),
  );
  return exits.some((exit) => exit === 1) ? 1 : 0;
}

interface Telling {
  readonly sheet: string;
  readonly dry: boolean;
  readonly io: Io;
}

function tell(imported: Imported | string, { sheet, dry, io }: Telling): Exit {
  if (typeof imported === "string") {
    io.complain(imported);
    return 1;
  }
  const { plural, counts, bad, notes, matched, unused, changes } = imported;
  const would = dry ? " (dry run: nothing was kept)" : "";
  io.line(
    `${plural}: ${counts.added} added, ${counts.changed} changed, ${counts.same} as before, ${bad.length} refused${would}`,
  );
  for (const { line, reason } of bad) io.line(`${sheet}line ${line}: ${reason}`);
  for (const { line, reason } of notes) io.complain(`Look at ${sheet}line ${line}: ${reason}.`);
  for (const { line, reason } of dry ? changes : []) io.line(`${sheet}line ${line} ${reason}`);
  io.complain(
    `Columns: ${matched.map(({ heading, field }) => `${heading} = ${field.replaceAll("_", " ")}`).join(", ")}.`,
  );
  if (unused.length > 0) io.complain(`Columns not used: ${unused.join(", ")}.`);
  return bad.length > 0 ? 1 : 0;
}

/** Takes in the office's files. */
export const importCommand: Command = {
  name: "import",
  usage: "FILE --db DB [--dry-run]",
  about:
    "takes in sites, equipment, fault codes, people, cylinders, parts or limits from CSV or XLSX; the headings tell which",
  options: {
    ...dbOption,
    "dry-run": { type: "boolean", about: "tells what would change and keeps nothing" },
  },
  words: [1, 1],
  run: async (given, io) => {
    const [file = ""] = given.words;
    let bytes: Uint8Array;
    try {
      bytes = readFileSync(file);
    } catch {
      io.complain(`There is no file ${file} that can be read.`);
      return 2;
    }
    const sheets = await sheetRows(bytes);
    if (typeof sheets === "string" || sheets.length === 0) {
      io.complain(typeof sheets === "string" ? sheets : "The file is empty.");
      return 1;
    }
    const dry = given.options["dry-run"] === true;
    return withBot(given, io, { readonly: false, run: (bot) => take(bot, sheets, { dry, io }) });
  },
};
