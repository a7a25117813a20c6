import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime } from "./sheet-source.ts";

export const aboutSheet: SheetMaker = {
  name: "about",
  ofExport: true,
  columns: [
    { name: "what", kind: "text", about: "a fact about these files" },
    { name: "is", kind: "text", about: "its value" },
  ],
  rows: (record) => {
    const { about } = record;
    return [
      ["of", about?.scope ?? record.day ?? "all"],
      ["revision", String(about?.revision ?? 1)],
      [
        "changes since revision",
        about?.since === undefined ? "none: the first" : String(about.since),
      ],
      ["as of", about === undefined ? "" : cellTime(record, about.asOf)],
      ["times in", record.zone],
      ["jobs", String(record.jobs.length)],
      ["digest of the store", about?.digest ?? ""],
      ["figures", "as the technician said them, canonical SI units beside"],
      ["proof", "the JSON file of this export holds the chain: readback verify FILE"],
    ];
  },
};
