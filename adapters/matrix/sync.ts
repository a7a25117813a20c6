import { z } from "zod";
import type { Ask } from "./ask.ts";
import type { KeyNews } from "./keys/machine.ts";

const record = z.record(z.string(), z.unknown());

/** An event of a room's timeline or state. One that lacks any of this is no event. */
export const eventSchema = z.object({
  type: z.string(),
  event_id: z.string(),
  sender: z.string(),
  origin_server_ts: z.number(),
  content: record,
  state_key: z.string().optional(),
  redacts: z.string().optional(),
  unsigned: record.optional(),
});
export type RoomEvent = z.output<typeof eventSchema>;

const events = z.object({ events: z.array(z.unknown()).default([]) }).default({ events: [] });
const joined = z.object({
  state: events,
  timeline: z
    .object({
      events: z.array(z.unknown()).default([]),
      limited: z.boolean().default(false),
      prev_batch: z.string().optional(),
    })
    .default({ events: [], limited: false }),
});
const answerSchema = z.object({
  next_batch: z.string(),
  to_device: events,
  device_lists: z
    .object({ changed: z.array(z.string()).default([]), left: z.array(z.string()).default([]) })
    .default({ changed: [], left: [] }),
  device_one_time_keys_count: z.record(z.string(), z.number()).default({}),
  device_unused_fallback_key_types: z.array(z.string()).optional(),
  rooms: z
    .object({
      join: z.record(z.string(), joined).default({}),
      invite: z.record(z.string(), z.object({ invite_state: events })).default({}),
      leave: z.record(z.string(), z.unknown()).default({}),
    })
    .default({ join: {}, invite: {}, leave: {} }),
});
export type SyncAnswer = z.output<typeof answerSchema>;

/** Servers cap a timeline there by default. */
export const pageSize = 100;

const filter = JSON.stringify({
  presence: { types: [] },
  account_data: { types: [] },
  room: {
    account_data: { types: [] },
    ephemeral: { types: [] },
    state: { lazy_load_members: true },
    timeline: { limit: pageSize },
  },
});

/** One question to the server: what came since. Answers at once where something did. */
export async function askSync(
  ask: Ask,
  since: string | undefined,
  waitMs: number,
): Promise<SyncAnswer> {
  const query = { filter, timeout: waitMs, ...(since === undefined ? {} : { since }) };
  const answer = await ask("GET", "/_matrix/client/v3/sync", undefined, {
    query,
    // a first sync of a large account takes minutes
    timeoutMs: since === undefined ? 300_000 : waitMs + 20_000,
  });
  return answerSchema.parse(answer);
}

export function keyNewsOf(answer: SyncAnswer): KeyNews {
  const unused = answer.device_unused_fallback_key_types;
  return {
    toDevice: answer.to_device.events,
    changed: answer.device_lists.changed,
    left: answer.device_lists.left,
    oneTimeKeys: answer.device_one_time_keys_count,
    ...(unused === undefined ? {} : { unusedFallbackKeys: unused }),
  };
}

/** What is an event; what is not is left out. */
export function eventsOf(raw: readonly unknown[]): readonly RoomEvent[] {
  return raw.flatMap((one) => {
    const parsed = eventSchema.safeParse(one);
    return parsed.success ? [parsed.data] : [];
  });
}
