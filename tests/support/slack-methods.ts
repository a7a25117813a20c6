import type { z } from "zod";
import {
  addMessage,
  channelOf,
  findMessage,
  pageOf,
  replaceMessage,
  type SlackMessage,
  type SlackRooms,
} from "./slack-room.ts";
import type { Method, methodShapes } from "./slack-shapes.ts";

export type Answer = { readonly ok: true } & Record<string, unknown>;
export type Refusal = { readonly ok: false; readonly error: string } & Record<string, unknown>;

export interface Bot {
  readonly userId: string;
  readonly botId: string;
  readonly appId: string;
}

export interface Workspace {
  readonly rooms: SlackRooms;
  readonly bot: Bot;
  readonly scopes: readonly string[];
  readonly origin: () => string;
  /** tells the app, and everybody else, of something that happened */
  readonly publish: (event: Record<string, unknown>) => void;
  /** what goes wrong on purpose, by what it is asked to pin */
  readonly pinsRefused: () => string | undefined;
}

type Args<M extends Method> = z.output<(typeof methodShapes)[M]>;
type Handler<M extends Method> = (args: Args<M>, space: Workspace) => Answer | Refusal;
export type Handlers = { readonly [M in Method]: Handler<M> };

const refuse = (error: string, more: Record<string, unknown> = {}): Refusal => ({
  ok: false,
  error,
  ...more,
});

function roomFor(space: Workspace, id: string) {
  const channel = space.rooms.channels.get(id);
  if (channel === undefined) return refuse("channel_not_found");
  return channel.botIsMember ? channel : refuse("not_in_channel");
}

const botMessage = (space: Workspace, ts: string, text: string): SlackMessage => ({
  type: "message",
  ts,
  user: space.bot.userId,
  bot_id: space.bot.botId,
  app_id: space.bot.appId,
  team: space.rooms.team,
  text,
});

function post(args: Args<"chat.postMessage">, space: Workspace): Answer | Refusal {
  const channel = roomFor(space, args.channel);
  if ("ok" in channel) return channel;
  const { thread_ts } = args;
  const root = thread_ts === undefined ? undefined : findMessage(channel, thread_ts);
  if (thread_ts !== undefined && root === undefined) return refuse("thread_not_found");
  if (root?.thread_ts !== undefined && root.thread_ts !== root.ts)
    return refuse("cannot_reply_to_message");
  const message: SlackMessage = {
    ...botMessage(space, space.rooms.nextTs(), args.text),
    ...(thread_ts === undefined ? {} : { thread_ts }),
    ...(args.blocks === undefined ? {} : { blocks: args.blocks }),
    ...(args.metadata === undefined ? {} : { metadata: args.metadata }),
  };
  addMessage(channel, message);
  space.publish({ ...message, channel: channel.id, channel_type: "channel", event_ts: message.ts });
  return { ok: true, channel: channel.id, ts: message.ts, message };
}

function update(args: Args<"chat.update">, space: Workspace): Answer | Refusal {
  const channel = roomFor(space, args.channel);
  if ("ok" in channel) return channel;
  const old = findMessage(channel, args.ts);
  if (old === undefined) return refuse("message_not_found");
  if (old.bot_id !== space.bot.botId) return refuse("cant_update_message");
  const message: SlackMessage = {
    ...botMessage(space, old.ts, args.text),
    ...(old.thread_ts === undefined ? {} : { thread_ts: old.thread_ts }),
    ...(args.blocks === undefined ? {} : { blocks: args.blocks }),
    ...(args.metadata === undefined ? {} : { metadata: args.metadata }),
    ...(old.reactions === undefined ? {} : { reactions: old.reactions }),
    edited: { user: space.bot.userId, ts: space.rooms.nextTs() },
  };
  replaceMessage(channel, message);
  // an edit comes back to the app without a user at its top
  space.publish({
    type: "message",
    subtype: "message_changed",
    channel: channel.id,
    channel_type: "channel",
    ts: space.rooms.nextTs(),
    event_ts: space.rooms.nextTs(),
    hidden: true,
    message,
    previous_message: old,
  });
  return { ok: true, channel: channel.id, ts: old.ts, text: args.text, message };
}

function history(args: Args<"conversations.history">, space: Workspace): Answer | Refusal {
  const channel = roomFor(space, args.channel);
  if ("ok" in channel) return channel;
  const inChannel = channel.messages.filter(
    (message) => message.thread_ts === undefined || message.thread_ts === message.ts,
  );
  const { messages, next } = pageOf(
    [...inChannel].reverse().map(withReplies(channel.messages)),
    args,
  );
  return { ok: true, messages, has_more: next !== undefined, ...nextCursor(next) };
}

const withReplies =
  (all: readonly SlackMessage[]) =>
  (root: SlackMessage): SlackMessage => {
    const replies = all.filter((one) => one.thread_ts === root.ts && one.ts !== root.ts);
    const last = replies.at(-1);
    if (last === undefined) return root;
    return {
      ...root,
      thread_ts: root.ts,
      reply_count: replies.length,
      latest_reply: last.ts,
    } as SlackMessage;
  };

