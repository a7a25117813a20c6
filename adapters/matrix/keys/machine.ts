import {
  Attachment,
  type CrossSigningBootstrapRequests,
  DecryptionSettings,
  DeviceId,
  DeviceLists,
  EncryptedAttachment,
  EncryptionAlgorithm,
  EncryptionSettings,
  HistoryVisibility,
  initAsync,
  OlmMachine,
  type OutgoingRequest,
  RequestType,
  RoomId,
  ToDeviceRequest,
  TrustRequirement,
  UserId,
} from "@matrix-org/matrix-sdk-crypto-wasm";
import { z } from "zod";
import type { Ask } from "../ask.ts";
import type { KeyFile } from "./key-file.ts";
import { mirrored, release } from "./mirror.ts";

/** What a sync brought for the crypto machine. */
export interface KeyNews {
  readonly toDevice: readonly unknown[];
  readonly changed: readonly string[];
  readonly left: readonly string[];
  readonly oneTimeKeys: Readonly<Record<string, number>>;
  readonly unusedFallbackKeys?: readonly string[];
}

export interface EncryptedRoom {
  readonly room: string;
  readonly members: readonly string[];
  readonly visibility: string;
  readonly rotationMs: number;
  readonly rotationMessages: number;
}

export type Decrypted =
  | { readonly ok: true; readonly type: string; readonly content: Record<string, unknown> }
  | { readonly ok: false; readonly why: string };

export interface EncryptedBytes {
  readonly bytes: Uint8Array;
  /** key, iv and hash, as the event's `file` holds them */
  readonly info: Record<string, unknown>;
}

/** One device's end of the encryption: keys in `KeyFile`, requests through `Ask`. */
export interface Machine {
  readonly take: (news: KeyNews) => Promise<void>;
  /** Shares the room's key with everybody's devices, then encrypts. Rejects where any request failed. */
  readonly encrypt: (to: EncryptedRoom, type: string, content: object) => Promise<object>;
  readonly decrypt: (room: string, event: object) => Promise<Decrypted>;
  readonly track: (users: readonly string[]) => Promise<void>;
  /** Publishes cross-signing keys, once an account; false where the server wants a password and there is none. */
  readonly crossSign: (user: string, password: string | undefined) => Promise<boolean>;
  readonly encryptBytes: (bytes: Uint8Array) => EncryptedBytes;
  readonly decryptBytes: (bytes: Uint8Array, info: object) => Uint8Array;
  readonly close: () => Promise<void>;
}

const record = z.record(z.string(), z.unknown());
const parsed = (text: string): Record<string, unknown> => record.parse(JSON.parse(text));
// the machine consumes what it is given in arrays: fresh ones for each call
const ids = (users: readonly string[]): UserId[] => users.map((user) => new UserId(user));
const settings = (): DecryptionSettings => new DecryptionSettings(TrustRequirement.Untrusted);

export async function openMachine(
  file: KeyFile,
  who: { readonly user: string; readonly device: string },
  ask: Ask,
): Promise<Machine> {
  await initAsync();
  const machine = await mirrored(file, () =>
    OlmMachine.initialize(new UserId(who.user), new DeviceId(who.device), "keys"),
  );
  return machineOver(machine, file, ask);
}

/** `notes` remembers that cross-signing was done. */
export function machineOver(
  machine: OlmMachine,
  notes: Pick<KeyFile, "note" | "setNote">,
  ask: Ask,
): Machine {
  const inTurn = turns();
  return {
    take: (news) => inTurn(() => take(machine, news, ask)),
    encrypt: (to, type, content) => inTurn(() => encrypt(machine, { to, type, content }, ask)),
    decrypt: (room, event) => inTurn(() => decrypt(machine, room, event)),
    track: (users) =>
      inTurn(async () => {
        await machine.updateTrackedUsers(ids(users));
        await pump(machine, ask);
      }),
    crossSign: (user, password) => inTurn(() => crossSign(machine, { user, password, ask, notes })),
    encryptBytes,
    decryptBytes,
    close: () =>
      inTurn(async () => {
        machine.close();
        await release();
      }),
  };
}

/** One at a time: the machine must not share a key while it takes a sync. */
function turns(): <T>(step: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (step) => {
    const mine = last.then(step, step);
    last = mine;
    return mine;
  };
}

async function take(machine: OlmMachine, news: KeyNews, ask: Ask): Promise<void> {
  await machine.receiveSyncChanges(
    JSON.stringify(news.toDevice),
    new DeviceLists(ids(news.changed), ids(news.left)),
    new Map(Object.entries(news.oneTimeKeys)),
    news.unusedFallbackKeys === undefined ? undefined : new Set(news.unusedFallbackKeys),
    settings(),
  );
  await pump(machine, ask);
  // devices whose messages could not be read get a fresh channel
  const claim = await machine.getMissingSessions([]);
  if (!claim) return;
  await carry(machine, claim, ask);
  await pump(machine, ask);
}

/** Sends what the machine wants to send. One that fails is offered again the next time. */
async function pump(machine: OlmMachine, ask: Ask): Promise<void> {
  for (const request of await machine.outgoingRequests()) await carry(machine, request, ask);
}

async function carry(
  machine: OlmMachine,
  request: OutgoingRequest | ToDeviceRequest,
  ask: Ask,
): Promise<void> {
  const answer = await ask(...wayOf(request));
  if (request.id !== undefined) {
    await machine.markRequestAsSent(request.id, request.type, JSON.stringify(answer));
  }
}

