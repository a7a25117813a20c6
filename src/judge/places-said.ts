import type { Node } from "./places.ts";

/** Which rooms are out and which are fine, as the notes say it. */
export interface PlacesSaid {
  readonly out: readonly string[];
  readonly fine: readonly string[];
}

const outWords =
  /^(?:warm|hot|out|down|dead|sweating|stuffy|boiling|freezing|cold|not cooling|not heating|no cooling|no cool|no heat|no heating|not working|no air|won't cool|won't heat|doesn't cool|don't cool)$/;
const fineWords =
  /^(?:fine|ok|okay|good|cool|cooling|comfortable|working|all right|alright|normal)$/;
const othersWords =
  /^(?:others?|the others|rest|the rest|everything else|everyone else|all others|all the others)$/;

/**
 * Reads rooms and their states in a text by the names of a tree. Rooms gather until a state is
 * said: "12, 14 and 15 warm, 11 and 13 fine"; "others fine" takes every room not named.
 */
export function placesSaid(text: string, tree: readonly Node[]): PlacesSaid {
  const places = [...new Set(tree.flatMap((node) => node.places ?? []))];
  const out = new Set<string>();
  const fine = new Set<string>();
  let othersFine = false;
  for (const note of text.split(/\n+/)) {
    let gathered: string[] = [];
    let others = false;
    for (const piece of piecesOf(note, places)) {
      if (piece.place !== undefined) gathered.push(piece.place);
      else if (othersWords.test(piece.word)) others = true;
      else if (outWords.test(piece.word) || fineWords.test(piece.word)) {
        const isFine = fineWords.test(piece.word);
        for (const place of gathered) {
          // the last word about a room counts
          (isFine ? fine : out).add(place);
          (isFine ? out : fine).delete(place);
        }
        if (others && isFine) othersFine = true;
        gathered = [];
        others = false;
      } else if (piece.word === ".") gathered = [];
    }
  }
  if (othersFine) for (const place of places) if (!out.has(place)) fine.add(place);
  return { out: [...out], fine: [...fine] };
}

interface Piece {
  readonly word: string;
  readonly place?: string;
}

/** A note cut into names of rooms, words of state, full stops and everything else. */
function piecesOf(note: string, places: readonly string[]): readonly Piece[] {
  const names = places
    .flatMap((place) => spellings(place).map((spelling) => ({ spelling, place })))
    .sort((a, b) => b.spelling.length - a.spelling.length);
  const states = [
    "not cooling",
    "not heating",
    "no cooling",
    "no heating",
    "no cool",
    "no heat",
    "not working",
    "no air",
    "won't cool",
    "won't heat",
    "doesn't cool",
    "don't cool",
    "all right",
    "everything else",
    "everyone else",
    "all the others",
    "all others",
    "the others",
    "the rest",
  ];
  const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const pattern = new RegExp(
    `(?<![\\p{L}\\p{N}-])(?:${[...names.map(({ spelling }) => spelling), ...states].map(escaped).join("|")})(?![\\p{L}\\p{N}-])|[\\p{L}'-]+|[.;]`,
    "giu",
  );
  return [...withRanges(note.toLowerCase(), names).matchAll(pattern)].map(([word]) => {
    const place = names.find(({ spelling }) => spelling === word)?.place;
    return place === undefined ? { word: word === ";" ? "." : word } : { word, place };
  });
}

/** "204 to 206" names every known room between. */
function withRanges(
  text: string,
  names: readonly { readonly spelling: string; readonly place: string }[],
): string {
  const numbers = names.map(({ spelling }) => Number(spelling)).filter(Number.isInteger);
  return text.replace(/\b(\d+)\s*(?:to|thru|through|-)\s*(\d+)\b/g, (whole, low, high) => {
    const [from, to] = [Number(low), Number(high)];
    if (!numbers.includes(from) || !numbers.includes(to)) return whole;
    return numbers.filter((number) => number >= from && number <= to).join(" ");
  });
}

/** "Room 12" is also said "12"; "Map Room" only as it is. */
function spellings(place: string): readonly string[] {
  const whole = place.toLowerCase();
  const number = /^(?:room|rm|suite|unit|apt|zone)s?\.?\s*(\d+[a-z]?)$/.exec(whole)?.[1];
  return number === undefined ? [whole] : [whole, number];
}

/** The room among those known that a said one means: letter for letter, else the only one with its number. */
export function knownPlace(known: readonly string[], said: string): string | undefined {
  const exact = known.find((place) => place.toLowerCase() === said.toLowerCase());
  if (exact !== undefined) return exact;
  const forms = spellings(said);
  const alike = known.filter((place) => spellings(place).some((form) => forms.includes(form)));
  return alike.length === 1 ? alike[0] : undefined;
}

/** Parts and rooms that a note ties together: "Map Room and Stacks East are both on BB-1". */
export function tiesSaid(
  text: string,
  tree: readonly Node[],
  rooms: readonly string[],
): readonly Node[] {
  const placed = new Set(tree.flatMap((node) => node.places ?? []));
  const tie =
    /([^.;\n]+?)\s+(?:are|is)?\s*(?:both|all)?\s*(?:on|hangs? on|fed (?:by|from)|off|under)\s+([a-z]{2,3}-?\d+)\b/gi;
  return [...text.matchAll(tie)].flatMap(([, words = "", tag = ""]) => {
    const said = piecesOf(words, rooms).flatMap(({ place }) =>
      place === undefined ? [] : [place],
    );
    // loose words move no room that is placed
    const places = said.filter((place) => !placed.has(place));
    return places.length === 0 ? [] : [{ tag: tag.toUpperCase(), places }];
  });
}
