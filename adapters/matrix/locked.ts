import { z } from "zod";
import { arrive } from "./arrive.ts";
import { textContent } from "./content.ts";
import { post } from "./post.ts";
import { eventSchema, type RoomEvent } from "./sync.ts";
import type { Working } from "./working.ts";

/** An encrypted event whose key has not come, or a change of one. */
const lockedSchema = z.object({
  room: z.string(),
  event: eventSchema,
  /** when it was first seen, ms */
  since: z.number(),
  /** the room was told */
  told: z.boolean(),
});
type Locked = z.output<typeof lockedSchema>;

/** Keys often come a moment later; only then is anybody troubled. */
const tellAfterMs = 60_000;
const giveUpAfterMs = 24 * 3600 * 1000;

/** Kept beside the sync's place, so that neither is ever ahead of the other. */
const place = "locked";

export function lockedEvents(working: Working): readonly Locked[] {
  return z.array(lockedSchema).parse(JSON.parse(working.door.cursor(place) ?? "[]"));
}

function keepLocked(working: Working, list: readonly Locked[]): void {
  const text = JSON.stringify(list);
  if (text !== (working.door.cursor(place) ?? "[]")) working.door.moveCursor(place, text);
}

export const idsOf = (list: readonly Locked[]): ReadonlySet<string> =>
  new Set(list.map(({ event }) => event.event_id));

/** Puts one more aside; the same event twice stands once. */
export function setAside(working: Working, room: string, event: RoomEvent): void {
  const list = lockedEvents(working);
  if (list.some((one) => one.event.event_id === event.event_id)) return;
  working.door.log.warn("locked", {
    platform: "matrix",
    message: event.event_id,
    sender: event.sender,
  });
  keepLocked(working, [...list, { room, event, since: working.door.now(), told: false }]);
}

/** Tries all again, oldest first; says once in a room what could not be read, and gives up after a day. */
export async function retryLocked(working: Working): Promise<void> {
  const list = lockedEvents(working);
  if (list.length === 0) return;
  const still: Locked[] = [];
  for (const one of list) {
    const came = await arrive(working, one.room, one.event, idsOf(still));
    if (came !== "locked" && came !== "early") continue;
    if (working.door.now() - one.since < giveUpAfterMs) still.push(one);
    else {
      const sentence = `A message could not be decrypted within a day and was given up (${one.event.event_id}).`;
      working.door.tell(`locked:${one.event.event_id}`, sentence);
    }
  }
  // first what was read: where telling fails it is tried again
  keepLocked(working, still);
  const told = await tellRooms(working, still);
  if (told.size > 0) {
    keepLocked(
      working,
      still.map((one) => (told.has(one.event.event_id) ? { ...one, told: true } : one)),
    );
  }
}

async function tellRooms(working: Working, list: readonly Locked[]): Promise<ReadonlySet<string>> {
  const due = list.filter((one) => !one.told && working.door.now() - one.since >= tellAfterMs);
  const told = new Set<string>();
  for (const room of new Set(due.map((one) => one.room))) {
    const here = due.filter((one) => one.room === room);
    const first = here[0];
    if (first === undefined) continue;
    const key = `locked:${first.event.event_id}`;
    const text = `${sentenceFor(working, here)} Please send it again. If that is not read either, take me out of this room and invite me again: what is sent after that goes out under a new key.`;
    const content = textContent({ text, board: false, key }, {});
    try {
      await post(working, { room, key, content });
      for (const { event } of here) told.add(event.event_id);
    } catch (error) {
      working.door.log.warn("not_told", { platform: "matrix", room, why: String(error) });
    }
  }
  return told;
}

function sentenceFor(working: Working, here: readonly Locked[]): string {
  const names = new Set(
    here.map(({ event }) => working.crew.get(event.sender)?.person ?? "somebody"),
  );
  const what = here.length === 1 ? "A message" : `${here.length} messages`;
  return `${what} from ${[...names].join(" and ")} did not reach me in a form that I can read, so nothing of it is filed: the key is missing.`;
}
