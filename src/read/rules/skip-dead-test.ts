import { type Rule, state } from "../note.ts";

const without: ReadonlySet<string> = new Set(["skip", "skipping", "without", "need", "bother"]);
const dead: ReadonlySet<string> = new Set(["dead", "absence"]);
const test: ReadonlySet<string> = new Set([
  "test",
  "testing",
  "check",
  "prove",
  "proving",
  "absence",
]);
const asking: ReadonlySet<string> = new Set(["can", "could", "do", "ok", "okay", "should", "may"]);

/** "can I skip the dead test", "ok without proving it dead": a question that has one answer. */
export const skipsDeadTest: Rule = {
  name: "skip the test for absence of voltage?",
  heads: [...without].join("|"),
  apply: (note) => {
    const { items } = note;
    const at = (words: ReadonlySet<string>): number =>
      items.findIndex((one) => words.has(one.text));
    const verb = at(without);
    if (verb < 0 || at(dead) < 0 || at(test) < 0 || at(asking) < 0) return;
    if (items.some((one) => one.text.startsWith("micron"))) return;
    state(note, skipsDeadTest.name, [0, items.length], { kind: "note", about: "skip dead test" });
  },
};
