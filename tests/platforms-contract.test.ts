import { afterEach, describe, expect, test } from "vitest";
import { platforms } from "../adapters/list.ts";
import { allJobs } from "../src/bot/memory.ts";
import { findMessage, messagesIn } from "../src/record/inbox.ts";
import { putOut } from "../src/record/outbox.ts";
import { type Ability, heldElsewhere, type Rig, type Room, rigs } from "./support/platform-rigs.ts";
import { until } from "./support/slack-crew.ts";

/** What every platform must do, whatever it is. */

const rooms: Room[] = [];
async function opened(rig: Rig): Promise<Room> {
  const room = await rig.open();
  rooms.push(room);
  return room;
}
afterEach(async () => {
  for (const room of rooms.splice(0)) await room.stop();
});

/** "slack over http" -> "slack" */
const platformOf = (rig: Rig): string => rig.name.split(" ")[0] ?? "";

const opening = "New job: Gull Wharf OU-3, not cooling";
const reading = "OU-3 comp 1 lead 2 to ground 84 megohm at 500 V";
const all = (room: Room): string => room.answers().join("\n");
const kept = (room: Room) => messagesIn(room.bot.store, "done").map((row) => row.message);

test("every platform of the list is held to the contract", () => {
  for (const { name } of platforms) {
    const held = rigs.some((rig) => rig.name.startsWith(name)) || heldElsewhere[name] !== undefined;
    expect({ name, held }).toEqual({ name, held: true });
  }
});

