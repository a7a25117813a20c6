import { z } from "zod";
import { findOut, type OutboxRow } from "../../src/record/outbox.ts";
import { saidAt } from "../../src/record/said-when.ts";
import type { Store } from "../../src/record/store.ts";
import type { ChatPlatform, Part } from "../chat-platform.ts";
import { lateLine } from "./late.ts";
import { splitText } from "./split-text.ts";

const partSchema = z.object({
  key: z.string(),
  kind: z.enum(["text", "upload", "share", "pin"]),
  of: z.enum(["reply", "board", "clock", "alert", "operator"]),
  channel: z.string(),
  thread: z.string().optional(),
  text: z.string(),
  file: z.object({ name: z.string(), type: z.string(), sha256: z.string() }).optional(),
  replaces: z.string().optional(),
  body: z.string().optional(),
  remote: z.string().optional(),
});
const wireSchema = z.array(partSchema);

/** The parts of a row as an earlier attempt left them; undefined where there was none. */
export function partsBefore(row: OutboxRow): readonly Part[] | undefined {
  return row.wire === undefined ? undefined : wireSchema.parse(JSON.parse(row.wire)).map(tidy);
}

export const wireOf = (parts: readonly Part[]): string => JSON.stringify(parts);

/** Absent stays absent, never `undefined`. */
function tidy(part: z.output<typeof partSchema>): Part {
  const { key, kind, of, channel, text } = part;
  return {
    key,
    kind,
    of,
    channel,
    text,
    ...(part.thread === undefined ? {} : { thread: part.thread }),
    ...(part.file === undefined ? {} : { file: part.file }),
    ...(part.replaces === undefined ? {} : { replaces: part.replaces }),
    ...(part.body === undefined ? {} : { body: part.body }),
    ...(part.remote === undefined ? {} : { remote: part.remote }),
  };
}

interface Scene {
  readonly store: Store;
  readonly platform: ChatPlatform;
  /** ISO */
  readonly now: string;
  readonly zone: string;
}

/** What a row is sent as: its text in pieces, then its files, then a board's pin. */
export function planParts(scene: Scene, row: OutboxRow): readonly Part[] {
  const { platform } = scene;
  const channel = row.channel === "operator" ? (platform.operatorChannel ?? "") : row.channel;
  const thread = row.thread === undefined ? {} : { thread: row.thread };
  const base = { of: row.kind, channel, ...thread };
  const texts =
    row.kind === "board"
      ? [row.text]
      : splitText(spoken(scene, row), platform.longest, platform.lengthOf);
  const old = postsBefore(scene, row);
  const changed = old.slice(texts.length).map(() => "(The answer stands above.)");
  const parts: Omit<Part, "key">[] = [...texts, ...changed]
    .filter((text) => text !== "")
    .map((text, index): Omit<Part, "key"> => {
      const replaces = old[index];
      return { ...base, kind: "text", text, ...(replaces === undefined ? {} : { replaces }) };
    });
  for (const { name, type, sha256 } of row.files) {
    const file = { name, type, sha256 };
    parts.push({ ...base, kind: "upload", text: "", file });
    parts.push({ ...base, kind: "share", text: "", file });
  }
  if (row.kind === "board") parts.push({ ...base, kind: "pin", text: "" });
  return parts.map((part, index) => ({
    ...part,
    key: index === 0 ? row.id : `${row.id}#${index}`,
  }));
}

function spoken({ store, now, zone }: Scene, row: OutboxRow): string {
  if (row.kind !== "reply" || row.answers === undefined || row.edits !== undefined) return row.text;
  const said = saidAt(store, row.platform, row.answers);
  const late = said === undefined ? undefined : lateLine(said, now, zone);
  return late === undefined ? row.text : `${row.text}\n${late}`;
}

/** The posts that a row replaces, in their order. */
function postsBefore({ store }: Scene, row: OutboxRow): readonly string[] {
  const earlier = row.edits === undefined ? undefined : findOut(store, row.edits);
  if (earlier === undefined) return [];
  const posts = partsBefore(earlier)?.filter((part) => part.kind === "text") ?? [];
  const remotes = posts.flatMap(({ remote }) => (remote === undefined ? [] : [remote]));
  return remotes.length > 0 || earlier.remote_id === undefined ? remotes : [earlier.remote_id];
}
