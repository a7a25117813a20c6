/** The workspace as the stand-in keeps it: what people in it would see. */
export interface SlackFile {
  readonly id: string;
  readonly name: string;
  readonly mimetype: string;
  readonly size: number;
  readonly url_private: string;
}

export interface SlackMessage {
  readonly type: "message";
  readonly ts: string;
  readonly user: string;
  readonly text: string;
  readonly team: string;
  readonly subtype?: string;
  readonly bot_id?: string;
  readonly app_id?: string;
  readonly thread_ts?: string;
  readonly blocks?: unknown;
  readonly metadata?: unknown;
  readonly files?: readonly SlackFile[];
  readonly edited?: { readonly user: string; readonly ts: string };
  readonly reactions?: readonly {
    readonly name: string;
    readonly users: readonly string[];
    readonly count: number;
  }[];
}

export interface SlackChannel {
  readonly id: string;
  readonly name: string;
  readonly botIsMember: boolean;
  readonly pins: Set<string>;
  /** by ts, oldest first */
  messages: readonly SlackMessage[];
}

export interface SlackRooms {
  readonly team: string;
  readonly channels: Map<string, SlackChannel>;
  /** ids of uploaded files -> bytes */
  readonly files: Map<string, { readonly file: SlackFile; bytes: Buffer; shared: boolean }>;
  readonly nextTs: () => string;
}

export function openRooms(
  team: string,
  channels: readonly { id: string; name: string; botIsMember?: boolean }[],
): SlackRooms {
  let last = 0;
  return {
    team,
    channels: new Map(
      channels.map(({ id, name, botIsMember }) => [
        id,
        { id, name, botIsMember: botIsMember ?? true, pins: new Set(), messages: [] },
      ]),
    ),
    files: new Map(),
    // microseconds that never repeat
    nextTs: () => {
      last = Math.max(last + 1, Date.now() * 1000);
      return `${Math.floor(last / 1_000_000)}.${String(last % 1_000_000).padStart(6, "0")}`;
    },
  };
}

export function channelOf(rooms: SlackRooms, id: string): SlackChannel {
  const channel = rooms.channels.get(id);
  if (channel === undefined) throw new Error(`no channel ${id} in the stand-in`);
  return channel;
}

export function findMessage(channel: SlackChannel, ts: string): SlackMessage | undefined {
  return channel.messages.find((message) => message.ts === ts);
}

export function addMessage(channel: SlackChannel, message: SlackMessage): void {
  channel.messages = [...channel.messages, message].sort((a, b) => (a.ts < b.ts ? -1 : 1));
}

export function replaceMessage(channel: SlackChannel, message: SlackMessage): void {
  channel.messages = channel.messages.map((old) => (old.ts === message.ts ? message : old));
}

export function removeMessage(channel: SlackChannel, ts: string): void {
  channel.messages = channel.messages.filter((message) => message.ts !== ts);
}

interface Window {
  readonly oldest?: string | undefined;
  readonly latest?: string | undefined;
  readonly inclusive?: boolean | undefined;
  readonly limit?: number | undefined;
  readonly cursor?: string | undefined;
  readonly include_all_metadata?: boolean | undefined;
}

export interface Page {
  readonly messages: readonly SlackMessage[];
  readonly next?: string;
}

/** A window of messages in the order that the method gives them, page by page. */
export function pageOf(messages: readonly SlackMessage[], window: Window): Page {
  const inWindow = messages.filter(({ ts }) => {
    const inclusive = window.inclusive === true;
    const after =
      window.oldest === undefined ||
      Number(ts) > Number(window.oldest) ||
      (inclusive && ts === window.oldest);
    const before =
      window.latest === undefined ||
      Number(ts) < Number(window.latest) ||
      (inclusive && ts === window.latest);
    return after && before;
  });
  const from =
    window.cursor === undefined ? 0 : Number(Buffer.from(window.cursor, "base64").toString());
  const limit = window.limit ?? 100;
  const page = inWindow.slice(from, from + limit).map((message) => shown(message, window));
  const more = from + limit < inWindow.length;
  return {
    messages: page,
    ...(more ? { next: Buffer.from(String(from + limit)).toString("base64") } : {}),
  };
}

/** Metadata is only given to those who ask for it. */
function shown(message: SlackMessage, window: Window): SlackMessage {
  if (window.include_all_metadata === true) return message;
  const { metadata: _, ...rest } = message;
  return rest;
}
