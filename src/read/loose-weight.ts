import type { Building } from "./items.ts";
import type { NumberSaid } from "./number-parts.ts";
import { type Token, tokenKind } from "./token.ts";
import type { UnitSaid } from "./units.ts";

/** Does a weight that was said without its smaller unit end before this token? */
export function endsWeight(next: Token | undefined): boolean {
  if (next === undefined || next.kind === tokenKind.line) return true;
  if (next.kind === tokenKind.sign) return /^[,.;!?)]$/.test(next.text);
  return /^(?:not|and|in|into|out|of|from|for|on|per|at|back|so|but|then|today|tonight|yesterday|already|by|with|via|after|before|since|when|total|now|to|went|recovered|charged|thanks|thx|cheers|fyi|ok|okay|over|lol|haha|no|plus|suct|suction|head|discharge|i|we|just|per|even|came|went|short|low|over|more|cylinder|cyl|tank|superheat|subcool|subcooling|sh|sc|box|supply|return|static|amps|comp|compressor|split|delta)$/.test(
    next.text,
  );
}

/** Grams that go without saying: "1 kilo 350" are 350, "four kilos five" has tenths; 0 where neither is said. */
export function looseGrams(build: Building, said: UnitSaid, number: NumberSaid): number {
  const kilo = build.tokens[said.end - 1]?.text ?? "";
  if (said.unit.figure !== "kg" || !/^kilo/.test(kilo) || !Number.isInteger(number.value)) return 0;
  if (number.value >= 100 && number.value < 1000) return number.value;
  const digit = number.spoken && number.value >= 1 && number.value <= 9;
  return digit && endsWeight(build.tokens[number.end]) ? number.value * 100 : 0;
}

/** "2 kg 350 g", "1h 30m": behind the larger unit the letter is no giga and no mega; how many make one of the larger, 0 for none. */
export function letterBehind(larger: string, smaller: string): number {
  if (larger === "kg" && smaller === "gigohm") return 1000;
  return larger === "h" && smaller === "megohm" ? 60 : 0;
}

/** "recovered 4.8 kg, 150 g short": behind the comma an amount of its own. */
export function tellsApart(next: Token | undefined): boolean {
  return /^(?:short|low|extra|more|over|under|for|off|added|charged|recovered|missing|left|lost)$/.test(
    next?.text ?? "",
  );
}

/** "six pounds twelve", "5 lb 3": ounces go without saying behind pounds, where nothing else is counted. */
export function looseOunces(build: Building, said: UnitSaid, number: NumberSaid): boolean {
  const weight = build.tokens[said.end - 2]?.value ?? Number.NaN;
  // "118# 12" are no ounces
  const marked = build.tokens[said.end - 1]?.text === "#" && !(weight < 40);
  if (said.unit.figure !== "lb" || marked) return false;
  if (!Number.isInteger(number.value) || number.value < 0 || number.value > 15) return false;
  if (number.end !== said.end + 1) return false;
  const [next, then] = build.tokens.slice(number.end, number.end + 2);
  // "3 lb 2 new out of cyl 30": gas, and no two new filters
  const fresh = /^(?:new|virgin|fresh|reclaimed)$/.test(next?.text ?? "");
  return (
    endsWeight(next) ||
    (fresh && (endsWeight(then) || /^(?:gas|refrigerant|r-?\d+\w*)$/i.test(then?.text ?? "")))
  );
}
