import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { commands } from "../adapters/command-line/commands.ts";
import { run } from "./support/run.ts";

const folder = mkdtempSync(join(tmpdir(), "cli-"));
let count = 0;
const fresh = (ending: string): string => join(folder, `${count++}.${ending}`);

function written(text: string | Buffer, ending: string): string {
  const path = fresh(ending);
  writeFileSync(path, text);
  return path;
}

const message = (id: string, text: string, more: object = {}): string =>
  JSON.stringify({
    id,
    at: "2026-05-12T08:00:00-05:00",
    channel: "south",
    person: "maren",
    role: "dispatcher",
    text,
    ...more,
  });

const lineShape = z.looseObject({ id: z.union([z.string(), z.number(), z.null()]) });
const parsed = (line: string | undefined): Record<string, unknown> =>
  lineShape.parse(JSON.parse(line ?? ""));

describe("wrong usage", () => {
  test("an unknown command, an unknown option, a missing word each get one sentence and exit 2", async () => {
    for (const args of [
      ["bogus"],
      ["read", "--bogus"],
      ["replay"],
      ["replay", "a", "b", "--db", "c"],
      ["replay", script()],
      ["show", "--db", fresh("db")],
      ["show", "1", "--all", "--db", fresh("db")],
      ["export", "--day", "2026-02-30", "--db", fresh("db"), "--out", folder],
      ["serve"],
      ["serve", "--config", "no-such-file.json"],
      ["read", "--units", "imperial", "lead 1 84 meg"],
    ]) {
      const { exit, out, complaints } = await run(args);
      expect([args, exit]).toEqual([args, 2]);
      expect(out).toEqual([]);
      expect(complaints).toMatch(/^[^\n]{10,300}$/);
    }
  });

  test("help names every command", async () => {
    const { exit, out } = await run(["help"]);
    expect(exit).toBe(0);
    for (const { name } of commands) expect(out.join("\n")).toContain(`readback ${name}`);
  });
});

const script = (): string =>
  written(`${message("m1", "New job: Gull Wharf OU-3, not cooling. Dov")}\n`, "jsonl");

describe("lines in, lines out", () => {
  const bad = [
    ["no JSON", "nope"],
    ["half a line", '{"id":"a","text":'],
    ["a list", "[]"],
    ["a number for the text", '{"id":"a","text":5}'],
    ["no text", '{"id":"a"}'],
    ["a time without offset", '{"id":"a","text":"x","at":"2026-05-12T08:00:00"}'],
    ["a unit habit that is none", '{"id":"a","text":"x","units":"metric"}'],
  ] as const;

  test("read -v shows tokens, rules, spans and what is left over", async () => {
    const { exit, out } = await run(["read", "-v", "lead 2 84 meg, need a contactor. 17.3"]);
    const text = out.join("\n");
    expect(exit).toBe(0);
    expect(text).toMatch(/^ {2}0-4 +word +"lead"$/m);
    expect(text).toMatch(/^ {2}took 1 +<part> needed\|ordered\|fitted$/m);
    expect(text).toMatch(/^ {2}<label> <number> <unit> .*"insulation_resistance".*84000000/m);
    expect(text).toContain('unread: ["17.3"]');
  });

  test.each(bad)("read refuses %s alone and goes on", async (_what, line) => {
    const good = '{"id":"good","text":"lead 2 84 meg 500 V"}';
    const { exit, out } = await run(["read"], `${line}\n\n${good}`);
    expect(exit).toBe(1);
    expect(out).toHaveLength(2);
    expect(parsed(out[0])).toHaveProperty("error");
    expect(parsed(out[1])).toMatchObject({ id: "good", readings: expect.any(Array) });
  });

  test("an empty input is no fault", async () => {
    for (const name of ["read", "judge"])
      expect(await run([name])).toMatchObject({ exit: 0, out: [] });
  });

  test("text of a megabyte, control characters and broken halves are read, not refused", async () => {
    const texts = [
      "suction 118 ".repeat(200),
      "x".repeat(1_000_000),
      "lead 1\u0000 84 meg\u001b[31m\u0007",
      "half \ud83d of a pair",
      "",
    ];
    const lines = texts.map((text, id) => JSON.stringify({ id, text }));
    const { exit, out } = await run(["read"], lines.join("\n"));
    expect(exit).toBe(0);
    expect(out).toHaveLength(texts.length);
  });

  test("words on the line are the one-message form", async () => {
    const { exit, out } = await run(["read", "lead", "2", "84", "meg", "500", "V"]);
    expect(exit).toBe(0);
    expect(parsed(out[0])).toMatchObject({
      readings: [{ quantity: "insulation_resistance", value: 84e6 }],
    });
  });

  test("judge answers each case in order", async () => {
    const cases = [
      { id: "a", notes: ["comp 1 leads 1 2 3 to ground 0.1 meg 500 V"] },
      { id: "b", notes: "none" },
      { id: "c", notes: [] },
    ];
    const { exit, out } = await run(["judge"], cases.map((one) => JSON.stringify(one)).join("\n"));
    expect(exit).toBe(1);
    expect(out.map((line) => parsed(line).id)).toEqual(["a", "b", "c"]);
    expect(parsed(out[2])).toMatchObject({ diagnosis: [] });
  });
});

