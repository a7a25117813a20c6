import type { Message } from "../../src/model.ts";
import type { SlackMessage } from "./events.ts";
import { readHistory, readReplies } from "./history.ts";
import { idOf, placeOf, tsOfTime } from "./ids.ts";
import { firstMark, knownDirects } from "./mark.ts";
import { take } from "./take.ts";
import { deletionId, editId, type Meaning, reactionId, said } from "./translate.ts";
import { troubleOf } from "./trouble.ts";
import type { Working } from "./working.ts";

/** Slack still repeats an event for about five minutes while later ones arrive. */
const overlapMs = 10 * 60_000;
/** How far back edits, deletions and answers in old threads are looked for. */
const changesMs = 24 * 3600_000;
const threadsMs = 7 * 24 * 3600_000;

/**
 * Reads what was said, changed and removed in each channel while nobody listened. Events that come
 * in meanwhile are the same messages under the same ids, so nothing counts twice.
 */
export async function catchUp(working: Working): Promise<void> {
  const directs = working.config.direct ? knownDirects(working.door) : [];
  const channels = [
    ...working.crew.channels,
    ...directs.map((id) => ({ name: working.crew.channelName(id) ?? id, id })),
  ];
  for (const { name, id } of channels) {
    if (working.stopping()) return;
    try {
      await catchUpChannel(working, { name, id });
    } catch (error) {
      const { why } = troubleOf(error);
      working.door.tell(
        `slack:catch-up:${id}:${why}`,
        `The channel ${name} could not be read for what was said meanwhile: ${why}.`,
      );
    }
  }
  working.door.log.info("caught_up", { platform: "slack" });
}

interface Channel {
  readonly name: string;
  readonly id: string;
}

async function catchUpChannel(working: Working, channel: Channel): Promise<void> {
  const { door } = working;
  const first = door.cursor(firstMark(channel.id));
  if (first === undefined) {
    // the first start: from here on, and nothing of what stands there already
    const here = tsOfTime(door.now());
    // a channel that the bot is not in yet begins when it is
    await readHistory(working, { channel: channel.id, oldest: here });
    door.moveCursor(firstMark(channel.id), here);
    door.moveCursor(channel.id, here);
    return;
  }
  const cursor = Number(door.cursor(channel.id) ?? first) * 1000;
  const beginning = Number(first) * 1000;
  const unheard = Math.max(beginning, cursor - overlapMs);
  const oldest = tsOfTime(Math.max(beginning, Math.min(unheard, door.now() - threadsMs)));
  const until = door.now();
  const window = { channel: channel.id, oldest, metadata: true };
  const roots = await readHistory(working, window);
  const threads: SlackMessage[] = [];
  for (const root of roots.filter((one) => Number(one.latest_reply ?? 0) * 1000 >= unheard)) {
    const replies = await readReplies(working, { ...window, root: root.ts });
    threads.push(...replies.filter(({ ts }) => ts !== root.ts));
  }
  const all = [...roots, ...threads].sort((a, b) => (a.ts < b.ts ? -1 : 1));
  noteOwn(working, channel.id, all);
  const team = working.me.team;
  for (const message of all) {
    if (Number(message.ts) * 1000 < unheard) continue;
    await take(working, said(message, { team, channel: channel.id }), true);
  }
  for (const message of all) {
    for (const meaning of reactionsOn(message, { team, channel: channel.id, until })) {
      await take(working, meaning, true);
    }
  }
  const since = Math.max(beginning, Math.min(cursor, until) - changesMs);
  for (const meaning of changesIn(working, channel, { roots, threads, since, until })) {
    await take(working, meaning, true);
  }
}

/** Before anything is answered: what stands there is not said again. */
function noteOwn(working: Working, channel: string, messages: readonly SlackMessage[]): void {
  const { standing, me } = working;
  for (const { ts, bot_id, metadata } of messages) {
    const key = metadata?.event_payload?.key;
    if (bot_id === me.botId && typeof key === "string")
      standing.set(key, idOf({ team: me.team, channel, ts }));
  }
}

/** Thumbs and crosses that were given meanwhile; what was taken already has the same id. */
function reactionsOn(
  message: SlackMessage,
  {
    team,
    channel,
    until,
  }: { readonly team: string; readonly channel: string; readonly until: number },
): readonly Meaning[] {
  const target = idOf({ team, channel, ts: message.ts });
  return (message.reactions ?? []).flatMap(({ name, users }) =>
    (users ?? []).map(
      (user): Meaning => ({
        kind: "reacted",
        id: reactionId(target, name, user),
        ts: tsOfTime(until),
        channel,
        user,
        target,
        name,
      }),
    ),
  );
}

interface Seen {
  readonly roots: readonly SlackMessage[];
  readonly threads: readonly SlackMessage[];
  /** ms */
  readonly since: number;
  readonly until: number;
}

/** Edits and deletions show only by comparing what is kept with what stands there now. */
function changesIn(working: Working, channel: Channel, seen: Seen): readonly Meaning[] {
  const { door, me } = working;
  const standing = new Map(
    [...seen.roots, ...seen.threads].map((message) => [
      idOf({ team: me.team, channel: channel.id, ts: message.ts }),
      message,
    ]),
  );
  const kept = door
    .keptSince(channel.name, new Date(seen.since).toISOString())
    .map((row) => row.message);
  const removed = new Set(kept.flatMap((message) => message.deletes ?? []));
  return kept.flatMap((message): readonly Meaning[] => {
    const place = placeOf(message.id);
    const plain =
      place !== undefined && message.edits === undefined && message.deletes === undefined;
    // a reaction's id is longer than a message's
    if (!plain || message.id !== idOf(place) || removed.has(message.id)) return [];
    if (Number(place.ts) * 1000 > seen.until) return [];
    const now = standing.get(message.id);
    if (now !== undefined && now.subtype !== "tombstone") return editOf(message, channel, now);
    // a thread that was not read says nothing about its messages
    if (now === undefined && message.thread !== undefined && !wasRead(seen, message.thread))
      return [];
    const ts = tsOfTime(seen.until);
    return [
      {
        kind: "deleted",
        id: deletionId(message.id),
        ts,
        channel: channel.id,
        original: message.id,
      },
    ];
  });
}

const wasRead = (seen: Seen, thread: string): boolean =>
  seen.threads.some(({ thread_ts }) => thread_ts === placeOf(thread)?.ts);

function editOf(message: Message, channel: Channel, now: SlackMessage): readonly Meaning[] {
  const edited = now.edited?.ts;
  if (edited === undefined || now.user == null) return [];
  return [
    {
      kind: "edited",
      id: editId(message.id, edited),
      ts: edited,
      channel: channel.id,
      user: now.user,
      text: now.text ?? "",
      original: message.id,
      ...(message.thread === undefined ? {} : { thread: message.thread }),
    },
  ];
}
