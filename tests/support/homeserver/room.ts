import { z } from "zod";
import type { Account, Homeserver } from "./server.ts";

const rawSchema = z.object({
  event_id: z.string(),
  type: z.string(),
  sender: z.string(),
  content: z.record(z.string(), z.unknown()),
});
export type RawEvent = z.output<typeof rawSchema>;
const pageSchema = z.object({ chunk: z.array(rawSchema), end: z.string().optional() });

const asked = async (server: Homeserver, account: Account, path: string): Promise<unknown> => {
  const response = await fetch(`${server.url}${path}`, {
    headers: { authorization: `Bearer ${account.token}` },
  });
  return response.json();
};

/** Every event of a room as the server has it, oldest first. */
export async function allEvents(
  server: Homeserver,
  account: Account,
  room: string,
): Promise<readonly RawEvent[]> {
  const events: RawEvent[] = [];
  let from = "";
  for (;;) {
    const query = `dir=b&limit=500${from === "" ? "" : `&from=${encodeURIComponent(from)}`}`;
    const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/messages?${query}`;
    const { chunk, end } = pageSchema.parse(await asked(server, account, path));
    events.push(...chunk);
    if (end === undefined || chunk.length === 0) return events.reverse();
    from = end;
  }
}

export async function roomState(
  server: Homeserver,
  account: Account,
  at: { readonly room: string; readonly type: string; readonly key?: string },
): Promise<Record<string, unknown>> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(at.room)}/state/${at.type}/${encodeURIComponent(at.key ?? "")}`;
  return z.record(z.string(), z.unknown()).parse(await asked(server, account, path));
}
