import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";

const doing = /^(?:recovering|reclaiming|weighing|charging|adding|pulling|recover)$/;

/** Words at most: a longer message is about more than the gas. */
const WORDS = 10;

function inHand(item: Item): boolean {
  return item.label?.action !== undefined && doing.test(item.text);
}

/** "recovering the charge out of unit three": the weight comes in the next message. */
export const gasInHand: Rule = {
  name: "recovering|charging now",
  heads: "recovering|reclaiming|weighing|charging|adding|pulling|recover",
  apply: (note) => {
    const { items, statements } = note;
    if (note.readings.length > 0 || note.ask.length > 0 || items.length > WORDS) return;
    if (note.holds.mark || note.holds.number || note.holds.undo) return;
    if (statements.some((one) => one.kind === "action" || one.kind === "status")) return;
    const at = items.findIndex(inHand);
    const action = items[at]?.label?.action;
    if (action === undefined) return;
    if (items.some(({ roles }) => (roles & (role.plan | role.not | role.earlier)) !== 0)) return;
    state(note, gasInHand.name, [at, at + 1], { kind: "note", about: `gas ${action}` });
  },
};
