import { ascii, DIGIT } from "./characters.ts";

/** No number has more digits and signs than this. */
export const LONGEST = 40;

/** A number's digits from `i`: "208", "1,240", ".51", "27.6", "3,5". Returns where they end. */
export function digitsEnd(text: string, i: number): number {
  let end = i;
  while (end < text.length && ascii[text.charCodeAt(end)] === DIGIT) end++;
  for (;;) {
    const sign = text.charCodeAt(end);
    if ((sign !== 46 && sign !== 44) || end - i > LONGEST) return end;
    let next = end + 1;
    while (next < text.length && ascii[text.charCodeAt(next)] === DIGIT) next++;
    if (next === end + 1) return end;
    if (sign === 44 && !joins(text, i, end, next)) return end;
    end = next;
    if (sign === 46) return end;
  }
}

/** "24,5, supply 13": the comma behind a decimal ends what is said of it; "zones 2,3, and 4" is a list. */
function endsClause(text: string, from: number, comma: number): boolean {
  const rest = text.slice(comma + 1, comma + 24);
  if (!/^\s/.test(rest)) return false;
  // "0915 27,8, 1015 27,6": a time, and a decimal again
  if (/^\s+(?:[01]?\d|2[0-3]):?[0-5]\d\s+(?:[a-z]+\s)?\d{1,2},\d/.test(rest)) return true;
  // "22,1, 12 K", "2,64, 401": no list goes down or has two figures behind its first
  const figure = /^(\d+),(\d+)$/.exec(text.slice(from, comma));
  const [whole, part] = [figure?.[1] ?? "", figure?.[2] ?? ""];
  if (whole !== "" && whole.length !== part.length) return true;
  if (whole.length === 1 && /^\s+\d{3}\b/.test(rest)) return true;
  // "liquid 39,9, 77 Hz": what follows is measured in a unit of its own
  if (/^\s+-?\d+(?:[.,]\d+)?(?:\/\d+(?:[.,]\d+)?)*\s?(?:hz|m?bar|k?pa|rpm|kg|°|% ?rh)\b/.test(rest))
    return true;
  return !/^\s+(?:and\b|n\b|&|\+|or\b|\d)/.test(rest) || /^\s+\d{1,2},\d{1,2}(?!\d)/.test(rest);
}

/** "heads 2,3, no cooling": what goes by whole numbers has no decimals. */
function named(text: string, from: number): boolean {
  return /\b(?:heads|indoors|circuits|ckts|zones|rooms|rms|spaces|fans|comps|compressors|leads|legs|phases|units|breakers|pins|boxes|cases|stages|boards|floors|bays|heaters|banks|pumps|rtus|caps|valves|terminals)\s*$/.test(
    text.slice(Math.max(0, from - 14), from),
  );
}

/** Does the comma at `comma` join digits into one number: thousands, or a decimal comma? */
export function joins(text: string, from: number, comma: number, to: number): boolean {
  const before = comma - from;
  const after = to - comma - 1;
  if (after === 3) {
    if (text.slice(from, comma).includes(",")) return true;
    if (before > 3) return false;
    // "480,481,479": legs of one size, no thousands
    const ratio = Number(text.slice(from, comma)) / Number(text.slice(comma + 1, to));
    if (before === 3 && ratio > 0.7 && ratio < 1.4) return false;
    return before < 3 || text.charCodeAt(comma - 1) === 48 || text.slice(comma + 1, to) === "000";
  }
  if (text.slice(from, comma).includes(",")) return false;
  if (text.charCodeAt(to) === 44 && (!endsClause(text, from, to) || named(text, from)))
    return false;
  // "24,25,24a": the second of a list
  if (text.charCodeAt(from - 1) === 44 && ascii[text.charCodeAt(from - 2)] === DIGIT) return false;
  // "leads 1,2 2.2 gig"
  const next = Number(text.charAt(comma + 1)) === Number(text.charAt(comma - 1)) + 1;
  // "fans 4,5 and 1,4 A": decimals again behind it, so no list
  const decimals = /^\s*(?:and|&|\/|,)\s*\d{1,2},\d/.test(text.slice(to, to + 12));
  if (before === 1 && after === 1 && next && !decimals && named(text, from)) return false;
  return after <= 2 && before <= 2;
}

export function numberValue(digits: string): number {
  const comma = digits.indexOf(",");
  if (comma < 0) return Number(digits);
  const rest = digits.length - comma - 1;
  // "0,030": no thousands begin with a nought
  if (/^0+,\d+$/.test(digits)) return Number(digits.replace(",", "."));
  if (rest === 3 || digits.indexOf(",", comma + 1) > 0 || digits.includes("."))
    return Number(digits.split(",").join(""));
  return Number(digits.replace(",", "."));
}
