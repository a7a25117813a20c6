import type { Finding, Level, Reading, ReplyInput } from "../model.ts";
import { wordsOfCheck } from "./check-words.ts";

const gravity = { bad: 0, watch: 1, good: 2, unknown: 3 } as const satisfies Record<Level, number>;

/** Worst first; what could not be judged last. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => gravity[a.level] - gravity[b.level]);
}

/** What only the office can complete is no news on a roof; it stands in the sheets. */
function officeOnly(finding: Finding): boolean {
  return finding.level === "unknown" && officeChecks.has(finding.check);
}
const officeChecks = new Set<string>(["leak_rate", "room_concentration", "line_charge"]);

/** Several lines of a reply ask for them. */
const touchedBy = new WeakMap<ReplyInput, readonly Finding[]>();

/** The findings that this message made, changed, or spoke about again; worst first. */
export function touchedFindings(input: ReplyInput): readonly Finding[] {
  const known = touchedBy.get(input);
  if (known !== undefined) return known;
  const found = findTouched(input);
  touchedBy.set(input, found);
  return found;
}

function findTouched(input: ReplyInput): readonly Finding[] {
  const earlier = new Set(input.before.findings.map(fingerprint));
  const doubted = (r: Reading) => r.doubtful === true && !input.confirmed.some((c) => c === r);
  const spoken = [...input.readings, ...input.confirmed, ...input.released].filter(
    (r) => !doubted(r),
  );
  const touched = input.judgement.findings
    .filter((finding) => !officeOnly(finding))
    .filter(
      (finding) =>
        !earlier.has(fingerprint(finding)) ||
        (!fromWords(finding) &&
          spoken.some((r) => speaksOf(finding, r) && !isUnmovedBy(finding, r))),
    );
  // of two that weigh the same, what this message made new is news
  const isNew = (finding: Finding): boolean => !earlier.has(fingerprint(finding));
  return worstFirst([...touched.filter(isNew), ...touched.filter((f) => !isNew(f))]);
}

/**
 * Verdict words that were given on what this message mended, and that are others now. Several
 * findings of one check count by their worst.
 */
export function changedVerdicts(
  input: ReplyInput,
): readonly { readonly check: string; readonly was: Level }[] {
  const mended = [...input.replaced.map(({ old }) => old), ...input.confirmed];
  const named = input.before.findings.filter((f) => mended.some((r) => couldSpeakOf(f, r)));
  const keys = new Map(named.map((f) => [`${f.about}|${f.check}`, f]));
  // the same verdict on the component that the figures are of is none that was taken back
  const moved = input.replaced.some(
    ({ old, by }) => by !== undefined && by.subject !== old.subject,
  );
  return [...keys.values()].flatMap((f) => {
    const was = worstLevel(input.before.findings, f);
    const now = worstLevel(input.judgement.findings, f, moved);
    return was === undefined || was === "unknown" || was === now ? [] : [{ check: f.check, was }];
  });
}

/** Air that leaves a coil's verdict as it was had no part in it. */
function isUnmovedBy({ check }: Finding, { at }: Reading): boolean {
  return check === "saturation" && (at === "box" || at === "return_air" || at === "outdoor_air");
}

/** A leak that was seen, not measured: no news with another pressure. */
function fromWords({ check, values }: Finding): boolean {
  return check === "pressure_test" && Object.keys(values).length === 0;
}

/** Whether a verdict word that was given is another now, or a BAD stands that did not. */
export function verdictChanged(input: ReplyInput): boolean {
  if (changedVerdicts(input).length > 0) return true;
  return input.judgement.findings.some(
    (f) => f.level === "bad" && worstLevel(input.before.findings, f) !== "bad",
  );
}

function worstLevel(
  findings: readonly Finding[],
  like: Finding,
  whosever = false,
): Level | undefined {
  const same = findings.filter(
    (f) => f.check === like.check && (whosever || f.about === like.about),
  );
  return worstFirst(same)[0]?.level;
}

/** A finding stands in the judgement before one message and after the one before it. */
const fingerprints = new WeakMap<Finding, string>();

function fingerprint(finding: Finding): string {
  const known = fingerprints.get(finding);
  if (known !== undefined) return known;
  const { about, check, level, values } = finding;
  const made = JSON.stringify([about, check, level, values]);
  fingerprints.set(finding, made);
  return made;
}

/** Whether a finding judges this reading: its quantity, its place and its component. */
export function speaksOf(finding: Finding, reading: Reading): boolean {
  // a weight put in leaves the verdict on a weight taken out as it was
  if (reading.rating !== undefined || reading.earlier === true || reading.quantity === "mass") {
    return false;
  }
  return couldSpeakOf(finding, reading);
}

function couldSpeakOf(finding: Finding, reading: Reading): boolean {
  const { of, places } = wordsOfCheck(finding.check);
  if (!of.includes(reading.quantity)) return false;
  if (places !== undefined && !places.some((place) => place === reading.at)) return false;
  // nitrogen has no place: a box or a line that runs says nothing of a test
  if (finding.check === "pressure_test" && reading.at !== undefined) return false;
  if (finding.check === "saturation" && isOtherSide(finding, reading)) return false;
  return reading.subject === undefined || !contrary(finding.about, reading.subject);
}

/** A head pressure is no news of what the coil boils at, nor a suction of what condenses. */
function isOtherSide({ says }: Finding, { at }: Reading): boolean {
  if (at === undefined) return false;
  const high = ["discharge", "liquid", "discharge_saturation", "outdoor_air"].includes(at);
  return high ? /^boils\b/i.test(says) : /^condenses\b/i.test(says);
}

/** "compressor 1" against "compressor 2": same kind of thing, another one. */
function contrary(about: string, subject: string): boolean {
  const kind = (name: string) => name.toLowerCase().split(" ")[0];
  return kind(about) === kind(subject) && about.toLowerCase() !== subject.toLowerCase();
}
