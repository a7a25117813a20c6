import type { Note } from "../note.ts";
import { state } from "../note.ts";
import type { Clock } from "../times.ts";
import { textAt } from "./near.ts";

const until = /^(?:til|till|until|after|before)$/;
const comes = /^(?:back|open|opens|reopen|reopens|returns?|comes?|coming|closed|shut|off|gone)$/;

/**
 * "Nobody here, back at 1", "closed till 2", "opens at 8": when somebody comes, not when nobody
 * came. Such an hour is kept as one.
 */
export function returnsAt(note: Note, { from, end }: Clock): boolean {
  const near = [1, 2].map((back) => textAt(note.items, from - back));
  if (!until.test(near[0] ?? "") && !near.some((text) => comes.test(text))) return false;
  state(note, "back at <hour>", [from, end], { kind: "note", about: "time" });
  return true;
}
