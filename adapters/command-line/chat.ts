import type { Command } from "./command.ts";
import { withBot } from "./open-db.ts";

const defaultStore = "readback.db";

/** The chat on this terminal, on a store made on first start. */
export const chatCommand: Command = {
  name: "chat",
  usage: "[--db FILE] [--demo]",
  about: "opens a chat on this terminal",
  options: {
    db: { type: "string", about: `the store, ${defaultStore} unless told` },
    demo: { type: "boolean", about: "plays an invented working day instead" },
    as: { type: "string", about: "your name in the chat" },
    role: { type: "string", about: "tech, dispatcher or office" },
  },
  words: [0, 0],
  run: async (given, io) => {
    if (given.options.demo === true) {
      const { playDemo } = await import("./demo.ts");
      return playDemo(io, process.stdout.isTTY === true ? { pause: readingTime } : {});
    }
    const { plainLog } = await import("../serve/log.ts");
    const { serve } = await import("../serve.ts");
    const { terminal } = await import("../terminal/main.ts");
    const options = { ...given.options, db: given.options.db ?? defaultStore };
    return withBot({ ...given, options }, io, {
      readonly: false,
      run: async (bot) => {
        const { as: person, role } = given.options;
        const made = terminal.configure(
          { ...(person === undefined ? {} : { person }), ...(role === undefined ? {} : { role }) },
          [],
        );
        if (!made.ok) {
          for (const problem of made.problems) io.complain(problem);
          return 2;
        }
        const problem = await serve(bot, {
          platforms: [made.platform],
          log: plainLog(io.complain),
        });
        if (problem === undefined) return 0;
        io.complain(problem);
        return 1;
      },
    });
  },
};

/** As long as a quick reader needs. */
function readingTime(letters: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, Math.min(2500, letters * 15)));
}
