import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { atHand } from "./support/at-hand.ts";
import { type BotProcess, botProcess, build } from "./support/homeserver/bot.ts";
import { diagnosis, type Unanswered } from "./support/homeserver/diagnosis.ts";
import { type NioPerson, nioPerson, type SeenEvent } from "./support/homeserver/nio-person.ts";
import { allEvents, type RawEvent, roomState } from "./support/homeserver/room.ts";
import { type SdkPerson, sdkPerson } from "./support/homeserver/sdk-person.ts";
import {
  type Account,
  type Homeserver,
  homeserverIsHere,
  loseKeysFor,
  startHomeserver,
  until,
} from "./support/homeserver/server.ts";
import { untilNoneMissing } from "./support/homeserver/until-none-missing.ts";
import { randomFrom } from "./support/random.ts";

/** When it is killed and when people speak follows from this number; another one plays another day. */
const seed = Number(process.env.READBACK_SEED ?? 20260512);
const kills = Number(process.env.READBACK_HOMESERVER_KILLS ?? 20);

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
const keyOf = (event: RawEvent): string =>
  z.string().catch("").parse(event.content["io.readback.key"]);
const bodyOf = (content: Record<string, unknown>): string =>
  z.string().catch("").parse(content.body);
const isEdit = (content: Record<string, unknown>): boolean =>
  z.object({ rel_type: z.literal("m.replace") }).safeParse(content["m.relates_to"]).success;
const replyKey = (id: string): string => `reply:matrix:${id}:0`;

/** A new key every few messages, as a long day has it: in the encrypted room's state, for everybody in it. */
const messagesAKey = 9;

/** So many may wait for their answers when the next is said: on a busy machine people are slower too. */
const mostOpen = 15;
/** Far more than an idle machine needs. */
const patientMs = 60_000;

const present = homeserverIsHere();
const here = atHand("homeserver", present);

