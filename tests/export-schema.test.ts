import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { z } from "zod";
import { exportSchema } from "../src/bot/export-shape.ts";
import { openBot, receive, work } from "../src/bot.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

/** A validator that knows nothing of this program, on the schema as it is committed. */
const committed = "../fixtures/exports/export.schema.json";
const fields = z.record(z.string(), z.unknown());
const readJson = (path: string) => fields.parse(JSON.parse(readFileSync(path, "utf8")));
const schema = readJson(new URL(committed, import.meta.url).pathname);
const validate = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(
  schema,
);

function faults(file: unknown): readonly string[] {
  if (validate(file)) return [];
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

const folder = mkdtempSync(join(tmpdir(), "schema-"));
const db = join(folder, "day.db");
playOfficeDay({ path: db, played: 3, times: 1, messages: 6 });

async function exported(name: string, ...scope: readonly string[]) {
  const out = join(folder, name);
  const ran = await run(["export", ...scope, "--db", db, "--out", out]);
  expect(ran.exit, ran.complaints).toBe(0);
  const file = readdirSync(out).find((one) => one.endsWith(".json")) ?? "";
  return readJson(join(out, file));
}

/** The same day after a correction, and one more job with all that a record can hold. */
function goOn(): void {
  const opened = openStore(db);
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  const bot = openBot(opened.store, () => `later ${salts++}`);
  const texts = [
    "New job: Cinder School WALK-1, box warm. Odo",
    "here",
    "no, suction was 31",
    "isolated at 340 microns",
    "ten minutes later 380",
    "recovered 4.5 lb into cylinder RC-1, found the leak at the flare and remade it",
    "need a contactor, part 44-1902, due thursday",
    "charged 11.5 lb R-404A",
    "fault code E7, display says over range OL lead 1",
    "done, leaving",
  ];
  for (const [n, text] of texts.entries()) {
    receive(bot, {
      message: {
        ...{ platform: "replay", id: `k${n}`, channel: "south", text, files: [] },
        ...(n === 0 ? {} : { thread: "k0" }),
        ...(n === 0
          ? { person: "maren", role: "dispatcher" as const }
          : { person: "odo", role: "tech" as const }),
        at: `2026-05-12T18:${String(10 + n)}:00-05:00`,
      },
    });
  }
  work(bot);
  closeStore(opened.store);
}

test("the committed schema is the one that the program publishes", async () => {
  const text = `${JSON.stringify(exportSchema(), undefined, 2)}\n`;
  await expect(text).toMatchFileSnapshot(committed);
});

test("every kind of export keeps to it", async () => {
  expect(faults(await exported("first", "--day", "2026-05-12"))).toEqual([]);
  goOn();
  const second = await exported("second", "--day", "2026-05-12");
  expect(second.revision).toBe(2);
  expect(second.changes).not.toEqual([]);
  expect(faults(second)).toEqual([]);
  expect(faults(await exported("job", "--job", "4"))).toEqual([]);
  expect(faults(await exported("site", "--site", "Gull Wharf"))).toEqual([]);
  expect(faults(await exported("unit", "--unit", "WALK-1"))).toEqual([]);
  expect(faults(await exported("range", "--from", "2026-05-01", "--to", "2026-05-31"))).toEqual([]);
  expect(faults(await exported("empty", "--day", "2026-05-13"))).toEqual([]);
  expect(faults(await exported("anonymous", "--job", "4", "--anonymous"))).toEqual([]);
});

test("what does not keep to it is refused", async () => {
  const file = await exported("again", "--job", "1");
  const [first, ...rest] = z.array(fields).parse(file.jobs);
  const [reading, ...others] = z.array(fields).parse(first?.readings);
  const withReading = (changed: object) => ({
    ...file,
    jobs: [{ ...first, readings: [{ ...reading, ...changed }, ...others] }, ...rest],
  });
  expect(faults(withReading({}))).toEqual([]);
  expect(faults(withReading({ relation: "about" }))).not.toEqual([]);
  expect(faults(withReading({ value: [1] }))).not.toEqual([]);
  expect(faults({ ...file, version: 2 })).not.toEqual([]);
  expect(faults({ ...file, seal: "none" })).not.toEqual([]);
  const { digest: _, ...undigested } = file;
  expect(faults(undigested)).not.toEqual([]);
});

test("a file of this version that was written long ago still keeps to it, and verifies", async () => {
  const kept = new URL("../fixtures/exports/kept-day.json", import.meta.url).pathname;
  expect(faults(readJson(kept))).toEqual([]);
  expect((await run(["verify", kept])).exit).toBe(0);
});
