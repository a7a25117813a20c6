import type { ReplyInput, Span, Statement } from "../model.ts";
import { treeText } from "./tree-words.ts";
import { clipped, wordCount } from "./wording.ts";

/** At most so many words of a remark are said back. */
const remarkWords = 9;

/** Statements that are said back in the technician's own words. */
const remarked = new Set<Statement["kind"]>([
  "action",
  "observation",
  "complaint",
  "part",
  "labor",
  "nameplate",
  "tree",
]);

/** A cylinder's number is part of the gas record, so it is said back. */
const isCylinder = (s: Statement): boolean => s.kind === "note" && s.about === "cylinder";

/** What was seen, done, needed or sent, in his own words, at most nine of them; "" where nothing. */
export function remarkText(input: ReplyInput): string {
  const waited = input.released_statements ?? [];
  const all = [...input.understood.statements, ...waited];
  const remarks = all.filter((s) => remarked.has(s.kind) || isCylinder(s));
  const photos = input.message.files.length;
  const photo = photos === 0 ? "" : photos === 1 ? "photo kept, not read" : "photos kept, not read";
  const named = remarks.filter((s) => s.kind === "part");
  // "need a txv 40-118 and a drier": each of them, where parts are all that is told
  const whole = named.length > 1 && named.length === remarks.length;
  const listed =
    whole &&
    (named.some((s) => s.number !== undefined) || wordCount(input.message.text) > remarkWords);
  const parts = named.flatMap((s) =>
    listed || s.number !== undefined || s.decided !== undefined ? [partWords(s)] : [],
  );
  const tree = remarks.flatMap((s) => (s.kind === "tree" ? [treeText(s)] : []));
  // "done w hp-2, 40 min. starting hp-3": hours alone are said back as hours
  const hours = remarks.length > 0 && remarks.every(({ kind }) => kind === "labor");
  const own = remarks.length === 0 || waited.length > 0 || hours ? "" : ownWords(input);
  const words = own === "" ? saidOnce(remarks) : own;
  if (tree.length > 0)
    return [...tree, ...new Set(parts), photo].filter((w) => w !== "").join("; ");
  const text = parts.length > 0 ? [...new Set(parts)].join(", ") : clipped(words, remarkWords);
  return [text, photo].filter((w) => w !== "").join("; ");
}

/** Their own words, none that another says whole. */
function saidOnce(remarks: readonly Statement[]): string {
  const all = [...new Set(remarks.map(({ said }) => said))];
  return all
    .filter((said) => !all.some((other) => other !== said && other.includes(said)))
    .join(", ");
}

/** A part's number stands whole, wherever the message is cut. */
function partWords(part: Extract<Statement, { kind: "part" }>): string {
  const number = part.number === undefined ? "" : ` ${part.number}`;
  const due = part.due === undefined ? "" : `, due ${part.due}`;
  return `${part.part}${number} ${part.decided ?? part.state}${due}`.trim();
}

/** The message without what is said in its own place: statuses, questions, readings. */
function ownWords(input: ReplyInput): string {
  const { readings, statements } = input.understood;
  const said = statements.filter((s) => s.kind === "status" || s.kind === "question");
  const spans = [...said, ...readings].flatMap((one) => one.spans);
  return plainLetters(without(input.message.text, spans));
}

function without(text: string, spans: readonly Span[]): string {
  const sorted = [...spans].sort((a, b) => a[0] - b[0]);
  const kept: string[] = [];
  let at = 0;
  for (const [from, to] of sorted) {
    kept.push(text.slice(at, Math.max(at, from)));
    at = Math.max(at, to);
  }
  return [...kept, text.slice(at)].join(" ");
}

/** Letters, digits and plain marks; what a voice can't read and what is left at the ends goes. */
function plainLetters(text: string): string {
  return text
    .replaceAll(/[^\p{L}\p{N}\s.,;:'()/+-]/gu, " ")
    .replaceAll(/\s+([.,;:])/g, "$1")
    .replaceAll(/([.,;:])(?:\s*[.,;:])+/g, "$1")
    .replaceAll(/\s+/g, " ")
    .replaceAll(/^[\s.,;:]+|[\s.,;:]+$/g, "")
    .replace(/^(?:and|so|ok|okay)\b[\s,]*/i, "")
    .replace(/[\s,.]+(?:leaving|done|heading out)$/i, "")
    .replace(/[\s,]+(?:and|then)$/i, "");
}