describe("a scripted chat", () => {
  test("is played, shown and verified; played again it answers nothing", async () => {
    const db = fresh("db");
    const file = script();
    const first = await run(["replay", file, "--db", db]);
    expect(first).toMatchObject({ exit: 0, complaints: "" });
    expect(parsed(first.out[0])).toMatchObject({ id: "m1", job: 1 });
    const again = await run(["replay", file, "--db", db]);
    expect(parsed(again.out[0])).toEqual({ id: "m1", job: 1, replies: [] });
    const shown = await run(["show", "1", "--db", db, "--json"]);
    expect(JSON.parse(shown.out[0] ?? "")).toMatchObject({
      job: 1,
      opened_by: "m1",
      site: "Gull Wharf",
      equipment: "OU-3",
      status: "open",
      labor_hours: 0,
      machine: { power: "unknown", locks: [], leads: "unknown", circuit: "unknown", bypasses: [] },
    });
    expect(await run(["verify", db])).toMatchObject({ exit: 0 });
    expect(await run(["show", "9", "--db", db])).toMatchObject({ exit: 1, out: [] });
  });

  test("a line that is not valid is refused alone; half a surrogate and control characters are kept", async () => {
    const lines = [
      message("m1", "New job: Gull Wharf OU-3, \u0000\ud83d odd. Dov"),
      '{"id":"m2","text":"no time"}',
      message("m3", "x", { at: "yesterday" }),
      message("m4", "x", { role: "boss" }),
      message("m5", "x".repeat(1_000_000)),
      message("m6", "photo", {
        files: [{ name: "a.png", type: "image/png", bytes_base64: "%%%" }],
      }),
      "",
    ];
    const { exit, out } = await run([
      "replay",
      written(lines.join("\n"), "jsonl"),
      "--db",
      fresh("db"),
    ]);
    expect(exit).toBe(1);
    expect(out.map((line) => "error" in parsed(line))).toEqual([
      false,
      true,
      true,
      true,
      false,
      true,
    ]);
  });

  test("a record written out is checked, and a changed letter is found", async () => {
    const db = fresh("db");
    await run(["replay", script(), "--db", db]);
    const record = await run(["show", "--all", "--record", "--db", db]);
    const text = record.out.join("\n");
    expect(await run(["verify", written(text, "jsonl")])).toMatchObject({ exit: 0 });
    const altered = text.replace("OU-3", "OU-4");
    expect(altered).not.toBe(text);
    expect(await run(["verify", written(altered, "jsonl")])).toMatchObject({ exit: 1 });
    const digest = /Digest (\S+)/.exec((await run(["verify", db])).out[0] ?? "")?.[1] ?? "";
    expect(await run(["verify", db, "--digest", digest])).toMatchObject({ exit: 0 });
    const forged = digest.replace(/.$/, (letter) => (letter === "0" ? "1" : "0"));
    expect(await run(["verify", db, "--digest", forged])).toMatchObject({ exit: 1 });
  });

  test("what is neither store nor record is said so", async () => {
    for (const path of [written("hello", "txt"), written("", "db"), "no-such-file"]) {
      const { exit, complaints } = await run(["verify", path]);
      expect([path, exit]).toEqual([path, 2]);
      expect(complaints).toMatch(/\.$/);
    }
  });

  test("a store that cannot be opened is one sentence and exit 1", async () => {
    const { exit, out, complaints } = await run([
      "replay",
      script(),
      "--db",
      written("hello ".repeat(300), "db"),
    ]);
    expect(exit).toBe(1);
    expect(out).toEqual([]);
    expect(complaints).toMatch(/is not a readback store\.$/);
  });

  test("erase leaves a record that still verifies", async () => {
    const db = fresh("db");
    await run(["replay", script(), "--db", db]);
    expect(await run(["erase", "replay", "m1", "--db", db])).toMatchObject({ exit: 0 });
    expect(await run(["erase", "replay", "m1", "--db", db])).toMatchObject({ exit: 1 });
    expect(await run(["verify", db])).toMatchObject({ exit: 0 });
    const shown = await run(["show", "1", "--db", db, "--json"]);
    expect(shown.out[0]).not.toContain("not cooling");
  });
});

