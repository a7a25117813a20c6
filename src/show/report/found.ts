import type { Finding, JobReading, Level } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { worstFirst } from "../touched.ts";
import { verdictsOf } from "../verdicts-of.ts";
import { faultWords, likelihood, sentence, sentenceCase, verdictWords } from "../wording.ts";
import { workedAt } from "../worked-at.ts";
import type { Block } from "./report.ts";

const mostFindings = 6;
const mostDecisive = 10;
const mostInRow = 8;

const mostSeen = 8;

/** What was seen, heard or smelled, each remark once, in its own few words; none that a longer one holds. */
function seenWords({ statements }: ExportJob["job"]): readonly string[] {
  const said = statements.flatMap(({ statement, undone, deleted }) =>
    statement.kind === "observation" &&
    statement.denied !== true &&
    statement.earlier !== true &&
    undone !== true &&
    deleted !== true &&
    statement.said.includes(" ")
      ? [statement.said.trim()]
      : [],
  );
  const once = [...new Set(said)];
  return once
    .filter((one) => !once.some((other) => other !== one && other.includes(one)))
    .slice(0, mostSeen);
}

/** The cause as far as it is proven, with what was found. */
export function causeBlock({ job, judgement }: ExportJob): Block {
  const causes = namedCauses(judgement).slice(0, 2);
  const named = causes.map((suspect, index) => {
    const likely = index === 0 && likelihood(suspect) === "likely";
    const mended = likely ? "Cause, put right" : "Possible cause, put right";
    const open = likely ? "Likely cause" : "Possible cause";
    const word = suspect.mended === true ? mended : open;
    return sentence(`${word}: ${faultWords(suspect.fault)}`);
  });
  const found = onceEach(
    worstFirst(judgement.findings).filter(({ level }) => level === "bad" || level === "watch"),
  )
    .slice(0, mostFindings)
    .map(({ finding, more }) => {
      const again = more === 0 ? "" : ` (and ${more} more like it)`;
      return sentence(sentenceCase(`${aboutWords(finding)}${finding.says}${again}`));
    });
  const seen = seenWords(job);
  const remarks = seen.length === 0 ? [] : [sentence(`Seen: ${seen.join("; ")}`)];
  return {
    kind: "lines",
    title: "Found",
    lines: [
      [...(named.length === 0 ? ["Cause not proven."] : named), ...remarks].join(" "),
      ...found,
    ],
  };
}

interface Told {
  readonly finding: Finding;
  /** findings of the same check on the same thing that are no worse */
  more: number;
}

/** A check that was made again and again on one thing is told by its worst. */
function onceEach(findings: readonly Finding[]): readonly Told[] {
  const told = new Map<string, Told>();
  for (const finding of findings) {
    const key = `${finding.about}|${finding.check}`;
    const known = told.get(key);
    if (known === undefined) told.set(key, { finding, more: 0 });
    else known.more += 1;
  }
  return [...told.values()];
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
  const worked = workedAt(entry.job);
  return {
    kind: "table",
    title: "Measured",
    table: {
      columns: [
        { says: "When", share: 0.16 },
        { says: "Reading, as said", share: 0.42 },
        { says: "Verdict", share: 0.09 },
        { says: "What it shows, and the basis", share: 0.33 },
      ],
      rows: rows.map(({ readings, finding }) => {
        const [first] = readings;
        const when = first === undefined ? "" : cellTime(record, first.taken).slice(5, 16);
        const after =
          first !== undefined &&
          worked !== undefined &&
          Date.parse(first.received) >= Date.parse(worked)
            ? " after"
            : "";
        const subject = first?.subject === undefined ? "" : `${first.subject}: `;
        return [
          `${when}${after}`,
          `${subject}${figures(readings)}`,
          verdictWords[finding.level],
          shownBy(finding),
        ];
      }),
    },
  };
}

/** "superheat 11 F, usual; common practice". */
const shownBy = ({ brief, says, basis }: Finding): string =>
  [brief ?? says, basis].filter((word) => word !== "").join("; ");

const gravity = { bad: 0, watch: 1, good: 2, unknown: 3 } as const satisfies Record<Level, number>;

/** Readings that a verdict was made on, a row for those of one message and one finding. */
function decisive(entry: ExportJob): readonly Decisive[] {
  const verdicts = verdictsOf(entry);
  const rows = new Map<string, { readings: JobReading[]; finding: Finding }>();
  for (const reading of entry.job.readings) {
    const finding = verdicts.get(reading.id);
    if (finding === undefined || finding.level === "unknown") continue;
    // what one finding was made on stands together, whether it came in one message or in three
    const key = [reading.subject, finding.about, finding.check, finding.says].join("|");
    const row = rows.get(key);
    if (row === undefined) rows.set(key, { readings: [reading], finding });
    else if (row.readings.length < mostInRow) row.readings.push(reading);
  }
  const all = [...rows.values()];
  const chosen = [...all]
    .sort((a, b) => gravity[a.finding.level] - gravity[b.finding.level])
    .slice(0, mostDecisive);
  return all.filter((row) => chosen.includes(row));
}
