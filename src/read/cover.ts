import type { Span } from "../model.ts";

/** What the spans leave over of a text of this length, in order. */
export function leftOver(spans: readonly Span[], length: number): Span[] {
  const sorted = [...spans].sort((a, b) => a[0] - b[0]);
  const out: Span[] = [];
  let at = 0;
  for (const [from, to] of sorted) {
    if (from > at) out.push([at, from]);
    if (to > at) at = to;
  }
  if (at < length) out.push([at, length]);
  return out;
}
