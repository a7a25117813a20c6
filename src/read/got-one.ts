import type { Token } from "./token.ts";

const fromWhere =
  /^(?:(?:on|from|in|at|off|out of) (?:the |my |our |his |her |a )?(?:truck|van|shop|shelf|stock|order|hand|warehouse|garage|office|house|supply|parts|counter|store|box|bag|way|car|trailer)|coming|ordered|here|left|with me|already)\b/;

/** "got one from the shop", "have one on the truck": a thing, and no figure. */
export function isThing(tokens: readonly Token[], i: number): boolean {
  // "i dont have one", "need one."
  const [before, next] = [tokens[i - 1]?.text ?? "", tokens[i + 1]];
  const ends =
    next === undefined || /^(?:[.,;!?]|but|and|so|here|with|on|anymore)$/.test(next.text);
  if (ends && /^(?:have|need|needs|want|find|without|order|ordered)$/.test(before)) return true;
  if (!/^(?:got|have|had|grabbed|brought|getting|has)$/.test(tokens[i - 1]?.text ?? ""))
    return false;
  const behind = tokens.slice(i + 1, i + 5).map(({ text }) => text);
  return fromWhere.test(behind.join(" "));
}
