import { createInterface } from "node:readline";
import { z } from "zod";
import { markOut, unsent } from "../../src/record/outbox.ts";
import type { Host, Platform, Running } from "../platform.ts";
import { boardFor, type Speaker, speakerFrom, translate } from "./translate.ts";

const name = "terminal";

const configShape = z.object({
  person: z.string().min(1).default("you"),
  role: z.enum(["tech", "dispatcher", "office"]).default("tech"),
});

/** The chat on this terminal: one line is one message. */
export const terminal: Platform = {
  name,
  start: async (host, config) => {
    const parsed = configShape.safeParse(config ?? {});
    if (!parsed.success) {
      return {
        problem:
          'The terminal knows two settings: "person", a name, and "role": tech, dispatcher or office.',
      };
    }
    return run(host, parsed.data);
  },
};

const welcome = (path: string): readonly string[] => [
  "Type a reading as you would text it: OU-3 comp 1 lead 2 to ground 84 megohm at 500 V",
  "Open a job: New job: Gull Wharf OU-3, not cooling. Then: here, why, what next, status, summary, done.",
  `/as NAME dispatcher changes who types, /board shows the open jobs, /quit ends. Kept in ${path}`,
];

async function run(host: Host, first: Speaker): Promise<Running> {
  let speaker = first;
  let count = 0;
  const print = (text: string): void => {
    process.stdout.write(`${text}\n`);
  };
  const lines = createInterface({
    input: process.stdin,
    output: process.stdout,
    terminal: process.stdin.isTTY === true,
    prompt: "",
  });
  for (const line of welcome(host.bot.store.path)) print(line);
  const ask = (): void => {
    if (process.stdin.isTTY !== true) return;
    lines.setPrompt(`${speaker.person}> `);
    lines.prompt();
  };
  const hear = (text: string): void => {
    if (text.trim() === "/quit") {
      lines.close();
      return;
    }
    if (text.trim() === "/board") print(boardFor(host.bot, host.now()));
    else if (text.startsWith("/as ")) speaker = speakerFrom(text) ?? speaker;
    else if (text.trim() !== "") {
      count += 1;
      const at = host.now();
      host.accept({
        message: translate({ text, at, id: `${at}-${process.pid}-${count}` }, speaker),
      });
      return;
    }
    ask();
  };
  lines.on("line", (text) => {
    try {
      hear(text);
    } catch (error) {
      print(error instanceof Error ? `Not kept: ${error.message}` : "Not kept.");
    }
  });
  const ended = new Promise<void>((resolve) => lines.once("close", resolve));
  ask();
  return {
    ended,
    deliver: async () => {
      for (const row of unsent(host.bot.store, name)) {
        print(row.text);
        for (const file of row.files) print(`  file: ${file.name}`);
        markOut(host.bot.store, row.id, { state: "sent" });
      }
      ask();
    },
    stop: async () => lines.close(),
  };
}
