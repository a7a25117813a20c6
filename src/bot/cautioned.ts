import { z } from "zod";
import type { Message } from "../model.ts";
import { saidOf } from "../record/outbox.ts";
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

/** What the replies that were made tell of it. */
export function readTold(store: Store): Told {
  const told: Told = { cautioned: new Map(), advised: new Map() };
  for (const row of saidOf(store, "reply")) {
    const detail = readDetail(row.detail);
    if (detail !== undefined) note(told, detail);
  }
  return told;
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
