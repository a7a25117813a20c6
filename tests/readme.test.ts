import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { openBot, receive, work } from "../src/bot.ts";
import { openStore } from "../src/record/store.ts";

const columns = 12;
const width = 100;

/** A line of the exchange with its bar, wrapped as README stands. */
function barred(line: string): readonly string[] {
  const rows: string[] = [];
  let row = "";
  for (const word of line.split(" ")) {
    if (row !== "" && row.length + word.length + 1 > width - columns - 2) {
      rows.push(row);
      row = word;
    } else row = row === "" ? word : `${row} ${word}`;
  }
  return [...rows, row].map((text) => `${" ".repeat(columns)}| ${text}`);
}

/** What the people of the exchange say, answered by the program: the first at 07:03, then every 3 minutes. */
function played(block: string): string {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const said = block.split("\n").filter((line) => !line.startsWith(" "));
  return said
    .flatMap((line, index) => {
      const minutes = 7 * 60 + 3 + 3 * index;
      const time = `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
      const speaker = line.slice(0, columns).trim();
      receive(bot, {
        message: {
          platform: "test",
          id: String(index + 1),
          at: `2026-05-12T${time}:00-05:00`,
          channel: "south",
          person: speaker.toLowerCase(),
          role: speaker === "dispatcher" ? "dispatcher" : "tech",
          text: line.slice(columns).trim(),
          files: [],
        },
      });
      const replies = work(bot).flatMap((done) =>
        done.replies.filter(({ edits }) => edits === undefined),
      );
      return [line, ...replies.flatMap(({ text }) => text.split("\n").flatMap(barred))];
    })
    .join("\n");
}

test("the exchange in README is what the program says", async () => {
  const readme = readFileSync("README.md", "utf8");
  const [, block = ""] = /```\n(dispatcher {2}New job[\s\S]*?)\n```/.exec(readme) ?? [];
  const now = played(block);
  expect(now.split("\n").length).toBeGreaterThan(20);
  await expect(readme.replace(block, () => now)).toMatchFileSnapshot("../README.md");
});
