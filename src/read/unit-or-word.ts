import type { Unit } from "../quantities/quantity.ts";
import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { phraseAt } from "./phrase.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** "transformer 208 primary 24 sec": its secondary, no time. */
export function ofTransformer(build: Building, at: number): boolean {
  if (build.tokens[at]?.glued === true) return false;
  return build.tokens
    .slice(Math.max(0, at - 8), at + 6)
    .some((token) => /^(?:transformer|xfmr|primary|pri|trafo)$/.test(token.text));
}

/** "u+ .45 u- .44", ".48 S .48 T OL": a letter before a number of its own is a point. */
export function pointAhead(build: Building, at: number, unit: Unit): boolean {
  const [token, next, after] = build.tokens.slice(at, at + 3);
  if (token === undefined || token.text.length !== 1 || token.glued) return false;
  // "at 500 #1 210 meg #2 205": the number of a lead
  if (token.text === "#" && next?.glued === true && isNumber(next)) return true;
  if (/^[uvw]$/.test(token.text) && /^[-+]$/.test(next?.text ?? "") && next?.glued === true)
    return (
      after?.kind === tokenKind.number ||
      /^(?::|=|short|shorted|ol|open|dead|bad)$/.test(after?.text ?? "")
    );
  if (rowOfOutputs(build, at)) return true;
  // "U to DC minus .44 V to DC minus .43": the next output, to the same rail
  const rail = /^(?:dc|bus|plus|minus|positive|negative|pos|neg|[-+pn])$/;
  if (/^[uvw]$/.test(token.text) && next?.text === "to" && rail.test(after?.text ?? ""))
    return true;
  // "59 U to earth 123 Mohm", "U-PE": no microns
  const earth = /^(?:earth|ground|gnd|pe)$/.test(after?.text ?? "");
  if (token.text === "u" && /^(?:to|-)$/.test(next?.text ?? "") && earth) return true;
  const figure = build.tokens[at - 1]?.text.includes(".") === true;
  return unit.figure === "s" && figure && next?.kind === tokenKind.number;
}

const unitsOfRow = /^(?:[kmga]|megs?|mohms?|megohms?|gigs?|ohms?|amps?|volts?)$/;

/**
 * "500 u 310 v 295 w 300", "u 38k v 41k w 39k", "u two ten v two oh five w one ninety eight", "at 500 A: 210
 * B: 205 C: 198": all three legs stand in their order, each before its value. Is the letter at `at` one of them?
 */
export function rowOfOutputs(build: Building, at: number): boolean {
  const letter = build.tokens[at]?.text ?? "";
  const row = rowsOfLetters.find((letters) => letters.includes(letter));
  return row !== undefined && letter.length === 1 && stands(build, at, row);
}

const rowsOfLetters: readonly (readonly string[])[] = [
  ["u", "v", "w"],
  ["a", "b", "c"],
];

function stands({ tokens }: Building, at: number, row: readonly string[]): boolean {
  let i = at;
  // the row begins at most two values back
  for (let back = 0; tokens[i]?.text !== row[0] && back < 24; back++) i--;
  let found = false;
  const all = row.every((letter) => {
    const name = tokens[i];
    if (name?.text !== letter || name.glued) return false;
    found ||= i === at;
    const sign = /^[:=]$/.test(tokens[i + 1]?.text ?? "") ? 1 : 0;
    const value = numberAt(tokens, i + 1 + sign);
    if (value === undefined) return false;
    i = unitsOfRow.test(tokens[value.end]?.text ?? "") ? value.end + 1 : value.end;
    if (tokens[i]?.text === ",") i++;
    return true;
  });
  return all && found;
}

