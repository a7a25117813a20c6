import type { Finding, JobReading, Level } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { stands } from "../standing-reading.ts";
import { speaksOf, worstFirst } from "../touched.ts";
import { faultWords, likelihood, sentence, sentenceCase, verdictWords } from "../wording.ts";
import type { Block } from "./report.ts";

const mostFindings = 6;
const mostDecisive = 10;

/** The cause as far as it is proven, with what was found. */
export function causeBlock({ judgement }: ExportJob): Block {
  const causes = namedCauses(judgement).slice(0, 2);
  const named = causes.map((suspect, index) => {
    const word =
      index === 0 && likelihood(suspect) === "likely" ? "Likely cause" : "Possible cause";
    return sentence(`${word}: ${faultWords(suspect.fault)}`);
  });
  const found = worstFirst(judgement.findings)
    .filter(({ level }) => level === "bad" || level === "watch")
    .slice(0, mostFindings)
    .map((finding) => sentence(sentenceCase(`${aboutWords(finding)}${finding.says}`)));
  return {
    kind: "lines",
    title: "Found",
    lines: [...(named.length === 0 ? ["Cause not proven."] : named), ...found],
  };
}

const aboutWords = ({ about }: Finding): string =>
  about === "system" || about === "" ? "" : `${about}: `;

interface Decisive {
  readonly readings: readonly JobReading[];
  readonly finding: Finding;
}

/** At most ten decisive rows, before and after the work, each with the limit's source. */
export function proofBlock(entry: ExportJob, record: DayRecord): Block {
  const rows = decisive(entry).slice(0, mostDecisive);
  const worked = workedAt(entry);
  return {
    kind: "table",
    title: "Measured",
    table: {
      columns: [
        { says: "When", share: 0.15 },
        { says: "Reading, as said", share: 0.44 },
        { says: "Verdict", share: 0.14 },
        { says: "Held against", share: 0.27 },
      ],
      rows: rows.map(({ readings, finding }) => {
        const [first] = readings;
        const when = first === undefined ? "" : cellTime(record, first.taken).slice(5, 16);
        const after =
          first !== undefined && worked !== undefined && first.taken > worked ? " after" : "";
        const subject = first?.subject === undefined ? "" : `${first.subject}: `;
        return [
          `${when}${after}`,
          `${subject}${figures(readings)}`,
          verdictWords[finding.level],
          finding.basis,
        ];
      }),
    },
  };
}

const gravity = { bad: 0, watch: 1, good: 2, unknown: 3 } as const satisfies Record<Level, number>;

/** Readings that a verdict speaks of, a row for those of one message and one finding. */
function decisive({ job, judgement }: ExportJob): readonly Decisive[] {
  const findings = worstFirst(judgement.findings).filter(({ level }) => level !== "unknown");
  const rows = new Map<string, { readings: JobReading[]; finding: Finding }>();
  for (const reading of job.readings) {
    if (!stands(reading) || reading.doubtful === true) continue;
    const finding = findings.find((one) => speaksOf(one, reading));
    if (finding === undefined) continue;
    const key = [reading.message, reading.subject, finding.about, finding.check].join("|");
    const row = rows.get(key);
    if (row === undefined) rows.set(key, { readings: [reading], finding });
    else if (row.readings.length < 6) row.readings.push(reading);
  }
  const all = [...rows.values()];
  const chosen = [...all]
    .sort((a, b) => gravity[a.finding.level] - gravity[b.finding.level])
    .slice(0, mostDecisive);
  return all.filter((row) => chosen.includes(row));
}

/** When the machine was changed first: what was read later shows whether it held. */
function workedAt({ job }: ExportJob): string | undefined {
  const fitted = job.parts.filter(({ state }) => state === "fitted").map(({ at }) => at);
  const acts = job.statements.flatMap(({ statement, at, undone, deleted }) =>
    statement.kind === "action" &&
    statement.planned !== true &&
    undone !== true &&
    deleted !== true &&
    ["replaced", "repaired", "brazed", "charged", "cleaned"].includes(statement.action)
      ? [at]
      : [],
  );
  return [...fitted, ...acts].sort()[0];
}