describe("the office's files", () => {
  test("the example days' files are taken in whole, and a second time change nothing", async () => {
    for (const day of ["day-a", "day-b"]) {
      const db = fresh("db");
      for (const [file, rows] of [
        ["sites", 4],
        ["equipment", day === "day-a" ? 4 : 11],
        ["fault-codes", 2],
      ] as const) {
        const path = `fixtures/days/${day}/${file}.csv`;
        expect((await run(["import", path, "--db", db])).out[0]).toContain(
          `${rows} added, 0 changed, 0 as before, 0 refused`,
        );
        expect((await run(["import", path, "--db", db])).out[0]).toContain(
          `0 added, 0 changed, ${rows} as before, 0 refused`,
        );
      }
    }
  });

  test("bad rows are told by line and reason; good ones are in", async () => {
    const csv = [
      "TAG;site;Factory Charge KG;RLA;metering;notes",
      'OU-3;Gull Wharf;3,5;12,5;expansion valve;"two\nlines"',
      ";Gull Wharf;3;;;",
      "OU-4;Gull Wharf;much;;;",
      "OU-3;gull wharf;4;;;",
      "OU-5;Gull Wharf;0;;;",
      "OU-6;Gull Wharf;2;;teapot;",
      "OU-7;Gull Wharf;2;;;;one too many",
      "",
      "OU-8;Gull Wharf;;;;",
    ].join("\r\n");
    const { exit, out } = await run([
      "import",
      written(`\ufeff${csv}`, "csv"),
      "--db",
      fresh("db"),
    ]);
    expect(exit).toBe(1);
    expect(out).toEqual([
      "equipment: 2 added, 0 changed, 0 as before, 6 refused",
      "line 4: TAG: the tag is missing; fill it in or delete the line",
      'line 5: Factory Charge KG: "much" is no number; write one number in digits, or leave the cell empty',
      "line 6: TAG: gull wharf OU-3 stands on line 2 already; delete one of the two, or give one another name",
      'line 7: Factory Charge KG: "0" must be more than 0; write the value, or leave the cell empty',
      'line 8: metering: "teapot" is not known; write expansion valve or fixed orifice',
      'line 9: has 7 cells, the headings are 6; "one too many" stands under none: put quotes around a cell that holds the separator',
    ]);
  });

  test("people and cylinders are told by their headings", async () => {
    const people = written("Name,Role,Nickname,Certificate\nSorrel Ash,tech,Sorrel,U-100\n", "csv");
    expect((await run(["import", people, "--db", fresh("db")])).out[0]).toMatch(/^people: 1 added/);
    const cylinders = written("Cylinder,Gas,Net lb,Water capacity lb\n22,R-410A,12,47.7\n", "csv");
    expect((await run(["import", cylinders, "--db", fresh("db")])).out[0]).toMatch(
      /^cylinders: 1 added/,
    );
  });

  test("settings are a file too, and a wrong zone is refused", async () => {
    const db = fresh("db");
    const file = written("Setting,Value\ntime zone,America/Chicago\nunits,si\n", "csv");
    expect((await run(["import", file, "--db", db])).out[0]).toMatch(
      /^settings: 1 added, 1 changed/,
    );
    expect((await run(["import", file, "--db", db])).out[0]).toMatch(
      /^settings: 0 added, 0 changed, 2/,
    );
    const wrong = written("Setting,Value\ntime zone,Mars\ncolour,red\n", "csv");
    expect((await run(["import", wrong, "--db", db])).out).toHaveLength(3);
  });

  test("no CSV, an empty file, unknown headings, no file: one sentence and no success", async () => {
    for (const path of [
      written('a,b\n"open quote,1\n', "csv"),
      written("", "csv"),
      written("Colour,Size\nred,1\n", "csv"),
      "no-such.csv",
    ]) {
      const { exit, complaints } = await run(["import", path, "--db", fresh("db")]);
      expect(exit).not.toBe(0);
      expect(complaints).toMatch(/\.$/);
    }
  });
});

test("a configuration is refused with the place of the fault", async () => {
  for (const [config, says] of [
    ["{", /not JSON/],
    ['{"db":"x.db"}', /platforms/],
    ['{"db":"x.db","platforms":{}}', /No platform/],
    ['{"db":"x.db","platforms":{"carrier-pigeon":{}}}', /carrier-pigeon/],
    ['{"db":"x.db","time_zone":"Mars/Olympus","platforms":{"terminal":{}}}', /time_zone/],
    ['{"db":"x.db","colour":"red","platforms":{"terminal":{}}}', /colour/],
  ] as const) {
    const { exit, complaints } = await run(["serve", "--config", written(config, "json")]);
    expect(exit).toBe(2);
    expect(complaints).toMatch(says);
  }
});

test("every file of the example days parses as a script", () => {
  for (const day of ["day-a", "day-b"]) {
    const lines = readFileSync(`fixtures/days/${day}/day.jsonl`, "utf8").trim().split("\n");
    for (const line of lines) expect(parsed(line).id).toMatch(/^m\d+$/);
  }
});
