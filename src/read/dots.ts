import { classOf, DIGIT, LETTER, SPACE } from "./characters.ts";
import { digitsEnd, numberValue } from "./digits.ts";

export function isDot(code: number): boolean {
  return code === 46 || code === 0x2026;
}

/** "9…21", "8..16": dots between two figures, glued to both, are a range; where they end. More of them are a list. */
function rangeTo(text: string, at: number): number {
  if (classOf(text, at - 1) !== DIGIT || isDot(text.charCodeAt(at - 1))) return 0;
  let end = at;
  while (isDot(text.charCodeAt(end))) end++;
  if (end === at + 1 && text.charCodeAt(at) === 46) return 0;
  if (classOf(text, end) !== DIGIT) return 0;
  const before = /[\d,.]{1,9}$/.exec(text.slice(Math.max(0, at - 9), at))?.[0] ?? "";
  const stop = digitsEnd(text, end);
  const further = isDot(text.charCodeAt(stop)) && isDot(text.charCodeAt(stop + 1));
  if (further || before.includes("..")) return 0;
  return numberValue(text.slice(end, stop)) > numberValue(before) ? end : 0;
}

/** "suct...68", "lead 1 .. 540M": dots between a name and its figure stand for a dash; where they end. */
function pauseTo(text: string, at: number): number {
  // within a run of dots there is nothing to look for: each dot is looked at once
  if (isDot(text.charCodeAt(at - 1))) return 0;
  let end = at;
  while (isDot(text.charCodeAt(end))) end++;
  if (end === at + 1 && text.charCodeAt(at) === 46) return 0;
  const glued = classOf(text, at - 1) === LETTER && classOf(text, end) === DIGIT;
  const named = /\b(?:lead|leg|phase|[ltuvw]) ?[1-3abc]? ?$/.test(
    text.slice(Math.max(0, at - 10), at),
  );
  return glued || (named && classOf(text, end + (classOf(text, end) === SPACE ? 1 : 0)) === DIGIT)
    ? end
    : 0;
}

/** Where the dots at `at` end that stand for a dash; 0 where they do not. */
export function dotsTo(text: string, at: number): number {
  return rangeTo(text, at) || pauseTo(text, at);
}

const shortened =
  /(?:^|[ ,;(])(?:ca|approx|appr|abt|aprx|temp|press|max|min|avg|amb|disch|suct|vs|nom)$/;

/** "ca. 80", "approx. 12 A": does the dot at `at` only shorten the word before it? */
export function shortens(text: string, at: number): boolean {
  if (classOf(text, at + 1) !== SPACE || classOf(text, at + 2) !== DIGIT) return false;
  return shortened.test(text.slice(Math.max(0, at - 8), at));
}
