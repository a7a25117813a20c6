/** How long a text is for a platform: some count what stands for a sign, not the sign. */
export type Measure = (text: string) => number;

/**
 * A long text in pieces of at most `longest`: between lines where it can be, else after a sentence,
 * else between words; a word longer than a piece is cut. No character is lost but the blanks at the
 * cuts.
 */
export function splitText(
  text: string,
  longest: number,
  measure: Measure = (piece) => piece.length,
): readonly string[] {
  const pieces: string[] = [];
  let rest = text.trimEnd();
  while (measure(rest) > longest) {
    const at = cutAt(rest, roomIn(rest, longest, measure));
    pieces.push(rest.slice(0, at).trimEnd());
    rest = rest.slice(at).replace(/^[ \n]+/, "");
  }
  return rest === "" && pieces.length > 0 ? pieces : [...pieces, rest];
}

/** How many characters of a text fit; at least one, so that it comes to an end. */
function roomIn(text: string, longest: number, measure: Measure): number {
  let fits = 1;
  let tooMany = text.length;
  while (tooMany - fits > 1) {
    const middle = (fits + tooMany) >> 1;
    if (measure(text.slice(0, middle)) <= longest) fits = middle;
    else tooMany = middle;
  }
  return fits;
}

function cutAt(text: string, room: number): number {
  const head = text.slice(0, room + 1);
  const line = head.lastIndexOf("\n");
  if (line > room / 2) return line;
  const sentence = Math.max(...[". ", "? ", "! "].map((end) => head.lastIndexOf(end) + 1));
  if (sentence > room / 2) return sentence;
  const word = head.lastIndexOf(" ");
  if (word > 0) return word;
  // a pair of surrogates is one sign
  return room > 1 && /[\uD800-\uDBFF]/.test(text.charAt(room - 1)) ? room - 1 : room;
}
