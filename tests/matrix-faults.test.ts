import { createHash } from "node:crypto";
import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { z } from "zod";
import { allJobs } from "../src/bot/memory.ts";
import { findMessage, messagesIn } from "../src/record/inbox.ts";
import { putOut, unsent } from "../src/record/outbox.ts";
import { fileKey, putWords } from "../src/record/words-table.ts";
import { type Peer, peerOn } from "./support/matrix/peer.ts";
import {
  bodyOf,
  bram,
  everybody,
  me,
  megolm,
  nia,
  north,
  odd,
  openScene,
  type Scene,
  south,
  tamsin,
  until,
} from "./support/matrix/scene.ts";

import { addEvent } from "./support/matrix/world.ts";

/** Faults that a real homeserver cannot be made to have, on a stand-in in this process. */

let scene: Scene;
beforeEach(async () => {
  scene = await openScene();
});
afterEach(async () => {
  await scene.close();
});

const text = (body: string) => ({ msgtype: "m.text", body });
const opening = "New job: Gull Wharf RTU-2, blowing warm";
const bodies = (room: string): readonly string[] => scene.posts(room).map(bodyOf);
const kept = (): readonly string[] =>
  messagesIn(scene.bot().store, "done").map(({ message }) => message.text);
const said = (what: string) => () => bodies(south).some((body) => body.includes(what));
const readingsOf = () => allJobs(scene.bot().memory).flatMap(({ readings }) => readings);

