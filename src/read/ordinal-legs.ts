import { isNumber, type Token, tokenKind } from "./token.ts";

const nths: ReadonlyMap<string, string> = new Map([
  ["first", "1"],
  ["second", "2"],
  ["third", "3"],
]);
const nouns = /^(?:leg|lead|phase|line)$/;

/** "18.5 on the first leg", "second leg 18.2", "18.8 on the third": a leg by its order, beside what was read on it. */
function ofLeg(tokens: readonly Token[], i: number): boolean {
  if (!nths.has(tokens[i]?.text ?? "")) return false;
  const noun = nouns.test(tokens[i + 1]?.text ?? "");
  const behind = tokens[i - 1]?.text === "the" && /^(?:on|of)$/.test(tokens[i - 2]?.text ?? "");
  const end = tokens[noun ? i + 2 : i + 1];
  const ends = end === undefined || /^(?:and|,|\.|so)$/.test(end.text) || isNumber(end);
  if (behind) return ends || noun;
  return (
    noun && (isNumber(end) || end?.apostrophe === true || /^(?:is|at|reads)$/.test(end?.text ?? ""))
  );
}

/** Legs that are counted by words, where two of them at least are: each becomes its noun and its number. */
export function ordinalLegs(tokens: readonly Token[]): readonly Token[] {
  const found = tokens.flatMap((_, i) => (ofLeg(tokens, i) ? [i] : []));
  const [first = 0] = found;
  const noun = tokens[first + 1];
  if (found.length < 2 || noun === undefined || !nouns.test(noun.text)) return tokens;
  return tokens.flatMap((token, i) => {
    const named = nouns.test(token.text) && found.includes(i - 1);
    if (named) return [];
    const text = found.includes(i) ? nths.get(token.text) : undefined;
    if (text === undefined) return [token];
    const own = nouns.test(tokens[i + 1]?.text ?? "") ? tokens[i + 1] : undefined;
    const { apostrophe = token.apostrophe, to = token.to } = own ?? {};
    const word: Token = {
      ...noun,
      from: token.from,
      to: token.from,
      apostrophe: false,
      glued: false,
    };
    return [
      word,
      {
        ...token,
        kind: tokenKind.number,
        text,
        value: Number(text),
        word: undefined,
        to,
        apostrophe,
      },
    ];
  });
}
