import type { Drawing, Shape } from "./drawing.ts";
import { fontFamily } from "./fonts.ts";

/** A drawing as an SVG text; the same drawing gives the same text. */
export function svgText({ width, height, shapes }: Drawing): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${fontFamily}">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...shapes.map(element),
    "</svg>",
  ].join("\n");
}

const gray = (share: number): string => {
  const hex = Math.round(share * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${hex}${hex}${hex}`;
};

const digits = (value: number): string => String(Number(value.toFixed(2)));

function element(shape: Shape): string {
  if (shape.kind === "line") {
    const points = shape.points.map(([x, y]) => `${digits(x)},${digits(y)}`).join(" ");
    const dash = shape.dash === undefined ? "" : ` stroke-dasharray="${shape.dash.join(" ")}"`;
    return `<polyline points="${points}" fill="none" stroke="${gray(shape.gray)}" stroke-width="${shape.width}"${dash}/>`;
  }
  const [x, y] = [digits(shape.x), digits(shape.y)];
  if (shape.kind === "circle") {
    const fill = shape.filled ? "#000" : "#fff";
    return `<circle cx="${x}" cy="${y}" r="${shape.radius}" fill="${fill}" stroke="#000"/>`;
  }
  const turn = shape.upright === true ? ` transform="rotate(-90 ${x} ${y})"` : "";
  const weight = shape.bold === true ? ' font-weight="600"' : "";
  return `<text x="${x}" y="${y}" font-size="${shape.size}" text-anchor="${shape.anchor}"${weight}${turn} fill="${gray(shape.gray ?? 0)}">${escaped(shape.says)}</text>`;
}

/** Letters that XML cannot hold are dropped. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;");
}
