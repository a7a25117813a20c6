import { z } from "zod";
import type { Message } from "../model.ts";
import { detailsOn } from "../record/outbox.ts";
import type { Store } from "../record/store.ts";
import type { Memory } from "./memory.ts";

/** What a reply's outbox row keeps besides its text. */
const detailShape = z.object({
  job: z.number().optional(),
  person: z.string().optional(),
  day: z.string().optional(),
  caution: z.string().optional(),
  /** the advice that it ended with */
  next: z.string().optional(),
});
export type ReplyDetail = z.infer<typeof detailShape>;

export function readDetail(detail: string | undefined): ReplyDetail | undefined {
  return detail === undefined ? undefined : detailShape.parse(JSON.parse(detail));
}

const keyOf = ({ person, job, day }: ReplyDetail): string => `${person}\n${job}\n${day}`;

/** What was said that is not said again. */
export interface Told {
  /** cautions given, by person, job and day */
  readonly cautioned: Map<string, readonly string[]>;
  /** the last advice, by job */
  readonly advised: Map<number, string>;
}

/** Takes in what the replies that were made on a job tell of it. */
export function recallTold(told: Told, store: Store, job: number): void {
  for (const text of detailsOn(store, job)) {
    const detail = readDetail(text);
    if (detail !== undefined) note(told, detail);
  }
}

/** A job at rest needs none of it. */
export function forgetTold({ cautioned, advised }: Told, job: number): void {
  advised.delete(job);
  for (const key of cautioned.keys()) {
    if (key.split("\n").at(-2) === String(job)) cautioned.delete(key);
  }
}

export function note({ cautioned, advised }: Told, detail: ReplyDetail): void {
  const { job, next, caution } = detail;
  if (job !== undefined && next !== undefined) advised.set(job, next);
  if (caution === undefined) return;
  cautioned.set(keyOf(detail), [...(cautioned.get(keyOf(detail)) ?? []), caution]);
}

/** Cautions that a message's author was already given on this job today. */
export function cautionedOf(
  memory: Memory,
  message: Message,
  job: number | undefined,
): readonly string[] {
  if (job === undefined) return [];
  const key = keyOf({ person: message.person, job, day: message.at.slice(0, 10) });
  return memory.cautioned.get(key) ?? [];
}