describe.each(rigs.map((rig) => [rig.name, rig] as const))("%s", (_, rig) => {
  /** A case that a platform cannot have by its nature is left out; the rig says why. */
  const able = (ability: Ability, title: string, run: () => Promise<void>): void => {
    if (rig.cannot[ability] === undefined) test(title, run);
  };

  test("a plot is asked for, and its picture goes out, once", async () => {
    const room = await opened(rig);
    room.say(opening);
    await until("the job", () => all(room).includes("Gull Wharf"));
    for (const text of ["isolated at 340 microns", "ten minutes later 380", "plot the vacuum"]) {
      room.say(text);
      await until(text, () => kept(room).some((message) => message.text === text));
    }
    await until("the plot", () => all(room).includes("OU-3: vacuum after isolation"));
    const sent = () =>
      room.bot.store.db
        .prepare<[], { files: string; state: string }>(
          "SELECT files, state FROM outbox WHERE files <> '[]'",
        )
        .all();
    await until("the picture is out", () => sent().every(({ state }) => state === "sent"));
    expect(sent()).toHaveLength(1);
    expect(sent()[0]?.files).toMatch(/"job-1-vacuum\.png","type":"image\/png"/);
  });

  test("a job is opened and a reading answered, each once, in its order", async () => {
    const room = await opened(rig);
    room.say(opening);
    await until("the job", () => all(room).includes("Gull Wharf"));
    room.say(reading);
    await until("the reading", () => all(room).includes("84 megohm"));
    await until("all is settled", room.settled);
    expect(all(room).match(/84 megohm/g)).toHaveLength(1);
    expect(allJobs(room.bot.memory)[0]?.readings.map(({ value }) => value)).toContain(84e6);
  });

  test("its own words are nobody's message, and what was said is kept as it was typed", async () => {
    const room = await opened(rig);
    const odd = 'OU-3 note: 3 < 4 & 5 > 2, "quoted" \u2019s 84\u00a0meg &lt; &amp;lt; @here';
    room.say(opening);
    await until("the job", () => all(room).includes("Gull Wharf"));
    room.say(odd);
    await until("both are worked on", () => kept(room).length === 2);
    await until("all is settled", room.settled);
    expect(kept(room).map(({ text }) => text)).toEqual([opening, odd]);
    expect(new Set(kept(room).map(({ channel, person }) => `${channel} ${person}`))).toEqual(
      new Set([`${room.channel} sorrel`]),
    );
  });

  test("its log names messages and tells nothing of what was said or answered", async () => {
    const room = await opened(rig);
    room.say(opening);
    await until("the job", () => all(room).includes("Gull Wharf"));
    room.say("OU-3 comp 1 lead 2 to ground 84 megohm at 500 V, zanzibar");
    await until("the reading", () => all(room).includes("84 megohm"));
    room.say("quagmire 1240 at the plumbago");
    await until("all three are kept", () => kept(room).length === 3);
    await until("all is settled", room.settled);
    const log = room.logs.join("\n");
    expect(log).not.toMatch(/gull|zanzibar|quagmire|plumbago|megohm|\b1240\b/i);
    for (const { id } of kept(room)) expect(log).toContain(id);
  });

  test("the bot's words stand in the room as they were meant", async () => {
    const room = await opened(rig);
    const text = 'Below 60 & above 40: "a < b".';
    putOut(room.bot.store, {
      id: "test:1",
      platform: platformOf(rig),
      channel: room.channel,
      kind: "reply",
      text,
      files: [],
    });
    await until("it is out", () =>
      all(room).replaceAll("&lt;", "<").replaceAll("&amp;", "&").includes(text),
    );
  });

  able(
    "reply",
    "a reply belongs to the job of what it answers, a thread of it or not",
    async () => {
      const room = await opened(rig);
      const first = room.say(opening) ?? "";
      await until("the job", () => all(room).includes("Gull Wharf"));
      room.say("New job: Cinder School AC-5, no cool");
      await until("the other job", () => all(room).includes("Cinder School"));
      room.say("on site at Cinder School");
      await until("he is there", () => /AC-5: on site/.test(all(room)));
      room.reply("comp 1 lead 2 to ground 84 megohm at 500 V", first);
      await until("the reading", () => all(room).includes("84 megohm"));
      const values = allJobs(room.bot.memory).map(({ readings }) =>
        readings.map(({ value }) => value),
      );
      expect(values).toEqual([[84e6], []]);
    },
  );

  able("repeat", "the same message brought twice is answered once", async () => {
    const room = await opened(rig);
    room.say(opening);
    await until("the job", () => room.answers().length === 1);
    room.again();
    await until("all is settled", room.settled);
    expect(room.answers()).toHaveLength(1);
    expect(allJobs(room.bot.memory)).toHaveLength(1);
  });

  able("times", "a message's time is the platform's, also where it comes late", async () => {
    const room = await opened(rig);
    const at = Date.now();
    const first = room.say(opening, at);
    await until("the job", () => room.answers().length === 1);
    const late = room.say(reading, at + 60_000);
    const early = room.say("OU-3 comp 1 lead 1 to ground 90 megohm at 500 V", at + 30_000);
    await until("both", () => room.answers().length === 3);
    const times = [first, early, late].map((id) =>
      Date.parse(findMessage(room.bot.store, platformOf(rig), id ?? "")?.message.at ?? ""),
    );
    expect(times).toEqual([at, at + 30_000, at + 60_000]);
  });

  able("split", "a long answer is split at sentences and stands in its order", async () => {
    const room = await opened(rig);
    const text = Array.from(
      { length: 400 },
      (_, i) => `Sentence number ${i} of a long answer.`,
    ).join(" ");
    putOut(room.bot.store, {
      id: "test:2",
      platform: platformOf(rig),
      channel: room.channel,
      kind: "reply",
      text,
      files: [],
    });
    await until("it is out", () => all(room).includes("number 399"));
    expect(room.answers().length).toBeGreaterThan(1);
    expect(room.answers().join(" ")).toBe(text);
  });

  test("where the store takes nothing, nothing counts as received; afterwards all goes on", async () => {
    const room = await opened(rig);
    room.say(opening);
    await until("the job", () => all(room).includes("Gull Wharf"));
    await until("all is settled", room.settled);
    room.bot.store.db.exec(
      "CREATE TEMP TRIGGER full BEFORE INSERT ON inbox BEGIN SELECT RAISE(ABORT, 'full'); END",
    );
    room.say(reading);
    if (rig.cannot.redeliver !== undefined) {
      await until("the person is told", () => room.complaints().length === 1);
      room.bot.store.db.exec("DROP TRIGGER full");
      room.say(reading);
    } else {
      await new Promise((resolve) => setImmediate(resolve));
      room.bot.store.db.exec("DROP TRIGGER full");
    }
    await until("it is answered", () => all(room).includes("84 megohm"));
    expect(kept(room)).toHaveLength(2);
  });
});
