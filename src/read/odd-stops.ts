import { isNumber, type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Full stops that a phone sets where somebody only paused within what he said of one figure. */

function isStop(token: Token | undefined): boolean {
  return token?.kind === tokenKind.sign && token.text === ".";
}

/** A unit that goes with hundreds. */
function isUnit(token: Token | undefined): boolean {
  return /^(?:psi|psig|volts?|bolts?|microns?)$/.test(token?.text ?? "");
}

function ends(token: Token | undefined): boolean {
  return token === undefined || isUnit(token) || /^[.,]$/.test(token.text);
}

const point = "point";

/** "minus. Twenty six", "eight point. Two amps", "eight. Point two", "suction is. Forty one" */
function brokenOff(tokens: readonly Token[], i: number): boolean {
  const [before, next] = [tokens[i - 1], tokens[i + 1]];
  const kind = before?.word?.number?.kind;
  if (next?.text === point && isNumber(before) && isNumber(tokens[i + 2])) return true;
  if (!isNumber(next)) return false;
  if (kind === "minus" || (kind === "point" && isNumber(tokens[i - 2]))) return true;
  return ((before?.word?.roles ?? 0) & role.is) !== 0;
}

const told = /^(?:at|is|was|about|head|suction|discharge|liquid|bus)$/;

function kindOf(token: Token | undefined): string {
  return token?.word?.number?.kind ?? "";
}

/** "head's at one. Eighty eight.": hundreds, where nothing else is told of either part. */
function parted(tokens: readonly Token[], i: number): boolean {
  const [lead, before, next, after] = [tokens[i - 2], tokens[i - 1], tokens[i + 1], tokens[i + 2]];
  const digit = before?.word?.number?.kind === "ones" || /^[1-9]$/.test(before?.text ?? "");
  // "suction's thirty. Eight psi."
  if (kindOf(before) === "tens" && kindOf(next) === "ones") return isUnit(after);
  if (!digit || (lead?.apostrophe !== true && !told.test(lead?.text ?? ""))) return false;
  if (next?.kind === tokenKind.number) return /^\d\d$/.test(next.text) && ends(after);
  const kind = kindOf(next);
  if (kind === "oh") return kindOf(after) === "ones" && ends(tokens[i + 3]);
  if (kind !== "tens" && kind !== "teen") return false;
  return ends(after) || (kindOf(after) === "ones" && ends(tokens[i + 3]));
}

/** "Fourteen pounds. Two ounces." */
function smallerUnit(tokens: readonly Token[], i: number): boolean {
  const pounds = /^(?:lbs?|pounds?)$/.test(tokens[i - 1]?.text ?? "") && isNumber(tokens[i - 2]);
  return pounds && isNumber(tokens[i + 1]) && /^(?:oz|ounces?)$/.test(tokens[i + 2]?.text ?? "");
}

/** "Amps are 18.1, 18.4. And 17.9." */
function lastOfRow(tokens: readonly Token[], i: number): boolean {
  const [joint, next, after] = [tokens[i - 2], tokens[i + 2], tokens[i + 3]];
  if (tokens[i + 1]?.text !== "and" || next?.kind !== tokenKind.number || !ends(after))
    return false;
  return tokens[i - 1]?.kind === tokenKind.number && joint?.text === "," && isNumber(tokens[i - 3]);
}

/** "seven at the valve. At the compressor. It's twenty two": what the figure is of stands before the stop. */
function placeFirst(tokens: readonly Token[], i: number): boolean {
  if (tokens[i + 1]?.text !== "its" || !isNumber(tokens[i + 2])) return false;
  const lead = /^(?:the|an?|my)$/.test(tokens[i - 2]?.text ?? "") ? i - 3 : i - 2;
  return (
    /^(?:at|on|in)$/.test(tokens[lead]?.text ?? "") && tokens[i - 1]?.word?.label !== undefined
  );
}

const takes = /^(?:wait|sorry|scratch|mean|correction|oops|whoops|nope|make|actually|strike)$/;
const beside = /^(?:no|that|it|i|its|thats|uh|um|er|[,.])$/;

/** "22. No wait. 12.", "240. No, sorry. 214": where the words between the two take the first back, its stop's index. */
function takenBackFrom(tokens: readonly Token[], i: number): number {
  const [number, after] = [tokens[i + 1], tokens[i + 2]];
  const time = after?.word?.unit?.dimension === "time";
  const counts = after?.kind === tokenKind.word && after.word?.unit === undefined;
  if (!isNumber(number) || time || counts) return -1;
  let told = false;
  let from = i - 1;
  for (; from > i - 7; from--) {
    const text = tokens[from]?.text ?? "";
    if (takes.test(text)) told = true;
    else if (!beside.test(text)) break;
  }
  const ahead = tokens[from];
  const figure = isNumber(ahead) || ahead?.word?.unit !== undefined;
  return told && figure && /^[.,]$/.test(tokens[from + 1]?.text ?? "") ? from + 1 : -1;
}

/** The stops of such words. */
function aroundTakenBack(tokens: readonly Token[]): ReadonlySet<number> {
  const found = new Set<number>();
  tokens.forEach((token, i) => {
    const from = isStop(token) ? takenBackFrom(tokens, i) : -1;
    for (let at = from; from >= 0 && at <= i; at++) if (isStop(tokens[at])) found.add(at);
  });
  return found;
}

/** Takes such stops out, so that the figure is read in one piece. */
export function dropOddStops(tokens: Token[]): void {
  if (!tokens.some(isStop)) return;
  const around = aroundTakenBack(tokens);
  const kept = tokens.filter((token, i) => {
    if (!isStop(token)) return true;
    return !(
      around.has(i) ||
      brokenOff(tokens, i) ||
      parted(tokens, i) ||
      smallerUnit(tokens, i) ||
      placeFirst(tokens, i) ||
      lastOfRow(tokens, i)
    );
  });
  if (kept.length === tokens.length) return;
  tokens.length = 0;
  for (const token of kept) tokens.push(token);
}
