import { ascii, classOf, DIGIT, LETTER, OTHER, SPACE } from "./characters.ts";
import { cutPoints } from "./cut-points.ts";
import { lookUp } from "./dictionary.ts";
import { digitsEnd, numberValue } from "./digits.ts";
import { dotsTo, isDot, shortens } from "./dots.ts";
import { hearDigit, hearFigures, oneOf } from "./hear.ts";
import { joint, lineSlip, vowelless } from "./short-words.ts";
import { respelled, withG } from "./spelling.ts";
import { type Token, type TokenKind, tokenKind } from "./token.ts";
import type { Word } from "./word.ts";

/** The scanner's place in one text. */
interface Scan {
  readonly text: string;
  readonly tokens: Token[];
  at: number;
  end: number;
}

function push(scan: Scan, kind: TokenKind, to: number, word?: Word, text?: string): void {
  const from = scan.at;
  const piece = text ?? scan.text.slice(from, to);
  scan.tokens.push({
    kind,
    from,
    to,
    text: piece,
    word,
    glued: from === scan.end && from > 0,
    apostrophe: false,
    value: kind === tokenKind.number ? numberValue(piece) : Number.NaN,
  });
  scan.at = to;
  scan.end = to;
}

/** ".71 w new ones", "231 now w fan 2 out": between spaces and before a word it is "with", but behind many watts. */
function withAlone({ text, at, tokens }: Scan, end: number): boolean {
  if (classOf(text, at - 1) !== SPACE || classOf(text, end) !== SPACE) return false;
  if (classOf(text, end + 1) !== LETTER) return false;
  // a terminal among terminals, or to be tested to ground
  if (
    /\b[uv]\b|dc/.test(text) ||
    /^ (?:to|is|was|and|reads|same|ground)\b/.test(text.slice(end, end + 8))
  )
    return false;
  const last = tokens[tokens.length - 1];
  return last !== undefined && (last.kind !== tokenKind.number || last.value < 100);
}

/** A word with its apostrophes: "don't" is "dont", "suction's" is "suction" with a possessive ending, "meg'd" was done. */
function pushWord(scan: Scan, to: number): void {
  const { text, at } = scan;
  let end = to;
  if (text.charCodeAt(end) === 39 && classOf(text, end + 1) === LETTER) {
    let tail = end + 1;
    while (tail < text.length && classOf(text, tail) === LETTER) tail++;
    const ending = text.slice(end + 1, tail);
    const typed = text.slice(at, tail) === "meg'd" ? "megged" : text.slice(at, end);
    end = tail;
    if (ending === "s" || ending === "ve" || ending === "re" || ending === "d") {
      const stem = lookUp(typed) === undefined ? (respelled(typed) ?? typed) : typed;
      const joined = lookUp(stem + ending);
      const whole = stem === "it" || stem === "that" || stem === "there" ? joined : undefined;
      const word = whole ?? lookUp(stem);
      scan.tokens.push({
        kind: tokenKind.word,
        from: at,
        to: end,
        text: whole === undefined ? stem : stem + ending,
        word,
        glued: at === scan.end && at > 0,
        apostrophe: true,
        value: Number.NaN,
      });
      scan.at = end;
      scan.end = end;
      return;
    }
    push(scan, tokenKind.word, end, lookUp(typed + ending), typed + ending);
    return;
  }
  const piece = withG(text.slice(at, end));
  // "w/" is "with", whatever else a w is; "w/o" is "without"
  if (piece === "w" && text.charCodeAt(end) === 47 && classOf(text, end + 1) !== DIGIT) {
    const without = text.startsWith("w/o", at) && classOf(text, at + 3) !== LETTER;
    const said = without ? "without" : "with";
    push(scan, tokenKind.word, without ? at + 3 : end + 1, lookUp(said), said);
    return;
  }
  if (piece === "w" && withAlone(scan, end)) {
    push(scan, tokenKind.word, end, lookUp("with"), "with");
    return;
  }
  const word = lookUp(piece);
  if (word?.number?.kind === "hundred") hearDigit(scan.tokens);
  else if (word?.unit?.dimension === "resistance") oneOf(scan.tokens);
  if (word === undefined) {
    const cut = joint(piece);
    if (cut > 0) {
      pushWord(scan, at + cut);
      pushWord(scan, end);
      return;
    }
    const meant = lineSlip(piece, scan.tokens.at(-1)?.word) ?? vowelless(piece) ?? respelled(piece);
    if (meant !== undefined) {
      push(scan, tokenKind.word, end, lookUp(meant), meant);
      return;
    }
  }
  push(scan, tokenKind.word, end, word, piece);
}

/** Letters and digits glued together: a known name, a number with its unit, or a code. */
function pushMixed(scan: Scan, to: number): void {
  const { text } = scan;
  const piece = text.slice(scan.at, to);
  const known = lookUp(piece);
  if (known !== undefined) {
    push(scan, tokenKind.word, to, known, piece);
    return;
  }
  // "U1-V1 2.4 ohm": a motor's beginnings as IEC 60034-8 names them (from memory); a code alone is none
  if (/^[uvw]1$/.test(piece) && /\bv1\b/.test(text) && /\b[uw]1\b/.test(text)) {
    push(scan, tokenKind.word, to, lookUp(piece.charAt(0)), piece.charAt(0));
    return;
  }
  if (/^\d*\.?\d+e\d+$/.test(piece) && piece.includes(".")) {
    push(scan, tokenKind.number, to);
    return;
  }
  if (/^\d+(?:st|nd|rd|th)$/.test(piece)) {
    push(scan, tokenKind.code, to);
    return;
  }
  // "540m3/h": the 3 belongs to the unit
  if (/^[\d.,]+m3[hs]?$/.test(piece)) {
    push(scan, tokenKind.number, scan.at + piece.indexOf("m"));
    pushMixed(scan, to);
    return;
  }
  const letters = /^[a-z]*/.exec(piece)?.[0] ?? "";
  if (joint(letters) > 0) {
    pushWord(scan, scan.at + letters.length);
    push(scan, tokenKind.number, Math.max(digitsEnd(text, scan.at), scan.at + 1));
    if (scan.at < to) pushRun(scan);
    return;
  }
  const cuts = cutPoints(text, scan.at, to);
  if (cuts === undefined) {
    push(scan, tokenKind.code, to);
    return;
  }
  for (const cut of cuts) {
    if (classOf(text, scan.at) === LETTER)
      push(scan, tokenKind.word, cut, lookUp(text.slice(scan.at, cut)));
    else push(scan, tokenKind.number, cut);
  }
}

