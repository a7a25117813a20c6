import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openKeyFile } from "../adapters/matrix/keys/key-file.ts";
import { allJobs } from "../src/bot/memory.ts";
import { messagesIn } from "../src/record/inbox.ts";
import {
  bodyOf,
  bram,
  everybody,
  me,
  nia,
  north,
  openScene,
  type Scene,
  south,
  tamsin,
  until,
} from "./support/matrix/scene.ts";

/** Troubles that people must mend: each is said once, and everything else goes on. */

let scene: Scene;
beforeEach(async () => {
  scene = await openScene();
  scene.server.room(south, everybody);
});
afterEach(async () => {
  await scene.close();
});

const text = (body: string) => ({ msgtype: "m.text", body });
const opening = "New job: Gull Wharf RTU-2, blowing warm";
const bodies = (room = south): readonly string[] => scene.posts(room).map(bodyOf);
const saidOnce = (what: string) => bodies().filter((body) => body.includes(what)).length === 1;
const kept = (): readonly string[] =>
  messagesIn(scene.bot().store, "done").map(({ message }) => message.text);
const goesOn = async (): Promise<void> => {
  scene.server.say(south, bram, text(opening));
  await until("the rest goes on", () => saidOnce("Gull Wharf"));
};
/** The bot as somebody else sees it in the north room. */
const membership = (of: "leave" | "invite"): void => {
  scene.server.say(north, tamsin, { membership: of }, { type: "m.room.member", state_key: me });
};

