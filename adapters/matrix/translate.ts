import { z } from "zod";
import type { RoomEvent } from "./sync.ts";

/** A file that an event points to. */
export interface RemoteFile {
  readonly name: string;
  readonly type: string;
  /** bytes, as the sender says */
  readonly size?: number;
  /** mxc address */
  readonly url: string;
  /** key, iv and hash, where the bytes are encrypted */
  readonly cipher?: Readonly<Record<string, unknown>>;
}

/** What a readable event means for the bot. */
export type Incoming =
  | {
      readonly kind: "message";
      readonly text: string;
      readonly thread?: string;
      /** the event that it replies to, outside a thread */
      readonly answers?: string;
      readonly edits?: string;
      readonly file?: RemoteFile;
    }
  | { readonly kind: "removal"; readonly target: string }
  | { readonly kind: "reaction"; readonly target: string; readonly says: "yes" | "no" }
  | { readonly kind: "nothing"; readonly why: string };

const record = z.record(z.string(), z.unknown());
const relation = z.object({
  rel_type: z.string().optional(),
  event_id: z.string().optional(),
  key: z.string().optional(),
  "m.in_reply_to": z.object({ event_id: z.string() }).optional(),
});
type Relation = z.output<typeof relation>;
const fileKinds = ["m.file", "m.image", "m.audio", "m.video"];
const cipherSchema = z.looseObject({ url: z.string() });

const nothing = (why: string): Incoming => ({ kind: "nothing", why });

/** Reads an event, decrypted where it was encrypted. Who may say it is another question. */
export function translate(event: RoomEvent): Incoming {
  if (event.type === "m.room.redaction") return removal(event);
  if (event.state_key !== undefined) return nothing("state");
  const relates = relation.safeParse(event.content["m.relates_to"]).data ?? {};
  if (event.type === "m.reaction") return reaction(relates);
  if (event.type !== "m.room.message") return nothing(`type ${event.type}`);
  if (Object.keys(event.content).length === 0) return nothing("removed");
  const edits = relates.rel_type === "m.replace" ? relates.event_id : undefined;
  // the outer body of an edit is a stopgap for old clients and must not be read
  const content =
    edits === undefined ? event.content : record.safeParse(event.content["m.new_content"]).data;
  if (content === undefined) return nothing("an edit without new content");
  return message(content, relates, edits);
}

function removal(event: RoomEvent): Incoming {
  // beside the content in rooms up to version 10, inside it from 11 on
  const target = event.redacts ?? z.string().safeParse(event.content.redacts).data;
  return target === undefined ? nothing("a removal of nothing") : { kind: "removal", target };
}

/** Variation selector and skin tones change the picture, not what it says. */
const variants = /[\u{FE0F}\u{FE0E}\u{1F3FB}-\u{1F3FF}]/gu;
const yesSigns = new Set(["\u{1F44D}", "\u{2705}", "\u{2714}", "\u{2611}"]);
const noSigns = new Set(["\u{274C}", "\u{2716}", "\u{2717}", "\u{2718}", "\u{274E}"]);

function reaction(relates: Relation): Incoming {
  const { event_id: target, key = "" } = relates;
  if (relates.rel_type !== "m.annotation" || target === undefined)
    return nothing("a reaction to nothing");
  const sign = key.replaceAll(variants, "");
  if (yesSigns.has(sign)) return { kind: "reaction", target, says: "yes" };
  if (noSigns.has(sign)) return { kind: "reaction", target, says: "no" };
  return nothing("another reaction");
}

function message(
  content: Record<string, unknown>,
  relates: Relation,
  edits: string | undefined,
): Incoming {
  const kind = content.msgtype;
  const body = z.string().safeParse(content.body).data ?? "";
  const isReply = relates["m.in_reply_to"] !== undefined || edits !== undefined;
  const thread = relates.rel_type === "m.thread" ? relates.event_id : undefined;
  const replied = relates["m.in_reply_to"]?.event_id;
  const answers = relates.rel_type === undefined && edits === undefined ? replied : undefined;
  const about = {
    ...(answers === undefined ? {} : { answers }),
    ...(thread === undefined ? {} : { thread }),
    ...(edits === undefined ? {} : { edits }),
  };
  if (kind === "m.text" || kind === "m.emote") {
    return { kind: "message", text: isReply ? withoutQuote(body) : body, ...about };
  }
  if (typeof kind !== "string" || !fileKinds.includes(kind))
    return nothing(`message type ${String(kind)}`);
  const file = fileIn(content, body);
  const named = z.string().safeParse(content.filename).data;
  // with a file name of its own, the body is what the sender wrote under the picture
  const caption = named !== undefined && named !== body ? body : "";
  if (file === undefined) return nothing("a file without its address");
  return { kind: "message", text: caption, file, ...about };
}

/**
 * Older clients put the quoted message before the text of a reply; it was not said again. Only a
 * quote that names its author is one: "> 500 meg" is a reading.
 */
function withoutQuote(body: string): string {
  if (!/^> (\* )?<@[^\s>]+>/.test(body)) return body;
  const lines = body.split("\n");
  const first = lines.findIndex((line) => !line.startsWith(">"));
  if (first < 0) return "";
  return lines.slice(lines[first] === "" ? first + 1 : first).join("\n");
}

const infoSchema = z.object({
  mimetype: z.string().optional().catch(undefined),
  size: z.number().optional().catch(undefined),
});

function fileIn(content: Record<string, unknown>, body: string): RemoteFile | undefined {
  const cipher = cipherSchema.safeParse(content.file).data;
  const url = cipher?.url ?? z.string().safeParse(content.url).data;
  if (url === undefined) return undefined;
  const { mimetype, size } = infoSchema.safeParse(content.info).data ?? {};
  const name = z.string().safeParse(content.filename).data ?? body;
  return {
    name: name === "" ? "file" : name,
    type: mimetype ?? "application/octet-stream",
    url,
    ...(size === undefined ? {} : { size }),
    ...(cipher === undefined ? {} : { cipher }),
  };
}
