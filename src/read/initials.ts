import { lookUp } from "./dictionary.ts";
import { type Token, tokenKind } from "./token.ts";

/** The letters of a word that a phone spelled out from a token on: "c" of "C. F. M."; where their last stop ends. */
function lettersFrom(tokens: readonly Token[], i: number): { text: string; end: number } {
  let text = "";
  let at = i;
  for (;;) {
    const [letter, stop] = [tokens[at], tokens[at + 1]];
    const single = letter?.kind === tokenKind.word && /^[a-z]$/.test(letter.text);
    if (!single || stop?.text !== "." || !stop.glued) return { text, end: at };
    text += letter.text;
    at += 2;
  }
}

/** The longest word that the letters begin with; "R. L. A. D. C." are two. */
function wordOf(letters: string): string {
  for (let size = letters.length; size > 1; size--) {
    const text = letters.slice(0, size);
    if (lookUp(text) !== undefined) return text;
  }
  return "";
}

const shows =
  /^(?:codes?|alarms?|faults?|errors?|shows|showing|flashing|flashes|displays?|displaying)$/;

/** "code E. 7": does a phone's stop part a code's letter, at the token, from its number? */
function partsCode(tokens: readonly Token[], i: number): boolean {
  const [lead, letter, stop, number] = tokens.slice(Math.max(0, i - 1), i + 3);
  if (i === 0 || letter?.kind !== tokenKind.word || !/^[a-z]$/.test(letter.text)) return false;
  if (!shows.test(lead?.text ?? "") || stop?.text !== "." || !stop.glued) return false;
  return number?.kind === tokenKind.number && /^\d{1,3}$/.test(number.text);
}

/** "420 C. F. M.", "R. L. A. is 15.9", "V. A. V. 3": letters that a phone set stops behind are one word. */
export function withInitials(tokens: readonly Token[], typed: string): readonly Token[] {
  if (!tokens.some(({ text }) => text === ".")) return tokens;
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; ) {
    const [first, letters] = [tokens[i], lettersFrom(tokens, i)];
    const text = wordOf(letters.text);
    const end = i + text.length * 2;
    const stop = tokens[end - 1];
    if (first === undefined || text === "" || stop === undefined) {
      if (first !== undefined) out.push(first);
      i += partsCode(tokens, i) ? 2 : 1;
      continue;
    }
    const word = { ...first, text, word: lookUp(text), to: tokens[end - 2]?.to ?? first.to };
    out.push(word);
    // before a capital or at the end the last stop ends the sentence as well
    const next = typed.charAt(tokens[end]?.from ?? typed.length);
    if (next === "" || (end === letters.end && next !== next.toLowerCase())) out.push(stop);
    i = end;
  }
  return out;
}

const glued = /^(?:uvw|t1t2t3|l1l2l3)$/;
const ground = /^(?:to|-|gnd|ground|grnd|earth|pe|all|each)$/;

/** "UVW to earth", "T1T2T3-G": three points that are written as one word. */
export function legsApart(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }) => glued.test(text))) return tokens;
  return tokens.flatMap((token, i) => {
    if (!glued.test(token.text) || !ground.test(tokens[i + 1]?.text ?? "")) return [token];
    const parts = token.text.match(/[a-z]|\d/g) ?? [];
    return parts.map((text, at): Token => {
      const number = /\d/.test(text);
      const from = token.from + at;
      return {
        ...token,
        kind: number ? tokenKind.number : tokenKind.word,
        text,
        word: number ? undefined : lookUp(text),
        from,
        to: from + 1,
        glued: number,
        value: number ? Number(text) : token.value,
      };
    });
  });
}

const toGround = [/^[uvw]g$/, /^[abc]g$/] as const;

/** "UG 3.1gig VG 2.9gig WG 3.4gig": outputs to ground with the dash left out, where two of them have their figures. */
export function groundsApart(tokens: readonly Token[]): readonly Token[] {
  const named = (family: RegExp): readonly Token[] =>
    tokens.filter(({ text }, i) => {
      const next = tokens[i + 1];
      const figure = next?.text === ":" || next?.text === "=" ? tokens[i + 2] : next;
      return family.test(text) && (figure?.kind === tokenKind.number || figure?.text === "ol");
    });
  const found = toGround
    .map(named)
    .filter((some) => new Set(some.map(({ text }) => text)).size > 1);
  if (found.length === 0) return tokens;
  return tokens.flatMap((token) => {
    if (!found.some((some) => some.includes(token))) return [token];
    const middle = token.from + 1;
    const [letter, ground] = [...token.text].map((text, at): Token => {
      const from = token.from + at;
      return { ...token, text, word: lookUp(text), from, to: from + 1, glued: at > 0 };
    });
    if (letter === undefined || ground === undefined) return [token];
    const dash: Token = { ...ground, kind: tokenKind.sign, text: "-", from: middle, to: middle };
    return [letter, { ...dash, word: undefined, apostrophe: false }, ground];
  });
}