describe("receiving", () => {
  test("a first start takes history for history; nothing before our join is heard", async () => {
    scene.server.room(south, [tamsin, bram]);
    scene.server.say(south, bram, text("New job: Old Mill RTU-9, dead"));
    scene.server.say(south, me, { membership: "join" }, { type: "m.room.member", state_key: me });
    await scene.start();
    scene.server.say(south, bram, text(opening));
    await until("an answer", said("Gull Wharf"));
    expect(kept()).toEqual([opening]);
  });

  test("a first start in a room that the bot joined long ago hears nothing of what stands there", async () => {
    scene.server.room(south, everybody);
    scene.server.world.limit = 5;
    for (let n = 0; n < 12; n += 1) scene.server.say(south, bram, text(`RTU-2 suction ${n} psi`));
    await scene.start();
    scene.server.say(south, bram, text(opening));
    await until("an answer", said("Gull Wharf"));
    expect(kept()).toEqual([opening]);
  });

  test("250 messages in a shortened timeline come complete, once and in order", async () => {
    scene.server.room(south, everybody);
    scene.server.world.limit = 10;
    await scene.start();
    await scene.stop();
    const ids = Array.from({ length: 250 }, (_, n) =>
      scene.server.say(south, bram, text(`idle words ${n}`)),
    );
    await scene.start();
    await until("all are worked on", () => kept().length >= ids.length, 40_000);
    expect(kept().filter((one) => one.startsWith("idle"))).toEqual(
      ids.map((_, n) => `idle words ${n}`),
    );
  });

  test("a join far back in a shortened timeline still cuts what was said before it", async () => {
    scene.server.room(south, [tamsin, bram]);
    scene.server.world.limit = 3;
    await scene.start();
    await scene.stop();
    for (let n = 0; n < 20; n += 1) scene.server.say(south, bram, text(`before ${n}`));
    scene.server.say(south, me, { membership: "join" }, { type: "m.room.member", state_key: me });
    for (let n = 0; n < 20; n += 1) scene.server.say(south, bram, text(`after ${n}`));
    await scene.start();
    await until("all are kept", () => kept().length >= 20);
    expect(kept()).toEqual(Array.from({ length: 20 }, (_, n) => `after ${n}`));
  });

  test("where the store takes nothing the same sync comes again, and nothing is lost", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene
      .bot()
      .store.db.exec(
        "CREATE TEMP TRIGGER full BEFORE INSERT ON inbox BEGIN SELECT RAISE(ABORT, 'full'); END",
      );
    scene.server.say(south, bram, text(opening));
    await until("it is refused", () => scene.logs.some((line) => line.includes("matrix_trouble")));
    scene.bot().store.db.exec("DROP TRIGGER full");
    await until("it is answered", said("Gull Wharf"));
    expect(kept()).toEqual([opening]);
  });

  test("own messages, notices, strangers and other rooms are neither kept nor answered", async () => {
    scene.server.room(south, everybody);
    scene.server.room("!other:fake.test", [bram, me]);
    await scene.start();
    scene.server.say(south, odd, text("RTU-2 suction 1 psi"));
    scene.server.say(south, tamsin, { msgtype: "m.notice", body: "RTU-2 suction 2 psi" });
    scene.server.say("!other:fake.test", bram, text("RTU-2 suction 3 psi"));
    scene.server.say(south, "@bram:other.test", text("RTU-2 suction 4 psi"));
    scene.server.say(south, "@Bram:fake.test", text("RTU-2 suction 5 psi"));
    scene.server.say(south, bram, text(opening));
    await until("an answer", said("Gull Wharf"));
    expect(kept()).toEqual([opening]);
    expect(scene.logs.filter((line) => line.includes('"stranger"'))).toHaveLength(3);
    expect(scene.logs.join("\n")).not.toContain("suction");
  });

  test("a foreign edit, an edit of an edit and an edit of the unknown change nothing", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene.server.say(south, bram, text(opening));
    await until("the job", said("Gull Wharf"));
    const id = scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("the reading", said("60 psi"));
    const edit = (of: string, body: string) => ({
      ...text(`* ${body}`),
      "m.new_content": text(body),
      "m.relates_to": { rel_type: "m.replace", event_id: of },
    });
    scene.server.say(south, tamsin, edit(id, "RTU-2 suction 61 psi"));
    const own = scene.server.say(south, bram, edit(id, "RTU-2 suction 62 psi"));
    scene.server.say(south, bram, edit(own, "RTU-2 suction 63 psi"));
    scene.server.say(south, bram, edit("$never:fake.test", "RTU-2 suction 64 psi"));
    scene.server.say(south, bram, text("RTU-2 discharge 300 psi"));
    await until("the last", said("300 psi"));
    const standing = readingsOf()
      .filter((one) => one.replaced_by === undefined)
      .map(({ said: words }) => words);
    expect(standing.join("; ")).toMatch(/62 psi.*300 psi/);
    expect(
      readingsOf()
        .map(({ said: words }) => words)
        .join(),
    ).not.toMatch(/6[134] psi/);
  });

  test("an edit taken back shows the text before it again; a removed message takes its edits along", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene.server.say(south, bram, text(opening));
    await until("the job", said("Gull Wharf"));
    const id = scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    const edit = scene.server.say(south, bram, {
      ...text("* RTU-2 suction 70 psi"),
      "m.new_content": text("RTU-2 suction 70 psi"),
      "m.relates_to": { rel_type: "m.replace", event_id: id },
    });
    const standing = () =>
      readingsOf()
        .filter((one) => one.replaced_by === undefined && one.deleted !== true)
        .map(({ value }) => Math.round(Number(value) / 6894.757));
    await until("the edit", () => standing().join() === "70");
    scene.server.say(south, bram, { redacts: edit }, { type: "m.room.redaction", redacts: edit });
    await until("the first text", () => standing().join() === "60");
    scene.server.say(south, bram, { redacts: id }, { type: "m.room.redaction", redacts: id });
    await until("nothing", () => standing().length === 0);
  });

  test("a wrong password and an unknown room end the program with what is to be mended", async () => {
    scene.server.faults.push({
      on: /POST .*\/login/,
      times: 1,
      status: 403,
      body: { errcode: "M_FORBIDDEN", error: "Invalid username or password" },
    });
    await scene.start();
    expect(await scene.ended()).toMatch(
      /does not let @readback:fake\.test in with this password.*mend "user" or "password"/,
    );
    await scene.close();
    scene = await openScene({ rooms: { south: "#nowhere:fake.test" } });
    await scene.start();
    expect(await scene.ended()).toMatch(/knows no room #nowhere:fake\.test; mend "rooms"/);
  });

  test("stopping during a long poll is quick, and nothing is kept after it", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    await until(
      "it waits",
      () => scene.server.asked.filter((one) => one.endsWith("/sync")).length > 1,
    );
    const began = Date.now();
    const stopping = scene.stop();
    scene.server.say(south, bram, text(opening));
    expect(await stopping).toBeUndefined();
    // the poll itself would last half a minute
    expect(Date.now() - began).toBeLessThan(15_000);
    await scene.start();
    await until("it is heard at the next start", said("Gull Wharf"));
    expect(kept()).toEqual([opening]);
  });

  test("stopping in a long poll in which nothing is said does not wait for its end", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    const polls = () => scene.server.asked.filter((one) => one.endsWith("/sync")).length;
    await until("it waits", () => polls() > 1);
    expect(await scene.stop()).toBeUndefined();
    // the program's own patience would end it too, and say so
    expect(scene.logs.filter((line) => line.includes("stopped_late"))).toEqual([]);
  });

  test("a revoked token ends the program with a sentence that says what to do", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene.server.world.tokens.clear();
    scene.server.say(south, bram, text(opening));
    expect(await scene.ended()).toMatch(/no longer takes the bot's token.*Put its key file aside/);
  }, 120_000);
});

