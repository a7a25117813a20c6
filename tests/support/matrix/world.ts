/** What a small stand-in for a homeserver keeps: rooms as one list of events, accounts, keys. */
export interface StoredEvent {
  readonly room: string;
  readonly event_id: string;
  readonly type: string;
  readonly sender: string;
  readonly origin_server_ts: number;
  content: Record<string, unknown>;
  readonly state_key?: string;
  readonly redacts?: string;
  /** no sync shows it: only who asks for it learns of it */
  readonly hidden?: boolean;
  unsigned?: Record<string, unknown>;
}
type Json = Record<string, unknown>;

export interface World {
  readonly events: StoredEvent[];
  readonly toDevice: { readonly user: string; readonly event: Json }[];
  /** messages to devices that are held back while `holding` */
  readonly held: { readonly user: string; readonly event: Json }[];
  holding: boolean;
  readonly changes: string[];
  readonly deviceKeys: Map<string, Map<string, Json>>;
  readonly oneTimeKeys: Map<string, Map<string, Json>>;
  readonly crossSigning: Map<string, Json>;
  readonly tokens: Map<string, { readonly user: string; readonly device: string }>;
  readonly media: Map<string, Buffer>;
  readonly transactions: Map<string, string>;
  /** most events of a room in one answer */
  limit: number;
}

export function emptyWorld(): World {
  return {
    events: [],
    toDevice: [],
    held: [],
    holding: false,
    changes: [],
    deviceKeys: new Map(),
    oneTimeKeys: new Map(),
    crossSigning: new Map(),
    tokens: new Map(),
    media: new Map(),
    transactions: new Map(),
    limit: 100,
  };
}

let made = 0;
export function addEvent(
  world: World,
  event: Omit<StoredEvent, "event_id" | "origin_server_ts"> & {
    readonly origin_server_ts?: number;
  },
): string {
  made += 1;
  const event_id = `$e${made}`;
  world.events.push({ origin_server_ts: Date.now(), ...event, event_id });
  if (event.redacts !== undefined) {
    const target = world.events.find((one) => one.event_id === event.redacts);
    if (target !== undefined) target.content = {};
  }
  return event_id;
}

export const stateOf = (
  world: World,
  room: string,
  type: string,
  key = "",
): StoredEvent | undefined =>
  world.events.findLast((one) => one.room === room && one.type === type && one.state_key === key);

export const membershipOf = (world: World, room: string, user: string): unknown =>
  stateOf(world, room, "m.room.member", user)?.content.membership;

export const roomsOf = (world: World): readonly string[] => [
  ...new Set(world.events.map(({ room }) => room)),
];

/** What a client is shown of an event. */
export const shown = ({ room: _, hidden: __, ...event }: StoredEvent): Json => ({ ...event });

interface Place {
  readonly events: number;
  readonly toDevice: number;
  readonly changes: number;
}
export const placeNow = (world: World): Place => ({
  events: world.events.length,
  toDevice: world.toDevice.length,
  changes: world.changes.length,
});
export const tokenOf = (place: Place): string =>
  `s${place.events}_${place.toDevice}_${place.changes}`;
export function placeFrom(token: string | null): Place {
  const [events = 0, toDevice = 0, changes = 0] = (token ?? "s0_0_0")
    .slice(1)
    .split("_")
    .map(Number);
  return { events, toDevice, changes };
}

/** The answer to a sync of `user`, and whether there is anything in it. */
export function syncAnswer(
  world: World,
  user: string,
  token: string | null,
): { readonly news: boolean; readonly body: Json } {
  const since = placeFrom(token);
  const join: Json = {};
  const invite: Json = {};
  for (const room of roomsOf(world)) {
    const fresh = world.events
      .map((event, index) => ({ event, index }))
      .filter(
        ({ event, index }) => event.room === room && index >= since.events && event.hidden !== true,
      );
    const membership = membershipOf(world, room, user);
    if (fresh.length === 0) continue;
    if (membership === "invite") {
      invite[room] = {
        invite_state: {
          events: fresh
            .filter(({ event }) => event.state_key === user)
            .map(({ event }) => shown(event)),
        },
      };
    }
    if (membership !== "join") continue;
    const limited = fresh.length > world.limit;
    const some = limited ? fresh.slice(-world.limit) : fresh;
    const before = limited ? fresh.slice(0, -world.limit) : [];
    join[room] = {
      state: {
        events: before
          .filter(({ event }) => event.state_key !== undefined)
          .map(({ event }) => shown(event)),
      },
      timeline: {
        events: some.map(({ event }) => shown(event)),
        limited,
        prev_batch: tokenOf({ ...since, events: some[0]?.index ?? 0 }),
      },
    };
  }
  const toDevice = world.toDevice.slice(since.toDevice).filter((one) => one.user === user);
  const changed = [...new Set(world.changes.slice(since.changes))];
  const news =
    Object.keys(join).length + Object.keys(invite).length + toDevice.length + changed.length > 0;
  const own = [...world.oneTimeKeys.entries()].filter(([key]) => key.startsWith(`${user} `));
  const body = {
    next_batch: tokenOf(placeNow(world)),
    rooms: { join, invite },
    to_device: { events: toDevice.map(({ event }) => event) },
    device_lists: { changed },
    device_one_time_keys_count: {
      signed_curve25519: own.reduce((n, [, keys]) => n + keys.size, 0),
    },
    device_unused_fallback_key_types: ["signed_curve25519"],
  };
  return { news, body };
}
