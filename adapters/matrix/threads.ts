import type { Door } from "../chat-platform.ts";

const place = (thread: string): string => `thread ${thread}`;

/**
 * The name under which the record knows a thread: the message that it hangs under. One under a post
 * of the bot's is about the message which that post answers; where the thread really is, is kept.
 */
export function threadOf(door: Door, root: string): string {
  const row = door.posted(root);
  const about = row?.thread ?? row?.answers ?? root;
  if ((door.cursor(place(about)) ?? about) !== root) door.moveCursor(place(about), root);
  return about;
}

/** Where the answers to a thread go: where it was last spoken in. */
export const rootOf = (door: Door, thread: string): string => door.cursor(place(thread)) ?? thread;