function wayOf(request: OutgoingRequest | ToDeviceRequest): Parameters<Ask> {
  const body = parsed(request.body);
  const client = "/_matrix/client/v3";
  if (request instanceof ToDeviceRequest) {
    const path = `${client}/sendToDevice/${encodeURIComponent(request.event_type)}/${encodeURIComponent(request.txn_id)}`;
    return ["PUT", path, body];
  }
  switch (request.type) {
    case RequestType.KeysUpload:
      return ["POST", `${client}/keys/upload`, body];
    case RequestType.KeysQuery:
      return ["POST", `${client}/keys/query`, body];
    case RequestType.KeysClaim:
      return ["POST", `${client}/keys/claim`, body];
    case RequestType.SignatureUpload:
      return ["POST", `${client}/keys/signatures/upload`, body];
    default:
      throw new Error(
        `the crypto machine asked for something that is not used here (${request.type})`,
      );
  }
}

const visibilities: Readonly<Record<string, HistoryVisibility>> = {
  invited: HistoryVisibility.Invited,
  shared: HistoryVisibility.Shared,
  world_readable: HistoryVisibility.WorldReadable,
};

async function encrypt(
  machine: OlmMachine,
  what: { readonly to: EncryptedRoom; readonly type: string; readonly content: object },
  ask: Ask,
): Promise<object> {
  const { to } = what;
  await machine.updateTrackedUsers(ids(to.members));
  // before the sessions: the machine waits five seconds for a key query that was not sent
  await pump(machine, ask);
  const claim = await machine.getMissingSessions(ids(to.members));
  if (claim) await carry(machine, claim, ask);
  const how = new EncryptionSettings();
  how.algorithm = EncryptionAlgorithm.MegolmV1AesSha2;
  how.historyVisibility = visibilities[to.visibility] ?? HistoryVisibility.Joined;
  // microseconds here, milliseconds in the room's state
  how.rotationPeriod = BigInt(Math.round(to.rotationMs)) * 1000n;
  how.rotationPeriodMessages = BigInt(Math.round(to.rotationMessages));
  const shares = z
    .array(z.instanceof(ToDeviceRequest))
    .parse(await machine.shareRoomKey(new RoomId(to.room), ids(to.members), how));
  for (const share of shares) await carry(machine, share, ask);
  const content = JSON.stringify(what.content);
  const encrypted = parsed(await machine.encryptRoomEvent(new RoomId(to.room), what.type, content));
  await pump(machine, ask);
  return encrypted;
}

const clear = z.object({ type: z.string(), content: record.optional() });

async function decrypt(machine: OlmMachine, room: string, event: object): Promise<Decrypted> {
  try {
    const found = await machine.decryptRoomEvent(
      JSON.stringify(event),
      new RoomId(room),
      settings(),
    );
    const { type, content } = clear.parse(JSON.parse(found.event));
    return { ok: true, type, content: content ?? {} };
  } catch (error) {
    return { ok: false, why: reasonOf(error) };
  }
}

function reasonOf(error: unknown): string {
  const described = z.object({ description: z.string() }).safeParse(error);
  if (described.success) return described.data.description;
  return error instanceof Error ? error.message : String(error);
}

async function crossSign(
  machine: OlmMachine,
  by: {
    readonly user: string;
    readonly password: string | undefined;
    readonly ask: Ask;
    readonly notes: Pick<KeyFile, "note" | "setNote">;
  },
): Promise<boolean> {
  if (by.notes.note("cross-signed") === "yes") return true;
  await pump(machine, by.ask);
  // never a reset: that would take the trust from everybody who verified this account
  const requests = await machine.bootstrapCrossSigning(false);
  if (!(await publish(requests, by))) return false;
  by.notes.setNote("cross-signed", "yes");
  await pump(machine, by.ask);
  return true;
}

async function publish(
  requests: CrossSigningBootstrapRequests,
  by: { readonly user: string; readonly password: string | undefined; readonly ask: Ask },
): Promise<boolean> {
  const client = "/_matrix/client/v3";
  const keys = parsed(requests.uploadSigningKeysRequest.body);
  const path = `${client}/keys/device_signing/upload`;
  const stage = await by.ask("POST", path, keys, { accept: [401] });
  // 200 answers an empty object; 401 the session in which the password is to be given
  const session = z.object({ session: z.string() }).safeParse(stage);
  if (session.success) {
    if (by.password === undefined) return false;
    const auth = {
      type: "m.login.password",
      identifier: { type: "m.id.user", user: by.user },
      password: by.password,
      session: session.data.session,
    };
    await by.ask("POST", path, { ...keys, auth });
  }
  const signatures = parsed(requests.uploadSignaturesRequest.body);
  await by.ask("POST", `${client}/keys/signatures/upload`, signatures);
  return true;
}

function encryptBytes(bytes: Uint8Array): EncryptedBytes {
  const made = Attachment.encrypt(bytes);
  const info = made.mediaEncryptionInfo;
  if (info === undefined) throw new Error("an encrypted file without its key");
  return { bytes: made.encryptedData, info: parsed(info) };
}

/** Throws where the bytes do not have the hash that the event names. */
function decryptBytes(bytes: Uint8Array, info: object): Uint8Array {
  return Attachment.decrypt(new EncryptedAttachment(bytes, JSON.stringify(info)));
}
