import type { ChatPlatform, Door, Part } from "../../adapters/chat-platform.ts";

/** A platform that writes down what it is given, for tests of what all platforms share. */
export interface Paper {
  readonly platform: ChatPlatform;
  readonly door: () => Door;
  readonly sent: { readonly part: Part; readonly at: number }[];
}

export function paperPlatform(more: Partial<ChatPlatform> = {}): Paper {
  const sent: { part: Part; at: number }[] = [];
  let door: Door | undefined;
  return {
    sent,
    door: () => {
      if (door === undefined) throw new Error("not started");
      return door;
    },
    platform: {
      name: "paper",
      longest: 4000,
      boardEveryMs: 1000,
      start: async (given) => {
        door = given;
        given.connected(true);
        return "paper";
      },
      send: async (part) => {
        sent.push({ part, at: performance.now() });
        return { kind: "sent", remote: `paper ${sent.length}` };
      },
      find: async () => ({ kind: "absent" }),
      stop: async () => {},
      check: async () => [],
      ...more,
    },
  };
}
