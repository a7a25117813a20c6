import { z } from "zod";
import { messageSchema, type SlackMessage } from "./events.ts";
import { troubleOf } from "./trouble.ts";
import type { Working } from "./working.ts";

export interface Window {
  readonly channel: string;
  readonly oldest: string;
  readonly metadata?: boolean;
}

const pageSchema = z.object({
  messages: z.array(z.unknown()).default([]),
  response_metadata: z.object({ next_cursor: z.string().optional() }).optional(),
});

/** More pages than this are no catching up but a mistake. */
const mostPages = 200;

/** A channel's messages since `oldest`, oldest first, without the replies in threads. */
export async function readHistory(
  working: Working,
  window: Window,
): Promise<readonly SlackMessage[]> {
  const pages = await allPages(working, (cursor) =>
    working.client.conversations.history({ ...pageArgs(window), ...cursor }),
  );
  return pages.flat().reverse();
}

/** A thread's messages since `oldest`, oldest first, its first message among them. */
export async function readReplies(
  working: Working,
  window: Window & { readonly root: string },
): Promise<readonly SlackMessage[]> {
  const pages = await allPages(working, (cursor) =>
    working.client.conversations.replies({ ...pageArgs(window), ts: window.root, ...cursor }),
  );
  const seen = new Set<string>();
  return pages.flat().filter(({ ts }) => !seen.has(ts) && seen.add(ts));
}

const pageArgs = ({ channel, oldest, metadata }: Window) => ({
  channel,
  oldest,
  inclusive: true,
  limit: 200,
  include_all_metadata: metadata === true,
});

async function allPages(
  working: Working,
  read: (cursor: { readonly cursor?: string }) => Promise<unknown>,
): Promise<readonly (readonly SlackMessage[])[]> {
  const pages: SlackMessage[][] = [];
  let cursor: string | undefined;
  for (let page = 0; page < mostPages; page++) {
    const answer = await patiently(working, () => read(cursor === undefined ? {} : { cursor }));
    const { messages, response_metadata } = pageSchema.parse(answer);
    pages.push(messages.flatMap((one) => known(working, one)));
    cursor = response_metadata?.next_cursor;
    if (cursor === undefined || cursor === "") break;
  }
  return pages;
}

/** A message of a form that nobody foresaw must not hide the others. */
function known(working: Working, raw: unknown): readonly SlackMessage[] {
  const parsed = messageSchema.safeParse(raw);
  if (parsed.success) return [parsed.data];
  working.door.log.warn("slack_odd_message", { why: parsed.error.issues[0]?.message });
  return [];
}

/** Reading may be done again, so a limit only costs time. */
async function patiently<T>(working: Working, read: () => Promise<T>): Promise<T> {
  for (;;) {
    try {
      return await read();
    } catch (error) {
      const trouble = troubleOf(error);
      if (trouble.kind !== "limited" || working.stopping()) throw error;
      working.door.log.warn("slack_limited", { wait_ms: trouble.retryMs });
      await new Promise((resolve) => setTimeout(resolve, trouble.retryMs));
    }
  }
}
