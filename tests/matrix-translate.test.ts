import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { boardHtml } from "../adapters/matrix/board-html.ts";
import { fileContent, textContent } from "../adapters/matrix/content.ts";
import { matrix } from "../adapters/matrix/main.ts";
import { eventSchema } from "../adapters/matrix/sync.ts";
import { translate } from "../adapters/matrix/translate.ts";
import { troubleFrom } from "../adapters/matrix/trouble.ts";

const lineSchema = z.object({
  about: z.string(),
  event: z.record(z.string(), z.unknown()),
  means: z.record(z.string(), z.unknown()),
});
const lines = readFileSync("fixtures/platforms/matrix/events.jsonl", "utf8")
  .trim()
  .split("\n")
  .map((line) => lineSchema.parse(JSON.parse(line)));

describe("what an event means", () => {
  test.each(lines.map((line) => [line.about, line] as const))("%s", (_, { event, means }) => {
    const whole = { event_id: "$e", sender: "@bram:chat.example", origin_server_ts: 1, ...event };
    expect(translate(eventSchema.parse(whole))).toEqual(means);
  });
});

/** Tags that the specification lets clients show (client-server API 1.11, m.room.message msgtypes). */
const allowed = new Set(["p", "strong", "table", "tr", "th", "td", "br"]);

describe("what goes out", () => {
  const board = [
    "Open jobs: 2. State of Tue 12 May, 10:42",
    "Office to act: 1",
    "41 OU-3 Saltbox <Lofts> & Co, Annex, Tamsin parts 1 h 12 min",
    "   order: 60-12E4 drive board",
    "   locked by Tamsin",
    "Crew at work: 1",
    "42 WIC-4 Gull Wharf, Bram there 1 h 35 min",
    "Done today: 1",
    "  40 lacks the leak test after the repair",
  ].join("\n");

  test("a board is a table a job in a row; its plain twin holds every word of it", () => {
    const html = boardHtml(board);
    const tags = [...html.matchAll(/<\/?([a-z]+)>/g)].map(([, tag]) => tag);
    expect(tags.filter((tag) => tag === undefined || !allowed.has(tag))).toEqual([]);
    expect(html.match(/<tr><td>/g)).toHaveLength(2);
    expect(html).toContain(
      "<td>41</td><td><strong>OU-3 Saltbox &lt;Lofts&gt; &amp; Co, Annex</strong><br>order: 60-12E4 drive board<br>locked by Tamsin</td><td>Tamsin parts 1 h 12 min</td>",
    );
    const words = (text: string) => text.match(/[\w-]+/g) ?? [];
    const shown = html
      .replaceAll(/<[^>]+>/g, " ")
      .replaceAll("&lt;", "<")
      .replaceAll("&gt;", ">")
      .replaceAll("&amp;", "&");
    for (const word of words(board)) expect(words(shown)).toContain(word);
    const { body } = z
      .object({ body: z.string() })
      .parse(textContent({ text: board, board: true, key: "k" }, {}));
    expect(body).toBe(board);
  });

  test.each([0, 1, 60, 120, 400])("a board of %i jobs fits an event, encrypted or not", (count) => {
    const rows = Array.from(
      { length: count },
      (_, i) =>
        `${i + 1} RTU-${i} Müller & "Cold" Sto..., Tamsin parts 24 h 42\n   order: <60-12E4>`,
    );
    const text = [`Open jobs: ${count}.`, `Office to act: ${count}`, ...rows].join("\n");
    for (const spot of [{}, { replaces: `$${"x".repeat(43)}` }]) {
      const content = JSON.stringify(textContent({ text, board: true, key: "k" }, spot));
      // base64 of what is encrypted, and the event around it
      expect((Buffer.byteLength(content) * 4) / 3 + 2000).toBeLessThan(65_536);
      const { body } = z.object({ body: z.string() }).parse(JSON.parse(content));
      const left = Number(/(\d+) more jobs do not fit/.exec(body)?.[1] ?? 0);
      expect((body.match(/^\d+ RTU-/gm) ?? []).length + left).toBe(count);
      if (count <= 60) expect(left).toBe(0);
    }
  });

  test("nobody is ever called: each content names its mentions, none", () => {
    const said = { text: "@room @bram:chat.example", board: false, key: "k" };
    const contents = [
      textContent(said, {}),
      textContent(said, { replaces: "$o" }),
      textContent(said, { thread: { root: "$r", last: "$l" } }),
      fileContent(
        { name: "day.csv", type: "text/csv", size: 3 },
        { url: "mxc://a/b" },
        { key: "k", spot: {} },
      ),
    ];
    for (const content of contents) expect(content).toMatchObject({ "m.mentions": {} });
    expect(contents[1]).toMatchObject({
      body: "* @room @bram:chat.example",
      "m.new_content": { msgtype: "m.notice", body: said.text, "m.mentions": {} },
      "m.relates_to": { rel_type: "m.replace", event_id: "$o" },
    });
    expect(contents[2]).toMatchObject({
      "m.relates_to": {
        rel_type: "m.thread",
        event_id: "$r",
        is_falling_back: true,
        "m.in_reply_to": { event_id: "$l" },
      },
    });
  });
});

test("errors of a server are told apart by status and code", () => {
  expect(troubleFrom(429, { errcode: "M_LIMIT_EXCEEDED", retry_after_ms: 4800 })).toMatchObject({
    kind: "limited",
    retryMs: 4800,
  });
  expect(troubleFrom(429, {})).toMatchObject({ kind: "limited", retryMs: 5000 });
  expect(troubleFrom(401, { errcode: "M_UNKNOWN_TOKEN" })).toMatchObject({ kind: "token" });
  expect(troubleFrom(502, {})).toMatchObject({ kind: "unanswered" });
  expect(troubleFrom(403, { errcode: "M_FORBIDDEN" })).toMatchObject({
    kind: "refused",
    code: "M_FORBIDDEN",
  });
});

test("each mistake of a configuration is named with its place and what would be right", () => {
  const made = matrix.configure(
    {
      server: "http://chat.example",
      user: "readback",
      password: "hunter2",
      rooms: { south: "south" },
      board: "north",
      speed: 3,
    },
    [],
  );
  const problems = made.ok ? [] : made.problems;
  const all = problems.join("\n");
  for (const part of [
    '"platforms.matrix.server": must begin with https://',
    '"platforms.matrix.user": the bot\'s full id looks like @readback:chat.example',
    '"platforms.matrix.password": is not written as it should be',
    '"platforms.matrix.keys": is missing',
    '"platforms.matrix.rooms.south": a room is its id',
    '"speed"',
  ]) {
    expect(all).toContain(part);
  }
  expect(all).not.toContain("hunter2");
  const wrongBoard = matrix.configure(
    {
      server: "https://chat.example",
      user: "@r:chat.example",
      keys: "k.db",
      rooms: { south: "!a:b" },
      board: "north",
    },
    [],
  );
  expect(wrongBoard).toMatchObject({
    ok: false,
    problems: [expect.stringContaining("known: south")],
  });
});