describe("rooms", () => {
  beforeEach(() => scene.server.room(north, [tamsin, nia, me]));

  test("taken out of a room while it was down and let in again, it goes on with what is said then", async () => {
    await scene.start();
    await scene.stop();
    membership("leave");
    scene.server.say(north, nia, text("New job: Old Mill RTU-9, dead"));
    await scene.start();
    await goesOn();
    membership("invite");
    await until("it is back", () => scene.logs.some((line) => line.includes('"inviter"')));
    scene.server.say(north, nia, text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("it is answered", () => bodies(north).length === 1);
    expect(allJobs(scene.bot().memory).map(({ site }) => site)).toEqual([
      "Gull Wharf",
      "Saltbox Lofts",
    ]);
  });

  test("a room that was replaced by another: what to do is said once", async () => {
    await scene.start();
    for (let n = 0; n < 2; n += 1) {
      scene.server.say(
        north,
        tamsin,
        { body: "moved", replacement_room: "!newer:fake.test" },
        { type: "m.room.tombstone", state_key: "" },
      );
    }
    await until("it is said", () => saidOnce("!newer:fake.test: invite the bot there"));
    await goesOn();
    expect(saidOnce("!newer:fake.test")).toBe(true);
  });

  test("where it may not write, what was said is filed, and the operator told what is missing", async () => {
    await scene.start();
    scene.server.faults.push({
      on: /PUT .*north.*\/send\//,
      times: 1,
      status: 403,
      body: { errcode: "M_FORBIDDEN", error: "power level too low" },
    });
    scene.server.say(north, nia, text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("it is said", () => saidOnce("may not write in north"));
    await goesOn();
    scene.server.say(north, nia, text("RTU-7 suction 60 psi"));
    await until("the next is answered", () => bodies(north).length === 1);
    expect(allJobs(scene.bot().memory).map(({ readings }) => readings.length)).toEqual([1, 0]);
  });

  test("a room with an encryption that is not known here gets nothing, neither plain nor otherwise", async () => {
    scene.server.room(north, [], { "m.room.encryption": { algorithm: "m.newer.v9" } });
    await scene.start();
    scene.server.say(north, nia, text("New job: Saltbox Lofts RTU-7, no cooling"));
    await until("it is said", () => saidOnce("m.newer.v9, which is not known here"));
    await goesOn();
    expect(scene.posts(north)).toEqual([]);
  });

  test("an invitation that the server does not let it take is left, and nothing else waits for it", async () => {
    membership("leave");
    await scene.start();
    scene.server.faults.push({
      on: /POST .*\/join/,
      times: 1,
      status: 403,
      body: { errcode: "M_FORBIDDEN", error: "banned" },
    });
    membership("invite");
    await until("it was tried", () => scene.logs.some((line) => line.includes('"not_joined"')));
    await goesOn();
  });
});

describe("files", () => {
  const photo = (more: object) => ({
    msgtype: "m.image",
    body: "RTU-2 nameplate",
    filename: "plate.jpg",
    url: "mxc://fake.test/gone",
    info: { mimetype: "image/jpeg", size: 10 },
    ...more,
  });
  const files = () => allJobs(scene.bot().memory).flatMap((job) => job.files);

  test.each([
    ["one that the server lost", {}, "nothing there"],
    ["one that is too large", { info: { size: 60 * 1024 * 1024 } }, "are too large to keep"],
    [
      "one behind no address of the server's",
      { url: "https://fake.test/x" },
      "not a media address",
    ],
  ])(
    "%s: the words are kept, the sender hears of it, and the rest goes on",
    async (_, more, says) => {
      await scene.start();
      await goesOn();
      scene.server.say(south, bram, photo(more));
      await until("it is said", () => saidOnce(says));
      await until("its sender hears of it", () => saidOnce("plate.jpg did not reach me"));
      await until("the words are kept", () => kept().includes("RTU-2 nameplate"));
      expect(files()).toEqual([]);
    },
  );

  test("one that the server does not give at once is asked for again, in its place", async () => {
    await scene.start();
    await goesOn();
    scene.server.world.media.set("late", Buffer.from("a picture"));
    scene.server.faults.push({ on: /GET .*\/download\//, times: 2, status: 502 });
    scene.server.say(south, bram, photo({ url: "mxc://fake.test/late" }));
    scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("the reading", () => saidOnce("60 psi"));
    expect(kept()).toEqual([opening, "RTU-2 nameplate", "RTU-2 suction 60 psi"]);
    expect(files()).toHaveLength(1);
  });

  test("a server that never gives it holds nothing up for long", async () => {
    await scene.start();
    await goesOn();
    scene.server.faults.push({ on: /GET .*\/download\//, times: 1000, status: 502 });
    scene.server.say(south, bram, photo({}));
    scene.server.say(south, bram, text("RTU-2 suction 60 psi"));
    await until("the reading", () => saidOnce("60 psi"), 20_000);
    expect(saidOnce("could not be kept")).toBe(true);
    expect(kept()).toContain("RTU-2 nameplate");
  }, 120_000);
});

describe("the key file", () => {
  test("in use by another program: it ends at once and says which file", async () => {
    const keys = openKeyFile(join(scene.folder, "keys.db"));
    await scene.start();
    expect(await scene.ended()).toMatch(/keys\.db is in use; another readback runs with it/);
    keys.close();
  });

  test("of another device than the token: it ends and says that they belong together", async () => {
    await scene.start();
    await scene.stop();
    const keys = openKeyFile(join(scene.folder, "keys.db"));
    keys.setNote("device", "ANOTHER");
    keys.close();
    await scene.start();
    expect(await scene.ended()).toMatch(/belongs to device ANOTHER.*only good together/);
  });

  test("that cannot be written any more: the program ends before anything leaves with keys that were not kept", () => {
    const folder = mkdtempSync(join(tmpdir(), "keys-"));
    const program = `
      const { openKeyFile } = await import(process.cwd() + "/dist/adapters/matrix/keys/key-file.js");
      const { openMachine } = await import(process.cwd() + "/dist/adapters/matrix/keys/machine.js");
      const file = openKeyFile(${JSON.stringify(join(folder, "keys.db"))});
      const asked = [];
      const machine = await openMachine({ ...file, apply: () => { throw new Error("disk full"); } },
        { user: "@a:b.test", device: "D" }, async (method, path) => {
          process.stdout.write("asked " + path + "\\n");
          throw new Error("away");
        });
      await machine.take({ toDevice: [], changed: [], left: [], oneTimeKeys: { signed_curve25519: 0 } });
      process.stdout.write("went on");`;
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ["--input-type=module", "-e", program],
      { encoding: "utf8" },
    );
    expect([status, stdout]).toEqual([74, ""]);
    expect(stderr).toContain("Matrix keys cannot be written (disk full)");
  });
});
