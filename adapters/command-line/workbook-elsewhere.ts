import { Worker } from "node:worker_threads";
import type { Sheet } from "../../src/model.ts";
import { xlsxBytes } from "../../src/show/exports/xlsx.ts";

/** A thread runs what was built only. */
const built = import.meta.url.endsWith(".js");
const thread = new URL("./workbook-thread.js", import.meta.url);

/** Rows that are worth a thread: with fewer it takes longer to start than to do; our measurement. */
const worthIt = 2000;

/** MB of what is soon let go of; without a limit a thread takes ten times as much. */
const maxYoungGenerationSizeMb = 3;

/** Sheets as the bytes of a workbook; a large one is made beside everything else, on a second core. */
export function workbookElsewhere(sheets: readonly Sheet[]): Promise<Uint8Array> {
  const rows = sheets.reduce((sum, sheet) => sum + sheet.rows.length, 0);
  if (!built || rows < worthIt) return xlsxBytes(sheets);
  return new Promise((resolve, reject) => {
    const worker = new Worker(thread, { resourceLimits: { maxYoungGenerationSizeMb } });
    worker.once("message", (bytes: Uint8Array) => {
      resolve(bytes);
      void worker.terminate();
    });
    worker.once("error", reject);
    worker.once("exit", () => reject(new Error("The workbook was not made.")));
    worker.postMessage(sheets);
  });
}
