import { heightOf, type Page, textAt } from "./page.ts";
import type { Report } from "./report.ts";

const label = 62;

/** Title, unit and site, a rule, then what identifies the machine in two columns. */
export function headOn(page: Page, { title, subtitle, head }: Report): void {
  const { doc, left, width } = page;
  textAt(page, title, { x: left, y: page.y, width, size: 15, bold: true });
  page.y += 20;
  const below = { x: left, width, size: 10 };
  textAt(page, subtitle, { ...below, y: page.y });
  page.y += heightOf(page, subtitle, below) + 3;
  doc
    .lineWidth(1.2)
    .strokeColor("black")
    .moveTo(left, page.y)
    .lineTo(left + width, page.y)
    .stroke();
  page.y += 6;
  for (const [name, text] of head) {
    const style = { x: left + label, width: width - label, size: 8.5, lead: -1 };
    textAt(page, name, { x: left, y: page.y, width: label - 6, size: 8.5, bold: true });
    textAt(page, text, { ...style, y: page.y });
    page.y += heightOf(page, text, style) + 1.5;
  }
  page.y += 3;
}

/** At the foot of each page of a report: its proof, and which page of how many. */
export function footsOn(doc: PDFKit.PDFDocument, { foot, title }: Report, from: number): void {
  const { start, count: many } = doc.bufferedPageRange();
  const count = start + many;
  for (let index = from; index < count; index++) {
    doc.switchToPage(index);
    const { width, height } = doc.page;
    const margins = { ...doc.page.margins };
    const y = height - margins.bottom - 18;
    const wide = width - margins.left - margins.right;
    doc
      .lineWidth(0.5)
      .strokeColor("black")
      .moveTo(margins.left, y)
      .lineTo(width - margins.right, y)
      .stroke();
    // below the margin a text would begin a new page
    doc.page.margins.bottom = 0;
    const options = { width: wide, lineBreak: false };
    doc.font("regular").fontSize(6.5).fillColor("black");
    doc.text(foot, margins.left, y + 4, options);
    doc.text(
      `${title}, page ${index - from + 1} of ${count - from}`,
      margins.left,
      y + 13,
      options,
    );
    doc.page.margins.bottom = margins.bottom;
  }
}