/** "kW 3.2 A 5.1": each unit stands before its value. */
function headed(build: Building, at: number): boolean {
  const { tokens } = build;
  if (!/^[av]$/.test(tokens[at]?.text ?? "") || tokens[at]?.glued === true) return false;
  if (tokens[at + 1]?.kind !== tokenKind.number) return false;
  if (tokens[at]?.text === "v" && tokens[at - 2]?.text === "a") return headed(build, at - 2);
  const lead = tokens[at - 2]?.text === "in" ? at - 3 : at - 2;
  if (!/^(?:kw|kva|hz|v|volts)$/.test(tokens[lead]?.text ?? "")) return false;
  return tokens[lead - 1]?.kind !== tokenKind.number && tokens[lead - 1]?.kind !== tokenKind.word;
}

/** "y 27 g 27 w 0": letters before their values name terminals, they are no units of the values before. */
export function letterAhead(build: Building, at: number): boolean {
  const { tokens } = build;
  const [lead, token, next] = [tokens[at - 2], tokens[at], tokens[at + 1]];
  if (headed(build, at)) return true;
  if (token?.text.length !== 1 || token.glued || token.kind !== tokenKind.word) return false;
  if (next?.kind !== tokenKind.number || tokens[at - 1]?.kind !== tokenKind.number) return false;
  if (lead?.kind !== tokenKind.word || !/^[a-z]$/.test(lead.text) || lead.text === "a")
    return false;
  // "now s 128 h 362": suction and head
  if (lead.text === "s" && token.text === "h" && !lead.glued) return true;
  const first = tokens[at - 3];
  return first === undefined || first.kind !== tokenKind.word;
}

/** "head's three sixty eight um suction line's fifty four": somebody thinks, where nothing speaks of a vacuum. */
export function thinks(build: Building, at: number): boolean {
  const [before, token, next] = build.tokens.slice(at - 1, at + 2);
  if (token?.text !== "um" || token.glued) return false;
  if (build.tokens.some(({ text }) => /^(?:e?vac|micron|decay|torr)/.test(text))) return false;
  const named = build.items.findLast(({ roles, kind }) => kind === itemKind.label || roles === 0);
  const quantity = named?.label?.quantity ?? named?.label?.hint;
  if (quantity !== undefined && quantity !== "vacuum") return true;
  if (next === undefined || next.kind === tokenKind.sign) return false;
  return before?.kind !== tokenKind.number || next.word?.label !== undefined;
}

const draws = /^(?:draw|draws|drawing|drew|pulls?|pulling|pulled|amps?|rla|fla|lra|motors?)$/;
const tested = /^(?:leads?|ground|meg|megs|megger|megged|megohms?|insulation|windings?)$/;

/** "drawing seven point eight m's": the phone's amps, where nothing is tested to ground. */
export function drawsAmps({ tokens }: Building): boolean {
  return (
    tokens.some(({ text }) => draws.test(text)) && !tokens.some(({ text }) => tested.test(text))
  );
}

/** "88k btuh": thousands of what we have no quantity for. */
export function thousandsOf(build: Building, at: number): boolean {
  if (build.tokens[at]?.text !== "k") return false;
  return /^(?:btu|btus|btuh|mbh|bucks|dollars|miles|sq|sqft|hrs|hours)$/.test(
    build.tokens[at + 1]?.text ?? "",
  );
}

/** "5.1 PF .98": the power factor of what follows, no picofarads. */
export function factorAhead(build: Building, at: number, unit: Unit): boolean {
  const next = build.tokens[at + 1];
  return unit.figure === "pF" && next?.kind === tokenKind.number && next.value <= 1;
}

/** "volts 228 max 234 min 221": the least, no minutes. */
export function statAhead(build: Building, at: number): boolean {
  const token = build.tokens[at];
  if (token?.text !== "min" || token.glued || build.tokens[at + 1]?.kind !== tokenKind.number)
    return false;
  return build.tokens
    .slice(Math.max(0, at - 6), at + 6)
    .some((one) => /^(?:max|maximum|avg|average|peak|high)$/.test(one.text));
}

