import type { Finding, Level, Reading, ReplyInput } from "../model.ts";
import { wordsOfCheck } from "./check-words.ts";

const gravity = { bad: 0, watch: 1, good: 2, unknown: 3 } as const satisfies Record<Level, number>;

/** Worst first; what could not be judged last. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => gravity[a.level] - gravity[b.level]);
}

/** The findings that this message made, changed, or spoke about again; worst first. */
export function touchedFindings(input: ReplyInput): readonly Finding[] {
  const earlier = new Set(input.before.findings.map(fingerprint));
  const spoken = [...input.readings, ...input.confirmed, ...input.released];
  const touched = input.judgement.findings.filter(
    (finding) => !earlier.has(fingerprint(finding)) || spoken.some((r) => speaksOf(finding, r)),
  );
  return worstFirst(touched);
}

/** Verdicts given before this message that it took away: nothing stands for that check now. */
export function changedVerdicts(
  input: ReplyInput,
): readonly { readonly was: Finding; readonly now: Finding | undefined }[] {
  return input.before.findings
    .map((was) => ({ was, now: input.judgement.findings.find((f) => sameCheck(f, was)) }))
    .filter(({ was, now }) => was.level !== now?.level && was.level !== "unknown");
}

function sameCheck(a: Finding, b: Finding): boolean {
  return a.check === b.check && a.about === b.about;
}

function fingerprint(finding: Finding): string {
  return JSON.stringify([finding.about, finding.check, finding.level, finding.values]);
}

export function speaksOf(finding: Finding, reading: Reading): boolean {
  if (reading.rating !== undefined || reading.earlier === true) return false;
  if (!wordsOfCheck(finding.check).of.includes(reading.quantity)) return false;
  if (reading.subject === undefined) return true;
  return !contrary(finding.about, reading.subject);
}

/** "compressor 1" against "compressor 2": same kind of thing, another one. */
function contrary(about: string, subject: string): boolean {
  const kind = (name: string) => name.toLowerCase().split(" ")[0];
  return kind(about) === kind(subject) && about.toLowerCase() !== subject.toLowerCase();
}
