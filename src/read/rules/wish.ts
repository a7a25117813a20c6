import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";

const write: ReadonlySet<string> = new Set([
  "put",
  "write",
  "log",
  "say",
  "record",
  "enter",
  "file",
  "note",
  "make",
]);
const reasons: ReadonlySet<string> = new Set([
  "whatever",
  "warranty",
  "pays",
  "looks",
  "passes",
  "pass",
  "happy",
  "approve",
  "approves",
  "covered",
  "pretend",
]);

/** "put 500 meg so warranty pays", "write down 12 or whatever looks good": wanted, not measured. */
export const wishes: Rule = {
  name: "write <number> so <reason>",
  heads: [...reasons].join("|"),
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const verb = items.findIndex((item) => write.has(item.text));
    if (verb < 0 || verb > 4) return;
    const number = items.findIndex(
      (item, i) => i > verb && item.kind === itemKind.number && item.owner === undefined,
    );
    const reason = items.findIndex((item, i) => i > number && reasons.has(item.text));
    if (number < 0 || reason < 0) return;
    state(note, wishes.name, [verb, items.length], { kind: "note", about: "wish" });
  },
};
