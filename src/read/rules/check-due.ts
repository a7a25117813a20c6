import type { Note } from "../note.ts";

const due = /^(?:required|requirement|due|overdue|needed|needs|needs to|interval|in|every|law)$/;
const asksFor =
  /^(?:need|needs|needed|when|whens|when's|next|require|requires|owe|due|until|before|a)$/;

/** "leak check required", "do we need a leak check": one that is to come. */
export function checkDue({ items, plain }: Note, i: number): boolean {
  const item = items[i];
  if (plain.slice(item?.from, item?.signsTo) !== "leak check") return false;
  const behind = items.find(({ from }) => from >= (item?.signsTo ?? 0));
  const before = items.slice(Math.max(0, i - 3), i);
  return due.test(behind?.text ?? "") || before.some(({ text }) => asksFor.test(text));
}
