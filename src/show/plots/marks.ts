import type { Shape } from "./drawing.ts";
import type { Mark } from "./plot.ts";

/** A mark at a place; full, hollow and crossed marks stay apart in black and white. */
export function markShapes(mark: Mark, x: number, y: number): readonly Shape[] {
  if (mark === "none") return [];
  if (mark !== "cross") return [{ kind: "circle", x, y, radius: 2.4, filled: mark === "dot" }];
  const r = 2.3;
  return [
    {
      kind: "line",
      points: [
        [x - r, y - r],
        [x + r, y + r],
      ],
      width: 1,
      gray: 0,
    },
    {
      kind: "line",
      points: [
        [x - r, y + r],
        [x + r, y - r],
      ],
      width: 1,
      gray: 0,
    },
  ];
}
