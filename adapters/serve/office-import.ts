import { keptFile } from "../../src/bot/kept-file.ts";
import { relearn } from "../../src/bot/memory.ts";
import type { Bot } from "../../src/bot.ts";
import type { FileNote, Message } from "../../src/model.ts";
import { type Imported, importRows } from "../../src/record/import/import-rows.ts";
import type { RowWord } from "../../src/record/import/read-rows.ts";
import type { Attached } from "../../src/record/outbox.ts";
import { fileKey, getWords } from "../../src/record/words-table.ts";
import { csvBytes } from "../../src/show/exports/csv.ts";
import { type SheetRows, sheetRows } from "../command-line/sheet-rows.ts";

/** So many rows are named in the answer itself; all of them stand in a file beside it then. */
const mostNamed = 20;

interface Answer {
  readonly text: string;
  readonly files: readonly Attached[];
}

/** Takes in the sheets that came with a message, CSV or XLSX, and says what became of each row. */
export async function importedFrom(bot: Bot, { files }: Message, dry: boolean): Promise<Answer> {
  const answers: Answer[] = [];
  for (const file of files) answers.push(await importedFile(bot, file, dry));
  if (!dry) relearn(bot.memory, bot.store);
  return {
    text: answers.map(({ text }) => text).join("\n"),
    files: answers.flatMap((one) => one.files),
  };
}

const says = (text: string): Answer => ({ text, files: [] });

async function importedFile(bot: Bot, file: FileNote, dry: boolean): Promise<Answer> {
  const bytes = getWords(bot.store, fileKey(file.sha256))?.bytes;
  if (bytes === undefined) return says(`${file.name}: its bytes did not arrive; send it again.`);
  const sheets = await sheetRows(bytes);
  if (typeof sheets === "string") return says(`${file.name}: ${sheets}`);
  if (sheets.length === 0) return says(`${file.name}: the file is empty.`);
  const results = sheets.map((sheet) => ({ sheet, result: take(bot, sheet, dry) }));
  const known = results.filter(({ result }) => typeof result !== "string");
  const told = known.length === 0 ? results.slice(0, 1) : known;
  const answers = told.map(({ sheet, result }) =>
    typeof result === "string"
      ? says(`${file.name}: ${result}`)
      : answerOf(bot, result, { place: told.length > 1 ? `${sheet.name}, ` : "", dry }),
  );
  const left = results.filter((one) => !told.includes(one)).map(({ sheet }) => `"${sheet.name}"`);
  const aside =
    left.length === 0 ? [] : [`Left alone, no list that is known: sheet ${left.join(", ")}.`];
  return {
    text: [...answers.map(({ text }) => text), ...aside].join("\n"),
    files: answers.flatMap((one) => one.files),
  };
}

const take = (bot: Bot, { rows, delimiter }: SheetRows, dry: boolean): Imported | string =>
  importRows(bot.store, rows, { dry, delimiter });

function answerOf(
  bot: Bot,
  imported: Imported,
  { place, dry }: { readonly place: string; readonly dry: boolean },
): Answer {
  const { plural, counts, bad, notes, matched, unused, changes } = imported;
  const would = dry ? " Nothing was kept: a dry run." : "";
  const named = (mark: string) => (word: RowWord) => ({
    line: `${place}line ${word.line}`,
    says: `${mark}${word.reason}`,
  });
  const lines = [
    ...bad.map(named("")),
    ...notes.map(named("look at it: ")),
    ...(dry ? changes.map(named("")) : []),
  ];
  const shown = lines.slice(0, mostNamed).map(({ line, says }) => `${capital(line)}: ${says}`);
  const more = lines.length - shown.length;
  return {
    text: [
      `${plural}: ${counts.added} added, ${counts.changed} changed, ${counts.same} as before, ${bad.length} refused.${would}`,
      `Columns: ${matched.map(({ heading, field }) => `${heading} = ${field.replaceAll("_", " ")}`).join(", ")}.${unused.length === 0 ? "" : ` Not used: ${unused.join(", ")}.`}`,
      ...shown,
      ...(more > 0 ? [`${more} more: see the file.`] : []),
    ].join("\n"),
    files: more > 0 ? [rowsFile(bot, plural, lines)] : [],
  };
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function rowsFile(
  bot: Bot,
  plural: string,
  lines: readonly { readonly line: string; readonly says: string }[],
): Attached {
  const bytes = csvBytes({
    name: plural,
    columns: [
      { name: "line", kind: "text", about: "" },
      { name: "what", kind: "text", about: "" },
    ],
    rows: lines.map(({ line, says }) => [line, says]),
  });
  return keptFile(bot, {
    name: `${plural.replaceAll(" ", "-")}-rows.csv`,
    type: "text/csv",
    bytes,
  });
}
