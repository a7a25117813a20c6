import { Resvg } from "@resvg/resvg-js";
import type { FileOut } from "../../model.ts";
import { draw } from "./draw.ts";
import { fontFiles } from "./fonts.ts";
import type { Plot } from "./plot.ts";
import { svgText } from "./svg.ts";

/** pt: what a phone shows whole */
const size = { width: 420, height: 270 } as const;
/** pixels for each pt: sharp on a phone */
const zoom = 2.5;

/** A plot as a PNG file for the chat. `prefix`: the beginning of its name. */
export function pictureOf(plot: Plot, prefix: string): FileOut {
  const svg = svgText(draw(plot, size.width, size.height));
  const image = new Resvg(svg, {
    fitTo: { mode: "zoom", value: zoom },
    font: { fontFiles: Object.values(fontFiles), loadSystemFonts: false },
  }).render();
  return { name: `${prefix}-${plot.name}.png`, type: "image/png", bytes: image.asPng() };
}
