import PDFDocument from "pdfkit";
import { joined } from "../joined.ts";
import { fontFiles } from "../plots/fonts.ts";
import { annexOn } from "./annex.ts";
import { blockOn, blocksHeight } from "./blocks.ts";
import { footsOn, headOn } from "./head-and-foot.ts";
import { type Page, pageOf } from "./page.ts";
import { photosOn, plotsOn } from "./pictures.ts";
import type { Block, Report } from "./report.ts";

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
  page.scale = scaleFor(page, report.blocks);
  for (const block of report.blocks) blockOn(page, block);
  page.scale = 1;
  plotsOn(page, report.plots);
  photosOn(page, report.photos);
  for (const annex of report.annex) annexOn(page, annex);
  footsOn(doc, report, from);
  // of two hundred reports one at a time is held
  doc.flushPages();
}

/** Smaller ones are no longer read without an effort; our choice, no source. */
const scales: readonly number[] = [1, 0.96, 0.92, 0.88];

/** The largest at which the report stands on one page; 1 where none does. */
function scaleFor(page: Page, blocks: readonly Block[]): number {
  const fits = scales.find((scale) => {
    page.scale = scale;
    return page.y + blocksHeight(page, blocks) <= page.bottom;
  });
  return fits ?? 1;
}
