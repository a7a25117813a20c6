import { randomBytes } from "node:crypto";
import type { Bot } from "../../src/bot/desk.ts";
import { openBot } from "../../src/bot/open-bot.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { type Exit, type Given, type Io, textOption } from "./command.ts";

export const dbOption = {
  db: { type: "string", about: "the store: one SQLite file" },
} as const;

/** Fresh random text for each thing that is hashed. */
export const salt = (): string => randomBytes(16).toString("hex");

/** Runs something on the bot of the store named by --db; what stands in the way is one sentence. */
export async function withBot(
  given: Given,
  io: Io,
  use: { readonly readonly: boolean; readonly run: (bot: Bot) => Exit | Promise<Exit> },
): Promise<Exit> {
  const path = textOption(given, "db");
  if (path === undefined || path === "") {
    io.complain("Which store? Say --db FILE.");
    return 2;
  }
  const opened = openStore(path, { readonly: use.readonly });
  if (!opened.ok) {
    io.complain(opened.problem);
    return 1;
  }
  try {
    return await use.run(openBot(opened.store, salt));
  } finally {
    closeStore(opened.store);
  }
}
