import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { run } from "./support/run.ts";

interface Answer {
  readonly job: number | null;
  readonly replies: readonly {
    readonly text: string;
    readonly files: readonly {
      readonly name: string;
      readonly type: string;
      readonly size: number;
    }[];
  }[];
}

/** What the bot answers to the last of some messages on one job. */
async function answerTo(...texts: readonly string[]): Promise<Answer | undefined> {
  const folder = mkdtempSync(join(tmpdir(), "plots-"));
  const lines = texts.map((text, n) =>
    JSON.stringify({
      id: `m${n}`,
      at: `2026-05-12T08:${String(n).padStart(2, "0")}:00-05:00`,
      channel: "south",
      person: text.startsWith("New job") ? "maren" : "bram",
      role: text.startsWith("New job") ? "dispatcher" : "tech",
      text,
    }),
  );
  writeFileSync(join(folder, "day.jsonl"), `${lines.join("\n")}\n`);
  const ran = await run(["replay", join(folder, "day.jsonl"), "--db", join(folder, "day.db")]);
  const answers: Answer[] = ran.out.map((line) => JSON.parse(line));
  return answers.at(-1);
}

const opened = ["New job: Gull Wharf OU-3, warm. Bram", "here"];
const stand = ["isolated at 340 microns", "5 minutes later 372", "10 minutes later 380"];

test.each([
  ["plot the vacuum", stand, "vacuum", /OU-3: vacuum after isolation\. Stays below the hold/],
  ["Readback, plot the vacuum of OU-3 please", stand, "vacuum", /vacuum after isolation/],
  [
    "graph the insulation",
    ["comp 1 lead 1 84 meg lead 2 86 lead 3 0.4 at 500 v"],
    "insulation",
    /OU-3 compressor 1: insulation by lead/,
  ],
  ["plot inrush", ["comp 1 start peak 84 A, then 40 A, then 14.1 A"], "start", /current at start/],
  [
    "plot the nitrogen hold",
    ["nitrogen 500 psi at 81 F pipe", "nitrogen 498 psi at 80 F pipe"],
    "nitrogen",
    /OU-3: nitrogen hold/,
  ],
])("%s", async (asked, said, name, says) => {
  const answer = await answerTo(...opened, ...said, asked);
  expect(answer?.job).toBe(1);
  expect(answer?.replies[0]?.text).toMatch(says);
  const [file] = answer?.replies[0]?.files ?? [];
  expect(file).toMatchObject({ name: `job-1-${name}.png`, type: "image/png" });
  expect(file?.size).toBeGreaterThan(4000);
});

test("what cannot be plotted yet says what it would need; without a job the bot asks for it", async () => {
  const early = await answerTo(...opened, "plot the vacuum");
  expect(early?.replies[0]).toMatchObject({
    text: "OU-3: no vacuum plot yet. It needs two vacuum readings with their times after isolation.",
    files: [],
  });
  const nowhere = await answerTo("plot the vacuum");
  expect(nowhere?.replies[0]?.text).toMatch(/^A plot of which job\?/);
});

test.each(["plot twist, the vacuum pump died", "chart says 118 psi", "plot the vacuum 380 micron"])(
  "%s is no order for a plot",
  async (text) => {
    const answer = await answerTo(...opened, ...stand, text);
    expect(answer?.replies.flatMap(({ files }) => files)).toEqual([]);
  },
);