describe("sending", () => {
  const put = (id: string, body: string, more: object = {}): void => {
    putOut(scene.bot().store, {
      id,
      platform: "matrix",
      channel: "south",
      kind: "reply",
      text: body,
      files: [],
      ...more,
    });
    scene.server.say(south, odd, text("wakes the sync"));
  };

  test("an answer lost after it was taken, a 500 and both kinds of 429 still give one post each", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    const send = /PUT .*\/send\//;
    scene.server.faults.push({ on: send, times: 1, loseAnswer: true });
    put("one", "first");
    await until("first", () => bodies(south).includes("first"));
    scene.server.faults.push({ on: send, times: 1, status: 500 });
    put("two", "second");
    await until("second", () => bodies(south).includes("second"));
    const limited = { errcode: "M_LIMIT_EXCEEDED", error: "slow down" };
    scene.server.faults.push({
      on: send,
      times: 1,
      status: 429,
      body: { ...limited, retry_after_ms: 300 },
    });
    const began = Date.now();
    put("three", "third");
    await until("third", () => bodies(south).includes("third"));
    expect(Date.now() - began).toBeGreaterThanOrEqual(300);
    scene.server.faults.push({
      on: send,
      times: 1,
      status: 429,
      body: limited,
      headers: { "retry-after": "1" },
    });
    const again = Date.now();
    put("four", "fourth");
    await until("fourth", () => bodies(south).includes("fourth"));
    expect(Date.now() - again).toBeGreaterThanOrEqual(1000);
    expect(bodies(south)).toEqual(["first", "second", "third", "fourth"]);
  }, 120_000);

  test("text stands as it was meant, escaped where it is HTML, and rings nobody", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    const odd = 'a < b & "c" &amp;lt; @room <!channel> tel:555 \u2019s';
    put("odd", odd);
    await until("it is out", () => bodies(south).includes(odd));
    const { content } = scene.posts(south)[0] ?? {};
    expect(content).toMatchObject({
      msgtype: "m.notice",
      body: odd,
      formatted_body:
        "a &lt; b &amp; &quot;c&quot; &amp;amp;lt; @room &lt;!channel&gt; tel:555 \u2019s",
      "m.mentions": {},
    });
  });

  test("a room's state that cannot be asked for lets nothing leave; afterwards it leaves encrypted", async () => {
    scene.server.room(south, everybody);
    scene.server.room(north, [nia, me]);
    // no sync tells it, as after a key file that was lost: only the server can
    addEvent(scene.server.world, {
      room: north,
      type: "m.room.encryption",
      sender: nia,
      state_key: "",
      content: { algorithm: "m.megolm.v1.aes-sha2" },
      hidden: true,
    });
    const gate = /GET .*north.*\/state\/m\.room\.encryption/;
    const faults = [
      { on: gate, times: 3, status: 502, body: { errcode: "M_UNKNOWN", error: "bad gateway" } },
      {
        on: gate,
        times: 1,
        status: 404,
        body: { errcode: "M_UNRECOGNIZED", error: "no such thing" },
      },
    ];
    scene.server.faults.push(...faults);
    await scene.start();
    put("secret", "for few eyes", { channel: "north" });
    await until("it was asked in vain", () =>
      scene.logs.some((line) => line.includes('"not_sent"')),
    );
    expect(scene.posts(north)).toEqual([]);
    await until("all was asked", () => faults.every(({ times }) => times === 0), 20_000);
    await until("it is out", () => scene.posts(north).length > 0, 20_000);
    expect(scene.posts(north).map(({ type }) => type)).toEqual(["m.room.encrypted"]);
    expect(JSON.stringify(scene.server.world.events)).not.toContain("few eyes");
  }, 120_000);

  test("a body that was kept plain never leaves into a room that is encrypted since", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene.server.faults.push({ on: /PUT .*\/send\/m\.room\.message/, times: 2, status: 500 });
    put("late", "was plain once");
    await until("it failed", () => scene.logs.some((line) => line.includes('"not_sent"')));
    scene.server.room(south, [], megolm);
    scene.server.say(
      south,
      tamsin,
      { algorithm: "m.megolm.v1.aes-sha2" },
      { type: "m.room.encryption", state_key: "" },
    );
    await until("it is out", () => scene.posts(south).length > 0, 20_000);
    expect(scene.posts(south).map(({ type }) => type)).toEqual(["m.room.encrypted"]);
  }, 120_000);
});

