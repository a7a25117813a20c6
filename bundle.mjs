/**
 * Joins the command line's some 600 files into a few in `dist/program`: loading them one by one took
 * as long as all the rest of a start. Packages stay outside, and what only some commands need stays
 * in files of its own, loaded when it is needed.
 */
import { rmSync } from "node:fs";
import { rolldown } from "rolldown";

const dir = "dist/program";
const bundle = await rolldown({
  input: {
    main: "adapters/command-line/main.ts",
    // a thread is started by the name of its file
    "workbook-thread": "adapters/command-line/workbook-thread.ts",
  },
  platform: "node",
  external: /^[^./]/,
  checks: { ineffectiveDynamicImport: false },
});
rmSync(dir, { recursive: true, force: true });
await bundle.write({ dir, format: "esm", chunkFileNames: "[name].js", sourcemap: true });
await bundle.close();
