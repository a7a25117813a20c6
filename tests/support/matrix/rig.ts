import { readCursor } from "../../../src/record/inbox.ts";
import type { Room } from "../platform-rigs.ts";
import { bodyOf, me, openScene, south } from "./scene.ts";
import { placeNow, tokenOf } from "./world.ts";

const sorrel = "@sorrel:fake.test";

/** A Matrix room on a stand-in homeserver, for the contract that every platform keeps. */
export async function matrixRoom(): Promise<Room> {
  const scene = await openScene();
  const { world } = scene.server;
  scene.server.room(south, [sorrel, me]);
  await scene.start();
  return {
    bot: scene.bot(),
    logs: scene.logs,
    channel: "south",
    say: (text, at) =>
      scene.server.say(
        south,
        sorrel,
        { msgtype: "m.text", body: text },
        at === undefined ? {} : { at },
      ),
    reply: (text, to) => {
      scene.server.say(south, sorrel, {
        msgtype: "m.text",
        body: text,
        "m.relates_to": { "m.in_reply_to": { event_id: to } },
      });
    },
    again: () => {
      const last = world.events.findLast(({ sender }) => sender === sorrel);
      if (last !== undefined) world.events.push(last);
      // any other event wakes the sync
      scene.server.say(south, me, {}, { type: "m.room.topic", state_key: "" });
    },
    answers: () => scene.posts(south).map(bodyOf),
    complaints: () => [],
    settled: () => readCursor(scene.bot().store, "matrix", "sync") === tokenOf(placeNow(world)),
    stop: scene.close,
  };
}
