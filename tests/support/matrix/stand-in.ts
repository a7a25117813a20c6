import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { keyAnswer } from "./key-routes.ts";
import {
  addEvent,
  emptyWorld,
  membershipOf,
  placeFrom,
  roomsOf,
  shown,
  stateOf,
  syncAnswer,
  tokenOf,
  type World,
} from "./world.ts";

type Json = Record<string, unknown>;

/** Something that goes wrong with requests whose "METHOD path" fits. */
export interface Fault {
  readonly on: RegExp;
  /** how often; then it is over */
  times: number;
  readonly status?: number;
  readonly body?: Json;
  readonly headers?: Record<string, string>;
  /** the request is carried out, but its answer never arrives */
  readonly loseAnswer?: boolean;
}

/** A homeserver on the loopback, small enough to go wrong on purpose. */
export interface StandIn {
  readonly url: string;
  readonly world: World;
  readonly faults: Fault[];
  /** "METHOD path" of everything that was asked */
  readonly asked: string[];
  readonly tokenFor: (user: string, device: string) => string;
  readonly room: (id: string, members: readonly string[], more?: Json) => void;
  readonly say: (
    room: string,
    sender: string,
    content: Json,
    more?: {
      readonly type?: string;
      readonly at?: number;
      readonly redacts?: string;
      readonly state_key?: string;
    },
  ) => string;
  /** what the bot posted in a room, edits apart */
  readonly stop: () => Promise<void>;
}

export async function startStandIn(): Promise<StandIn> {
  const world = emptyWorld();
  const faults: Fault[] = [];
  const asked: string[] = [];
  const waiting = new Set<() => void>();
  const wake = (): void => {
    for (const one of [...waiting]) one();
  };
  const server = createServer((request, response) => {
    void handle(request, response).catch((error: unknown) => {
      answer(response, 500, { errcode: "M_UNKNOWN", error: String(error) });
    });
  });
  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const url = new URL(request.url ?? "/", "http://localhost");
    const method = request.method ?? "GET";
    const bytes = await bodyOf(request);
    asked.push(`${method} ${url.pathname}`);
    const fault = faults.find((one) => one.times > 0 && one.on.test(`${method} ${url.pathname}`));
    if (fault !== undefined) fault.times -= 1;
    if (fault !== undefined && fault.loseAnswer !== true) {
      return answer(response, fault.status ?? 500, fault.body ?? {}, fault.headers);
    }
    const token = /^Bearer (.+)$/.exec(request.headers.authorization ?? "")?.[1] ?? "";
    const who = world.tokens.get(token);
    const path = url.pathname.replace(/^\/_matrix\/(client|media)\/(v1|v3)/, "");
    if (path === "/login") return answer(response, 200, login(world, parsed(bytes)));
    if (who === undefined)
      return answer(response, 401, { errcode: "M_UNKNOWN_TOKEN", error: "no such token" });
    if (path === "/sync") return sync({ world, waiting, who: who.user }, url, response);
    const [status, body]: readonly [number, Json | Buffer] = routed(world, who, {
      method,
      path: decodeURIComponent(path),
      url,
      bytes,
      token,
    });
    if (fault?.loseAnswer === true) return void request.socket.destroy();
    wake();
    if (Buffer.isBuffer(body)) return void response.writeHead(status).end(body);
    answer(response, status, body);
  };
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}`,
    world,
    faults,
    asked,
    tokenFor: (user, device) => {
      const token = `token-of-${user}`;
      world.tokens.set(token, { user, device });
      return token;
    },
    room: (id, members, more = {}) => {
      for (const user of members) {
        addEvent(world, {
          room: id,
          type: "m.room.member",
          sender: user,
          state_key: user,
          content: { membership: "join" },
        });
      }
      for (const [type, content] of Object.entries(more)) {
        addEvent(world, {
          room: id,
          type,
          sender: members[0] ?? "",
          state_key: "",
          content: content as Json,
        });
      }
      wake();
    },
    say: (room, sender, content, { type = "m.room.message", at, redacts, state_key } = {}) => {
      const id = addEvent(world, {
        room,
        sender,
        type,
        content,
        ...(at === undefined ? {} : { origin_server_ts: at }),
        ...(redacts === undefined ? {} : { redacts }),
        ...(state_key === undefined ? {} : { state_key }),
      });
      wake();
      return id;
    },
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function login(world: World, body: Json): Json {
  const user = (body.identifier as Json).user;
  const device = String(body.device_id);
  const access_token = `token-of-${user}`;
  world.tokens.set(access_token, { user: String(user), device });
  return { access_token, device_id: device, user_id: user };
}

async function sync(
  at: { readonly world: World; readonly waiting: Set<() => void>; readonly who: string },
  url: URL,
  response: ServerResponse,
): Promise<void> {
  const since = url.searchParams.get("since");
  const end = Date.now() + Number(url.searchParams.get("timeout") ?? 0);
  for (;;) {
    const { news, body } = syncAnswer(at.world, at.who, since);
    if (news || since === null || Date.now() >= end) return answer(response, 200, body);
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, end - Date.now());
      const woken = (): void => {
        clearTimeout(timer);
        at.waiting.delete(woken);
        resolve();
      };
      at.waiting.add(woken);
      response.once("close", woken);
    });
    if (response.destroyed) return;
  }
}

interface Call {
  readonly method: string;
  readonly path: string;
  readonly url: URL;
  readonly bytes: Buffer;
  readonly token: string;
}

const notFound = [404, { errcode: "M_NOT_FOUND", error: "nothing there" }] as const;

function routed(
  world: World,
  who: { readonly user: string; readonly device: string },
  call: Call,
): readonly [number, Json | Buffer] {
  const { method, path, url, bytes } = call;
  if (path === "/account/whoami") return [200, { user_id: who.user, device_id: who.device }];
  if (path === "/joined_rooms") {
    return [
      200,
      {
        joined_rooms: roomsOf(world).filter(
          (room) => membershipOf(world, room, who.user) === "join",
        ),
      },
    ];
  }
  if (path === "/upload") {
    const id = `m${world.media.size}`;
    world.media.set(id, bytes);
    return [200, { content_uri: `mxc://fake.test/${id}` }];
  }
  const media = /^(?:\/media)?\/download\/fake\.test\/(.+)$/.exec(path)?.[1];
  if (media !== undefined) {
    const found = world.media.get(media);
    return found === undefined ? notFound : [200, found];
  }
  const keys = keyAnswer(world, who, { path, body: parsed(bytes) });
  if (keys !== undefined) return [200, keys];
  const [, room, rest] = /^\/rooms\/([^/]+)\/(.*)$/.exec(path) ?? [];
  return room === undefined || rest === undefined
    ? notFound
    : roomRoute(world, {
        room,
        rest,
        who: who.user,
        method,
        url,
        body: parsed(bytes),
        token: call.token,
      });
}

