import type { Reading, Span } from "../../src/model.ts";
import type { Explanation } from "../../src/read/explain.ts";

/** Why a note was read so, in columns: tokens, items, rules, readings, statements, what is left. */
export function explained(why: Explanation, text: string): readonly string[] {
  const { tokens, items, rules, understood } = why;
  const said = (spans: readonly Span[]): string =>
    spans.map(([from, to]) => JSON.stringify(text.slice(from, to))).join(" ");
  const cut = (spans: readonly Span[]): string => spans.map(([a, b]) => `${a}-${b}`).join(",");
  return [
    "tokens",
    ...tokens.map((token) => row([cut([token.span]), token.kind, JSON.stringify(token.text)])),
    "items, with what each says of a value (a dot: nothing)",
    ...items.map((item) =>
      row([
        cut([item.span]),
        item.kind,
        item.says,
        JSON.stringify(item.text),
        item.value === undefined ? "" : `= ${item.value}`,
        item.unit ?? "",
        item.taken_by === undefined ? "" : `taken by ${item.taken_by}`,
      ]),
    ),
    "rules in their order (tried: a word of theirs is there)",
    ...rules.map(({ name, due, took }) =>
      row([due ? (took > 0 ? `took ${took}` : "tried") : "not due", name]),
    ),
    "readings",
    ...understood.readings.map((one) =>
      row([one.rule ?? "", said(one.spans), JSON.stringify(bare(one))]),
    ),
    "statements",
    ...understood.statements.map((one) =>
      row([one.rule ?? "", said(one.spans), JSON.stringify(one)]),
    ),
    `unread: ${JSON.stringify(understood.unread)}`,
    `asked: ${understood.ask.join(" ")}`,
    `skipped: ${JSON.stringify(understood.skipped)}`,
  ];
}

function bare({ spans, rule, ...rest }: Reading): object {
  return rest;
}

function row(cells: readonly string[]): string {
  return `  ${cells.map((cell, i) => (i < 2 ? cell.padEnd(9) : cell)).join("  ")}`.trimEnd();
}
