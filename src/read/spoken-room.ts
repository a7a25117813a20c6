import type { Building } from "./items.ts";
import { group } from "./number-parts.ts";
import { numberAt } from "./numbers.ts";
import type { Ordinal } from "./ordinal.ts";
import { tokenKind } from "./token.ts";
import { plainUnitAt } from "./units.ts";
import { type Noun, role } from "./word.ts";

const roomed = /^(?:(?:indoor )?unit|VAV box)$/;

/** "unit two oh seven's at 82", "V A V two eleven's making 340": by its room's number, where a verb follows. */
export function spokenRoom(build: Building, i: number, noun: Noun): Ordinal | undefined {
  const box = noun.name === "VAV box" || (noun.kind === "tag" && isVav(build, i));
  if (!box && (noun.kind !== "subject" || !roomed.test(noun.name))) return undefined;
  const said = numberAt(build.tokens, i);
  if (said === undefined || !(said.value > 100 && said.value < 1000)) return undefined;
  if (!Number.isInteger(said.value) || said.loose === true) return undefined;
  const next = build.tokens[said.end];
  const verb = build.tokens[said.end - 1]?.apostrophe === true;
  const told = verb || ((next?.word?.roles ?? 0) & role.is) !== 0;
  if (box && said.end > i + 1) {
    const measured = !told && plainUnitAt(build, said.end) !== undefined;
    return measured ? undefined : { text: String(said.value), end: said.end };
  }
  const oh = said.end === i + 3 && build.tokens[i + 1]?.word?.number?.kind === "oh";
  return oh && told ? { text: String(said.value), end: said.end } : undefined;
}

function isVav(build: Building, i: number): boolean {
  return build.tokens[i - 1]?.text === "vav";
}

/** "unit twelve dash three": the second part of its name. */
export function dashed(build: Building, found: Ordinal, noun: Noun): Ordinal | undefined {
  if (build.tokens[found.end]?.text !== "dash") return undefined;
  if (noun.kind !== "tag" && !roomed.test(noun.name)) return undefined;
  const typed = build.tokens[found.end + 1];
  if (typed?.kind === tokenKind.number && /^\d{1,3}$/.test(typed.text))
    return { text: `${found.text}-${typed.text}`, end: found.end + 2 };
  const part = group(build.tokens, found.end + 1);
  if (part === undefined || part.kind === "oh") return undefined;
  return { text: `${found.text}-${part.value}`, end: part.end };
}

/** Cel that a room may have, and the air that is blown into it; common practice, no source. */
const [coldest, warmest] = [12, 45];
const [coldAir, warmAir] = [5, 35];

/** "room's twenty six", "supply 18.5 room 22": how warm a room is, where its number would stand. */
export function isCelsius({ tokens }: Building, i: number, value: number): boolean {
  if (value < coldest || value > warmest) return false;
  if (tokens[i - 1]?.apostrophe === true || tokens[i]?.text === "is") return true;
  const [air, figure] = [tokens[i - 3], tokens[i - 2]];
  const place = air?.word?.label?.place;
  if (place !== "supply_air" && place !== "return_air") return false;
  return figure?.kind === tokenKind.number && figure.value >= coldAir && figure.value <= warmAir;
}

/** "room 3.07 setpoint 22": storey and door; no room is as cold, and none is read to hundredths. */
export function dottedRoom({ tokens }: Building, i: number): Ordinal | undefined {
  const [kind, noun, number] = [tokens[i - 2], tokens[i - 1], tokens[i]];
  if (!/^(?:room|rm|suite)$/.test(noun?.text ?? "")) return undefined;
  if (/^(?:cold|cool|cooling|chill|freezer|freezing|strong)$/.test(kind?.text ?? ""))
    return undefined;
  // "room twelve point oh four"
  const said = number?.word?.number === undefined ? undefined : numberAt(tokens, i);
  const [text, end] = said === undefined ? [number?.text, i + 1] : [String(said.value), said.end];
  const next = tokens[end];
  const typed = said !== undefined || number?.kind === tokenKind.number;
  const named = typed && /^(?:\d\.\d\d|\d\d\.0\d)$/.test(text ?? "");
  const degrees = next?.glued === true && next.text !== "," && next.text !== ":";
  return named && text !== undefined && !degrees ? { text, end } : undefined;
}
