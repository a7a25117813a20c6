import type { Job, Message, ReplyInput } from "../model.ts";
import { findOut, type Outgoing } from "../record/outbox.ts";
import { isCurrent } from "../record/readings.ts";
import type { Store } from "../record/store.ts";
import { mendedText } from "../show/mended.ts";

/** Edits to earlier replies whose figures this message changed. */
export function mendingRows(
  store: Store,
  message: Message,
  input: Pick<ReplyInput, "job" | "replaced">,
): readonly Outgoing[] {
  const { job } = input;
  // an edit or a deletion mends the reply to its own original already
  if (job === undefined || message.edits !== undefined || message.deletes !== undefined) return [];
  const originals = [...new Set(input.replaced.map(({ old }) => old.message))];
  return originals.flatMap((original, index): readonly Outgoing[] => {
    const earlier = findOut(store, `reply:${message.platform}:${original}:0`);
    if (earlier === undefined) return [];
    return [
      {
        id: `reply:${message.platform}:${message.id}:${index + 1}`,
        platform: earlier.platform,
        channel: earlier.channel,
        ...(earlier.thread === undefined ? {} : { thread: earlier.thread }),
        kind: "reply",
        answers: message.id,
        text: mendedText(earlier.text, changedIn(job, original)),
        files: [],
        edits: earlier.id,
      },
    ];
  });
}

/** Every reading of a message that no longer stands, with its successor where it has one. */
function changedIn(job: Job, message: string): ReplyInput["replaced"] {
  const gone = job.readings.filter((one) => one.message === message && !isCurrent(one));
  return gone.map((old) => {
    const by = job.readings.find(({ id }) => id === old.replaced_by);
    return by === undefined ? { old } : { old, by };
  });
}
