import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { playDemo } from "../adapters/command-line/demo.ts";
import { lines } from "../adapters/command-line/demo-script.ts";
import { exportCommand } from "../adapters/command-line/export.ts";
import { lintReply } from "./support/lint-reply.ts";

const folder = mkdtempSync(join(tmpdir(), "readback-demo-test-"));
const played: string[] = [];
afterAll(() => rmSync(folder, { recursive: true }));

function io(said: string[], complaints: string[] = []) {
  return {
    input: Readable.from([]),
    line: (text: string) => said.push(text),
    complain: (text: string) => complaints.push(text),
  };
}

/** Runs `export` with its options; what it printed, what it complained of, and how it ended. */
async function exported(options: Readonly<Record<string, string>>) {
  const said: string[] = [];
  const complaints: string[] = [];
  const exit = await exportCommand.run({ words: [], options }, io(said, complaints));
  return { said, complaints, exit };
}

describe("the demo", () => {
  beforeAll(async () => {
    await playDemo(io(played), { folder });
  });

  it("shows every message of the day, in order", () => {
    const shown = lines.map((line) => played.findIndex((text) => text.includes(`: ${line.text}`)));
    expect(shown).toEqual([...shown].sort((a, b) => a - b));
    expect(shown).not.toContain(-1);
  });

  it("shows each answer in lines that keep the rules", () => {
    const answers = played.filter((text) => text.startsWith("       | "));
    const faults = answers.flatMap((text) =>
      lintReply(text.slice(9).trim() || "-", { lines: 1, words: 60 }),
    );
    expect(faults).toEqual([]);
  });

  it("ends by naming files that are there", () => {
    const named = played.filter((text) => /\.(csv|xlsx|pdf|json)$/.test(text));
    expect(
      named.some((path) => path.endsWith("-report.pdf") || path.endsWith("-reports.pdf")),
    ).toBe(true);
    expect(named.length).toBeGreaterThanOrEqual(9);
    expect(named.every((path) => existsSync(path))).toBe(true);
  });
});

describe("export --day", () => {
  const db = join(folder, "demo.db");

  it("writes the same bytes each time", async () => {
    const out = join(folder, "again");
    const { said, exit } = await exported({ day: "2026-07-14", db, out });
    expect(exit).toBe(0);
    for (const path of said) {
      expect(readFileSync(path)).toEqual(readFileSync(path.replace(out, folder)));
    }
  });

  it.each([
    [
      { day: "2026-02-30", db, out: folder },
      expect.stringMatching(/^Which day[?] Say --day YYYY-MM-DD/),
    ],
    [{ db, out: folder }, expect.stringMatching(/^Which day[?] Say --day YYYY-MM-DD/)],
    [{ day: "2026-07-14", db }, "Where to? Say --out FOLDER."],
  ])("asks for what is missing: %j", async (options, sentence) => {
    expect(await exported(options)).toEqual({ said: [], complaints: [sentence], exit: 2 });
  });

  it("says in one sentence why files can't be written", async () => {
    const file = join(folder, "file");
    writeFileSync(file, "x");
    const { complaints, exit } = await exported({
      day: "2026-07-14",
      db,
      out: join(file, "deeper"),
    });
    expect(exit).toBe(1);
    expect(complaints).toEqual([
      `The files can't be written to ${join(file, "deeper")}: a part of that path is a file.`,
    ]);
  });

  it("says so where nothing was recorded on the day", async () => {
    const out = join(folder, "empty");
    const { said, complaints, exit } = await exported({ day: "2020-01-01", db, out });
    expect(complaints).toEqual([
      expect.stringMatching(/^Nothing was recorded on 2020-01-01/),
      expect.stringMatching(/^Seal of 2020-01-01\.json /),
    ]);
    expect(exit).toBe(0);
    expect(said.length).toBeGreaterThanOrEqual(8);
  });
});
