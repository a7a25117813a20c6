import type { Status } from "../../vocabulary.ts";
import { isStrongBreak } from "../breaks.ts";
import type { Note } from "../note.ts";

/** "when you're out of there", "once I'm done": what has not come yet. */
export function notYet({ items }: Note, i: number, status: Status): boolean {
  for (let at = i; at >= 0 && at >= i - 4; at--) {
    const item = items[at];
    if (item === undefined || (at < i && isStrongBreak(item))) return false;
    const word = item.text.split(" ")[0] ?? "";
    if (!/^(?:when|whenever|once|if|until|till|before)$/.test(word) || at === i) continue;
    const next = items[at + 1]?.text ?? "";
    return (
      leaving.has(status) || /^(?:you|your|youre|you're|ur|he|hes|she|shes|they|theyre)$/.test(next)
    );
  }
  return false;
}

const leaving: ReadonlySet<Status> = new Set(["left_site", "done"]);
