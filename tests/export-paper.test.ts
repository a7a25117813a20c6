import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { reportBytes } from "../src/show/report/pdf.ts";
import type { Report } from "../src/show/report/report.ts";
import { atHand } from "./support/at-hand.ts";
import { longSite, longUnit, playPaperDay, technician } from "./support/paper-day.ts";
import { run } from "./support/run.ts";

/** The report of a job that these messages tell, a minute each; where it lies. */
async function reportOf(folder: string, texts: readonly string[], minute = 0): Promise<string> {
  const lines = texts.map((text, n) => ({
    ...{ id: `m${n}`, channel: "south", text },
    at: `2026-05-12T08:${String(minute + n).padStart(2, "0")}:00-05:00`,
    ...(n === 0
      ? { person: "maren", role: "dispatcher" }
      : { person: "odo", role: "tech", thread: "m0" }),
  }));
  const chat = join(folder, "day.jsonl");
  writeFileSync(chat, lines.map((line) => JSON.stringify(line)).join("\n"));
  const db = join(folder, "store.db");
  await run(["replay", chat, "--db", db]);
  const out = join(folder, "out");
  await run(["export", "--job", "1", "--db", db, "--out", out]);
  return join(out, readdirSync(out).find((name) => name.endsWith(".pdf")) ?? "");
}

/** Programs that are not ours read the report: its letters, its fonts, its pages as pictures. */
const present = spawnSync("pdftoppm", ["-v"]).status === 0;
const told = (program: string, args: readonly string[]): string =>
  execFileSync(program, args, { encoding: "utf8", maxBuffer: 1 << 28 });

interface Paper {
  readonly report: string;
  readonly text: string;
  readonly pages: readonly string[];
  readonly job: Job;
}

interface Job {
  readonly readings: readonly { figure: { number: string }; replaced_by?: string }[];
  readonly parts: readonly { name?: string; number?: string }[];
}

async function paper(more: number): Promise<Paper> {
  const folder = mkdtempSync(join(tmpdir(), "paper-"));
  const db = await playPaperDay(folder, more);
  const out = join(folder, "out");
  expect((await run(["export", "--job", "1", "--db", db, "--out", out])).exit).toBe(0);
  const report = join(out, readdirSync(out).find((name) => name.endsWith(".pdf")) ?? "");
  const text = told("pdftotext", ["-layout", report, "-"]);
  const shown = await run(["show", "1", "--db", db, "--json"]);
  const job: Job = JSON.parse(shown.out[0] ?? "");
  return { report, text, pages: text.split("\f").slice(0, -1), job };
}

/** The rows of an appendix, each as "from-to" and its words: two columns a page, the left one first. */
function appendixOf(report: string): readonly { from: number; to: number; says: string }[] {
  const pages = Number(/Pages: +(\d+)/.exec(told("pdfinfo", [report]))?.[1]);
  const columns = Array.from({ length: 2 * pages }, (_, index) => {
    const page = String(Math.floor(index / 2) + 1);
    // half of a sheet of letter paper, without its foot
    const place = ["-x", index % 2 === 0 ? "0" : "304", "-y", "0", "-W", "304", "-H", "738"];
    const args = ["-r", "72", "-f", page, "-l", page, ...place, "-layout", report, "-"];
    return told("pdftotext", args);
  });
  const lines = columns.flatMap((column) => {
    const all = column.split("\n");
    const head = all.findIndex((line) => /^ *No\. +When/.test(line));
    return head < 0 ? [] : all.slice(head + 1);
  });
  const rows: { from: number; to: number; says: string }[] = [];
  for (const line of lines) {
    const [, from, to = from, says = ""] =
      /^ *(\d+)(?:-(\d+))? +(?:05-1[23] )?\d\d:\d\d +(.*)$/.exec(line) ?? [];
    const row = rows.at(-1);
    if (from !== undefined) rows.push({ from: Number(from), to: Number(to), says });
    else if (row !== undefined) row.says += ` ${line.trim()}`;
  }
  return rows;
}