function replies(args: Args<"conversations.replies">, space: Workspace): Answer | Refusal {
  const channel = roomFor(space, args.channel);
  if ("ok" in channel) return channel;
  const root = findMessage(channel, args.ts);
  if (root === undefined) return refuse("thread_not_found");
  const under = channel.messages.filter((one) => one.thread_ts === root.ts && one.ts !== root.ts);
  const page = pageOf(under, args);
  return {
    ok: true,
    // the root comes with every page
    messages: [withReplies(channel.messages)(root), ...page.messages],
    has_more: page.next !== undefined,
    ...nextCursor(page.next),
  };
}

const nextCursor = (next: string | undefined): Record<string, unknown> =>
  next === undefined ? {} : { response_metadata: { next_cursor: next } };

function complete(args: Args<"files.completeUploadExternal">, space: Workspace): Answer | Refusal {
  const channel = roomFor(space, args.channel_id);
  if ("ok" in channel) return channel;
  const files = args.files.map(({ id }) => space.rooms.files.get(id));
  const known = files.flatMap((one) => (one === undefined || one.bytes.length === 0 ? [] : [one]));
  if (known.length < files.length) return refuse("file_not_found");
  if (known.some((one) => one.shared)) return refuse("file_already_shared");
  for (const one of known) one.shared = true;
  const ts = space.rooms.nextTs();
  const message: SlackMessage = {
    ...botMessage(space, ts, args.initial_comment ?? ""),
    subtype: "file_share",
    files: known.map((one) => one.file),
    ...(args.thread_ts === undefined ? {} : { thread_ts: args.thread_ts }),
  };
  addMessage(channel, message);
  space.publish({ ...message, channel: channel.id, channel_type: "channel", event_ts: ts });
  return { ok: true, files: known.map((one) => ({ id: one.file.id, title: one.file.name })) };
}

function sharesOf(space: Workspace, id: string): Record<string, unknown> {
  const shares: Record<string, { ts: string; thread_ts?: string }[]> = {};
  for (const channel of space.rooms.channels.values()) {
    const hits = channel.messages.filter((one) => one.files?.some((file) => file.id === id));
    if (hits.length > 0) shares[channel.id] = hits.map(({ ts }) => ({ ts }));
  }
  return { public: shares };
}

/** The Web API's methods, on the stand-in's rooms. */
export const handlers: Handlers = {
  "auth.test": (_, { rooms, bot, origin }) => ({
    ok: true,
    url: `${origin()}/`,
    team: "Invented Crew",
    user: "readback",
    team_id: rooms.team,
    user_id: bot.userId,
    bot_id: bot.botId,
    is_enterprise_install: false,
  }),
  "apps.connections.open": (_, { origin }) => ({
    ok: true,
    url: `${origin().replace("http:", "ws:")}/link?ticket=${Math.random().toString(36).slice(2)}`,
  }),
  "chat.postMessage": post,
  "chat.update": update,
  "conversations.history": history,
  "conversations.replies": replies,
  "conversations.info": ({ channel }, { rooms }) => {
    const found = rooms.channels.get(channel);
    if (found === undefined) return refuse("channel_not_found");
    const { id, name, botIsMember } = found;
    return { ok: true, channel: { id, name, is_member: botIsMember, is_archived: false } };
  },
  "conversations.open": ({ users }) => ({ ok: true, channel: { id: `D${users.slice(1)}` } }),
  "pins.add": ({ channel, timestamp }, space) => {
    const room = roomFor(space, channel);
    if ("ok" in room) return room;
    const refused = space.pinsRefused();
    if (refused !== undefined) return refuse(refused);
    if (room.pins.has(timestamp)) return refuse("already_pinned");
    if (findMessage(room, timestamp) === undefined) return refuse("message_not_found");
    room.pins.add(timestamp);
    return { ok: true };
  },
  "files.getUploadURLExternal": ({ filename, length }, { rooms, origin }) => {
    const id = `F${String(rooms.files.size + 1).padStart(6, "0")}`;
    const file = {
      id,
      name: filename,
      mimetype: "application/octet-stream",
      size: length,
      url_private: `${origin()}/files-pri/${id}/${encodeURIComponent(filename)}`,
    };
    rooms.files.set(id, { file, bytes: Buffer.alloc(0), shared: false });
    return { ok: true, file_id: id, upload_url: `${origin()}/upload/${id}` };
  },
  "files.completeUploadExternal": complete,
  "files.info": ({ file }, space) => {
    const found = space.rooms.files.get(file);
    return found === undefined
      ? refuse("file_not_found")
      : { ok: true, file: { ...found.file, shares: sharesOf(space, file) } };
  },
};

export function botPosts(rooms: SlackRooms, channel: string, bot: Bot): readonly SlackMessage[] {
  return channelOf(rooms, channel).messages.filter((message) => message.bot_id === bot.botId);
}
