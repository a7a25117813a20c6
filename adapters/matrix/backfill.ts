import { z } from "zod";
import type { Ask } from "./ask.ts";
import { eventsOf, pageSize, type RoomEvent, type SyncAnswer } from "./sync.ts";

const pageSchema = z.object({ chunk: z.array(z.unknown()), end: z.string().optional() });

export interface Timeline {
  /** oldest first, and only what came after our own latest join */
  readonly events: readonly RoomEvent[];
  /** older events were left unread, because they are too old */
  readonly cut: boolean;
}

type Joined = SyncAnswer["rooms"]["join"][string];

/**
 * A room's new events without a gap: where the server shortened the timeline, the rest is paged
 * back to `since`, to our own join or to `oldestMs`, whichever comes first.
 */
export async function completeTimeline(
  ask: Ask,
  at: {
    readonly room: string;
    readonly since: string | undefined;
    readonly me: string;
    readonly oldestMs: number;
  },
  joined: Joined,
): Promise<Timeline> {
  const shown = eventsOf(joined.timeline.events);
  const { limited, prev_batch } = joined.timeline;
  if (!limited || prev_batch === undefined || at.since === undefined || joinIn(shown, at.me) >= 0) {
    return { events: afterJoin(shown, at.me), cut: false };
  }
  const before: RoomEvent[] = [];
  let from: string | undefined = prev_batch;
  let cut = false;
  while (from !== undefined) {
    const page: z.output<typeof pageSchema> = await askPage(ask, at.room, { from, to: at.since });
    const events = eventsOf(page.chunk);
    before.push(...events);
    from = page.chunk.length === 0 ? undefined : page.end;
    if (joinIn(events, at.me) >= 0) break;
    const oldest = events.at(-1);
    if (oldest !== undefined && oldest.origin_server_ts < at.oldestMs) {
      cut = from !== undefined;
      break;
    }
  }
  const all = [...before.reverse(), ...shown];
  const young = all.filter((event) => event.origin_server_ts >= at.oldestMs);
  return { events: afterJoin(young, at.me), cut: cut || young.length < all.length };
}

async function askPage(
  ask: Ask,
  room: string,
  range: { readonly from: string; readonly to: string },
): Promise<z.output<typeof pageSchema>> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/messages`;
  return pageSchema.parse(
    await ask("GET", path, undefined, { query: { dir: "b", limit: pageSize, ...range } }),
  );
}

const previous = z.object({ prev_content: z.object({ membership: z.string() }) });

/** Place of our own latest join; a new display name is a member event too, but no join. */
function joinIn(events: readonly RoomEvent[], me: string): number {
  return events.findLastIndex(
    (event) =>
      event.type === "m.room.member" &&
      event.state_key === me &&
      event.content.membership === "join" &&
      previous.safeParse(event.unsigned).data?.prev_content.membership !== "join",
  );
}

/** What was said before we joined was not said to us. */
function afterJoin(events: readonly RoomEvent[], me: string): readonly RoomEvent[] {
  return events.slice(joinIn(events, me) + 1);
}
