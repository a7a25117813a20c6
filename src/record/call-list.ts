import type { Span } from "../model.ts";
import { namesIn, type World } from "./names.ts";
import { isTrouble } from "./split-opening.ts";

/** One call of a list, with its place in the message. */
export interface ListedCall {
  readonly text: string;
  readonly span: Span;
}

const numbered = /(?<=^|\s)[(#]?(\d{1,2})[.)](?=\s|\p{L})\s*/gu;
const bullet = /(?<=^|\n)\s*[-*•–]\s+/gu;

/** "Tomorrow:", "new jobs for thursday": what stands before a list of calls. */
const lead =
  /^\s*(?:(?:ok(?:ay)?|so|hi|morning|all|team|guys|here(?:'s|s| is| are)|the|for|new|next|open|late|early|rest of|plan|list|schedule|line ?up|board|route|jobs?|calls?|tickets?|today|tonight|tomorrow|tmrw|tmw|tomo|this|morning|afternoon|week|(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|satur|sun)(?:day|s)?|sat)\b[\s,!:-]*)+$/i;

/** What stands so already, or is asked of the reader, is no call. */
const told =
  /\b(?:done|finished|closed|ordered|waiting|came in|invoice[ds]?|quoted?|paid|order|bring|call them|remember|don'?t forget|timesheets?)\b|\?/i;

/** "…, kai": who goes, behind the last comma. */
const sent = /[,;–-]\s*@?\p{L}{2,}\s*[.]?$/u;

/**
 * A dispatcher's calls in one message, "tomorrow: 1) Harbor Cold walk-in not holding, kai 2) …". A list is
 * one of calls only where each of its items is one; else nothing.
 */
export function listedCalls(text: string, world: World): readonly ListedCall[] {
  const marks = marksIn(text);
  const [first] = marks;
  if (first === undefined || marks.length < 2) return [];
  const before = text.slice(0, first.from);
  const planned = before.trim() !== "" && lead.test(before);
  if (before.trim() !== "" && !planned) return [];
  const calls = marks.map(({ to }, index): ListedCall => {
    const end = marks[index + 1]?.from ?? text.length;
    const said = text.slice(to, end).replace(/[\s,;]+$/, "");
    return { text: said, span: [to, to + said.length] };
  });
  return calls.every((call) => isCall(call.text, { world, planned })) ? calls : [];
}

/** Where the marks of a list stand: its numbers in their order from 1, or a dash at the head of each line. */
function marksIn(text: string): readonly { readonly from: number; readonly to: number }[] {
  const rows = [...text.matchAll(numbered)];
  const marks: { from: number; to: number }[] = [];
  for (const row of rows) {
    if (Number(row[1]) === marks.length + 1)
      marks.push({ from: row.index, to: row.index + row[0].length });
  }
  if (marks.length > 1) return marks;
  return [...text.matchAll(bullet)].map((row) => ({
    from: row.index,
    to: row.index + row[0].length,
  }));
}

function isCall(
  said: string,
  { world, planned }: { readonly world: World; readonly planned: boolean },
): boolean {
  if (said.length < 8 || told.test(said) || !isTrouble(said)) return false;
  const { sites, tags } = namesIn(said, world);
  return sites.length + tags.length > 0 || (planned && (/^\p{Lu}/u.test(said) || sent.test(said)));
}
