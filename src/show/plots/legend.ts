import type { Shape } from "./drawing.ts";
import { markShapes } from "./marks.ts";
import type { Plot } from "./plot.ts";

const rowHeight = 11;
const size = 7.5;
/** Letters are not measured here: of this size they are rarely wider on the average. */
const letterWidth = 4.1;

/** The names of a plot's series in rows under its title; none where there is just one. */
export function legendOf(
  plot: Plot,
  width: number,
): { readonly height: number; readonly shapes: readonly Shape[] } {
  if (plot.series.length < 2) return { height: 0, shapes: [] };
  const shapes: Shape[] = [];
  let [x, row] = [8, 0];
  for (const { says, mark, line } of plot.series) {
    const wide = 26 + says.length * letterWidth;
    if (x > 8 && x + wide > width) [x, row] = [8, row + 1];
    const y = 20 + row * rowHeight + 3;
    if (line !== "none") {
      shapes.push({
        kind: "line",
        points: [
          [x, y],
          [x + 16, y],
        ],
        width: 1.1,
        gray: 0,
        ...(line === "dashed" ? { dash: [4, 3] as const } : {}),
      });
    }
    shapes.push(...markShapes(mark, x + 8, y));
    shapes.push({ kind: "text", x: x + 20, y: y + 2.5, says, size, anchor: "start" });
    x += wide;
  }
  return { height: (row + 1) * rowHeight, shapes };
}
