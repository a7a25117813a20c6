import { draw } from "../plots/draw.ts";
import type { Drawing, Shape } from "../plots/drawing.ts";
import type { Plot } from "../plots/plot.ts";
import { type Page, textAt } from "./page.ts";
import type { Photo } from "./report.ts";

const gutter = 14;
const plotHeight = 165;
const photoHeight = 170;

/** Plots two beside each other, drawn as lines and letters, not as pixels. */
export function plotsOn(page: Page, plots: readonly Plot[]): void {
  const alone = plots.length === 1;
  const width = alone ? page.width * 0.7 : (page.width - gutter) / 2;
  for (const [index, plot] of plots.entries()) {
    const column = index % 2;
    if (column === 0) page.room(plotHeight + 10);
    const place = { x: page.left + column * (width + gutter), y: page.y + 8 };
    drawingOn(page, draw(plot, width, plotHeight), place);
    if (column === 1 || index === plots.length - 1) page.y += plotHeight + 12;
  }
}

function drawingOn({ doc }: Page, { shapes }: Drawing, place: { x: number; y: number }): void {
  doc.save().translate(place.x, place.y);
  for (const shape of shapes) shapeOn(doc, shape);
  doc.restore();
}

const shade = (gray: number): [number, number, number] => {
  const part = Math.round(gray * 255);
  return [part, part, part];
};

function shapeOn(doc: PDFKit.PDFDocument, shape: Shape): void {
  if (shape.kind === "line") {
    const [first, ...rest] = shape.points;
    if (first === undefined) return;
    doc.lineWidth(shape.width).strokeColor(shade(shape.gray));
    if (shape.dash === undefined) doc.undash();
    else doc.dash(shape.dash[0], { space: shape.dash[1] });
    doc.moveTo(first[0], first[1]);
    for (const [x, y] of rest) doc.lineTo(x, y);
    doc.stroke().undash();
    return;
  }
  if (shape.kind === "circle") {
    doc.lineWidth(1).circle(shape.x, shape.y, shape.radius);
    doc.fillAndStroke(shape.filled ? "black" : "white", "black");
    return;
  }
  lettersOn(doc, shape);
}

function lettersOn(doc: PDFKit.PDFDocument, shape: Extract<Shape, { kind: "text" }>): void {
  doc.font(shape.bold === true ? "bold" : "regular").fontSize(shape.size);
  const wide = doc.widthOfString(shape.says);
  const back = shape.anchor === "start" ? 0 : shape.anchor === "middle" ? wide / 2 : wide;
  doc.save().fillColor(shade(shape.gray ?? 0));
  if (shape.upright === true) doc.rotate(-90, { origin: [shape.x, shape.y] });
  doc.text(shape.says, shape.x - back, shape.y, { lineBreak: false, baseline: "alphabetic" });
  doc.restore();
}

/** Photos two beside each other with who sent them; what is no picture after all is said so. */
export function photosOn(page: Page, photos: readonly Photo[]): void {
  const width = (page.width - gutter) / 2;
  for (const [index, { bytes, says }] of photos.entries()) {
    const column = index % 2;
    if (column === 0) page.room(photoHeight + 20);
    const x = page.left + column * (width + gutter);
    const shown = imageOn(page, bytes, { x, y: page.y + 6, width, height: photoHeight });
    const words = shown ? says : `${says}: the picture cannot be shown here`;
    textAt(page, words, { x, y: page.y + photoHeight + 8, width, size: 7.5 });
    if (column === 1 || index === photos.length - 1) page.y += photoHeight + 22;
  }
}

function imageOn(
  { doc }: Page,
  bytes: Uint8Array,
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
): boolean {
  try {
    doc.image(Buffer.from(bytes), x, y, { fit: [width, height] });
    return true;
  } catch {
    return false;
  }
}
