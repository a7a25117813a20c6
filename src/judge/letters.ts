/** The letters a to z of a text, as bits; what is no small letter counts for nothing. */
export function lettersIn(text: string): number {
  let letters = 0;
  for (let i = 0; i < text.length; i++) letters |= bitOf(text.charCodeAt(i));
  return letters;
}

function bitOf(code: number): number {
  return code >= 97 && code <= 122 ? 1 << (code - 97) : 0;
}

/**
 * Letters that stand in whatever a pattern matches, as bits; 0 where none must. A text in small
 * letters that lacks one of them need not be tried: few notes hold all letters of a long word.
 */
export function lettersNeeded({ source, flags }: RegExp): number {
  // beside these two flags other signs count as letters too
  if (flags.includes("i") && /[uv]/.test(flags)) return 0;
  return either({ source: source.toLowerCase() === source ? source : lower(source), at: 0 });
}

/** A pattern's small letters; what is written as a class of signs (\B, \W, \S, \D) keeps its letter. */
function lower(source: string): string {
  return source.replace(/\\.|[A-Z]/gs, (one) => (one.length > 1 ? one : one.toLowerCase()));
}

interface Place {
  readonly source: string;
  at: number;
}

const allLetters = 2 ** 26 - 1;

/** Of several ways the letters that each of them needs, up to the end of their group. */
function either(place: Place): number {
  let common = allLetters;
  let own = 0;
  while (place.at < place.source.length && place.source[place.at] !== ")") {
    if (place.source[place.at] === "|") {
      common &= own;
      own = 0;
      place.at++;
    } else own |= term(place);
  }
  return common & own;
}

/** One sign, class or group with how often it may stand. */
function term(place: Place): number {
  const letters = atom(place);
  const { source, at } = place;
  const often = /^(?:[*?+]|\{(\d+)(?:,\d*)?\})\??/.exec(source.slice(at, at + 12));
  if (often === null) return letters;
  place.at += often[0].length;
  const least = often[1] === undefined ? Number(often[0].startsWith("+")) : Number(often[1]);
  return least === 0 ? 0 : letters;
}

function atom(place: Place): number {
  const sign = place.source[place.at];
  if (sign === "(") return group(place);
  if (sign === "[") return skip(place, /^\[(?:\\.|[^\]\\])*\]/s);
  // \b, \d, \1, \p{L}, \x41, \u0041: none of them is the letter that it is written with
  if (sign === "\\")
    return skip(
      place,
      /^\\(?:[pP]\{[^}]*\}|u\{[^}]*\}|u[\da-f]{4}|x[\da-f]{2}|k<[^>]*>|c.|\d+|.)/s,
    );
  place.at++;
  return bitOf(sign?.charCodeAt(0) ?? 0);
}

function skip(place: Place, what: RegExp): number {
  place.at += what.exec(place.source.slice(place.at))?.[0].length ?? 1;
  return 0;
}

/** What only looks ahead or back takes no letters of its own. */
function group(place: Place): number {
  const opening =
    /^\((?:\?(?:[:=!]|<[=!]|<[^>]*>))?/.exec(place.source.slice(place.at))?.[0] ?? "(";
  place.at += opening.length;
  const letters = either(place);
  place.at++;
  return /[=!]$/.test(opening) ? 0 : letters;
}