/** "450 w n2", "18.2 w both fans": with, where a thing follows that no watts are of. */
export function isWith(build: Building, at: number): boolean {
  const [token, next] = build.tokens.slice(at, at + 2);
  if (token?.text !== "w" || token.glued || build.typed.charAt(token.from) !== "w") return false;
  if (next?.kind === tokenKind.code) return true;
  const label = phraseAt(build.tokens, at + 1)?.word.label;
  // "465 w one fan"
  const counted = build.tokens[at + 2]?.word;
  if (/^(?:one|two|three|1|2|3)$/.test(next?.text ?? "") && counted?.label?.thing !== undefined)
    return true;
  return (
    next?.kind === tokenKind.word &&
    (/^(?:n2|the|a|an|no|both|all|just|only|everything|new|old|it|dry|coils?|doors?|panels?|lids?|filters?)$/.test(
      next.text,
    ) ||
      label?.thing !== undefined ||
      label?.quantity === "pressure")
  );
}

/** What stands before such a word is no article. */
const noNoun =
  role.is |
  role.article |
  role.preposition |
  role.conjunction |
  role.not |
  role.same |
  role.to |
  role.all |
  role.each |
  role.now |
  role.earlier |
  role.change |
  role.plan;

/** "found 2 a guy left"; "27.6 a on L3", "29.8 a comp 2 30.1" are amps. */
export function isArticle(build: Building, at: number): boolean {
  const [token, next, after] = build.tokens.slice(at, at + 3);
  if (token?.text !== "a" || build.typed.charAt(token.from) !== "a") return false;
  if (next?.kind !== tokenKind.word) return false;
  if (((next.word?.roles ?? 0) & noNoun) !== 0) return false;
  if (next.word?.label?.rating !== undefined) return false;
  // "w 8.1 a bus 341"
  const led = next.word?.noun !== undefined || next.word?.label !== undefined;
  return !led || after?.kind !== tokenKind.number;
}

/** "r to c 26.4 y to c 26.2 g 0": a thermostat's terminal, no unit of the number before it. */
export function terminalAhead(build: Building, at: number): boolean {
  const token = build.tokens[at];
  if (token === undefined || token.glued || !/^[gw]$/.test(token.text)) return false;
  if (build.tokens[at + 1]?.kind !== tokenKind.number) return false;
  const others = build.tokens.filter((one) => /^[rcyo]$/.test(one.text));
  return others.length >= 2;
}

/** "Pd 27.5 Ps 8.2 bar": beside the discharge's letters the suction's, no psi. */
export function gaugeAhead(build: Building, at: number): boolean {
  const token = build.tokens[at];
  if (token?.text !== "ps" || token.glued || build.tokens[at + 1]?.kind !== tokenKind.number)
    return false;
  return build.tokens.some((one) => one.text === "pd");
}

/** Is superheat or subcooling what comes next? */
export function heatBehind(build: Building, i: number): boolean {
  let at = i;
  while (/^(?:of|on|the|for)$/.test(build.tokens[at]?.text ?? "")) at++;
  const quantity = phraseAt(build.tokens, at)?.word.label?.quantity;
  const next = phraseAt(build.tokens, at)?.end ?? at;
  // "5 K on the superheat 9 on the subcooling", but "1.2 k superheat 9"
  if (at === i && build.tokens[next]?.kind === tokenKind.number) return false;
  return quantity === "superheat" || quantity === "subcooling";
}

/** "gauge set 128 and 390": what is read with, no setpoint. */
export function isTool(token: Token | undefined): boolean {
  return /^(?:gauges?|gages?|manifold)$/.test(token?.text ?? "");
}

/** "hp 28 lp 9": beside the other gauges HP is the high pressure, no heat pump. */
export function headPressure({ tokens, gauged, units }: Building, i: number): boolean {
  const figure = tokens[i + 1];
  if (tokens[i]?.text !== "hp" || figure?.kind !== tokenKind.number) return false;
  if (figure.glued === true || figure.value < 8) return false;
  if (gauged === true && units === "si") return true;
  return tokens.some(({ text }) => /^(?:lp|suct|suction|sh|sc|slt|llt)$/.test(text));
}
