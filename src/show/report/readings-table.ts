import type { JobReading } from "../../model.ts";
import { cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { speaksOf } from "../touched.ts";
import { personName, verdictWords } from "../wording.ts";
import type { Block } from "./report.ts";

/** Every reading of a job, corrected ones too: a reader can see each correction. */
export function readingsTable({ job, judgement }: ExportJob, record: DayRecord): Block {
  const numbers = new Map(job.readings.map(({ id }, index) => [id, index + 1]));
  return {
    kind: "table",
    title: "All readings",
    table: {
      columns: [
        { says: "No.", share: 0.06 },
        { says: "When", share: 0.14 },
        { says: "By", share: 0.12 },
        { says: "Component", share: 0.16 },
        { says: "Reading, as said", share: 0.33 },
        { says: "Verdict", share: 0.19 },
      ],
      rows: job.readings.map((reading, index) => {
        const finding = judgement.findings.find((one) => speaksOf(one, reading));
        const stays = fateOf(reading, numbers);
        return [
          String(index + 1),
          cellTime(record, reading.taken).slice(5, 16),
          personName(reading.who, record.names),
          reading.subject ?? "",
          figures([reading]),
          stays ?? (finding === undefined ? "" : verdictWords[finding.level]),
        ];
      }),
    },
  };
}

function fateOf(reading: JobReading, numbers: ReadonlyMap<string, number>): string | undefined {
  if (reading.deleted === true) return "deleted";
  if (reading.undone === true) return "taken back";
  if (reading.replaced_by !== undefined) {
    const by = numbers.get(reading.replaced_by);
    return by === undefined ? "replaced" : `replaced by ${by}`;
  }
  return reading.doubtful === true ? "doubtful, not used" : undefined;
}
