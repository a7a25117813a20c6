import { createHash } from "node:crypto";
import { z } from "zod";
import type { Message } from "../../src/model.ts";
import { storable } from "../../src/record/well-formed.ts";
import { isoTime } from "./input-shapes.ts";

export const platform = "replay";

/** One line of a scripted chat. */
export const replayShape = z.object({
  id: z.string().min(1),
  at: isoTime,
  channel: z.string().min(1),
  thread: z.string().min(1).nullish(),
  person: z.string().min(1),
  role: z.enum(["tech", "dispatcher", "office"]).default("tech"),
  text: z.string().default(""),
  edits: z.string().min(1).nullish(),
  deletes: z.string().min(1).nullish(),
  files: z
    .array(z.object({ name: z.string(), type: z.string(), bytes_base64: z.base64() }))
    .nullish(),
});
export type ReplayLine = z.infer<typeof replayShape>;

export function messageOf(line: ReplayLine): {
  readonly message: Message;
  readonly bytes: readonly Buffer[];
} {
  const bytes = (line.files ?? []).map((file) => Buffer.from(file.bytes_base64, "base64"));
  const files = (line.files ?? []).map(({ name, type }, index) => {
    const content = bytes[index] ?? Buffer.alloc(0);
    const sha256 = createHash("sha256").update(content).digest("hex");
    return { name, type, size: content.length, sha256 };
  });
  const { id, at, channel, person, role, text } = line;
  const message: Message = {
    platform,
    id,
    at,
    channel,
    person,
    role,
    text,
    files,
    ...(line.thread == null ? {} : { thread: line.thread }),
    ...(line.edits == null ? {} : { edits: line.edits }),
    ...(line.deletes == null ? {} : { deletes: line.deletes }),
  };
  return { message: storable(message), bytes };
}