describe.skipIf(!here)("with a real homeserver and clients of other people", () => {
  let server: Homeserver;
  let bot: BotProcess;
  let accounts: Record<"readback" | "nia" | "bram" | "tamsin" | "odd", Account>;
  let bram: SdkPerson;
  let tamsin: SdkPerson;
  let odd: SdkPerson;
  let nia: NioPerson;
  let south: string;
  let north: string;

  const start = async (): Promise<void> => {
    await bot.start();
  };
  const southEvents = (): Promise<readonly RawEvent[]> => allEvents(server, accounts.tamsin, south);
  const readback = (...words: readonly string[]): string =>
    execFileSync("node", ["dist/program/main.js", ...words], { encoding: "utf8" });
  const show = (): readonly Job[] =>
    readback("show", "--all", "--json", "--db", join(bot.folder, "store.db"))
      .split("\n")
      .filter((line) => line !== "")
      .map((line) => jobSchema.parse(JSON.parse(line)));
  // of many answers at once a client's look at the room brings the last few only, so two are asked
  const answerTo = ({ id, room }: Unanswered): SeenEvent | undefined => {
    const isAnswer = ({ content }: SeenEvent): boolean =>
      content["io.readback.key"] === replyKey(id);
    return nia.seen.find(isAnswer) ?? (room === south ? bram.seen.find(isAnswer) : undefined);
  };
  const answeredAll = (
    messages: readonly Unanswered[],
    open: number,
    what: string,
  ): Promise<void> =>
    untilNoneMissing(
      what,
      () => messages.filter((one) => answerTo(one) === undefined).slice(open),
      (missing) => diagnosis({ server, bot, nia, north, reader: accounts.nia }, missing),
    );
  const answered = async (room: string, id: string): Promise<string> => {
    await answeredAll([{ id, room }], 0, "an answer");
    return bodyOf(answerTo({ id, room })?.content ?? {});
  };

  beforeAll(async () => {
    build();
    server = await startHomeserver();
    accounts = {
      readback: await server.register("readback"),
      nia: await server.register("nia"),
      bram: await server.register("bram"),
      tamsin: await server.register("tamsin"),
      odd: await server.register("odd"),
    };
    tamsin = await sdkPerson(server, accounts.tamsin);
    bram = await sdkPerson(server, accounts.bram);
    odd = await sdkPerson(server, accounts.odd);
    nia = await nioPerson(server, accounts.nia, messagesAKey);
    const invite = [
      accounts.bram.user,
      accounts.readback.user,
      accounts.nia.user,
      accounts.odd.user,
    ];
    south = await tamsin.client.createRoom({
      preset: "private_chat",
      invite,
      power_level_content_override: { events: { "m.room.pinned_events": 0 } },
    });
    north = await tamsin.client.createRoom({
      preset: "private_chat",
      invite: [accounts.nia.user, accounts.readback.user],
      initial_state: [
        {
          type: "m.room.encryption",
          state_key: "",
          content: { algorithm: "m.megolm.v1.aes-sha2", rotation_period_msgs: messagesAKey },
        },
      ],
    });
    await bram.client.joinRoom(south);
    await odd.client.joinRoom(south);
    await nia.join(south);
    await nia.join(north);
    // said before the bot came: not said to it
    await bram.send(south, {
      msgtype: "m.text",
      body: "New job: Old Mill RTU-9, dead. Suction 33 psi",
    });
    const folder = mkdtempSync(join(tmpdir(), "bot-"));
    writeFileSync(join(folder, "password"), accounts.readback.password);
    bot = botProcess(folder, {
      db: join(folder, "store.db"),
      time_zone: "America/Chicago",
      // each message is counted here, however quickly they come
      one_answer_a_burst: false,
      people: [
        { person: "bram", role: "tech", matrix: accounts.bram.user },
        { person: "nia", role: "tech", matrix: accounts.nia.user },
        { person: "tamsin", role: "dispatcher", matrix: accounts.tamsin.user },
      ],
      platforms: {
        matrix: {
          server: server.url,
          user: accounts.readback.user,
          password: { file: join(folder, "password") },
          keys: join(folder, "keys.db"),
          rooms: { south, north },
          board: "south",
          operator: "south",
          board_seconds: 1,
        },
      },
    });
    await start();
    await until(
      () => bot.log().some((line) => line.includes("north (encrypted)")),
      patientMs,
      "joined",
    );
  }, 300_000);

  afterAll(async () => {
    await bot?.kill("SIGKILL");
    for (const person of [tamsin, bram, odd, nia]) person?.stop();
    await server?.stop();
  });

  test(`a day in a plain and an encrypted room: ${kills} kills and 3 server restarts in every 20, each message answered once`, async () => {
    const random = randomFrom(seed);
    await answered(
      south,
      await tamsin.send(south, {
        msgtype: "m.text",
        body: "New job: Gull Wharf RTU-2, blowing warm. Bram take it.",
      }),
    );
    await answered(north, await nia.send(north, "New job: Saltbox Lofts RTU-7, blowing warm"));
    let over = false;
    const sent: (Unanswered & { readonly figure: string })[] = [];
    const speaking = async (
      room: string,
      say: (text: string) => Promise<string>,
      unit: string,
    ): Promise<void> => {
      const mine: Unanswered[] = [];
      for (let n = 0; !over || n < 60; n += 1) {
        const figure = `${(100 + n * 0.5).toFixed(1)} psi`;
        const id = await say(`${unit} suction ${figure}`);
        sent.push({ id, room, figure });
        mine.push({ id, room });
        await wait(700 * random());
        await answeredAll(mine.slice(-200), mostOpen, "answers to what was said");
      }
    };
    const both = Promise.all([
      speaking(south, (body) => bram.send(south, { msgtype: "m.text", body }), "RTU-2"),
      speaking(north, (text) => nia.send(north, text), "RTU-7"),
    ]);
    const killing = async (): Promise<void> => {
      for (let kill = 1; kill <= kills && !over; kill += 1) {
        await wait(1200 * random());
        // on a busy machine no life would last until an answer is out: every third does
        if (kill % 3 === 2) await answeredAll([...sent], mostOpen / 3, "answers between the kills");
        await bot.kill("SIGKILL");
        if (kill % 20 === 5 || kill % 20 === 12) await server.restart("SIGTERM");
        // now and then it does not even come as far as its first look
        if (kill % 3 === 0 && kill < kills) bot.launch();
        else await start();
        if (kill % 20 === 17) await server.restart("SIGKILL");
      }
    };
    // what goes wrong with the people ends the killing too
    await Promise.race([killing(), both]).finally(() => {
      over = true;
    });
    await both;
    await answeredAll(sent, 0, "every answer, readable by the other clients");
    const inSouth = await southEvents();
    const posts = [
      ...inSouth.filter(({ sender }) => sender === accounts.readback.user),
      ...nia.seen.filter(({ room, sender }) => room === north && sender === accounts.readback.user),
    ].filter(({ content }) => !isEdit(content));
    for (const { id, figure } of sent) {
      const answers = posts.filter(({ content }) => content["io.readback.key"] === replyKey(id));
      expect(answers.map(({ content }) => bodyOf(content).includes(figure))).toEqual([true]);
    }
    expect(nia.seen.filter(({ locked }) => locked)).toEqual([]);
    // the server's own count: nothing more than these went into the encrypted room, and nothing plain
    const raw = (await allEvents(server, accounts.nia, north)).filter(
      ({ sender }) => sender === accounts.readback.user,
    );
    expect(new Set(raw.map(({ type }) => type))).toEqual(
      new Set(["m.room.member", "m.room.encrypted"]),
    );
    const readable = new Set(nia.seen.filter(({ encrypted }) => encrypted).map(({ id }) => id));
    expect(
      raw.filter(({ type, event_id }) => type === "m.room.encrypted" && !readable.has(event_id)),
    ).toEqual([]);
    // the record holds each message once
    const filed = show().flatMap(({ readings }) => readings.map(({ message }) => message));
    expect([...filed].sort()).toEqual(sent.map(({ id }) => id).sort());
    readback("verify", join(bot.folder, "store.db"));
    process.stderr.write(
      `homeserver: seed ${seed}, ${sent.length} messages, ${kills} kills, each message answered once\n`,
    );
  }, 1_200_000);

  test("the board is one post, pinned, and shows how things stand", async () => {
    await until(
      async () => {
        const boards = (await southEvents()).filter((event) => keyOf(event).startsWith("board:"));
        const last = bodyOf(boards.at(-1)?.content ?? {});
        return /1 RTU-2 Gull Wharf/.test(last) && /2 RTU-7 Saltbox Lofts/.test(last);
      },
      patientMs,
      "the board",
    );
    const boards = (await southEvents()).filter((event) => keyOf(event).startsWith("board:"));
    const originals = boards.filter(({ content }) => !isEdit(content));
    expect(originals).toHaveLength(1);
    const pinned = await roomState(server, accounts.tamsin, {
      room: south,
      type: "m.room.pinned_events",
    });
    expect(pinned).toEqual({ pinned: [originals[0]?.event_id] });
    const last = boards.at(-1)?.content ?? {};
    expect(String(last.formatted_body)).toContain("<table>");
  }, 600_000);

  test("a removed board is posted anew", async () => {
    const first = (await southEvents()).find((event) => keyOf(event).startsWith("board:"));
    await tamsin.client.redactEvent(south, String(first?.event_id));
    await until(
      async () =>
        (await southEvents()).some(
          (event) =>
            keyOf(event).startsWith("board:") &&
            !isEdit(event.content) &&
            event.event_id !== first?.event_id,
        ),
      patientMs,
      "another board",
    );
  }, 600_000);

  test("what was said before the bot came, and what strangers say, is neither filed nor answered", async () => {
    await odd.send(south, { msgtype: "m.text", body: "RTU-2 suction 12 psi" });
    await odd.send(south, { msgtype: "m.text", body: "New job: Odd Corner RTU-1, no power" });
    // an answer to somebody else shows that the stranger's turn is over
    await answered(
      south,
      await bram.send(south, { msgtype: "m.text", body: "RTU-2 discharge 390 psi" }),
    );
    expect(show().map(({ site }) => site)).toEqual(["Gull Wharf", "Saltbox Lofts"]);
    expect(JSON.stringify(show())).not.toContain("12 psi");
  }, 600_000);

  test("an edit by its author mends the record and the answer; anybody else's edit does neither", async () => {
    const id = await bram.send(south, { msgtype: "m.text", body: "RTU-2 superheat 31 F" });
    await answered(south, id);
    const edit = (text: string) => ({
      msgtype: "m.text",
      body: `* ${text}`,
      "m.new_content": { msgtype: "m.text", body: text },
      "m.relates_to": { rel_type: "m.replace", event_id: id },
    });
    await odd.send(south, edit("RTU-2 superheat 99 F"));
    await tamsin.send(south, edit("RTU-2 superheat 98 F"));
    await bram.send(south, edit("RTU-2 superheat 13 F"));
    await until(
      async () =>
        (await southEvents()).some(
          (event) =>
            isEdit(event.content) &&
            /13 F/.test(bodyOf(event.content)) &&
            event.sender === accounts.readback.user,
        ),
      patientMs,
      "the mended answer",
    );
    const superheats = show()[0]?.readings.filter(({ quantity }) => quantity === "superheat") ?? [];
    expect(
      superheats.filter((one) => one.replaced_by === undefined).map(({ said }) => said),
    ).toEqual(["RTU-2 superheat 13 F"]);
    expect(JSON.stringify(show())).not.toMatch(/9[89] F/);
  }, 600_000);

  test("a removed message no longer counts; a cross takes back what was read, in the encrypted room too", async () => {
    const gone = await bram.send(south, { msgtype: "m.text", body: "RTU-2 subcooling 7 F" });
    await answered(south, gone);
    await bram.client.redactEvent(south, gone);
    const crossed = await nia.send(north, "RTU-7 superheat 44 F");
    await answered(north, crossed);
    const answer = nia.seen.find((event) => event.content["io.readback.key"] === replyKey(crossed));
    await nia.react(north, String(answer?.id), "\u274C\uFE0F");
    await until(
      () => {
        const all = show().flatMap(({ readings }) => readings);
        return [gone, crossed].every((id) =>
          all.some((one) => one.message === id && (one.deleted === true || one.undone === true)),
        );
      },
      patientMs,
      "both taken back",
    );
  }, 600_000);

  test("in a thread the answer stays in the thread, with a way for clients that show none", async () => {
    const root = await tamsin.send(south, {
      msgtype: "m.text",
      body: "New job: Cinder School AC-5, trips at start",
    });
    await answered(south, root);
    const id = await bram.send(south, {
      msgtype: "m.text",
      body: "suction 60 psi",
      "m.relates_to": {
        rel_type: "m.thread",
        event_id: root,
        is_falling_back: true,
        "m.in_reply_to": { event_id: root },
      },
    });
    await answered(south, id);
    const reply = (await southEvents()).find(
      (event) => keyOf(event) === replyKey(id) && !isEdit(event.content),
    );
    expect(reply?.content["m.relates_to"]).toMatchObject({
      rel_type: "m.thread",
      event_id: root,
      is_falling_back: true,
    });
    expect(
      show()
        .find(({ site }) => site === "Cinder School")
        ?.readings.map(({ message }) => message),
    ).toEqual([id]);
  }, 600_000);

  test("photos are kept with their job under their hash, plain and encrypted", async () => {
    const picture = Buffer.from("not really a picture, but bytes all the same");
    const sha256 = createHash("sha256").update(picture).digest("hex");
    const url = await bram.client.uploadContent(picture, "image/jpeg", "plate.jpg");
    await bram.send(south, {
      msgtype: "m.image",
      body: "RTU-2 nameplate",
      filename: "plate.jpg",
      url,
      info: { size: picture.length, mimetype: "image/jpeg" },
    });
    await nia.sendFile(north, { name: "coil.jpg", type: "image/jpeg", bytes: picture });
    await until(
      () =>
        ["Gull Wharf", "Saltbox Lofts"].every((site) =>
          show()
            .find((job) => job.site === site)
            ?.files.some((file) => file.sha256 === sha256),
        ),
      patientMs,
      "both photos",
    );
  }, 600_000);

  test("a key that was shared while it was down and the server had just restarted still comes to it", async () => {
    // several keys before it, so that the server has counted a while and holds none of them any more
    for (const figure of [5, 6, 7]) {
      await nia.renewKey(north);
      await answered(north, await nia.send(north, `RTU-7 subcooling ${figure} F`));
    }
    await bot.kill("SIGKILL");
    await server.restart("SIGTERM");
    await nia.renewKey(north);
    const id = await nia.send(north, "RTU-7 subcooling 8 F");
    await start();
    expect(await answered(north, id)).toContain("8 F");
  }, 600_000);

  test("150 messages sent while it was down are all answered, in order", async () => {
    await bot.kill("SIGTERM");
    const ids: string[] = [];
    for (let n = 0; n < 150; n += 1) {
      ids.push(
        await bram.send(south, { msgtype: "m.text", body: `RTU-2 discharge ${300 + n} psi` }),
      );
    }
    await start();
    await answeredAll(
      ids.map((id) => ({ id, room: south })),
      0,
      "150 answers",
    );
    const asked = new Set(ids.map(replyKey));
    const replies = (await southEvents())
      .filter((event) => !isEdit(event.content))
      .map(keyOf)
      .filter((key) => asked.has(key));
    expect(replies).toEqual(ids.map(replyKey));
  }, 600_000);

  test("in the encrypted room a thread, edits and removals count as in a plain one", async () => {
    const site = "Alder Depot";
    const root = await nia.send(north, `New job: ${site} AC-3, no cooling`);
    await answered(north, root);
    const thread = {
      rel_type: "m.thread",
      event_id: root,
      is_falling_back: true,
      "m.in_reply_to": { event_id: root },
    };
    const id = await nia.send(north, "suction 61 psi", { "m.relates_to": thread });
    await answered(north, id);
    const standing = () =>
      show()
        .find((job) => job.site === site)
        ?.readings.filter((one) => one.replaced_by === undefined && one.deleted !== true)
        .map(({ said }) => said);
    const edit = (text: string) => ({
      msgtype: "m.text",
      body: `* ${text}`,
      "m.new_content": { msgtype: "m.text", body: text },
      "m.relates_to": { rel_type: "m.replace", event_id: id },
    });
    const stands = (texts: readonly string[], what: string) =>
      until(() => JSON.stringify(standing()) === JSON.stringify(texts), patientMs, what);
    await tamsin.send(north, edit("suction 99 psi"));
    await nia.send(north, "", edit("suction 71 psi"));
    await stands(["suction 71 psi"], "the first edit");
    const second = await nia.send(north, "", edit("suction 72 psi"));
    await stands(["suction 72 psi"], "the second edit");
    await nia.redact(north, second);
    await stands(["suction 71 psi"], "the first edit again");
    await nia.redact(north, id);
    await stands([], "nothing");
    // where the server and clients without the key look for it, the answers' place can be read
    const raw = (await allEvents(server, accounts.nia, north)).filter(
      ({ sender, type }) => sender === accounts.readback.user && type === "m.room.encrypted",
    );
    const answer = answerTo({ id, room: north })?.id;
    expect(raw.find(({ event_id }) => event_id === answer)?.content["m.relates_to"]).toMatchObject({
      rel_type: "m.thread",
      event_id: root,
    });
    expect(raw.map(({ content }) => content["m.relates_to"])).toContainEqual({
      rel_type: "m.replace",
      event_id: answer,
    });
  }, 600_000);

  test("40 messages sent to the encrypted room while it was down, over a restart of the server, are all answered, in order", async () => {
    await bot.kill("SIGKILL");
    const ids: string[] = [];
    for (let n = 0; n < 40; n += 1) {
      if (n === 20) await server.restart("SIGTERM");
      ids.push(await nia.send(north, `RTU-7 discharge ${300 + n} psi`));
    }
    await start();
    await answeredAll(
      ids.map((id) => ({ id, room: north })),
      0,
      "40 answers",
    );
    const asked = new Set(ids.map(replyKey));
    const replies = nia.seen
      .filter(({ content }) => !isEdit(content))
      .map(({ content }) => z.string().catch("").parse(content["io.readback.key"]))
      .filter((key) => asked.has(key));
    expect(replies).toEqual(ids.map(replyKey));
  }, 600_000);

  test("a room key that the server lost: nothing of it is filed; taken out and let in again, it gets a new one", async () => {
    await bot.kill("SIGTERM");
    await nia.renewKey(north);
    const unread = await nia.send(north, "RTU-7 superheat 91 F");
    loseKeysFor(server, accounts.readback);
    await start();
    await until(
      () => bot.log().some((line) => line.includes('"locked"') && line.includes(unread)),
      patientMs,
      "the message that cannot be read",
    );
    const still = await nia.send(north, "RTU-7 superheat 92 F");
    await until(
      () => bot.log().some((line) => line.includes('"locked"') && line.includes(still)),
      patientMs,
      "the next under the same key",
    );
    await tamsin.client.kickUser(accounts.readback.user, north);
    await until(
      () => bram.seen.some(({ content }) => bodyOf(content).includes("no longer in north")),
      patientMs,
      "the operator is told",
    );
    await tamsin.client.inviteUser(accounts.readback.user, north);
    const member = { room: north, type: "m.room.member", key: accounts.readback.user };
    await until(
      async () => (await roomState(server, accounts.nia, member)).membership === "join",
      patientMs,
      "the bot is back",
    );
    const id = await nia.send(north, "RTU-7 superheat 13 F");
    expect(await answered(north, id)).toContain("13 F");
    expect(JSON.stringify(show())).not.toMatch(/9[12] F/);
  }, 600_000);

  test("the device is cross-signed, so that strict clients show its messages", async () => {
    const answer = await bram.client.doRequest("POST", "/_matrix/client/v3/keys/query", null, {
      device_keys: { [accounts.readback.user]: [] },
    });
    const user = accounts.readback.user;
    const keys = keysSchema.parse(answer);
    const self = Object.keys(keys.self_signing_keys[user]?.keys ?? {});
    const [device] = Object.values(keys.device_keys[user] ?? {});
    expect(Object.keys(device?.signatures[user] ?? {})).toEqual(expect.arrayContaining(self));
    expect(self).toHaveLength(1);
  });

  test("an invitation counts only from admitted people, into rooms that are configured", async () => {
    const trap = await odd.client.createRoom({
      preset: "private_chat",
      invite: [accounts.readback.user],
      is_direct: true,
    });
    const other = await bram.client.createRoom({
      preset: "private_chat",
      invite: [accounts.readback.user],
    });
    const direct = await bram.client.createRoom({
      preset: "trusted_private_chat",
      invite: [accounts.readback.user],
      is_direct: true,
    });
    const member = { type: "m.room.member", key: accounts.readback.user };
    await until(
      async () =>
        (await roomState(server, accounts.bram, { room: direct, ...member })).membership === "join",
      patientMs,
      "the talk of two",
    );
    await until(
      () => bot.log().filter((line) => line.includes("invitation_left")).length >= 2,
      patientMs,
      "both left",
    );
    expect((await roomState(server, accounts.odd, { room: trap, ...member })).membership).toBe(
      "invite",
    );
    expect((await roomState(server, accounts.bram, { room: other, ...member })).membership).toBe(
      "invite",
    );
  }, 600_000);

  test("restored from a backup without its keys, as a new device: files what was said since, answers nothing twice, reads the encrypted room on", async () => {
    const [store, copy] = [join(bot.folder, "store.db"), join(bot.folder, "copy.db")];
    const job = "New job: Fern Mill RTU-4, no cooling";
    await answered(south, await bram.send(south, { msgtype: "m.text", body: job }));
    readback("backup", copy, "--db", store);
    const ids: string[] = [];
    for (const psi of [391, 392, 393]) {
      const id = await bram.send(south, { msgtype: "m.text", body: `RTU-4 discharge ${psi} psi` });
      await answered(south, id);
      ids.push(id);
    }
    await bot.kill("SIGKILL");
    for (const end of ["", "-wal", "-shm"]) {
      rmSync(`${store}${end}`, { force: true });
      rmSync(join(bot.folder, `keys.db${end}`), { force: true });
    }
    renameSync(copy, store);
    const late = await bram.send(south, { msgtype: "m.text", body: "RTU-4 discharge 394 psi" });
    await start();
    await answered(south, late);
    await answered(north, await nia.send(north, "New job: Fern School RTU-5, no cooling"));
    const sealed = await nia.send(north, "RTU-5 discharge 395 psi");
    expect(await answered(north, sealed)).toContain("395 psi");
    const filed = show().flatMap(({ readings }) => readings.map(({ message }) => message));
    expect([...ids, late, sealed].filter((id) => !filed.includes(id))).toEqual([]);
    const answers = (await southEvents()).filter((event) => !isEdit(event.content)).map(keyOf);
    for (const id of [...ids, late])
      expect(answers.filter((key) => key === replyKey(id))).toHaveLength(1);
    await bot.kill("SIGTERM");
    readback("verify", store);
    await start();
  }, 600_000);

  test("an encrypted talk of two, as clients open it: heard, filed and answered there", async () => {
    const talk = await nia.talkTo(accounts.readback.user);
    const opening = await nia.send(talk, "New job: Heron Court RTU-6, no cooling");
    await answered(talk, opening);
    const id = await nia.send(talk, "suction 62 psi");
    expect(await answered(talk, id)).toContain("62 psi");
    const raw = (await allEvents(server, accounts.nia, talk)).filter(
      ({ sender, type }) => sender === accounts.readback.user && type !== "m.room.member",
    );
    expect(new Set(raw.map(({ type }) => type))).toEqual(new Set(["m.room.encrypted"]));
    expect(
      show()
        .find(({ site }) => site === "Heron Court")
        ?.readings.map(({ message }) => message),
    ).toEqual([id]);
  }, 600_000);

  test("a check says what is right without sending anything, and a revoked token ends the program with its own status", async () => {
    expect(await bot.kill("SIGTERM")).toBe(0);
    const before = (await southEvents()).length;
    const checked = bot.check();
    expect(checked).toContain("north: joined, encrypted, may write");
    expect(checked).toContain("the clock agrees with the server's");
    expect((await southEvents()).length).toBe(before);
    await start();
    await logOutEverywhere(server, accounts.readback);
    await until(
      () => bot.log().some((line) => line.includes("no longer takes the bot's token")),
      patientMs,
      "the end",
    );
    expect(await bot.ended()).toBe(3);
  }, 600_000);
});

