/**
 * A long text in pieces of at most `longest` characters: between lines where it can be, else after
 * a sentence, else between words; a word longer than a piece is cut. No character is lost but the
 * blanks at the cuts.
 */
export function splitText(text: string, longest: number): readonly string[] {
  const pieces: string[] = [];
  let rest = text.trimEnd();
  while (rest.length > longest) {
    const at = cutAt(rest, longest);
    pieces.push(rest.slice(0, at).trimEnd());
    rest = rest.slice(at).replace(/^[ \n]+/, "");
  }
  return rest === "" && pieces.length > 0 ? pieces : [...pieces, rest];
}

function cutAt(text: string, longest: number): number {
  const head = text.slice(0, longest + 1);
  const line = head.lastIndexOf("\n");
  if (line > longest / 2) return line;
  const sentence = Math.max(...[". ", "? ", "! "].map((end) => head.lastIndexOf(end) + 1));
  if (sentence > longest / 2) return sentence;
  const word = head.lastIndexOf(" ");
  if (word > 0) return word;
  // a pair of surrogates is one sign
  return /[\uD800-\uDBFF]/.test(text.charAt(longest - 1)) ? longest - 1 : longest;
}