describe("the board", () => {
  const boardPosts = () =>
    scene
      .posts(south)
      .filter(({ content }) => String(content["io.readback.key"]).startsWith("board:"));
  beforeEach(async () => {
    await scene.close();
    scene = await openScene({ board: true });
    scene.server.room(south, everybody);
  });

  test("a refused pin leaves the board standing, and the operator is told once what to grant", async () => {
    scene.server.faults.push({
      on: /PUT .*\/state\/m\.room\.pinned_events/,
      times: 1,
      status: 403,
      body: { errcode: "M_FORBIDDEN", error: "not your level" },
    });
    await scene.start();
    await until("it is told", said("cannot be pinned"));
    scene.server.say(south, bram, text(opening));
    await until("the board goes on", () =>
      scene.server.world.events.some(({ content }) =>
        JSON.stringify(content["m.new_content"] ?? "").includes("Gull Wharf"),
      ),
    );
    expect(boardPosts()).toHaveLength(1);
    expect(bodies(south).filter((body) => body.includes("cannot be pinned"))).toHaveLength(1);
  }, 120_000);

  test("a limit on the board holds up no answer, and the board's own edits are nobody's message", async () => {
    await scene.start();
    await until("the board", () => boardPosts().length === 1);
    const edits = () =>
      scene.server.world.events.filter(
        ({ sender, content }) =>
          sender === me && String(content["io.readback.key"]).startsWith("board:"),
      ).length;
    const limit = {
      on: /PUT .*\/send\/m\.room\.message\/board/,
      times: 1,
      status: 429,
      body: { errcode: "M_LIMIT_EXCEEDED", error: "slow down", retry_after_ms: 4000 },
    };
    scene.server.faults.push(limit);
    const before = edits();
    scene.server.say(south, bram, text(opening));
    await until("the board is held up", () => limit.times === 0);
    const heldAt = Date.now();
    scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("the answer", said("60 psi"));
    expect(edits()).toBe(before);
    await until("the board goes on", () => edits() > before);
    expect(Date.now() - heldAt).toBeGreaterThanOrEqual(3900);
    scene.server.say(south, bram, text("RTU-2 discharge 300 psi"));
    await until("another answer", said("300 psi"));
    expect(kept()).toEqual([opening, "RTU-2 suction 60 psi", "RTU-2 discharge 300 psi"]);
  }, 120_000);

  test("a board that was removed while the bot was down is posted anew", async () => {
    await scene.start();
    await until("the board", () => boardPosts().length === 1);
    await scene.stop();
    const [board] = boardPosts();
    scene.server.say(
      south,
      tamsin,
      { redacts: board?.event_id },
      { type: "m.room.redaction", redacts: String(board?.event_id) },
    );
    scene.server.say(south, bram, text(opening));
    await scene.start();
    await until(
      "another",
      () =>
        boardPosts().some(
          ({ event_id, content }) => event_id !== board?.event_id && "body" in content,
        ),
      15_000,
    );
  }, 120_000);
});