/** What is wrong with an appendix: each reading once, in its order, with its figure in its row. */
function lostIn(report: string, { readings }: Job): readonly string[] {
  const rows = appendixOf(report);
  const numbers = rows.flatMap(({ from, to }) =>
    Array.from({ length: to - from + 1 }, (_, index) => from + index),
  );
  expect(numbers).toEqual(readings.map((_, index) => index + 1));
  return rows.flatMap(({ from, to, says }) =>
    readings
      .slice(from - 1, to)
      .map(({ figure }) => figure.number)
      .filter((number) => !new RegExp(`(?<![\\d.])${number}(?![\\d.])`).test(says))
      .map((number) => `row ${from} lacks ${number}: ${says}`),
  );
}

/** A page as gray values, white 255; `PPM` where it has colors. */
function picture(report: string, page: number): { width: number; height: number; dots: Buffer } {
  const bytes = execFileSync(
    "pdftoppm",
    ["-r", "50", "-f", String(page), "-l", String(page), report],
    { maxBuffer: 1 << 28 },
  );
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString("latin1"));
  const [whole = "", width, height] = head ?? [];
  return { width: Number(width), height: Number(height), dots: bytes.subarray(whole.length) };
}

/** What is wrong with a printed page: color, next to nothing on it, ink at the paper's edge. */
function faultsOf(report: string, page: number): readonly string[] {
  const { width, height, dots } = picture(report, page);
  let [ink, colored, atEdge] = [0, 0, 0];
  const edge = 14;
  for (let at = 0; at < width * height; at++) {
    const [r = 0, g = 0, b = 0] = [dots[3 * at], dots[3 * at + 1], dots[3 * at + 2]];
    if (Math.max(r, g, b) - Math.min(r, g, b) > 2) colored += 1;
    if (r > 200) continue;
    ink += 1;
    const [x, y] = [at % width, Math.floor(at / width)];
    if (x < edge || y < edge || x >= width - edge || y >= height - edge) atEdge += 1;
  }
  return [
    ...(colored > 0 ? [`page ${page} has color`] : []),
    ...(ink < 0.004 * width * height ? [`page ${page} is all but empty`] : []),
    ...(atEdge > 0 ? [`page ${page} is printed to its edge`] : []),
  ];
}

if (atHand("poppler", present)) {
  test("forty readings and six parts make one page, plots and every reading on the second", async () => {
    const { report, text, pages, job } = await paper(4);
    expect(job.readings.length).toBeGreaterThanOrEqual(40);
    expect(job.parts.length).toBeGreaterThanOrEqual(6);
    expect(pages.length).toBe(2);
    const [first = "", second = ""] = pages;
    const titles = ["Called for", "Found", "Measured", "Done", "Parts", "Refrigerant", "Left as"];
    for (const title of [...titles, "Times", "Limits"]) expect(first).toContain(`\n${title}`);
    // what was seen, what was left for the next quote, and the last line of the limits
    expect(first).toContain("Seen: hums and trips; coil matted.");
    expect(first).toContain("Found and not mended: coil matted.");
    expect(first).toContain("Before work on this unit");
    for (const plot of ["insulation by lead", "current at start", "vacuum after isolation"]) {
      expect(second).toContain(`: ${plot}`);
    }
    expect(second).toContain(`${longUnit}: nitrogen hold`);
    expect(second).toContain(`Appendix: all ${job.readings.length} readings, as said`);
    expect(second).toContain(`By ${technician}. On 2026-05-12.`);
    expect(first).toContain(
      `The report ends here; behind it: 4 plots and an appendix with all ${job.readings.length} readings as said`,
    );
    // out of and into which cylinder
    expect(first).toMatch(/recovered 17 lb 6 oz +22 /);
    expect(first).toMatch(/charged 20 lb +31 /);
    // accents are letters that can be searched for, not pictures
    expect(first.replaceAll(/\s+/g, " ")).toContain(longSite);
    expect(first).toContain("ul. Źródlana 14b/2, Łódź");
    for (const { number = "" } of job.parts) expect(first).toContain(number);
    expect(lostIn(report, job)).toEqual([]);
    expect(second).toContain("replaced by");
    for (const [index, page] of pages.entries()) {
      expect(page).toMatch(/Revision 1\. Digest \d+-[0-9a-f]{64}\. Values as reported by/);
      expect(page).toContain(`Job report 1, page ${index + 1} of 2`);
    }
    expect(text).not.toMatch(/undefined|NaN|\[object|\n\s*: /);
    expect(pages.flatMap((_, index) => faultsOf(report, index + 1))).toEqual([]);
  });

  test("its fonts are embedded and its letters are Unicode", async () => {
    const { report } = await paper(0);
    const fonts = told("pdffonts", [report]).trim().split("\n").slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/\syes yes yes\s/);
  });

  test.each([
    [200, 4],
    [1000, 6],
  ])(
    "%i readings: one page, one of plots, and a tight appendix with none lost",
    async (count, mostPages) => {
      const { report, pages, job } = await paper(count - 36);
      expect(job.readings.length).toBeGreaterThanOrEqual(count);
      expect(pages.length).toBeLessThanOrEqual(mostPages);
      expect(pages[0]).toContain("The report ends here");
      expect(lostIn(report, job)).toEqual([]);
      for (const page of pages.slice(3)) expect(page).toMatch(/^No\. +When .*Verdict/);
      const looked = [1, 2, 3, Math.ceil(pages.length / 2), pages.length];
      expect(looked.flatMap((page) => faultsOf(report, page))).toEqual([]);
    },
  );
}

