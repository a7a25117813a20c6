import { parentPort } from "node:worker_threads";
import type { Sheet } from "../../src/model.ts";
import { xlsxBytes } from "../../src/show/exports/xlsx.ts";

parentPort?.once("message", async (sheets: readonly Sheet[]) => {
  const bytes = await xlsxBytes(sheets);
  parentPort?.postMessage(bytes);
});
