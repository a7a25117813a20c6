import type { Span } from "../../model.ts";
import type { Note } from "../note.ts";

/** Files a fault code; `span` is what of the text says it, `rule` the rule that found it. */
export function fileCode(note: Note, value: string, from: { span: Span; rule: string }): void {
  const { span, rule } = from;
  note.readings.push({
    quantity: "fault_code",
    relation: "=",
    value,
    unit: null,
    said: note.text.slice(span[0], span[1]),
    spans: [span],
    assumed: [],
    figure: { number: value, unit: "" },
    rule,
  });
}

/** "L P 2", as a phone writes letters that were spelled: both in capitals. */
export function twoLetters({ items, text }: Note, i: number): string | undefined {
  const both = items.slice(i, i + 2).map(({ from, to }) => text.slice(from, to));
  return both.length === 2 && both.every((one) => /^[A-Z]$/.test(one)) ? both.join("") : undefined;
}
