import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { rowsOf } from "../adapters/command-line/csv-rows.ts";
import { messageOf, type ReplayLine, replayShape } from "../adapters/command-line/replay-line.ts";
import type { Person } from "../adapters/serve/people.ts";
import { relearn } from "../src/bot/memory.ts";
import { everyJob } from "../src/bot/rest.ts";
import { showJob } from "../src/bot/show-job.ts";
import { type Bot, openBot, receive, tick, work } from "../src/bot.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { findMessage } from "../src/record/inbox.ts";
import { writeSetting } from "../src/record/settings.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { me, openScene } from "./support/matrix/scene.ts";
import type { World } from "./support/matrix/world.ts";
import {
  freePort,
  freshFolder,
  joined,
  slackSettings,
  startBot,
  until,
} from "./support/slack-crew.ts";
import { slackIds, startSlackStandIn } from "./support/slack-stand-in.ts";

/** The same day on different platforms gives the same records. */

const zones: Readonly<Record<string, string>> = {
  "day-a": "America/Chicago",
  "day-b": "America/Denver",
};

const linesOf = (day: string): readonly ReplayLine[] =>
  readFileSync(`fixtures/days/${day}/day.jsonl`, "utf8")
    .trim()
    .split("\n")
    .map((line) => replayShape.parse(JSON.parse(line)));

function prepared(bot: Bot, day: string): void {
  for (const file of ["sites", "equipment", "fault-codes"]) {
    const rows = rowsOf(readFileSync(`fixtures/days/${day}/${file}.csv`, "utf8"));
    if (typeof rows === "string") throw new Error(rows);
    importRows(bot.store, rows);
  }
  writeSetting(bot.store, "time_zone", zones[day] ?? "UTC");
  relearn(bot.memory, bot.store);
}

/** All records, with what must differ left out: ids of messages and threads, and how a time is written. */
function recordsOf(bot: Bot): unknown {
  const differs = new Set(["message", "opened_by", "id", "replaced_by"]);
  const plain = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value === "string" && /^\d{4}-\d\d-\d\dT/.test(value)) return Date.parse(value);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, inner]) =>
        // a thread's first message stands in it on some platforms, above it on others
        key === "thread"
          ? []
          : [[key, differs.has(key) && typeof inner === "string" ? "(an id)" : plain(inner)]],
      ),
    );
  };
  return [...everyJob(bot.memory)].map((job) => plain(showJob(bot.memory, job)));
}

function playedPlainly(day: string): unknown {
  const opened = openStore(`${freshFolder()}/plain.db`);
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  prepared(bot, day);
  for (const line of linesOf(day)) {
    tick(bot, line.at);
    receive(bot, messageOf(line));
    work(bot);
  }
  const records = recordsOf(bot);
  closeStore(opened.store);
  return records;
}

const idFor = (prefix: string, name: string): string =>
  `${prefix}0${name.toUpperCase().replace(/[^A-Z0-9]/g, "X")}`;

const tsOf = (at: string, nth: number): string =>
  `${Math.floor(Date.parse(at) / 1000)}.${String(nth).padStart(6, "0")}`;

async function playedOnSlack(day: string): Promise<unknown> {
  const lines = linesOf(day);
  const names = [...new Set(lines.map(({ channel }) => channel))];
  const people: readonly Person[] = [...new Map(lines.map((one) => [one.person, one.role]))].map(
    ([person, role]) => ({ person, role, slack: idFor("U", person) }),
  );
  const port = await freePort();
  const standIn = await startSlackStandIn({
    channels: names.map((name) => ({ id: idFor("C", name), name })),
    eventsUrl: `http://127.0.0.1:${port}/slack/events`,
  });
  const folder = freshFolder();
  const {
    board: _,
    operator: __,
    ...settings
  } = slackSettings(folder, standIn, { transport: "http", port });
  const channels = Object.fromEntries(names.map((name) => [name, idFor("C", name)]));
  let clock = Date.parse(lines[0]?.at ?? "") - 60_000;
  const bot = startBot(
    folder,
    { ...settings, channels },
    { now: () => clock, people, prepare: (made) => prepared(made, day) },
  );
  await joined({ bot, standIn, folder, settings });
  const tsById = new Map<string, string>();
  const roots = new Map<string, string>();
  for (const [nth, line] of lines.entries()) {
    clock = Date.parse(line.at);
    const channel = idFor("C", line.channel);
    const kept = () =>
      Number(
        bot.bot.store.db.prepare("SELECT count(*) FROM inbox WHERE state <> 'new'").pluck().get(),
      );
    const before = kept();
    const known = tsById.get(line.edits ?? line.deletes ?? line.id);
    const at = tsOf(line.at, nth);
    if (line.edits != null) standIn.edit(channel, known ?? "", line.text, at);
    else if (line.deletes != null) standIn.remove(channel, known ?? "", at);
    else if (known !== undefined) {
      // delivered once more
      const again = standIn.rooms.channels.get(channel)?.messages.find(({ ts }) => ts === known);
      standIn.delivery.publish({ ...again, channel, event_ts: known });
      await until("it is acknowledged", () => standIn.delivery.open() === 0);
      continue;
    } else {
      const root = line.thread == null ? undefined : roots.get(line.thread);
      if (line.thread != null && root === undefined) roots.set(line.thread, at);
      const files = (line.files ?? []).map((file) =>
        standIn.addFile(file.name, file.type, Buffer.from(file.bytes_base64, "base64")),
      );
      standIn.say(
        idFor("U", line.person),
        channel,
        line.text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;"),
        {
          ts: at,
          ...(root === undefined ? {} : { thread_ts: root }),
          ...(files.length === 0 ? {} : { files, subtype: "file_share" }),
        },
      );
      tsById.set(line.id, at);
    }
    await until(`line ${nth + 1} is worked on`, () => kept() > before);
  }
  for (const line of lines) {
    if (line.edits != null || line.deletes != null) continue;
    const id = `${slackIds.team}:${idFor("C", line.channel)}:${tsById.get(line.id)}`;
    expect(findMessage(bot.bot.store, "slack", id)?.message.text).toBe(line.text);
  }
  await until("all is acknowledged", () => standIn.delivery.open() === 0);
  const records = recordsOf(bot.bot);
  await bot.stop();
  await standIn.stop();
  expect(standIn.violations).toEqual([]);
  return records;
}

