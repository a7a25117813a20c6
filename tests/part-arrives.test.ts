import { expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { openBot, receive, work } from "../src/bot.ts";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { openStore } from "../src/record/store.ts";

const start = startContext("us", "2026-05-12T08:00:00-05:00");
const statuses = (text: string) =>
  read(text, start).statements.flatMap((one) => (one.kind === "status" ? [one.status] : []));

test.each(["part 60-12E4 arrived", "the 40 A contactor has arrived", "the drive just arrived"])(
  "%s: a thing came, nobody is on site",
  (text) => {
    expect(statuses(text)).toEqual([]);
  },
);

test.each(["arrived", "I have arrived", "RTU-2, just arrived", "OU-3 arrived 9:40"])(
  "%s: somebody is on site",
  (text) => {
    expect(statuses(text)).toEqual(["on_site"]);
  },
);

/** What one job's parts are, and its visits, after messages; those of "maren" are the dispatcher's. */
function after(...said: readonly (readonly [person: string, text: string, thread?: string])[]) {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const first = ["maren", "New job: Gull Wharf OU-3, trips. Bram"] as const;
  for (const [index, [person, text, thread]] of [first, ...said].entries()) {
    receive(bot, {
      message: {
        ...{ platform: "test", id: `m${index}`, channel: "south", person, text, files: [] },
        at: `2026-05-12T08:${String(index).padStart(2, "0")}:00-05:00`,
        role: person === "maren" ? "dispatcher" : "tech",
        ...(thread === undefined ? {} : { thread }),
      },
    });
  }
  work(bot);
  const [job] = allJobs(bot.memory);
  if (job === undefined) throw new Error("no job");
  return job;
}

const visit = [
  ["bram", "here", "m0"],
  ["bram", "need a drive board, part 60-12E4, ordered", "m0"],
  ["bram", "done, leaving", "m0"],
] as const;

test.each([
  ["by its number", ["maren", "part 60-12E4 arrived"]],
  ["in the job's thread", ["maren", "the drive board arrived", "m0"]],
] as const)("a part of a visit that is over arrives %s", (_, news) => {
  const job = after(...visit, news);
  expect(job.parts.some(({ arrived }) => arrived === true)).toBe(true);
  expect(job.visits).toHaveLength(1);
  expect(job.status).toBe("done");
});

test("by its name alone it is no news of a visit that is over", () => {
  const job = after(...visit, ["maren", "the drive board arrived"]);
  expect(job.parts.some(({ arrived }) => arrived === true)).toBe(false);
});
