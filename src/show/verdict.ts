import type { Finding, ReplyInput } from "../model.ts";
import { wordsOfCheck } from "./check-words.ts";
import { changedVerdicts, touchedFindings } from "./touched.ts";
import {
  clipped,
  componentName,
  faultWords,
  likelihood,
  listed,
  sentence,
  verdictWords,
  wordCount,
} from "./wording.ts";

/** The source of a limit, in about three words: what stands before the first pause. */
export function basisWords(basis: string): string {
  return clipped(basis.split(/[,;:(]/)[0]?.trim() ?? "", 4).replace(/ \.\.\.$/, "");
}

/** One finding as a sentence: "BAD: lead 2 is below every floor (IEEE 43)." */
export function findingSentence(finding: Finding, mostWords: number): string {
  const word = verdictWords[finding.level];
  if (finding.level === "unknown") {
    return sentence(`${word}: ${clipped(needs(finding), mostWords)}`);
  }
  const basis = basisWords(finding.basis);
  const whole = finding.says.split(/\s+/).length <= mostWords;
  const says = shortened(whole ? finding.says : (finding.brief ?? finding.says), mostWords);
  return sentence(`${word}: ${lowered(says)}${sourced(says, basis)}`);
}

/** "(IEEE 43)", or after a comma where the words end in brackets already. */
function sourced(says: string, basis: string): string {
  if (basis === "" || says.includes(basis)) return "";
  return says.endsWith(")") ? `, ${basis}` : ` (${basis})`;
}

/** After a colon a sentence begins small, but "T1", "RLA" and "L1-L2" stay. */
export function lowered(text: string): string {
  return /^(?:[A-Z][a-z]+|A)[ ,]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** "superheat needs refrigerant" */
export function needs(finding: Finding): string {
  if (finding.missing === undefined) return firstSentence(finding.says);
  return `${wordsOfCheck(finding.check).name} needs ${finding.missing.replace(/^needs? /, "")}`;
}

function firstSentence(text: string): string {
  return (/^.*?[.?!](?=\s|$)/.exec(text.trim())?.[0] ?? text.trim()).replace(/\.$/, "");
}

/**
 * The first sentence in at most so many words. Judging says "what was seen: what it means"; where
 * both are too long the half that is no list of figures stays, cut at a pause.
 */
export function shortened(text: string, most: number): string {
  const first = firstSentence(text);
  const colon = first.indexOf(": ");
  const head = colon < 0 ? first : first.slice(0, colon);
  const tail = colon < 0 ? "" : first.slice(colon + 2);
  const halves = colon < 0 ? ends(first) : [`${head}: ${firstClause(tail)}`];
  const kept = mostlyFigures(head) && tail !== "" ? [tail, firstClause(tail), head] : [head, tail];
  const options = [first, ...halves, ...kept, ...ends(head), firstClause(tail)];
  return options.find((one) => one !== "" && wordCount(one) <= most) ?? clipped(head, most);
}

/** First and last clause: what lies between are conditions. */
function ends(text: string): readonly string[] {
  const clauses = text.split(/, |; /);
  const last = clauses[clauses.length - 1] ?? "";
  return clauses.length < 3 ? [last] : [`${clauses[0] ?? ""}, ${last}`, last];
}

function mostlyFigures(text: string): boolean {
  const words = text.split(/\s+/);
  return words.filter((word) => /\d/.test(word)).length * 5 > words.length;
}

function firstClause(text: string): string {
  return text.split(/[,;] /)[0] ?? text;
}

/** What was said before and holds no longer, where this message mended the record. */
export function withdrawnSentences(input: ReplyInput): readonly string[] {
  const mended =
    input.replaced.length > 0 || input.withdrawn.length > 0 || input.confirmed.length > 0;
  if (!mended) return [];
  const changed = changedVerdicts(input);
  const heavy = changed.filter(({ was }) => was !== "good");
  const told = (heavy.length > 0 ? heavy : changed).slice(0, 2);
  const names = told.map(({ check, was }) => `${verdictWords[was]} on ${wordsOfCheck(check).name}`);
  if (names.length === 0) return [];
  return [`${listed(names)} ${names.length === 1 ? "is" : "are"} taken back.`];
}

/** Verdict lines for a short reply: the worst finding, then the others by name. */
export function shortVerdict(input: ReplyInput, mostWords: number): string {
  const touched = touchedFindings(input);
  const first = touched[0];
  if (first === undefined) return "";
  const others = touched.filter(
    (f) => (f.level === "bad" || f.level === "watch") && f.check !== first.check,
  );
  const also = others.map((f) => `Also ${verdictWords[f.level]}: ${wordsOfCheck(f.check).name}.`);
  return [findingSentence(first, mostWords), ...also.slice(0, 1)].join(" ");
}

/** At most so many words for all that is good: one line. */
const goodWords = 26;

/** One line a finding for a long message, worst first; all that is good on one line. */
export function longVerdict(input: ReplyInput, most: number): readonly string[] {
  const touched = touchedFindings(input);
  const heavy = touched.filter((f) => f.level === "bad" || f.level === "watch");
  const good = touched.filter((f) => f.level === "good");
  const unknown = touched.filter((f) => f.level === "unknown").slice(0, 1);
  const several = new Set(touched.map((f) => f.about)).size > 1;
  const lines = [...heavy.slice(0, most), ...unknown].map(
    (f) => `${several ? aboutWords(f) : ""}${findingSentence(f, 16)}`,
  );
  const rest = new Set(heavy.slice(most).map(findingName));
  return [
    ...lines,
    rest.size === 0 ? "" : sentence(`Also ${[...rest].join(", ")}`),
    goodLine(good, several),
  ].filter((line) => line !== "");
}

/** "GOOD: superheat 11 F, usual; subcooling 10 F, usual (common practice)." */
function goodLine(good: readonly Finding[], several: boolean): string {
  const [first] = good;
  if (first === undefined) return "";
  if (good.length === 1) return `${several ? aboutWords(first) : ""}${findingSentence(first, 16)}`;
  const briefs = [...new Set(good.map((f) => `${several ? aboutWords(f) : ""}${briefWords(f)}`))];
  const fitting = briefs.filter(
    (_, index) => wordCount(briefs.slice(0, index + 1).join(" ")) <= goodWords,
  );
  const left = [...new Set(good.slice(fitting.length).map((f) => wordsOfCheck(f.check).name))];
  const also = left.length === 0 ? "" : `; also ${listed(left)}`;
  const bases = new Set(good.slice(0, fitting.length).map((f) => basisWords(f.basis)));
  const sources = [...bases].filter((basis) => basis !== "").slice(0, 2);
  const source = sources.length === 0 ? "" : ` (${sources.join(", ")})`;
  return sentence(`${verdictWords.good}: ${fitting.join("; ")}${source}${also}`);
}

function briefWords(finding: Finding): string {
  const brief = lowered(finding.brief ?? shortened(finding.says, 8));
  const bare = /^(?:within|above|below|even|no|as|they|the)\b/.test(brief);
  const { name } = wordsOfCheck(finding.check);
  return bare && !brief.includes(name) ? `${name} ${brief}` : brief;
}

/** "comp 1 "; "" for what is no component of its own: "system", "air", "supply". */
function aboutWords(finding: Finding): string {
  return /\d/.test(finding.about) ? `${componentName(finding.about)} ` : "";
}

/** "comp 1 insulation GOOD". */
function findingName(finding: Finding): string {
  const check = wordsOfCheck(finding.check).name;
  return `${aboutWords(finding)}${check} ${verdictWords[finding.level]}`;
}

/** "Likely: low charge." where this message brought a cause to the top; else nothing. */
export function newCause(input: ReplyInput): string {
  const top = input.judgement.diagnosis[0];
  if (top === undefined || top.fault === "no_fault" || top.fault === "other") return "";
  if (top.mended === true) return "";
  const before = input.before.diagnosis[0];
  const known = before !== undefined && before.fault === top.fault;
  if (likelihood(top) !== "likely" || (known && likelihood(before) === "likely")) return "";
  return `Likely: ${faultWords(top.fault)}.`;
}
