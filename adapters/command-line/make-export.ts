import { accessSync, constants } from "node:fs";
import { dirname } from "node:path";
import { setFlagsFromString } from "node:v8";
import { anonymousRecord } from "../../src/bot/anonymous-record.ts";
import { exportRecord } from "../../src/bot/export-record.ts";
import { type ExportScope, knownScope, scopeName } from "../../src/bot/export-scope.ts";
import { exportSchema } from "../../src/bot/export-shape.ts";
import { knownToScope } from "../../src/bot/scope-jobs.ts";
import type { Bot } from "../../src/bot.ts";
import { exportFiles } from "../../src/show/exports/export-files.ts";
import { type Exit, type Given, type Io, textOption } from "./command.ts";
import { scopeOf } from "./export-scope.ts";
import { withBot } from "./open-db.ts";
import { workbookElsewhere } from "./workbook-elsewhere.ts";
import { writeFiles } from "./write-files.ts";

async function exportScope(
  bot: Bot,
  scope: ExportScope,
  out: { readonly folder: string; readonly io: Io; readonly anonymous: boolean },
): Promise<Exit> {
  const known = knownScope(knownToScope(bot.memory, scope), scope);
  if (typeof known === "string") {
    out.io.complain(known);
    return 1;
  }
  const record = exportRecord(bot, known);
  if (record.jobs.length === 0) {
    out.io.complain(
      `Nothing was recorded on ${scopeName(known).replace(/^days? /, "")}: the files hold only their headings.`,
    );
  }
  const shared = out.anonymous ? anonymousRecord(record) : record;
  return writeFiles(exportFiles(shared, { workbook: workbookElsewhere }), out.folder, out.io);
}

/** Makes the files that the options ask for. */
export function makeExport(given: Given, io: Io): Promise<Exit> {
  if (given.options.schema === true) {
    io.line(JSON.stringify(exportSchema(), undefined, 2));
    return Promise.resolve(0);
  }
  const scope = scopeOf(given);
  const folder = textOption(given, "out");
  if (typeof scope === "string") {
    io.complain(scope);
    return Promise.resolve(2);
  }
  if (folder === undefined || folder === "") {
    io.complain("Where to? Say --out FOLDER.");
    return Promise.resolve(2);
  }
  const anonymous = given.options.anonymous === true;
  // a large day makes much that is soon let go of: tidied up often it stays in half the memory
  setFlagsFromString("--heap-growing-percent=25");
  // an export keeps its revision; of a copy that cannot be written it is only read
  return withBot(given, io, {
    readonly: !isWritable(textOption(given, "db") ?? ""),
    run: (bot) => exportScope(bot, scope, { folder, io, anonymous }),
  });
}

/** A store that is not there is not made for the sake of an export. */
function isWritable(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    accessSync(dirname(path), constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
