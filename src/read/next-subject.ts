import { type Item, itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";
import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Rooms are numbered with so many figures, floor and number. */
const rooms = /^\d{3,4}$/;

interface Next {
  readonly name: string;
  readonly token: Token;
}

function digitOf(token: Token): number {
  if (token.kind === tokenKind.number && token.text.length === 1) return token.value;
  return token.word?.number?.kind === "ones" ? token.word.number.value : 0;
}

/** "comp 1 and 2 amps 14 and 15": behind the unit's word stand the values, so the digit is none. */
function namesQuantity(build: Building, at: number): boolean {
  const [word, value] = [build.tokens[at], build.tokens[at + 1]];
  return word?.word?.unit !== undefined && value?.kind === tokenKind.number && !value.glued;
}

/** Items behind the last name that a clause has at most. */
const CLAUSE = 8;

/** "compressors 1 and 2 at 22 A": one value for both, where nothing else is counted. */
function oneForBoth(build: Building, at: number, said: string): boolean {
  if (!/s \d$/.test(said)) return false;
  let numbers = 0;
  for (const token of build.tokens.slice(at, at + CLAUSE)) {
    if (token.kind === tokenKind.line) break;
    if (token.kind === tokenKind.number || token.word?.number !== undefined) numbers++;
  }
  const next = build.tokens[at];
  return numbers === 1 && next?.kind === tokenKind.word && next.word?.unit === undefined;
}

/** "fan 1 and 2 both": the next number of the same noun, where a verb or "both" follows. */
function nextNumber(build: Building, last: Item, at: number): Next | undefined {
  const said = build.typed.slice(last.from, last.to);
  const named = (last.roles & role.clock) !== 0 ? said : (last.subject ?? "");
  const match = /^(\D+ )(\d)$/.exec(named);
  const token = build.tokens[at];
  if (match === null || token === undefined) return undefined;
  const value = digitOf(token);
  const roles = build.tokens[at + 1]?.word?.roles ?? 0;
  const follows =
    (roles & (role.is | role.all | role.same | role.each)) !== 0 ||
    (value === Number(match[2]) + 1 &&
      (namesQuantity(build, at + 1) || oneForBoth(build, at + 1, said)));
  return value > Number(match[2]) && follows ? { name: `${match[1]}${value}`, token } : undefined;
}

/** "comp A and B": the next letter, typed as a name, unless it begins a pair or a phase. */
function nextLetter(build: Building, named: string, at: number): Next | undefined {
  const match = /^(\D+ )([A-G])$/.exec(named);
  const token = build.tokens[at];
  if (match === null || token?.kind !== tokenKind.word) return undefined;
  const letter = build.typed.slice(token.from, token.to);
  const behind = build.tokens[at + 1]?.text ?? "";
  if (!/^[B-H]$/.test(letter) || letter <= (match[2] ?? "")) return undefined;
  if (/^(?:phase|leg|to|-|\/|lead|g|gnd|ground)$/.test(behind)) return undefined;
  return { name: `${match[1]}${letter}`, token };
}

/** "rm 118 and 120": a room of as many figures, where no unit follows. */
function nextRoom(build: Building, said: string, at: number): Next | undefined {
  const match = /^rooms? (\d{3,4})$|^rms? (\d{3,4})$/.exec(said.toLowerCase());
  const token = build.tokens[at];
  const first = match?.[1] ?? match?.[2] ?? "";
  if (token?.kind !== tokenKind.number || !rooms.test(token.text)) return undefined;
  if (token.text.length !== first.length) return undefined;
  const behind = build.tokens[at + 1];
  if (behind?.word?.unit !== undefined || behind?.glued === true) return undefined;
  return { name: "", token };
}

/** The next of what was named last: a number, a letter, a room behind "and". */
export function nextSubject(build: Building, i: number): number {
  const joint = build.tokens[i];
  if (joint === undefined || !/^(?:and|&|n)$/.test(joint.text)) return 0;
  const last = build.items[build.items.length - 1];
  if (last?.kind !== itemKind.subject) return 0;
  const aside = (last.roles & role.clock) !== 0;
  const said = build.typed.slice(last.from, last.to);
  const next =
    nextNumber(build, last, i + 1) ??
    (aside ? nextRoom(build, said, i + 1) : nextLetter(build, last.subject ?? "", i + 1));
  if (next === undefined) return 0;
  const word = newItem(itemKind.word, joint.from, joint.to, joint.text);
  const item = newItem(itemKind.subject, next.token.from, next.token.to, next.token.text);
  item.subject = aside ? "" : next.name;
  if (aside) item.roles = role.clock;
  item.label = last.label;
  build.items.push(word, item);
  return i + 2;
}
