import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { z } from "zod";
import { saidOf } from "../src/record/outbox.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";
import { copyOfBuild } from "./support/build-copy.ts";
import { randomFrom } from "./support/random.ts";

/** How often the program is killed; each store sees several kills before it may finish. */
const kills = Number(process.env.READBACK_KILLS ?? 20);
const killsPerStore = 5;
/** Other seeds kill at other points: a thousand kills are made in portions. */
const seed = Number(process.env.READBACK_SEED ?? 20260512);
/** How many times as long as usual is waited for, where the machine has other work to do. */
const patience = Number(process.env.READBACK_PATIENCE ?? 1);
const main = copyOfBuild("crash");
const script = "fixtures/days/day-b/day.jsonl";
const lines = 64;

const folder = mkdtempSync(join(tmpdir(), "crash-"));

const answer = z.object({
  id: z.string(),
  replies: z.array(z.object({ id: z.string(), text: z.string() })),
});

interface Run {
  readonly told: ReadonlyMap<string, string>;
  readonly killed: boolean;
}

/** Plays the day; killed outright some moments after so many answers, where told. */
function play(
  db: string,
  kill?: { readonly after: number; readonly waitMs: number },
): Promise<Run> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [main, "replay", script, "--db", db], {
      stdio: ["ignore", "pipe", "pipe"],
    });
    let out = "";
    let seen = 0;
    let doomed = false;
    let errors = "";
    child.stderr.on("data", (chunk: Buffer) => {
      errors += chunk.toString();
    });
    child.stdout.on("data", (chunk: Buffer) => {
      out += chunk.toString();
      seen = out.split("\n").length - 1;
      if (kill === undefined || doomed || seen < kill.after) return;
      doomed = true;
      setTimeout(() => child.kill("SIGKILL"), kill.waitMs);
    });
    child.on("close", (code, signal) => {
      if (signal === null && code !== 0) return reject(new Error(`exit ${code}: ${errors}`));
      const told = new Map<string, string>();
      // a killed run may leave half a line
      for (const line of out.split("\n").slice(0, -1)) {
        for (const reply of answer.parse(JSON.parse(line)).replies) told.set(reply.id, reply.text);
      }
      resolve({ told, killed: signal === "SIGKILL" });
    });
  });
}

/** Records and answers, without what is random by design (salts and hashes). */
function stateOf(db: string): { readonly records: string; readonly said: readonly string[] } {
  const shown = spawnSync(process.execPath, [main, "show", "--all", "--json", "--db", db], {
    encoding: "utf8",
  });
  expect(shown.stderr).toBe("");
  const opened = openStore(db);
  if (!opened.ok) throw new Error(opened.problem);
  const said = ["reply" as const, "clock" as const].flatMap((kind) =>
    saidOf(opened.store, kind).map(({ id, text, state }) => `${id} ${state} ${text}`),
  );
  expect(verifyStore(opened.store).faults).toEqual([]);
  closeStore(opened.store);
  return { records: shown.stdout, said };
}

test(
  `after each of ${kills} kills at random points the record and the answers are those of a quiet run`,
  async () => {
    const quiet = join(folder, "quiet.db");
    const undisturbed = await play(quiet);
    const wanted = stateOf(quiet);
    const random = randomFrom(seed);
    let landed = 0;
    for (let store = 0; landed < kills; store++) {
      const db = join(folder, `killed-${store}.db`);
      const told = new Map<string, string>();
      for (let run = 0; run < killsPerStore && landed < kills; run++) {
        const kill = { after: Math.floor(random() * lines), waitMs: Math.floor(random() * 8) };
        const result = await play(db, kill);
        if (result.killed) landed += 1;
        for (const [id, text] of result.told) told.set(id, text);
      }
      const last = await play(db);
      for (const [id, text] of last.told) told.set(id, text);
      const state = stateOf(db);
      expect(state.said).toEqual(wanted.said);
      // a line a job, so that a difference can be read
      expect(state.records === wanted.records, firstDifference(state.records, wanted.records)).toBe(
        true,
      );
      expect(new Map([...told].sort())).toEqual(new Map([...undisturbed.told].sort()));
    }
    expect(landed).toBe(kills);
  },
  1_500_000 * patience,
);

function firstDifference(is: string, should: string): string {
  const at = [...is].findIndex((letter, index) => letter !== should[index]);
  return `${is.slice(Math.max(0, at - 200), at + 100)}\n!==\n${should.slice(Math.max(0, at - 200), at + 100)}`;
}
