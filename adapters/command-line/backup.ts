import { existsSync, renameSync, rmSync } from "node:fs";
import { closeStore, copyStore, openStore, storeProblem } from "../../src/record/store.ts";
import { type Command, type Exit, type Io, textOption } from "./command.ts";
import { dbOption } from "./open-db.ts";

/** Copies a store while the program runs. */
export const backupCommand: Command = {
  name: "backup",
  usage: "FILE --db DB",
  about:
    "copies the store into FILE while it is in use; the copy is checked before it gets its name",
  options: dbOption,
  words: [1, 1],
  run: async (given, io) => {
    const [file = ""] = given.words;
    const db = textOption(given, "db");
    if (db === undefined || db === "") {
      io.complain("Which store? Say --db FILE.");
      return 2;
    }
    if (existsSync(file)) {
      io.complain(
        `${file} is there already; give another name, an older copy is never written over.`,
      );
      return 1;
    }
    return backUp(db, file, io);
  },
};

function backUp(db: string, file: string, io: Io): Exit {
  const opened = openStore(db, { readonly: true });
  if (!opened.ok) {
    io.complain(opened.problem);
    return 1;
  }
  const part = `${file}.part`;
  try {
    const problem = copyStore(opened.store, part);
    if (problem !== undefined) {
      io.complain(problem);
      return 1;
    }
    renameSync(part, file);
    io.line(file);
    io.complain(
      "To go back to it: stop the program, put the copy in the store's place, start again. Keys of encrypted chats are not in it and must not be set back: the bot logs in as a new device instead.",
    );
    return 0;
  } catch (error) {
    io.complain(
      storeProblem(error, file) ??
        `${file} cannot be written: ${error instanceof Error ? error.message : String(error)}.`,
    );
    return 1;
  } finally {
    closeStore(opened.store);
    for (const left of [part, `${part}-wal`, `${part}-shm`]) rmSync(left, { force: true });
  }
}
