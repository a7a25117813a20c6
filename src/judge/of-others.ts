import type { Reading } from "../model.ts";
import { clauseOf } from "./clause.ts";
import { beside } from "./near.ts";
import type { Scene } from "./scene.ts";

const others =
  "(?:(?:all )?(?:the |its |my )?(?:others?|rest of (?:the|them)|neighbou?r\\w*|sister\\w*|one next (?:door|to it)|unit next door))";
const ahead = new RegExp(`\\b${others}\\b`);
const behind = new RegExp(`^\\W*(?:f|c|deg\\w*)?\\W*(?:on|at|for|from|in|out of) ${others}\\b`);
/** Letters behind a figure that may say whose it is. */
const reach = 40;

/** "47 at the vane, the other cassettes blow 57": read at a sister beside the machine in hand, to compare with it. */
export function isOfOthers(scene: Scene, reading: Reading): boolean {
  const said = beside(scene, reading, [0, 0]);
  const clause = clauseOf(scene, reading);
  const to = clause.lastIndexOf(said);
  if (ahead.test(to < 0 ? clause : clause.slice(0, to + said.length))) return true;
  return behind.test(beside(scene, reading, [0, reach]).slice(said.length));
}
