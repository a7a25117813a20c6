import { afterEach, describe, expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import {
  boardRoom,
  closeScene,
  north,
  openScene,
  opsRoom,
  type Scene,
  south,
  until,
} from "./support/slack-crew.ts";
import { signed } from "./support/slack-delivery.ts";
import { slackIds } from "./support/slack-stand-in.ts";

const scenes: Scene[] = [];

async function scene(options: Parameters<typeof openScene>[0] = {}): Promise<Scene> {
  const made = await openScene(options);
  scenes.push(made);
  return made;
}

afterEach(async () => {
  for (const one of scenes.splice(0)) expect(await closeScene(one)).toEqual([]);
});

const said = ({ standIn }: Scene, channel: string): readonly string[] =>
  standIn.bot(channel).map(({ text }) => text);

/** A job of Sorrel's with one reading answered. */
async function atWork(options: Parameters<typeof openScene>[0] = {}) {
  const made = await scene(options);
  const { standIn } = made;
  const call = standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
  await until("the job is opened", () => said(made, south).length === 1);
  const note = standIn.say("U0SORREL", south, "OU-3 comp 1 lead 2 to ground 84 megohm at 500 V");
  await until("the reading is answered", () => said(made, south).length === 2);
  return { ...made, made, call, note };
}

const unsentIn = ({ bot }: Scene): number =>
  Number(
    bot.bot.store.db.prepare("SELECT count(*) FROM outbox WHERE state <> 'sent'").pluck().get(),
  );

const standing = ({ bot }: Scene): readonly (number | string | null)[] =>
  allJobs(bot.bot.memory).flatMap(({ readings }) =>
    readings.flatMap((r) =>
      r.replaced_by === undefined && r.undone !== true && r.deleted !== true ? [r.value] : [],
    ),
  );

describe.each(["http", "socket"] as const)("over %s", (transport) => {
  test("a job is opened, a reading is read back, the board is posted and pinned", async () => {
    const { standIn, bot, made } = await atWork({ transport });
    expect(said(made, south)[1]).toContain("OU-3 comp 1");
    await until("all is acknowledged", () => standIn.delivery.open() === 0);
    expect(standIn.delivery.lost()).toBe(0);
    await until("the board shows it", () =>
      said(made, boardRoom).some((text) => text.includes("Gull Wharf")),
    );
    await until("it is pinned", () => standIn.rooms.channels.get(boardRoom)?.pins.size === 1);
    expect(said(made, boardRoom)).toHaveLength(1);
    expect(said(made, opsRoom)).toEqual([]);
    expect(bot.logs.filter((line) => line.level === "error")).toEqual([]);
  });

  test("a full disk: what could not be kept is not acknowledged, and comes again", async () => {
    const { standIn, bot, made } = await atWork({ transport });
    bot.bot.store.db.exec(
      "CREATE TEMP TRIGGER full BEFORE INSERT ON inbox BEGIN SELECT RAISE(ABORT, 'disk full'); END",
    );
    await until("all before is acknowledged", () => standIn.delivery.open() === 0);
    const before = standIn.delivery.acknowledged() - said(made, south).length;
    standIn.say("U0SORREL", south, "OU-3 comp 1 lead 3 to ground 90 megohm at 500 V");
    await until("it was refused", () => bot.logs.some((line) => line.event === "slack_trouble"));
    // the bot's own line about it comes back to it, and is acknowledged
    await until("it alone is on its way", () => standIn.delivery.open() === 1);
    expect(standIn.delivery.acknowledged() - said(made, south).length).toBe(before);
    bot.bot.store.db.exec("DROP TRIGGER full");
    await until("it is answered", () => said(made, south).join().includes("90 megohm"));
    await until("it is acknowledged", () => standIn.delivery.open() === 0);
    expect(standIn.delivery.lost()).toBe(0);
  });

  test("the connection is cut: what was said meanwhile is answered once", async () => {
    const { standIn, made } = await atWork({ transport });
    for (const peer of [...standIn.delivery.peers()]) peer.cut();
    standIn.sayUnheard("U0SORREL", south, "OU-3 comp 1 lead 3 to ground 90 megohm at 500 V");
    if (transport === "http") {
      // a bot that is called sees no cut; it finds out at its next start
      await made.bot.stop();
      const { startBot } = await import("./support/slack-crew.ts");
      const again = scenes.find((one) => one.standIn === standIn);
      if (again !== undefined) again.bot = startBot(made.folder, made.settings);
    }
    await until("it is answered", () => said(made, south).length === 3);
  });
});

describe("what people do to their messages", () => {
  test("an edit changes the reading and mends the answer in place", async () => {
    const { standIn, made, note } = await atWork();
    standIn.edit(south, note.ts, "OU-3 comp 1 lead 2 to ground 8.4 megohm at 500 V");
    await until("the reading changed", () => standing(made).includes(8.4e6));
    await until(
      "the answer is mended",
      () => said(made, south)[1]?.includes("8.4 megohm") === true,
    );
    expect(said(made, south)).toHaveLength(2);
    expect(standing(made)).not.toContain(84e6);
  });

  test("an edit that changes no word (a link preview, a pin) is nothing", async () => {
    const { standIn, made, note } = await atWork();
    standIn.edit(south, note.ts, note.text);
    await until("it is acknowledged", () => standIn.delivery.open() === 0);
    expect(
      made.bot.bot.store.db
        .prepare("SELECT count(*) FROM inbox WHERE edits IS NOT NULL")
        .pluck()
        .get(),
    ).toBe(0);
  });

  test("an edit that overtakes its message waits for it", async () => {
    const { standIn, made } = await atWork({ retriesMs: [50, 100, 200] });
    const note = standIn.sayUnheard(
      "U0SORREL",
      south,
      "OU-3 comp 1 lead 3 to ground 90 megohm at 500 V",
    );
    standIn.edit(south, note.ts, "OU-3 comp 1 lead 3 to ground 9 megohm at 500 V");
    await until("it is asked for again", () =>
      made.bot.logs.some((l) => String(l.why).includes("not arrived yet")),
    );
    standIn.delivery.publish({ ...note, channel: south, event_ts: note.ts });
    await until("the edited value stands", () => standing(made).includes(9e6));
    expect(standing(made)).not.toContain(90e6);
  });

  test("of two edits the later one stands, also where it arrives first", async () => {
    const { standIn, made, note } = await atWork();
    const words = (value: number): string =>
      `OU-3 comp 1 lead 2 to ground ${value} megohm at 500 V`;
    const edited = (value: number, ts: string) => ({
      type: "message",
      subtype: "message_changed",
      channel: south,
      ts,
      event_ts: ts,
      message: { ...note, text: words(value), edited: { user: note.user, ts } },
      previous_message: note,
    });
    const [first, second] = [standIn.rooms.nextTs(), standIn.rooms.nextTs()];
    standIn.delivery.publish(edited(70, second));
    await until("the later one stands", () => standing(made).includes(70e6));
    standIn.delivery.publish(edited(60, first));
    await until(
      "the earlier one is worked on",
      () => made.bot.logs.filter(({ event }) => event === "worked").length === 4,
    );
    await until("all is sent", () => unsentIn(made) === 0);
    expect(standing(made)).toEqual([70e6]);
    expect(said(made, south)).toHaveLength(2);
    expect(said(made, south)[1]).toContain("70 megohm");
    standIn.remove(south, note.ts);
    await until("nothing stands", () => standing(made).length === 0);
  });

  test("a deletion takes the reading back", async () => {
    const { standIn, made, note } = await atWork();
    standIn.remove(south, note.ts);
    await until("nothing stands", () => standing(made).length === 0);
    await until("the answer is mended", () => said(made, south)[1]?.includes("No longer") === true);
    // the verdict went with it: that is said aloud, once
    await until("it is said", () => said(made, south)[2]?.includes("taken back") === true);
    expect(said(made, south)).toHaveLength(3);
  });

  test("a cross on the answer takes back what it answers; on somebody else's it does nothing", async () => {
    const { standIn, made } = await atWork();
    const answer = standIn.bot(south)[1]?.ts ?? "";
    standIn.react("U0BRAM", south, answer, "x");
    await until("it is acknowledged", () => standIn.delivery.open() === 0);
    expect(standing(made)).toEqual([84e6]);
    standIn.react("U0SORREL", south, answer, "x");
    await until("nothing stands", () => standing(made).length === 0);
  });

  test("a cross that is taken off again takes nothing back, however often; the last word counts", async () => {
    const { standIn, made } = await atWork();
    const answer = standIn.bot(south)[1]?.ts ?? "";
    for (let turn = 0; turn < 2; turn++) {
      standIn.react("U0SORREL", south, answer, "x");
      await until("nothing stands", () => standing(made).length === 0);
      standIn.unreact("U0SORREL", south, answer, "x");
      await until("it stands again", () => standing(made).length === 1);
    }
    expect(said(made, south).at(-1)).toContain("84 megohm");
  });

  test("a thumbs-up, whatever its skin, confirms a doubted value", async () => {
    const { standIn, made } = await atWork();
    standIn.say("U0SORREL", south, "OU-3 suction 1240 psi, R-410A");
    await until("it is doubted", () => said(made, south).length === 3);
    const doubted = () =>
      allJobs(made.bot.bot.memory).flatMap(({ readings }) =>
        readings.filter((r) => r.doubtful === true),
      ).length;
    expect(doubted()).toBe(1);
    standIn.react("U0SORREL", south, standIn.bot(south)[2]?.ts ?? "", "thumbsup::skin-tone-3");
    await until("it counts", () => doubted() === 0);
  });

  test("a thumbs-up confirms what it stands on, older answers too, and nothing else", async () => {
    const { standIn, made } = await atWork();
    standIn.say("U0SORREL", south, "OU-3 suction 1240 psi, R-410A");
    await until("it is doubted", () => said(made, south).length === 3);
    standIn.say("U0SORREL", south, "OU-3 outdoor air 81 F");
    await until("the next answer", () => said(made, south).length === 4);
    const doubted = () =>
      allJobs(made.bot.bot.memory).flatMap(({ readings }) =>
        readings.filter((r) => r.doubtful === true),
      ).length;
    const [, , asks, plain] = standIn.bot(south);
    standIn.react("U0SORREL", south, plain?.ts ?? "", "+1");
    standIn.say("U0SORREL", south, "OU-3 return air 75 F");
    await until("what came after the thumb", () => said(made, south).length >= 5);
    expect(doubted()).toBe(1);
    standIn.react("U0SORREL", south, asks?.ts ?? "", "+1");
    await until("it counts", () => doubted() === 0);
  });

  test("a thumbs-up on the question whose job it is files what was asked about", async () => {
    const { standIn, made } = await atWork();
    standIn.say("U0MAREN", south, "New job: Cinder School AC-5, no cooling. Bram");
    await until("the job", () => said(made, south).length === 3);
    standIn.say("U0BRAM", south, "suction 118 psi");
    await until("the question", () => said(made, south).length === 4);
    standIn.say("U0BRAM", south, "lunch break, back at one?");
    standIn.say("U0BRAM", south, "liquid 338 psi");
    await until("the next question", () => said(made, south).length === 5);
    standIn.react("U0BRAM", south, standIn.bot(south)[3]?.ts ?? "", "+1");
    // asked the same about both, he has said it of both
    await until("both are filed", () => standing(made).length >= 3);
    expect(allJobs(made.bot.bot.memory)[1]?.readings.map(({ figure }) => figure.number)).toEqual([
      "118",
      "338",
    ]);
  });
});

describe("who is heard", () => {
  test("a mention comes under two event ids and is answered once", async () => {
    const { standIn, made } = await atWork();
    standIn.say(
      "U0SORREL",
      south,
      `OU-3 comp 1 lead 3 to ground 90 megohm at 500 V <@${slackIds.bot.userId}>`,
    );
    await until("it is answered", () => said(made, south).length === 3);
    await until("all is acknowledged", () => standIn.delivery.open() === 0);
    expect(said(made, south)).toHaveLength(3);
  });

  test("strangers, other bots and channels that nobody named get silence, and the log no words", async () => {
    const { standIn, made } = await atWork();
    standIn.rooms.channels.set("C0ELSE", {
      id: "C0ELSE",
      name: "elsewhere",
      botIsMember: true,
      pins: new Set(),
      messages: [],
    });
    standIn.say("U0STRANGE", south, "OU-3 comp 1 lead 1 to ground 3 megohm marzipan");
    standIn.say("U0SORREL", "C0ELSE", "OU-3 comp 1 lead 1 to ground 3 megohm marzipan");
    standIn.say("U0SORREL", south, "OU-3 comp 1 lead 1 to ground 3 megohm marzipan", {
      bot_id: "B0OTHER",
    });
    await until("all is acknowledged", () => standIn.delivery.open() === 0);
    expect(standing(made)).toEqual([84e6]);
    expect(said(made, south)).toHaveLength(2);
    const ignored = made.bot.logs.filter((line) => line.event === "ignored");
    expect(ignored.map((line) => line.why)).toEqual(
      expect.arrayContaining(["person not admitted", "channel not admitted"]),
    );
    expect(JSON.stringify(made.bot.logs)).not.toMatch(/marzipan|xoxb|stand-in-signing/);
  });

  test("a thread under the message that opened a job is that job's own, and is answered there", async () => {
    const { standIn, made, call } = await atWork();
    standIn.say("U0MAREN", south, "New job: Cinder School AC-5, no cooling. Bram");
    await until("a second job", () => allJobs(made.bot.bot.memory).length === 2);
    standIn.say("U0BRAM", south, "comp 1 lead 1 to ground 70 megohm at 500 V", {
      thread_ts: call.ts,
    });
    await until("it is answered", () => said(made, south).length === 4);
    const answer = standIn.bot(south)[3];
    expect(answer?.thread_ts).toBe(call.ts);
    expect(allJobs(made.bot.bot.memory)[0]?.readings.map(({ value }) => value)).toContain(70e6);
  });

  test("forged, stale and future requests are turned away", async () => {
    const { settings } = await scene();
    const http = settings.http as { port: number };
    const ask = async (body: string, headers: Record<string, string>) =>
      (await fetch(`http://127.0.0.1:${http.port}/slack/events`, { method: "POST", body, headers }))
        .status;
    const body = JSON.stringify({
      type: "event_callback",
      team_id: slackIds.team,
      event: {
        type: "message",
        channel: south,
        ts: "1700000000.000100",
        user: "U0SORREL",
        text: "x",
      },
    });
    const good = signed(body, slackIds.signingSecret);
    expect(await ask(body, good.headers)).toBe(200);
    expect(await ask(`${body} `, good.headers)).toBe(401);
    expect(await ask(body, signed(body, "another secret").headers)).toBe(401);
    expect(
      await ask(body, signed(body, slackIds.signingSecret, Date.now() - 600_000).headers),
    ).toBe(401);
    expect(
      await ask(body, signed(body, slackIds.signingSecret, Date.now() + 3_600_000).headers),
    ).toBe(401);
    const challenge = JSON.stringify({ type: "url_verification", challenge: "abc" });
    expect(await ask(challenge, signed(challenge, slackIds.signingSecret).headers)).toBe(200);
  });

  test("the same message delivered twice and out of order is answered once, in its order", async () => {
    const { standIn, made } = await atWork();
    standIn.delivery.chaos.duplicate = 1;
    standIn.delivery.chaos.shuffleMs = 60;
    for (let lead = 1; lead <= 6; lead++) {
      standIn.say("U0SORREL", north, `New job: Gate ${lead}A Depot RTU-${lead}, warm. Sorrel`);
    }
    await until("six jobs", () => said(made, north).length === 6);
    await until("all is acknowledged", () => standIn.delivery.open() === 0);
    expect(said(made, north)).toHaveLength(6);
  });
});
