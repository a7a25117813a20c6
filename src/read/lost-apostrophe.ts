import { lookUp } from "./dictionary.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";

/** What is "is" behind a gauge's or a place's name, typed or heard without its apostrophe. */
const stems: ReadonlyMap<string, string> = new Map([
  ["heads", "head"],
  ["suctions", "suction"],
  ["discharges", "discharge"],
  ["liquids", "liquid"],
  ["lows", "low"],
  ["highs", "high"],
  ["supplies", "supply"],
  ["buses", "bus"],
  ["products", "product"],
  ["economizers", "economizer"],
  ["dampers", "damper"],
  ["superheats", "superheat"],
  ["subcools", "subcool"],
  ["subcoolings", "subcooling"],
]);

/** So much a head has at least, and so few indoor units hang on one outdoor unit. Common practice, no source. */
const leastHead = 65;

const leads = /^(?:at|about|around|like|now|still|only|up|down|running|sitting|holding|stuck)$/;
const counted = /^(?:all|the|other|both|indoor|some|few|many|of|these|those)$/;

/** How a figure begins that is no number of a thing: "342", "3 42", "three forty two", "two hundred". */
function hundredsAt(tokens: readonly Token[], at: number): boolean {
  const [first, rest] = [tokens[at], tokens[at + 1]];
  if (first?.kind === tokenKind.number)
    return (
      first.value >= leastHead || (/^[1-9]$/.test(first.text) && /^\d\d$/.test(rest?.text ?? ""))
    );
  const [one, next] = [first?.word?.number?.kind, rest?.word?.number?.kind];
  if (one !== "ones" && first?.text !== "a") return false;
  return next === "tens" || next === "teen" || next === "oh" || next === "hundred";
}

/** "three heads", where "suction 118 heads 342" and "suction forty heads 290" end another's figure. */
function isCount(tokens: readonly Token[], at: number): boolean {
  const [before, number] = [tokens[at - 1], tokens[at]];
  if (!isNumber(number) || isNumber(before) || (number?.value ?? 0) >= leastHead) return false;
  return before?.word?.label === undefined;
}

/** "suctions one eighteen heads 3 42": the phone left out the apostrophe of "head's". */
export function lostApostrophes(tokens: Token[]): void {
  tokens.forEach((token, i) => {
    const stem = token.kind === tokenKind.word ? stems.get(token.text) : undefined;
    if (stem === undefined || token.apostrophe) return;
    const before = tokens[i - 1];
    const article = stem === "liquid" && before?.text === "the";
    if ((!article && counted.test(before?.text ?? "")) || isCount(tokens, i - 1)) return;
    let at = i + 1;
    while (at < i + 3 && leads.test(tokens[at]?.text ?? "")) at++;
    if (stem === "head" ? !hundredsAt(tokens, at) : !isNumber(tokens[at])) return;
    tokens[i] = { ...token, text: stem, word: lookUp(stem), apostrophe: true };
  });
}
