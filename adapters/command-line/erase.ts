import { clearFreeSpace, eraseMessage } from "../../src/record/erase.ts";
import type { Command } from "./command.ts";
import { dbOption, withBot } from "./open-db.ts";

/** Erases a message's words where law asks; facts and chain stay. */
export const eraseCommand: Command = {
  name: "erase",
  usage: "PLATFORM MESSAGE-ID --db DB",
  about:
    "erases what one message said and the files sent with it; a dated stub stays and verify still passes",
  options: dbOption,
  words: [2, 2],
  run: async (given, io) =>
    withBot(given, io, {
      readonly: false,
      run: (bot) => {
        const [platform = "", id = ""] = given.words;
        const today = new Date().toISOString().slice(0, 10);
        const erased = eraseMessage(bot.store, { platform, id }, today);
        const cleared = clearFreeSpace(bot.store);
        if (!cleared) {
          io.complain(
            "Another program uses the store: the file's free space may still hold what was taken out. Run this again when it has ended.",
          );
        }
        if (erased) {
          io.line(`Erased the words of ${platform} message ${id}, and the files sent with it.`);
          return cleared ? 0 : 1;
        }
        io.complain(`There is no message ${id} of ${platform} with words left to erase.`);
        return 1;
      },
    }),
};
