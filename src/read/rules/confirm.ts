import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { carries, signIndex } from "../signs.ts";

const yes = signIndex("yes");
const no = signIndex("no_word");

/** "yes", "yep that's right", "no": an answer and nothing else. */
export const confirms: Rule = {
  name: "yes|no",
  needs: "signs",
  apply: (note) => {
    const items = note.items.filter(
      (item) => item.kind !== itemKind.sign && item.kind !== itemKind.line,
    );
    if (
      items.length === 0 ||
      items.length > 4 ||
      items.some((item) => item.kind === itemKind.number)
    )
      return;
    const answer = carries(items[0], yes) ? "yes" : carries(items[0], no) ? "no" : undefined;
    if (answer === undefined || (items.length > 1 && answer === "no")) return;
    if (
      items.length > 1 &&
      items.slice(1).some((item) => item.roles === 0 && item.signs === undefined)
    )
      return;
    if (note.statements.length > 0) return;
    state(note, confirms.name, [0, note.items.length], { kind: "confirm", answer });
  },
};