if (present) {
  test("a few readings stand under the rest: one page", async () => {
    const folder = mkdtempSync(join(tmpdir(), "short-"));
    const texts = [
      "New job: Gull Wharf RTU-2, café Øresund warm since Monday",
      "L1-L2 471 V L2-L3 459 V L1-L3 468 V running",
      "suction 124 psi 54 F, liquid 338 psi 93 F, outdoor air 88 F",
      "return air 76 F supply air 57 F, discharge 171 F",
      "contactor pitted, not changed",
    ];
    const report = await reportOf(folder, texts);
    const text = told("pdftotext", ["-layout", report, "-"]);
    expect(text).toContain("page 1 of 1");
    expect(text).toMatch(/ 9-11 +08:03 /);
    expect(text).toContain("Found and not mended: contactor pitted.");
    expect(faultsOf(report, 1)).toEqual([]);
  });

  test("a check made again and again is told once; a serial stands by the part that it was read for", async () => {
    const folder = mkdtempSync(join(tmpdir(), "again-"));
    const texts = [
      "New job: Gull Wharf RTU-2, not cooling",
      ...[1, 2, 3, 4].map((n) => `comp 1 running amps 1${n} 14.4 1${n}.2`),
      "new compressor in",
      "old compressor serial 71-100, new compressor serial 88-2260",
    ];
    const report = await reportOf(folder, texts, 10);
    const text = told("pdftotext", ["-layout", report, "-"]).replaceAll(/\s+/g, " ");
    expect(text).toContain("(and 1 more like it).");
    expect(text).toContain(
      "Serials read old compressor serial 71-100, new compressor serial 88-2260",
    );
  });

  test("letters that the face lacks leave a question mark each, no gap", async () => {
    const report: Report = {
      ...{ title: "Job report 1", subtitle: "RTU-9, مخزن", head: [["People", "נועה 🛠"]] },
      ...{ blocks: [], plots: [], photos: [], annex: [], foot: "Revision 1.", paper: "A4" },
      made: "2026-05-12T12:00:00Z",
    };
    const path = join(mkdtempSync(join(tmpdir(), "letters-")), "report.pdf");
    writeFileSync(path, await reportBytes([() => report]));
    const text = told("pdftotext", ["-layout", path, "-"]);
    expect(text).toContain("RTU-9, ????");
    expect(text).toMatch(/People +\?{4}/);
  });
}
