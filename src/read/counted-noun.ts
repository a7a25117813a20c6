import { itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";
import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Things that stand in rows and have no list of names of their own; as they are said, and their name. */
const nouns: ReadonlyMap<string, string> = new Map(
  Object.entries({
    bank: "heater bank",
    element: "element",
    cassette: "cassette",
    coil: "coil",
    valve: "valve",
    section: "section",
    diffuser: "diffuser",
    register: "register",
    grille: "grille",
    grill: "grille",
    vent: "vent",
    burner: "burner",
    tube: "tube",
    sensor: "sensor",
    probe: "probe",
    thermistor: "thermistor",
    transducer: "transducer",
    solenoid: "solenoid",
    contactor: "contactor",
    capacitor: "capacitor",
    cap: "capacitor",
    transformer: "transformer",
    filter: "filter",
    bearing: "bearing",
    string: "string",
    branch: "branch",
    handler: "air handler",
    drop: "drop",
    loop: "loop",
    nozzle: "nozzle",
    damper: "damper",
  }),
);

/** How far apart two of a row stand at most, in words. */
const FAR = 40;

/** The single digit that a token says; 0 where it is none. */
function digitOf(token: Token | undefined): number {
  const said = token?.word?.number;
  return said?.kind === "ones" ? said.value : 0;
}

/** Is another of the row named, as "bank two" beside "bank one"? */
function hasNeighbour(build: Building, i: number, digit: number): boolean {
  const noun = build.tokens[i - 1]?.text;
  const wanted = digit === 1 ? 2 : digit - 1;
  const to = Math.min(build.tokens.length, i + FAR);
  for (let at = Math.max(1, i - FAR); at < to; at++)
    if (build.tokens[at - 1]?.text === noun && digitOf(build.tokens[at]) === wanted) return true;
  return false;
}

/** Does a value stand close behind: "is twelve", "reads open"? */
function hasValue(build: Building, i: number, noun: string): boolean {
  for (let at = i + 1; at <= i + 4; at++) {
    const token = build.tokens[at];
    if (token === undefined || token.kind === tokenKind.line || token.text === noun) return false;
    if (token.kind === tokenKind.number || token.word?.number !== undefined) return true;
    if (((token.word?.roles ?? 0) & role.over) !== 0) return true;
  }
  return false;
}

/**
 * "heater bank one eleven point eight, bank two twelve": a thing that is counted on names each of its row,
 * so the digit is no part of the figure behind it. Returns the token behind, 0 where it is none.
 */
export function countedNoun(build: Building, i: number): number {
  const [before, token, next] = [build.tokens[i - 1], build.tokens[i], build.tokens[i + 1]];
  const name = nouns.get(before?.text ?? "");
  const digit = digitOf(token);
  if (name === undefined || digit === 0 || token === undefined || before?.apostrophe === true)
    return 0;
  const glued = next?.kind === tokenKind.sign && next.glued;
  if (next === undefined || glued || /^(?:point|hundred|thousand|and)$/.test(next.text)) return 0;
  if (!hasNeighbour(build, i, digit)) return 0;
  const item = newItem(itemKind.subject, token.from, token.to, token.text);
  // "filter two is clean": the digit is its name, and no value goes with it
  const valued = hasValue(build, i, before?.text ?? "");
  item.subject = valued ? `${name} ${digit}` : "";
  if (!valued) item.roles = role.clock;
  item.apostrophe = token.apostrophe;
  build.items.push(item);
  return i + 1;
}