interface RoomCall {
  readonly room: string;
  readonly rest: string;
  readonly who: string;
  readonly method: string;
  readonly url: URL;
  readonly body: Json;
  readonly token: string;
}

function roomRoute(
  world: World,
  { room, rest, who, method, url, body, token }: RoomCall,
): readonly [number, Json] {
  const [what, one = "", two = ""] = rest.split("/");
  if (what === "join") {
    addEvent(world, {
      room,
      type: "m.room.member",
      sender: who,
      state_key: who,
      content: { membership: "join" },
    });
    return [200, { room_id: room }];
  }
  if (membershipOf(world, room, who) !== "join")
    return [403, { errcode: "M_FORBIDDEN", error: "not in the room" }];
  if (what === "members") {
    const members = [
      ...new Set(
        world.events
          .filter((e) => e.room === room && e.type === "m.room.member")
          .map((e) => e.state_key ?? ""),
      ),
    ];
    return [
      200,
      {
        chunk: members
          .flatMap((user) => stateOf(world, room, "m.room.member", user) ?? [])
          .map(shown),
      },
    ];
  }
  if (what === "state" && method === "GET") {
    const found = stateOf(world, room, one, two);
    return found === undefined ? notFound : [200, found.content];
  }
  if (what === "state") {
    return [
      200,
      {
        event_id: addEvent(world, { room, type: one, sender: who, state_key: two, content: body }),
      },
    ];
  }
  if (what === "event") {
    const found = world.events.find((event) => event.event_id === one);
    return found === undefined ? notFound : [200, shown(found)];
  }
  if (what === "send") {
    const scope = `${token} ${room} ${one} ${two}`;
    const event_id =
      world.transactions.get(scope) ??
      addEvent(world, { room, type: one, sender: who, content: body });
    world.transactions.set(scope, event_id);
    return [200, { event_id }];
  }
  if (what === "messages") return [200, page(world, room, url)];
  return notFound;
}

function page(world: World, room: string, url: URL): Json {
  const from = url.searchParams.get("from");
  const before = from === null ? world.events.length : placeFrom(from).events;
  const after = placeFrom(url.searchParams.get("to")).events;
  const found = world.events
    .map((event, index) => ({ event, index }))
    .filter(({ event, index }) => event.room === room && index < before && index >= after)
    .reverse()
    .slice(0, Number(url.searchParams.get("limit") ?? 10));
  const last = found.at(-1);
  return {
    chunk: found.map(({ event }) => shown(event)),
    ...(last === undefined
      ? {}
      : { end: tokenOf({ events: last.index, toDevice: 0, changes: 0 }) }),
  };
}

const bodyOf = async (request: IncomingMessage): Promise<Buffer> => {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(Buffer.from(part));
  return Buffer.concat(parts);
};

function parsed(bytes: Buffer): Json {
  try {
    const value: unknown = JSON.parse(bytes.toString("utf8"));
    return typeof value === "object" && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

function answer(
  response: ServerResponse,
  status: number,
  body: Json,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { "content-type": "application/json", ...headers });
  response.end(JSON.stringify(body));
}
