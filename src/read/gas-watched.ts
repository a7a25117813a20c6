import type { Draft } from "./draft.ts";
import type { Note } from "./note.ts";
import { pumpTime } from "./pump-time.ts";
import { vacuumWatched } from "./vacuum-watched.ts";

/** What is said of a vacuum or of nitrogen while it is watched, in fewer words than the first time. */
export function gasWatched(drafts: readonly Draft[], note: Note): void {
  pumpTime(drafts, note.plain);
  vacuumWatched(drafts, note);
}
