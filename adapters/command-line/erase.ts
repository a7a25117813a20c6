import { eraseMessage } from "../../src/record/words-table.ts";
import type { Command } from "./command.ts";
import { dbOption, withBot } from "./open-db.ts";

/** Erases a message's words where law asks; facts and chain stay. */
export const eraseCommand: Command = {
  name: "erase",
  usage: "PLATFORM MESSAGE-ID --db DB",
  about: "erases what one message said; a dated stub stays and verify still passes",
  options: dbOption,
  words: [2, 2],
  run: async (given, io) =>
    withBot(given, io, {
      readonly: false,
      run: (bot) => {
        const [platform = "", id = ""] = given.words;
        const today = new Date().toISOString().slice(0, 10);
        if (eraseMessage(bot.store, { platform, id }, today)) {
          io.line(`Erased the words of ${platform} message ${id}.`);
          return 0;
        }
        io.complain(`There is no message ${id} of ${platform} with words left to erase.`);
        return 1;
      },
    }),
};
