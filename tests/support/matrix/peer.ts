import { DeviceId, initAsync, OlmMachine, UserId } from "@matrix-org/matrix-sdk-crypto-wasm";
import type { Ask } from "../../../adapters/matrix/ask.ts";
import { type Decrypted, machineOver } from "../../../adapters/matrix/keys/machine.ts";
import { askSync, keyNewsOf } from "../../../adapters/matrix/sync.ts";
import type { StandIn } from "./stand-in.ts";

/** Somebody in an encrypted room, with a crypto machine of their own in memory. */
export interface Peer {
  readonly seal: (
    room: string,
    members: readonly string[],
    content: object,
  ) => Promise<Record<string, unknown>>;
  readonly open: (room: string, event: object) => Promise<Decrypted>;
  readonly bytes: (sealed: Uint8Array, info: object) => Uint8Array;
  /** takes what the server has for this device */
  readonly sync: () => Promise<void>;
}

export async function peerOn(server: StandIn, user: string): Promise<Peer> {
  await initAsync();
  const device = "PEER";
  const token = server.tokenFor(user, device);
  const ask: Ask = async (method, path, body, options) => {
    const url = new URL(`${server.url}${path}`);
    for (const [name, value] of Object.entries(options?.query ?? {}))
      url.searchParams.set(name, String(value));
    const response = await fetch(url, {
      method,
      headers: { authorization: `Bearer ${token}`, "content-type": "application/json" },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    if (!response.ok) throw new Error(`${path}: ${response.status}`);
    return response.json();
  };
  const machine = machineOver(
    await OlmMachine.initialize(new UserId(user), new DeviceId(device)),
    { note: () => undefined, setNote: () => {} },
    ask,
  );
  let since: string | undefined;
  const sync = async (): Promise<void> => {
    const answer = await askSync(ask, since, 0);
    since = answer.next_batch;
    await machine.take(keyNewsOf(answer));
  };
  await sync();
  return {
    sync,
    bytes: machine.decryptBytes,
    seal: async (room, members, content) => {
      await sync();
      const to = {
        room,
        members,
        visibility: "shared",
        rotationMs: 604_800_000,
        rotationMessages: 100,
      };
      return { ...(await machine.encrypt(to, "m.room.message", content)) };
    },
    open: async (room, event) => {
      await sync();
      return machine.decrypt(room, event);
    },
  };
}