describe.skipIf(!here)("with a real homeserver and its own rate limits", () => {
  test("each answer waits as long as the server asks, and none is lost or said twice", async () => {
    build();
    const server = await startHomeserver(true);
    const [readback, bramAccount] = [
      await server.register("readback"),
      await server.register("bram"),
    ];
    const person = await sdkPerson(server, bramAccount);
    const room = await person.client.createRoom({
      preset: "private_chat",
      invite: [readback.user],
    });
    const folder = mkdtempSync(join(tmpdir(), "bot-"));
    writeFileSync(join(folder, "password"), readback.password);
    const bot = botProcess(folder, {
      db: join(folder, "store.db"),
      time_zone: "America/Chicago",
      // each message is counted here, however quickly they come
      one_answer_a_burst: false,
      people: [{ person: "bram", role: "tech", matrix: bramAccount.user }],
      platforms: {
        matrix: {
          server: server.url,
          user: readback.user,
          password: { file: join(folder, "password") },
          keys: join(folder, "keys.db"),
          rooms: { south: room },
        },
      },
    });
    await bot.start();
    const count = 13;
    try {
      // the person has limits as well: what they send waits for them
      const ids: string[] = [];
      ids.push(
        await person.send(room, { msgtype: "m.text", body: "New job: Gull Wharf RTU-2, dead" }),
      );
      for (let n = 1; n < count; n += 1) {
        ids.push(
          await person.send(room, { msgtype: "m.text", body: `RTU-2 suction ${60 + n} psi` }),
        );
      }
      const keyed = (): readonly unknown[] =>
        person.seen.map(({ content }) => content["io.readback.key"]);
      await untilNoneMissing(
        "all answers",
        () => ids.filter((id) => !keyed().includes(replyKey(id))).map((id) => ({ id, room })),
        async () => bot.log().slice(-25).join("\n"),
      );
      const keys = (await allEvents(server, bramAccount, room))
        .filter(({ content }) => !isEdit(content))
        .map(keyOf);
      expect(keys.filter((key) => key !== "").sort()).toEqual(ids.map(replyKey).sort());
      expect(bot.log().some((line) => line.includes("M_LIMIT_EXCEEDED"))).toBe(true);
    } finally {
      await bot.kill("SIGTERM");
      person.stop();
      await server.stop();
    }
  }, 600_000);
});

const jobSchema = z.object({
  site: z.string().nullable(),
  readings: z.array(
    z.object({
      quantity: z.string(),
      said: z.string(),
      message: z.string(),
      replaced_by: z.unknown().optional(),
      undone: z.boolean().optional(),
      deleted: z.boolean().optional(),
    }),
  ),
  files: z.array(z.object({ sha256: z.string() })),
});
type Job = z.output<typeof jobSchema>;

const signed = z.object({
  keys: z.record(z.string(), z.string()),
  signatures: z.record(z.string(), z.record(z.string(), z.string())),
});
const keysSchema = z.object({
  self_signing_keys: z.record(z.string(), signed),
  device_keys: z.record(z.string(), z.record(z.string(), signed)),
});

async function logOutEverywhere(server: Homeserver, account: Account): Promise<void> {
  await fetch(`${server.url}/_matrix/client/v3/logout/all`, {
    method: "POST",
    headers: { authorization: `Bearer ${account.token}` },
  });
}
