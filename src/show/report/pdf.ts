import PDFDocument from "pdfkit";
import { joined } from "../joined.ts";
import { fontFiles } from "../plots/fonts.ts";
import { blockOn, tableFits } from "./blocks.ts";
import { footsOn, headOn } from "./head-and-foot.ts";
import { type Page, pageOf } from "./page.ts";
import { photosOn, plotsOn } from "./pictures.ts";
import type { Report } from "./report.ts";

/** One file with a report after the other, each on pages of its own; fonts embedded, text selectable. */
export function reportBytes(reports: readonly (() => Report)[]): Promise<Uint8Array> {
  const first = reports[0]?.();
  const paper = first?.paper ?? "LETTER";
  const doc = new PDFDocument({
    size: paper,
    margins: { top: 32, bottom: 28, left: 46, right: 46 },
    bufferPages: true,
    autoFirstPage: false,
    info: {
      Title: reports.length === 1 ? (first?.title ?? "") : "Job reports",
      Creator: "readback",
      Producer: "readback",
      // a fixed date: the same record gives the same file
      CreationDate: new Date(Date.parse(first?.made ?? "") || 0),
    },
    lang: "en",
    displayTitle: true,
  });
  doc.registerFont("regular", fontFiles.regular);
  doc.registerFont("bold", fontFiles.bold);
  const parts: Uint8Array[] = [];
  doc.on("data", (part: Uint8Array) => parts.push(part));
  const whole = new Promise<Uint8Array>((resolve, reject) => {
    doc.on("end", () => resolve(joined(parts)));
    doc.on("error", reject);
  });
  for (const report of reports) setReport(doc, report());
  doc.end();
  return whole;
}

function setReport(doc: PDFKit.PDFDocument, report: Report): void {
  doc.addPage();
  const from = doc.bufferedPageRange().start;
  const page: Page = pageOf(doc);
  headOn(page, report);
  for (const block of report.blocks) blockOn(page, block);
  plotsOn(page, report.plots);
  photosOn(page, report.photos);
  for (const block of report.annex) {
    // a few readings stand under the rest; many begin a page of their own
    if (block.kind !== "table" || !tableFits(page, block)) page.next();
    blockOn(page, block);
  }
  footsOn(doc, report, from);
  // of two hundred reports one at a time is held
  doc.flushPages();
}
