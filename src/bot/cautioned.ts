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
});
export type ReplyDetail = z.infer<typeof detailShape>;

export function readDetail(detail: string | undefined): ReplyDetail | undefined {
  return detail === undefined ? undefined : detailShape.parse(JSON.parse(detail));
}

const keyOf = ({ person, job, day }: ReplyDetail): string => `${person}\n${job}\n${day}`;

/** The cautions that were given, by person, job and day, as the sent replies tell. */
export function readCautioned(store: Store): Map<string, readonly string[]> {
  const given = new Map<string, readonly string[]>();
  for (const row of saidOf(store, "reply")) {
    const detail = readDetail(row.detail);
    if (detail !== undefined) note(given, detail);
  }
  return given;
}

export function note(given: Map<string, readonly string[]>, detail: ReplyDetail): void {
  if (detail.caution === undefined) return;
  given.set(keyOf(detail), [...(given.get(keyOf(detail)) ?? []), detail.caution]);
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
