import { isNumber, type Token, tokenKind } from "./token.ts";

/** What speakers fill a pause with. */
const fills = /^(?:u+h+m*|u+m+|erm|hmm+)$/;
/** Where a vacuum is spoken of, "um" behind a figure is its sign. */
const ofVacuum = /vac|micron|evac|pull|hold|held|decay|blank|isolat|valved|torr|pump/;

/** "held for uh thirty minutes", "1.12 um T1-T3": is this word only a pause? */
function isPause(tokens: readonly Token[], i: number, typed: string, vacuum: boolean): boolean {
  const [before, token, next] = [tokens[i - 1], tokens[i], tokens[i + 1]];
  if (token?.kind !== tokenKind.word || token.glued || next?.glued === true) return false;
  if (!fills.test(token.text)) return false;
  // UH-2 is a unit heater
  if (token.text === "uh") return typed.startsWith("uh", token.from);
  return token.text !== "um" || !(vacuum && isNumber(before));
}

/** The tokens without words that only fill a pause; between two figures a comma stands for it. */
export function withoutPauses(tokens: readonly Token[], typed: string): readonly Token[] {
  if (!tokens.some(({ text }) => fills.test(text))) return tokens;
  const vacuum = ofVacuum.test(typed.toLowerCase());
  return tokens.flatMap((token, i) => {
    if (!isPause(tokens, i, typed, vacuum)) return [token];
    // "lead two uh one ninety five": behind a name's number it parts nothing
    const named = tokens[i - 2]?.word?.noun !== undefined;
    const parts = !named && isNumber(tokens[i - 1]) && isNumber(tokens[i + 1]);
    return parts ? [{ ...token, kind: tokenKind.sign, text: ",", word: undefined }] : [];
  });
}