describe("threads and reactions", () => {
  beforeEach(async () => {
    scene.server.room(south, everybody);
    await scene.start();
  });
  const post = (what: string) => scene.posts(south).find((event) => bodyOf(event).includes(what));

  test("a thread under the bot's own answer belongs to the job of that answer, and stays there", async () => {
    scene.server.say(south, bram, text(opening));
    await until("the job", said("Gull Wharf"));
    scene.server.say(south, bram, text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("another job", said("Saltbox Lofts"));
    const root = post("Gull Wharf")?.event_id;
    const inside = { "m.relates_to": { rel_type: "m.thread", event_id: root } };
    scene.server.say(south, bram, { ...text("suction 60 psi"), ...inside });
    await until("the reading", said("60 psi"));
    expect(
      allJobs(scene.bot().memory).map(({ site, readings }) => [site, readings.length]),
    ).toEqual([
      ["Gull Wharf", 1],
      ["Saltbox Lofts", 0],
    ]);
    expect(post("60 psi")?.content["m.relates_to"]).toMatchObject({
      rel_type: "m.thread",
      event_id: root,
    });
  });

  test("a cross by anybody else takes nothing back; one by its author does", async () => {
    scene.server.say(south, bram, text(opening));
    await until("the job", said("Gull Wharf"));
    scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("the reading", said("60 psi"));
    const cross = {
      "m.relates_to": {
        rel_type: "m.annotation",
        event_id: post("60 psi")?.event_id,
        key: "\u274C\uFE0F",
      },
    };
    scene.server.say(south, tamsin, cross, { type: "m.reaction" });
    scene.server.say(south, bram, text("RTU-2 discharge 300 psi"));
    await until("the next reading", said("300 psi"));
    expect(readingsOf().some((one) => one.deleted === true || one.undone === true)).toBe(false);
    scene.server.say(south, bram, cross, { type: "m.reaction" });
    await until("it is taken back", () =>
      readingsOf().some((one) => one.deleted === true || one.undone === true),
    );
  });
});

describe("a doubted value", () => {
  test("counts once its author gives the answer a thumb, whatever its skin; nobody else's thumb counts", async () => {
    scene.server.room(south, everybody);
    await scene.start();
    scene.server.say(south, bram, text(opening));
    await until("the job", said("Gull Wharf"));
    const id = scene.server.say(south, bram, text("RTU-2 suction 1240 psi, R-410A"));
    const answer = () =>
      scene.posts(south).find(({ content }) => String(content["io.readback.key"]).includes(id));
    await until("it is doubted", () => answer() !== undefined);
    const doubted = () => readingsOf().filter((one) => one.doubtful === true).length;
    expect(doubted()).toBe(1);
    const thumb = {
      "m.relates_to": {
        rel_type: "m.annotation",
        event_id: answer()?.event_id,
        key: "\u{1F44D}\u{1F3FE}",
      },
    };
    scene.server.say(south, tamsin, thumb, { type: "m.reaction" });
    scene.server.say(south, tamsin, text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("what she says next", said("Saltbox Lofts"));
    expect(doubted()).toBe(1);
    scene.server.say(south, bram, thumb, { type: "m.reaction" });
    await until("it counts", () => doubted() === 0);
  });
});

describe("encrypted rooms", () => {
  let peer: Peer;
  const members = [nia, me];
  beforeEach(async () => {
    scene.server.room(south, everybody);
    scene.server.room(north, members, megolm);
    peer = await peerOn(scene.server, nia);
    await scene.start();
  });
  const opened = async (): Promise<readonly string[]> => {
    const found: string[] = [];
    for (const event of scene.posts(north)) {
      const open = await peer.open(north, event);
      found.push(open.ok ? String(open.content.body) : `locked: ${open.why}`);
    }
    return found;
  };
  const sealed = (body: string) => peer.seal(north, members, text(body));

  test("a message whose key comes later is read then; until then nothing of it is filed", async () => {
    scene.server.world.holding = true;
    const first = await sealed(opening);
    expect(scene.server.world.held).toHaveLength(1);
    scene.server.say(north, nia, first, { type: "m.room.encrypted" });
    await until("it is put aside", () => scene.logs.some((line) => line.includes('"locked"')));
    expect(kept()).toEqual([]);
    scene.server.world.holding = false;
    scene.server.world.toDevice.push(...scene.server.world.held);
    scene.server.say(south, odd, text("wakes the sync"));
    await until("it is read", () => kept().length === 1);
    await until("it is answered", () => scene.posts(north).length === 1);
    expect(await opened()).toEqual([expect.stringContaining("Gull Wharf")]);
  }, 120_000);

  test("after a restart, in an old session: what was sent meanwhile is read, and answered readably", async () => {
    scene.server.say(north, nia, await sealed(opening), { type: "m.room.encrypted" });
    await until("the job", () => scene.posts(north).length === 1);
    await scene.stop();
    scene.server.say(north, nia, await sealed("RTU-2 suction 60 psi"), {
      type: "m.room.encrypted",
    });
    await scene.start();
    await until("the answer", () => scene.posts(north).length === 2);
    expect((await opened())[1]).toContain("60 psi");
  }, 120_000);

  test("files go out and come in: plain in a plain room, encrypted with name and type in an encrypted one", async () => {
    const bytes = Buffer.from("job;site\n1;Gull Wharf\n");
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    const { store } = scene.bot();
    putWords(store, fileKey(sha256), { salt: "s", content: bytes });
    const file = { name: "day.csv", type: "text/csv", size: bytes.length, sha256 };
    for (const channel of ["south", "north"]) {
      putOut(store, {
        id: `file ${channel}`,
        platform: "matrix",
        channel,
        kind: "reply",
        text: "The day.",
        files: [file],
      });
    }
    await until(
      "both are out",
      () => scene.posts(south).length === 2 && scene.posts(north).length === 2,
    );
    const { media } = scene.server.world;
    const plain = z
      .object({ url: z.string(), filename: z.string() })
      .parse(scene.posts(south)[1]?.content);
    expect(plain.filename).toBe("day.csv");
    expect(media.get(plain.url.replace("mxc://fake.test/", ""))?.equals(bytes)).toBe(true);
    const open = await peer.open(north, scene.posts(north)[1] ?? {});
    if (!open.ok) throw new Error(open.why);
    const secret = z
      .object({ filename: z.string(), file: z.looseObject({ url: z.string() }) })
      .parse(open.content);
    const stored = media.get(secret.file.url.replace("mxc://fake.test/", "")) ?? Buffer.alloc(0);
    expect(stored.includes("Gull")).toBe(false);
    expect(Buffer.from(peer.bytes(stored, secret.file)).equals(bytes)).toBe(true);
    expect(secret.filename).toBe("day.csv");
    expect(scene.server.asked.some((one) => one.includes("day.csv"))).toBe(false);
  }, 120_000);

  test("an edit, a thread and a reply count where their relation stands outside what is encrypted, as clients send it", async () => {
    const say = async (content: object, relates?: object): Promise<string> =>
      scene.server.say(
        north,
        nia,
        {
          ...(await peer.seal(north, members, content)),
          ...(relates === undefined ? {} : { "m.relates_to": relates }),
        },
        { type: "m.room.encrypted" },
      );
    const root = await say(text(opening));
    await say(text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("both jobs", () => scene.posts(north).length === 2);
    const id = await say(text("suction 60 psi"), {
      rel_type: "m.thread",
      event_id: root,
      is_falling_back: true,
      "m.in_reply_to": { event_id: root },
    });
    await until("the reading", () => scene.posts(north).length === 3);
    await say(
      { ...text("* suction 70 psi"), "m.new_content": text("suction 70 psi") },
      { rel_type: "m.replace", event_id: id },
    );
    await say(text("discharge 300 psi"), { "m.in_reply_to": { event_id: root } });
    // the answer, changed, and the reply's own
    await until("the reply", () => scene.posts(north).length === 5);
    const standing = allJobs(scene.bot().memory).map(({ site, readings }) => [
      site,
      readings.filter((one) => one.replaced_by === undefined).map(({ said: words }) => words),
    ]);
    expect(standing).toEqual([
      ["Gull Wharf", ["suction 70 psi", "discharge 300 psi"]],
      ["Saltbox Lofts", []],
    ]);
    // what the bot says to that is placed outside as well, for the server and for clients without the key
    const own = scene.server.world.events.filter(
      ({ room, sender, type }) => room === north && sender === me && type === "m.room.encrypted",
    );
    const related = own.map(({ content }) => content["m.relates_to"]);
    expect(related).toContainEqual(
      expect.objectContaining({ rel_type: "m.thread", event_id: root }),
    );
    expect(related).toContainEqual({
      rel_type: "m.replace",
      event_id: scene.posts(north)[2]?.event_id,
    });
    for (const event of own) expect((await peer.open(north, event)).ok).toBe(true);
  }, 120_000);

  test("a removed encrypted message is no message, not an undecryptable one", async () => {
    const id = scene.server.say(north, nia, await sealed(opening), { type: "m.room.encrypted" });
    await until("the job", () => scene.posts(north).length === 1);
    await scene.stop();
    const gone = scene.server.say(north, nia, await sealed("RTU-2 suction 60 psi"), {
      type: "m.room.encrypted",
    });
    scene.server.say(north, nia, { redacts: gone }, { type: "m.room.redaction", redacts: gone });
    scene.server.say(north, nia, await sealed("RTU-2 suction 61 psi"), {
      type: "m.room.encrypted",
    });
    await scene.start();
    await until("the answer", () => scene.posts(north).length === 2);
    expect(findMessage(scene.bot().store, "matrix", id)?.state).toBe("done");
    expect(scene.logs.some((line) => line.includes('"locked"'))).toBe(false);
    expect(kept()).toEqual([opening, "RTU-2 suction 61 psi"]);
  }, 120_000);
});

describe("time", () => {
  let ahead = 0;
  beforeEach(async () => {
    await scene.close();
    ahead = 0;
    scene = await openScene({ now: () => Date.now() + ahead });
    scene.server.room(south, everybody);
  });

  test("what cannot be read is said once in its room, without its words, and given up after a day", async () => {
    scene.server.room(north, [nia, me], megolm);
    const peer = await peerOn(scene.server, nia);
    await scene.start();
    scene.server.world.holding = true;
    for (const body of [opening, "RTU-2 suction 60 psi"]) {
      const sealed = await peer.seal(north, [nia, me], text(body));
      scene.server.say(north, nia, sealed, { type: "m.room.encrypted" });
    }
    scene.server.world.holding = false;
    const aside = () => scene.logs.filter((line) => line.includes('"locked"')).length;
    await until("both are put aside", () => aside() === 2);
    expect(scene.posts(north)).toEqual([]);
    ahead = 61_000;
    scene.server.say(south, odd, text("wakes the sync"));
    await until("it is said", () => scene.posts(north).length === 1);
    const told = await peer.open(north, scene.posts(north)[0] ?? {});
    expect(told).toMatchObject({
      ok: true,
      content: {
        body: expect.stringMatching(
          /^2 messages from nia .*nothing of it is filed.*invite me again/,
        ),
      },
    });
    ahead = 120_000;
    scene.server.say(south, odd, text("wakes the sync"));
    await scene.stop();
    await scene.start();
    ahead = 25 * 3600_000;
    scene.server.say(south, odd, text("wakes the sync"));
    await until(
      "it is given up",
      () => scene.logs.filter((line) => line.includes("was given up")).length === 2,
    );
    expect(scene.posts(north)).toHaveLength(1);
  }, 120_000);

  test("a store brought back from a backup answers nothing twice, though the server forgot the keys", async () => {
    scene.server.room(north, [nia, me], megolm);
    const peer = await peerOn(scene.server, nia);
    await scene.start();
    await scene.stop();
    const [store, backup] = [join(scene.folder, "store.db"), join(scene.folder, "backup.db")];
    copyFileSync(store, backup);
    await scene.start();
    scene.server.say(south, bram, text(opening));
    const sealed = await peer.seal(north, [nia, me], text("New job: Saltbox Lofts RTU-7, dead"));
    scene.server.say(north, nia, sealed, { type: "m.room.encrypted" });
    await until(
      "both are answered",
      () => bodies(south).length === 1 && scene.posts(north).length === 1,
    );
    await scene.stop();
    copyFileSync(backup, store);
    scene.server.world.transactions.clear();
    ahead = 25 * 3600_000;
    await scene.start();
    await until("both are worked on", () => kept().length === 2);
    await until("both count as sent", () => unsent(scene.bot().store, "matrix").length === 0);
    expect([bodies(south).length, scene.posts(north).length]).toEqual([1, 1]);
  }, 120_000);

  test("a store brought back from a backup, as a new device: what stands in the room is not said twice", async () => {
    scene.server.room(north, [nia, me], megolm);
    await scene.start();
    await scene.stop();
    const [store, backup] = [join(scene.folder, "store.db"), join(scene.folder, "backup.db")];
    copyFileSync(store, backup);
    await scene.start();
    scene.server.say(south, bram, text(opening));
    scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("both are answered", () => bodies(south).length === 2);
    await scene.stop();
    copyFileSync(backup, store);
    for (const end of ["", "-wal", "-shm"])
      rmSync(`${join(scene.folder, "keys.db")}${end}`, { force: true });
    // a server knows a request again only from the device that made it
    scene.server.world.transactions.clear();
    scene.server.say(south, bram, text("RTU-2 discharge 300 psi"));
    await scene.start();
    await until("what was said meanwhile is answered", () =>
      bodies(south).some((body) => body.includes("300 psi")),
    );
    await until("all count as sent", () => unsent(scene.bot().store, "matrix").length === 0);
    expect(kept()).toHaveLength(3);
    expect(bodies(south)).toHaveLength(3);
    const asked = scene.server.asked.filter((one) => /GET .*\/messages/.test(one)).length;
    scene.server.say(south, bram, text("RTU-2 suction 61 psi"));
    await until("the next is answered", () => bodies(south).length === 4);
    // for what this device heard itself, the room is not searched
    expect(scene.server.asked.filter((one) => /GET .*\/messages/.test(one))).toHaveLength(asked);
    const peer = await peerOn(scene.server, nia);
    scene.server.say(
      north,
      nia,
      await peer.seal(north, [nia, me], text("New job: Saltbox Lofts RTU-7, dead")),
      { type: "m.room.encrypted" },
    );
    await until("the encrypted room goes on", () => scene.posts(north).length === 1);
  }, 120_000);

  test("after weeks away, what is older than 14 days is left unread and the operator told", async () => {
    scene.server.world.limit = 5;
    await scene.start();
    await scene.stop();
    const day = 24 * 3600_000;
    const now = Date.now();
    for (let n = 20; n >= 0; n -= 1)
      scene.server.say(south, bram, text(`said ${n} days ago`), { at: now - n * day - 1000 });
    await scene.start();
    await until("the youngest is kept", () => kept().includes("said 0 days ago"));
    expect(kept().filter((one) => one.startsWith("said"))).toEqual(
      Array.from({ length: 14 }, (_, n) => `said ${13 - n} days ago`),
    );
    await until("it is told", said("more than 14 days ago were left unread"));
  }, 120_000);
});
