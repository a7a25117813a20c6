import type { Job, JobReading, Message, ReplyInput } from "../model.ts";
import { findOut, type OutboxRow, type Outgoing } from "../record/outbox.ts";
import { isCurrent } from "../record/readings.ts";
import type { Store } from "../record/store.ts";
import { mendedText } from "../show/mended.ts";
import { readDetail } from "./cautioned.ts";

/** A message that mended the record, with the job before and after it. */
interface Mending {
  readonly message: Message;
  readonly input: Pick<ReplyInput, "job" | "replaced">;
  readonly was: Job | undefined;
  /** outbox id of the reply that the answer itself takes the place of */
  readonly answered?: string;
}

/** Edits to earlier replies whose figures this message changed, or let stand again. */
export function mendingRows(store: Store, mending: Mending): readonly Outgoing[] {
  const { message, answered, was } = mending;
  const job = mending.input.job;
  if (job === undefined) return [];
  const posts = new Map<string, { readonly row: OutboxRow; readonly original: string }>();
  for (const original of touchedMessages(mending, job)) {
    const row = findOut(store, `reply:${message.platform}:${original}:0`);
    if (row === undefined) continue;
    // what was itself an edit stands in the post that it changed
    const post = row.edits ?? row.id;
    if (post !== answered) posts.set(post, { row, original });
  }
  const texts = [...posts].flatMap(([post, { row, original }]) => {
    const said = withoutCaution(row);
    const text = mendedText(said, changedIn(job, original));
    // what reads there already as it should needs no edit
    const before = was === undefined ? said : mendedText(said, changedIn(was, original));
    return text === before ? [] : [{ post, row, text }];
  });
  return texts.map(({ post, row, text }, index) => ({
    id: `reply:${message.platform}:${message.id}:${index + 1}`,
    platform: row.platform,
    channel: row.channel,
    ...(row.thread === undefined ? {} : { thread: row.thread }),
    kind: "reply",
    answers: message.id,
    text,
    files: [],
    edits: post,
  }));
}

/** The messages whose figures are others now: what this message replaced, what that had replaced, what is back. */
function touchedMessages({ input, was, message }: Mending, job: Job): readonly string[] {
  const gone = new Set(was?.readings.filter((old) => !isCurrent(old)).map(({ id }) => id));
  const back = job.readings.filter((reading) => gone.has(reading.id) && isCurrent(reading));
  const touched = new Set([
    ...input.replaced.map(({ old }) => old.id),
    ...back.map(({ id }) => id),
  ]);
  let known = 0;
  while (known !== touched.size) {
    known = touched.size;
    for (const { id, replaced_by } of job.readings) {
      if (replaced_by !== undefined && touched.has(replaced_by)) touched.add(id);
    }
  }
  const messages = job.readings.filter(({ id }) => touched.has(id)).map((one) => one.message);
  return [...new Set(messages)].filter((id) => id !== message.id);
}

/** A caution is said once, at its moment: an edit does not say it again. */
function withoutCaution({ text, detail }: OutboxRow): string {
  if (readDetail(detail)?.caution === undefined) return text;
  return text.split("\n").slice(1).join("\n");
}

/** Every reading of a message that no longer stands, with what stands for it now. */
function changedIn(job: Job, message: string): ReplyInput["replaced"] {
  const gone = job.readings.filter((one) => one.message === message && !isCurrent(one));
  return gone.map((old) => {
    const by = successorOf(job, old);
    return by === undefined ? { old } : { old, by };
  });
}

function successorOf(job: Job, old: JobReading): JobReading | undefined {
  let by: JobReading | undefined = old;
  for (let steps = 0; by !== undefined && !isCurrent(by) && steps <= job.readings.length; steps++) {
    const next: string | undefined = by.replaced_by;
    by = job.readings.find(({ id }) => id === next);
  }
  return by !== undefined && isCurrent(by) ? by : undefined;
}