/** The end of a run of letters and digits, and whether it mixes them. */
function runEnd(text: string, from: number): { readonly end: number; readonly mixed: boolean } {
  let end = from;
  let letters = false;
  let digits = false;
  while (end < text.length) {
    const kind = classOf(text, end);
    if (kind === LETTER) letters = true;
    else if (kind === DIGIT) digits = true;
    else if ((text.charCodeAt(end) === 46 || text.charCodeAt(end) === 44) && digits) {
      const stop = digitsEnd(text, end - 1);
      if (stop <= end || classOf(text, end - 1) !== DIGIT) break;
      const again = text.charCodeAt(stop) === 46 || text.charCodeAt(stop) === 44;
      end = stop;
      if (again && !letters) break;
      continue;
    } else if (
      text.charCodeAt(end) === 46 &&
      letters &&
      !digits &&
      classOf(text, end + 1) === DIGIT
    ) {
      end = digitsEnd(text, end);
      digits = true;
      continue;
    } else break;
    end++;
  }
  return { end, mixed: letters && digits };
}

function pushRun(scan: Scan): void {
  const { text, at } = scan;
  const kind = classOf(text, at);
  if (kind === LETTER) {
    let end = at + 1;
    while (end < text.length && classOf(text, end) === LETTER) end++;
    const next = end < text.length ? text.charCodeAt(end) : 0;
    const point = next === 46 && classOf(text, end + 1) === DIGIT;
    if (classOf(text, end) !== DIGIT && !point) {
      pushWord(scan, end);
      return;
    }
  }
  const run = runEnd(text, at);
  if (run.mixed) pushMixed(scan, run.end);
  else if (kind === LETTER) pushWord(scan, run.end);
  else push(scan, tokenKind.number, Math.max(digitsEnd(text, at), at + 1));
}

/** "0L", "0.L", ".0L": what a meter shows beyond its range; how many units it takes. */
function offScale(text: string, at: number): number {
  if (at > 0 && classOf(text, at - 1) !== SPACE && classOf(text, at - 1) !== OTHER) return 0;
  for (const shown of ["0l", "0.l", ".0l"])
    if (text.startsWith(shown, at)) {
      const next = classOf(text, at + shown.length);
      return at + shown.length >= text.length || next === SPACE || next === OTHER
        ? shown.length
        : 0;
    }
  return 0;
}

/** Cuts a plain text into tokens. Linear: every unit is looked at a fixed number of times. */
export function scan(text: string): Token[] {
  const state: Scan = { text, tokens: [], at: 0, end: -1 };
  while (state.at < text.length) {
    const code = text.charCodeAt(state.at);
    const kind = classOf(text, state.at);
    const over = code === 46 || code === 48 ? offScale(text, state.at) : 0;
    if (code === 45 && text.charCodeAt(state.at + 1) === 62)
      push(state, tokenKind.sign, state.at + 2, lookUp("→"), "→");
    else if (over > 0) push(state, tokenKind.word, state.at + over, lookUp("ol"), "ol");
    else if (kind === SPACE || (code === 46 && shortens(text, state.at))) state.at++;
    else if (kind === LETTER || kind === DIGIT) pushRun(state);
    else if (code === 10) push(state, tokenKind.line, state.at + 1);
    else if (isDot(code) && dotsTo(text, state.at) > 0)
      push(state, tokenKind.sign, dotsTo(text, state.at), lookUp("-"), "-");
    else if (code === 46 && startsPoint(state)) pushPoint(state);
    else pushSign(state);
  }
  hearFigures(state.tokens);
  return state.tokens;
}

/** ".51", but neither the end of "9." nor the last of several dots. */
function startsPoint({ text, at, end }: Scan): boolean {
  if (classOf(text, at + 1) !== DIGIT) return false;
  if (text.charCodeAt(at - 1) === 46) return false;
  return !(at === end && ascii[text.charCodeAt(at - 1)] === DIGIT);
}

/** ".51" and ".84v" */
function pushPoint(scan: Scan): void {
  const end = digitsEnd(scan.text, scan.at);
  push(scan, tokenKind.number, end);
}

function pushSign(scan: Scan): void {
  const end = signEnd(scan.text, scan.at);
  const sign = scan.text.slice(scan.at, end).replace("\u2026", ".");
  push(scan, tokenKind.sign, end, lookUp(sign), sign);
}

/** A sign; two that belong together (">=", a surrogate pair) are one. */
function signEnd(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code >= 0xd800 && code <= 0xdbff && at + 1 < text.length) return at + 2;
  if ((code === 60 || code === 62) && text.charCodeAt(at + 1) === 61) return at + 2;
  return at + 1;
}
