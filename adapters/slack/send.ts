import type { webApi } from "@slack/bolt";
import type { Outcome, Part, SendContext } from "../chat-platform.ts";
import { boardBlocks } from "./board-blocks.ts";
import { idOf, placeOf } from "./ids.ts";
import { escaped } from "./plain-text.ts";
import { type Trouble, tokenSentence, troubleOf } from "./trouble.ts";
import type { Working } from "./working.ts";

/** The kind of metadata that marks a post as ours, so that it can be found again. */
export const eventType = "readback_post";

/** Carries one part of an outbox row to its channel. */
export async function sendPart(
  working: Working,
  part: Part,
  context: SendContext,
): Promise<Outcome> {
  const channel = working.crew.channelId(part.channel);
  if (channel === undefined) {
    return {
      kind: "refused",
      why: `No Slack channel is configured for ${part.channel}; name it under "channels".`,
    };
  }
  try {
    return await carried(working, channel, { part, context });
  } catch (error) {
    return outcomeOf(working, part, troubleOf(error));
  }
}

interface Carrying {
  readonly part: Part;
  readonly context: SendContext;
}

function carried(working: Working, channel: string, { part, context }: Carrying): Promise<Outcome> {
  switch (part.kind) {
    case "text":
      return part.replaces === undefined
        ? post(working, channel, part)
        : update(working, channel, { part, replaces: part.replaces });
    case "upload":
      return upload(working, part, context.bytes);
    case "share":
      return share(working, channel, { part, context });
    case "pin":
      return pin(working, channel, context.before ?? "");
  }
}

/** What a post and an edit have in common; an edit without blocks would remove them. */
function bodyOf(part: Part) {
  const metadata = { event_type: eventType, event_payload: { key: part.key } };
  const text = escaped(part.text);
  if (part.of !== "board") return { text, metadata };
  // the notification's text may be short: the blocks say it all
  return {
    text: [...text].slice(0, 3900).join(""),
    blocks: boardBlocks(part.text, part.key),
    metadata,
  };
}

export const threadTs = (part: Part): string | undefined =>
  part.thread === undefined ? undefined : placeOf(part.thread)?.ts;

async function post(working: Working, channel: string, part: Part): Promise<Outcome> {
  const stands = working.standing.get(part.key);
  if (stands !== undefined) return { kind: "sent", remote: stands };
  const thread_ts = threadTs(part);
  const body = {
    channel,
    ...bodyOf(part),
    unfurl_links: false,
    unfurl_media: false,
    parse: "none",
    ...(thread_ts === undefined ? {} : { thread_ts }),
  } satisfies webApi.ChatPostMessageArguments;
  const answer = await working.client.chat.postMessage(body);
  return answer.ts === undefined
    ? { kind: "unclear", why: "the answer names no message" }
    : { kind: "sent", remote: idOf({ team: working.me.team, channel, ts: answer.ts }) };
}

async function update(
  working: Working,
  channel: string,
  { part, replaces }: { readonly part: Part; readonly replaces: string },
): Promise<Outcome> {
  const ts = placeOf(replaces)?.ts;
  if (ts === undefined) return { kind: "gone", why: "the post to change has no place" };
  const body = { channel, ts, ...bodyOf(part), parse: "none" } satisfies webApi.ChatUpdateArguments;
  await working.client.chat.update(body);
  return { kind: "sent", remote: replaces };
}

/** Brings the bytes; nothing is seen in the channel before the share. */
async function upload(
  working: Working,
  part: Part,
  bytes: Uint8Array | undefined,
): Promise<Outcome> {
  if (bytes === undefined || part.file === undefined) {
    return { kind: "refused", why: "the file's bytes are no longer kept" };
  }
  const slot = await working.client.files.getUploadURLExternal({
    filename: part.file.name,
    length: bytes.length,
  });
  if (slot.upload_url === undefined || slot.file_id === undefined) {
    return { kind: "later", retryMs: 5000, why: "no place for the upload was given" };
  }
  const answer = await fetch(slot.upload_url, {
    method: "POST",
    body: Buffer.from(bytes),
    signal: AbortSignal.timeout(60_000),
  });
  if (answer.ok) return { kind: "sent", remote: slot.file_id };
  return { kind: "later", retryMs: 5000, why: `the upload was answered with ${answer.status}` };
}

async function share(
  working: Working,
  channel: string,
  { part, context }: Carrying,
): Promise<Outcome> {
  const id = context.before;
  if (id === undefined) return { kind: "refused", why: "the file was not brought" };
  const thread_ts = threadTs(part);
  await working.client.files.completeUploadExternal({
    files: [{ id, title: part.file?.name ?? "file" }],
    channel_id: channel,
    ...(thread_ts === undefined ? {} : { thread_ts }),
  });
  return { kind: "sent", remote: id };
}

async function pin(working: Working, channel: string, remote: string): Promise<Outcome> {
  const timestamp = placeOf(remote)?.ts;
  if (timestamp === undefined) return { kind: "refused", why: "there is no post to pin" };
  try {
    await working.client.pins.add({ channel, timestamp });
  } catch (error) {
    const trouble = troubleOf(error);
    if (trouble.kind !== "refused" || trouble.code !== "already_pinned") throw error;
  }
  return { kind: "sent", remote };
}

/** How long Slack's own failures are left alone. */
const pauseMs = 3000;

/** What can no longer be edited is posted anew; so is an answer whose thread is gone. */
const goneCodes = new Set([
  "message_not_found",
  "cant_update_message",
  "edit_window_closed",
  "thread_not_found",
]);

function outcomeOf(working: Working, part: Part, trouble: Trouble): Outcome {
  const { why } = trouble;
  switch (trouble.kind) {
    case "limited":
      return { kind: "later", retryMs: trouble.retryMs, why };
    case "unreachable":
      return { kind: "later", retryMs: pauseMs, why };
    case "unclear":
      return { kind: "unclear", why };
    case "token":
      working.door.fatal(tokenSentence(why));
      return { kind: "later", retryMs: 60_000, why };
    case "refused":
      if (part.kind === "text" && goneCodes.has(trouble.code)) return { kind: "gone", why };
      return {
        kind: "refused",
        why:
          part.kind === "pin"
            ? `The board cannot be pinned in ${part.channel} (${trouble.code}): give the app pins:write, or pin it by hand.`
            : why,
      };
  }
}
