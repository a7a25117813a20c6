import { LogService, MatrixClient, MemoryStorageProvider } from "matrix-bot-sdk";
import type { SeenEvent } from "./nio-person.ts";
import type { Account, Homeserver } from "./server.ts";

LogService.setLogger({ info() {}, warn() {}, error() {}, debug() {}, trace() {} });

/** Somebody who uses matrix-bot-sdk, in plain rooms. */
export interface SdkPerson {
  readonly user: string;
  readonly client: MatrixClient;
  readonly seen: readonly SeenEvent[];
  readonly send: (room: string, content: object, type?: string) => Promise<string>;
  readonly stop: () => void;
}

let sends = 0;

export async function sdkPerson(server: Homeserver, account: Account): Promise<SdkPerson> {
  const client = new MatrixClient(server.url, account.token, new MemoryStorageProvider());
  client.syncingTimeout = 3000;
  const seen: SeenEvent[] = [];
  const ids = new Set<string>();
  client.on("room.event", (room: string, event: Record<string, unknown>) => {
    const { event_id, sender, content, origin_server_ts } = event;
    if (typeof event_id !== "string" || ids.has(event_id)) return;
    ids.add(event_id);
    seen.push({
      kind: "event",
      room,
      id: event_id,
      sender: String(sender),
      content: { ...(typeof content === "object" ? content : {}) },
      encrypted: false,
      locked: event.type === "m.room.encrypted",
      ts: Number(origin_server_ts),
    });
  });
  await client.start();
  return {
    user: account.user,
    client,
    seen,
    send: async (room, content, type = "m.room.message") => {
      sends += 1;
      const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/send/${type}/sdk${sends}`;
      for (let tried = 0; ; tried += 1) {
        try {
          const answer: { readonly event_id: string } = await client.doRequest(
            "PUT",
            path,
            null,
            content,
          );
          return answer.event_id;
        } catch (error) {
          if (tried > 480) throw error;
          await new Promise((resolve) => setTimeout(resolve, 250));
        }
      }
    },
    stop: () => client.stop(),
  };
}
