import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { playConversation } from "./support/conversation.ts";
import { lintReply } from "./support/lint-reply.ts";

const folder = "fixtures/conversations";
const stories = readdirSync(folder).filter((file) => file.endsWith(".txt"));

test("there are at least forty stories, each with a title of its own", () => {
  const titles = stories.map((file) => readFileSync(`${folder}/${file}`, "utf8").split("\n")[0]);
  expect(stories.length).toBeGreaterThanOrEqual(40);
  expect(new Set(titles).size).toBe(stories.length);
  for (const title of titles) expect(title).toMatch(/^# .{10,}/);
});

describe.each(stories)("%s", (file) => {
  const path = `${folder}/${file}`;

  test("reads as written, and keeps the rules of a reply", async () => {
    const { lines, replies } = playConversation(readFileSync(path, "utf8"));
    await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot(`../${path}`);
    const faults = replies.flatMap((reply) =>
      lintReply(reply, { lines: 14 }).map((fault) => `${fault}: ${reply}`),
    );
    expect(faults).toEqual([]);
  });
});
