/** pt that the foot of a page takes. */
const foot = 24;

/** Where the next thing is set, and how much room is left. */
export interface Page {
  readonly doc: PDFKit.PDFDocument;
  readonly left: number;
  readonly width: number;
  /** lower edge of what may be written */
  readonly bottom: number;
  y: number;
  /** of letters and of what stands between them: a little less than 1 keeps a report on one page */
  scale: number;
  readonly next: () => void;
  /** goes to a new page where so many pt are not left */
  readonly room: (height: number) => void;
}

export function pageOf(doc: PDFKit.PDFDocument): Page {
  const { margins, width, height } = doc.page;
  const page: Page = {
    doc,
    left: margins.left,
    width: width - margins.left - margins.right,
    bottom: height - margins.bottom - foot,
    y: margins.top,
    scale: 1,
    next: () => {
      doc.addPage();
      page.y = margins.top;
    },
    room: (needed) => {
      if (page.y + needed > page.bottom) page.next();
    },
  };
  return page;
}

interface TextStyle {
  readonly x: number;
  readonly width: number;
  readonly size: number;
  readonly bold?: boolean;
  /** pt between lines; less in tables */
  readonly lead?: number;
}

/** How high a text stands when it is wrapped to a width. */
export function heightOf(page: Page, text: string, style: TextStyle): number {
  const { doc } = page;
  const { width } = style;
  const lead = leadOf(page, style);
  const shown = faced(page, style, text);
  return isOneLine(doc, shown, width)
    ? doc.currentLineHeight(true) + lead
    : doc.heightOfString(shown.text, { width, lineGap: lead });
}

/** Sets a wrapped text at a place; the page does not move. */
export function textAt(page: Page, text: string, style: TextStyle & { readonly y: number }): void {
  const { doc } = page;
  const { x, y, width } = style;
  const lineGap = leadOf(page, style);
  const shown = faced(page, style, text);
  const lineBreak = !isOneLine(doc, shown, width);
  doc.fillColor("black").text(shown.text, x, y, { width, lineGap, lineBreak });
}

const usualLead = 0.5;
const leadOf = ({ scale }: Page, { lead = usualLead }: TextStyle): number => lead * scale;
/** pt: widths of words are measured one by one where lines are broken, and add up a little otherwise */
const slack = 2;

/** How wide the last texts are: each is measured for its height, and again when it is set. */
const widths = new WeakMap<PDFKit.PDFDocument, Map<string, number>>();
/** texts; more than a page has */
const mostKept = 1000;

/** Looking for where to break lines takes most of a report's time, and most texts need none. */
function isOneLine(doc: PDFKit.PDFDocument, { face, text }: Faced, width: number): boolean {
  const kept = widths.get(doc) ?? new Map<string, number>();
  widths.set(doc, kept);
  const key = `${face} ${text}`;
  const wide = kept.get(key) ?? doc.widthOfString(text);
  if (kept.size >= mostKept) kept.clear();
  kept.set(key, wide);
  return wide < width - slack;
}

/** A text's letters that its face has, and the face. */
interface Faced {
  readonly face: string;
  readonly text: string;
}

/** Takes the face that a text is set in; gives its letters that are in it. */
function faced({ doc, scale }: Page, { bold, size }: TextStyle, text: string): Faced {
  const name = bold === true ? "bold" : "regular";
  doc.font(name).fontSize(size * scale);
  return { face: `${name} ${size * scale}`, text: printable(text) };
}

/** Letters of scripts that the face lacks: better a question mark than a name that is not there. */
const foreign = /(?![\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])\p{L}/gu;

/** Without signs that no font has; line ends stay inside a cell. */
function printable(text: string): string {
  return text
    .replace(/\r\n?|\n/g, " ")
    .replace(foreign, "?")
    .replace(/\p{Cc}|\p{Cs}|\p{Extended_Pictographic}|\ufe0f|\u200d/gu, "");
}
