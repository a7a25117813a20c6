import type { Reading, Span } from "../model.ts";

/** Where the figure itself stands among the words that were read with it. */
export function figureSpan(text: string, reading: Reading): Span {
  const { spans, figure } = reading;
  const own = spans.find(([from, to]) => text.slice(from, to).includes(figure.number));
  return own ?? spans[spans.length - 1] ?? [0, 0];
}
