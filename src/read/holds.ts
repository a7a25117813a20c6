import { statuses } from "../vocabulary.ts";
import { type Item, itemKind } from "./item.ts";
import type { Holds } from "./note.ts";
import { signIndex } from "./signs.ts";
import { role } from "./word.ts";

const statusSigns = new Set([...statuses, "here"].map((name) => signIndex(name)));
const undoSign = signIndex("undo");

/** "scratch the 0.9" */
const takesOut =
  /^(?:scratch|strike|scrap|nix|delete|ignore|disregard|forget|cancel|void|undo|take)\b/;

/** What the items hold, looked at once for all rules. */
export function holdsOf(items: readonly Item[]): Holds {
  let number = false;
  let signs = false;
  let status = false;
  let undo = false;
  let aside = false;
  let mark = false;
  let place = false;
  for (const item of items) {
    if (item.kind === itemKind.number || item.kind === itemKind.code) number = true;
    if (item.text === "?") mark = true;
    else if (takesOut.test(item.text)) undo = true;
    else if (/^(?:left|gone|locked|chained|away|out|should|roof|rooftop)$/.test(item.text))
      place = true;
    if (item.kind === itemKind.subject && (item.roles & role.clock) !== 0) aside = true;
    if (item.signs === undefined) continue;
    signs = true;
    for (const sign of item.signs) {
      if (statusSigns.has(sign)) status = true;
      else if (sign === undoSign) undo = true;
    }
  }
  return {
    number,
    signs,
    // "alright I'm at fennel court"
    status: status || place || items.slice(0, 6).some(({ text }) => text === "at"),
    undo,
    aside,
    question: items[items.length - 1]?.text === "?",
    mark,
  };
}