async function playedOnMatrix(day: string): Promise<unknown> {
  const lines = linesOf(day);
  const names = [...new Set(lines.map(({ channel }) => channel))];
  const rooms = Object.fromEntries(names.map((name) => [name, `!${name}:fake.test`]));
  const people: readonly Person[] = [...new Map(lines.map((one) => [one.person, one.role]))].map(
    ([person, role]) => ({ person, role, matrix: `@${person}:fake.test` }),
  );
  let clock = Date.parse(lines[0]?.at ?? "") - 60_000;
  const scene = await openScene({
    people,
    rooms,
    now: () => clock,
    prepare: (bot) => prepared(bot, day),
  });
  const { server } = scene;
  for (const room of Object.values(rooms)) {
    server.room(room, [...people.map(({ matrix }) => matrix ?? ""), me]);
  }
  await scene.start();
  const ids = new Map<string, string>();
  const roots = new Map<string, string>();
  for (const [nth, line] of lines.entries()) {
    clock = Date.parse(line.at);
    const kept = () =>
      Number(
        scene
          .bot()
          .store.db.prepare("SELECT count(*) FROM inbox WHERE state <> 'new'")
          .pluck()
          .get(),
      );
    const before = kept();
    const known = ids.get(line.edits ?? line.deletes ?? line.id);
    const [room, person] = [rooms[line.channel] ?? "", `@${line.person}:fake.test`];
    const body = { msgtype: "m.text", body: line.text };
    if (line.edits != null) {
      const relation = { "m.relates_to": { rel_type: "m.replace", event_id: known } };
      const edit = { ...body, body: `* ${line.text}`, "m.new_content": body, ...relation };
      server.say(room, person, edit, { at: clock });
    } else if (line.deletes != null) {
      const redacts = known ?? "";
      server.say(room, person, { redacts }, { at: clock, redacts, type: "m.room.redaction" });
    } else if (known !== undefined) {
      // delivered once more
      const again = server.world.events.find(({ event_id }) => event_id === known);
      if (again !== undefined) server.world.events.push(again);
      continue;
    } else {
      const root = line.thread == null ? undefined : roots.get(line.thread);
      const [file] = line.files ?? [];
      const inThread = { "m.relates_to": { rel_type: "m.thread", event_id: root } };
      const content = file === undefined ? body : fileMessage(server.world, file, line.text);
      const said = { ...content, ...(root === undefined ? {} : inThread) };
      const id = server.say(room, person, said, { at: clock });
      ids.set(line.id, id);
      if (line.thread != null && root === undefined) roots.set(line.thread, id);
    }
    await until(`line ${nth + 1} is worked on`, () => kept() > before);
  }
  for (const line of lines) {
    if (line.edits != null || line.deletes != null) continue;
    const row = findMessage(scene.bot().store, "matrix", ids.get(line.id) ?? "");
    expect(row?.message.text).toBe(line.text);
  }
  const records = recordsOf(scene.bot());
  await scene.close();
  return records;
}

/** A file with what was written under it. */
function fileMessage(
  world: World,
  file: { readonly name: string; readonly type: string; readonly bytes_base64: string },
  caption: string,
): Record<string, unknown> {
  const bytes = Buffer.from(file.bytes_base64, "base64");
  const id = `day${world.media.size}`;
  world.media.set(id, bytes);
  return {
    msgtype: "m.file",
    body: caption === "" ? file.name : caption,
    filename: file.name,
    url: `mxc://fake.test/${id}`,
    info: { mimetype: file.type, size: bytes.length },
  };
}

test.each(["day-a", "day-b"])(
  "%s on Matrix gives the same records as in the terminal",
  async (day) => {
    process.env.TZ = zones[day] ?? "UTC";
    const plain = playedPlainly(day);
    expect(await playedOnMatrix(day)).toEqual(plain);
  },
);

test.each(["day-a", "day-b"])(
  "%s on Slack gives the same records as in the terminal",
  async (day) => {
    process.env.TZ = zones[day] ?? "UTC";
    const plain = playedPlainly(day);
    expect(await playedOnSlack(day)).toEqual(plain);
  },
);
