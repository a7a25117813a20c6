import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { playConversation } from "./support/conversation.ts";

/** Everything the bot knows between two messages is in its store: a restart at any point is not heard. */
const folder = "fixtures/conversations";
const stories = readdirSync(folder)
  .filter((file) => file.endsWith(".txt"))
  .map((file) => readFileSync(`${folder}/${file}`, "utf8"));

/** Before which messages of each story the program stops, drawn anew for each. */
const places = fc.sample(fc.array(fc.nat({ max: 14 }), { minLength: 2, maxLength: 6 }), {
  numRuns: stories.length,
  seed: 20260512,
});

test.each(stories.map((story, index) => [story.split("\n")[0], story, index] as const))(
  "a restart in mid-conversation is not heard: %s",
  (_title, story, index) => {
    const restarts = new Set(places[index]);
    const played = playConversation(story, (count) => restarts.has(count));
    expect(`${played.lines.join("\n")}\n`).toBe(story);
  },
);
