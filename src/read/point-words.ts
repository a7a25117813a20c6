import { amongGauges } from "./among-gauges.ts";
import { canSays } from "./can-says.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { ordinalAt } from "./ordinal.ts";
import { phraseAt } from "./phrase.ts";
import { type Token, tokenKind } from "./token.ts";
import { type Noun, role } from "./word.ts";

export interface Point {
  readonly name: string;
  readonly end: number;
  readonly family: string;
}

export interface PointsSaid {
  readonly list: readonly (readonly string[])[];
  readonly end: number;
}

const letterFamilies: Readonly<Record<string, string>> = {
  a: "abc",
  b: "abc",
  c: "abc csr",
  u: "uvw",
  v: "uvw",
  w: "uvw",
  s: "csr",
  r: "csr",
  t: "rst",
  n: "n",
  // a thermostat's terminal, beside its common
  y: "csr",
};

function named(noun: Noun, ordinal: string): string {
  if (noun.name === "L" || noun.name === "T") return noun.name + ordinal;
  if (noun.name === "terminal") return ordinal;
  return `${noun.name} ${ordinal}`;
}

/** "the phases three ninety eight", "the other leg's one ninety eight": a value begins there, no ordinal. */
function valueOfAll(build: Building, i: number): boolean {
  const noun = build.tokens[i - 1]?.text ?? "";
  // "line to line two oh eight"
  const across = build.tokens[i - 2]?.text === "to" && build.tokens[i - 3]?.text === noun;
  const verb = build.tokens[i - 1]?.apostrophe === true;
  if (!across && !verb && !/^(?:phases|legs|leads|terminals)$/.test(noun)) return false;
  if (build.tokens[i]?.word?.number?.kind !== "ones") return false;
  const next = build.tokens[i + 1]?.word?.number?.kind;
  return next === "tens" || next === "teen" || next === "oh" || next === "hundred";
}

/** "positive to U", "minus to you", "bus - to U": a rail, where an output's letter or a leg stands behind "to". */
function railTo(build: Building, i: number): Point | undefined {
  const text = build.tokens[i]?.text ?? "";
  const bus = text === "dc" ? i + 1 : i;
  if (/^(?:bus|link|rail)$/.test(build.tokens[bus]?.text ?? "")) return signedRail(build, bus + 1);
  const [joint, other] = [build.tokens[i + 1]?.text ?? "", build.tokens[i + 2]?.text ?? ""];
  // "P-U .41 N-U .42": the bus as a module's terminals are lettered
  if (/^[pn]$/.test(text) && (joint === "-" || joint === "to") && /^[uvw]$/.test(other))
    return { name: text === "n" ? "DC-" : "DC+", end: i + 1, family: "dc" };
  if (!/^(?:positive|negative|plus|minus)$/.test(text) || build.tokens[i + 1]?.text !== "to")
    return undefined;
  const leg =
    /^[lt]$/.test(other) && /^(?:[123]|one|two|three)$/.test(build.tokens[i + 3]?.text ?? "");
  if (!leg && !/^(?:[uvw]|you|yew|vee|double|[lt][123])$/.test(other)) return undefined;
  return { name: /^[mn]/.test(text) ? "DC-" : "DC+", end: i + 1, family: "dc" };
}

/** "+ to U", "- to L1" */
function signedRail({ tokens }: Building, i: number): Point | undefined {
  const sign = tokens[i]?.text;
  const joint = tokens[i + 1]?.text ?? "";
  if (sign !== "+" && sign !== "-") return undefined;
  if (!/^(?:to|-|\/)$/.test(joint) || !/^(?:[uvw]|uvw|[lt][123])$/.test(tokens[i + 2]?.text ?? ""))
    return undefined;
  return { name: sign === "-" ? "DC-" : "DC+", end: i + 1, family: "dc" };
}

/** "600 plus to ground", "T1 550 plus to the frame": at least so much, no rail, which has nothing to ground in megohms. */
export function plusToGround(build: Building, i: number): boolean {
  const [to, first, second] = build.tokens.slice(i + 1, i + 4);
  const article = ((first?.word?.roles ?? 0) & role.article) !== 0;
  const end = article ? second : first;
  const ground = ((end?.word?.roles ?? 0) & role.ground) !== 0 || isMetal(end?.text ?? "");
  return to?.text === "to" && ground && !build.tokens.some(({ text }) => /^(?:dc|bus)$/.test(text));
}

/** "return minus .35 supply plus .42", "plate plus lines is 10.2": a sign or "and", where no bridge is spoken of. */
function plusSign(build: Building, i: number): boolean {
  if (build.tokens[i]?.text !== "plus") return false;
  return !build.tokens.some(({ text }) =>
    /^(?:diode|diodes|bridge|rectifier|module|ipm|igbt|igbts|dc|bus|rail|rails|negative|[uvwlt]|[lt][123])$/.test(
      text,
    ),
  );
}

/** "T1", "lead two", "phase A", "common": a point that names itself. */
export function selfNamed(build: Building, i: number): Point | undefined {
  const token = build.tokens[i];
  if (
    token?.kind === tokenKind.word &&
    /^[abc]$/.test(token.text) &&
    build.tokens[i + 1]?.text === "phase" &&
    !/^[a-c]$/.test(build.tokens[i + 2]?.text ?? "")
  )
    return { name: `phase ${token.text.toUpperCase()}`, end: i + 2, family: "phase" };
  const rail = railTo(build, i);
  if (rail !== undefined) return rail;
  if (plusSign(build, i)) return undefined;
  const phrase = phraseAt(build.tokens, i);
  const noun = phrase?.word.noun;
  if (phrase !== undefined && noun?.kind === "point") {
    const ordinal = ordinalAt(build, phrase.end, noun);
    if (ordinal === undefined || !/^[1-9A-HUVWRSTN]/.test(ordinal.text)) return undefined;
    if (valueOfAll(build, phrase.end)) return undefined;
    if (noun.name === "L" && amongGauges(build.tokens, i, ordinal.end)) return undefined;
    if (
      noun.name === "L" &&
      noun.upTo === 3 &&
      token?.text === "line" &&
      build.tokens[ordinal.end]?.word?.number !== undefined &&
      phraseAt(build.tokens, i - 1)?.end === i + 1
    )
      return undefined;
    return { name: named(noun, ordinal.text), end: ordinal.end, family: noun.name };
  }
  if (
    phrase?.word.point !== undefined &&
    !sharedPipe(build, i) &&
    (phrase.word.point.startsWith("DC") || phrase.word.point === "N" || phrase.word.point === "C")
  )
    return {
      name: phrase.word.point,
      end: phrase.end,
      family: phrase.word.point.startsWith("DC") ? "dc" : "csr",
    };
  return undefined;
}

export function isGround(token: Token | undefined): boolean {
  return ((token?.word?.roles ?? 0) & role.ground) !== 0;
}

const metal: ReadonlySet<string> = new Set([
  "case",
  "shell",
  "body",
  "housing",
  "can",
  "frame",
  "cabinet",
  "chassis",
  "casing",
  "copper",
  "dome",
]);

export function isMetal(text: string): boolean {
  return metal.has(text);
}

/** What "to …" makes the ground: "T1 to case", "to the shell". */
function groundNoun(token: Token | undefined): boolean {
  return isGround(token) || metal.has(token?.text ?? "");
}

/** "g" stands for ground only glued or behind a connector. */
export function groundAt(build: Building, i: number): number | undefined {
  const phrase = phraseAt(build.tokens, i);
  if (phrase !== undefined && (phrase.word.roles & role.ground) !== 0) return phrase.end;
  const token = build.tokens[i];
  if (token?.text === "the" && groundNoun(build.tokens[i + 1]))
    return canSays(build.tokens, i + 1) ? undefined : i + 2;
  if (groundNoun(token)) return canSays(build.tokens, i) ? undefined : i + 1;
  if (token?.text === "g") return i + 1;
  // "N-E"
  const [live, joint] = [build.tokens[i - 2]?.text ?? "", build.tokens[i - 1]];
  const earth = token?.text === "e" && joint?.text === "-" && token.glued;
  return earth && /^(?:n|l|l[123]|[uvw])$/.test(live) ? i + 1 : undefined;
}

/** What a phone writes for a letter; read so only in pairs. */
export const heardLetters: Readonly<Record<string, string>> = {
  you: "u",
  yew: "u",
  see: "c",
  sea: "c",
  are: "r",
  our: "r",
  ess: "s",
  vee: "v",
  be: "b",
  bee: "b",
};

/** "the common pipe": of several rooms, no common terminal. */
function sharedPipe({ tokens }: Building, i: number): boolean {
  const pipe = /^(?:suction|discharge|liquid|gas|vapor|hot|line|pipe|header|duct|return|supply)$/;
  return tokens[i]?.text === "common" && pipe.test(tokens[i + 1]?.text ?? "");
}

/** A letter or a word that is a point only beside another point. */
export function letterPoint(build: Building, i: number): Point | undefined {
  const token = build.tokens[i];
  // "cap n/a": not there, and no neutral to phase A
  const notThere = token?.text === "n" && /^\/a\b/.test(build.typed.slice(token.to, token.to + 3));
  if (token === undefined || sharedPipe(build, i) || notThere) return undefined;
  if (token.text === "double" && heardLetters[build.tokens[i + 1]?.text ?? ""] === "u")
    return { name: "W", end: i + 2, family: "uvw" };
  const spelled = heardLetters[token.text] ?? token.text;
  const family = letterFamilies[spelled];
  if (family !== undefined) {
    const letter = spelled.toUpperCase();
    const phased = build.family.startsWith("phase") || build.family.startsWith("abc");
    if (
      spelled === "a" ||
      spelled === "b" ||
      (spelled === "c" && phased && !build.family.startsWith("csr"))
    )
      return { name: `phase ${letter}`, end: i + 1, family: "abc" };
    return { name: letter, end: i + 1, family: spelled === "c" ? "csr" : family };
  }
  const point = phraseAt(build.tokens, i);
  if (point?.word.point !== undefined && point.word.point !== "hot")
    return { name: point.word.point, end: point.end, family: "csr" };
  return undefined;
}

/** Behind a first point: "-", "/", "to" and where the second begins. */
export function connector(build: Building, i: number): number | undefined {
  const token = build.tokens[i];
  if (token?.kind === tokenKind.sign) {
    if (token.text === "-" || token.text === "/" || token.text === "→") return i + 1;
    return undefined;
  }
  const roles = token?.word?.roles ?? 0;
  if ((roles & role.to) !== 0 && token?.text !== "from") return i + 1;
  if (
    token?.text === "against" ||
    token?.text === "vs" ||
    token?.text === "ta" ||
    (token?.text === "too" && build.tokens[i + 1]?.text.length === 1) ||
    token?.text === "2"
  )
    return i + 1;
  return undefined;
}

function railed(family: string): boolean {
  return family === "L" || family === "T" || family === "uvw" || family === "abc";
}

export function secondPoint(build: Building, i: number, family: string): Point | undefined {
  const sign = build.tokens[i]?.text;
  // "U to + .52", and no "to -.52"
  const alone = build.tokens[i - 1]?.text === "to" && build.tokens[i + 1]?.glued !== true;
  if (alone && (sign === "+" || sign === "-") && railed(family))
    return { name: sign === "-" ? "DC-" : "DC+", end: i + 1, family: "dc" };
  if (
    (sign === "minus" || sign === "negative" || sign === "plus" || sign === "positive") &&
    railed(family)
  )
    return { name: /^[mn]/.test(sign) ? "DC-" : "DC+", end: i + 1, family: "dc" };
  if (sign === "p" && railed(family)) return { name: "DC+", end: i + 1, family: "dc" };
  if (sign === "n" && family === "uvw") return { name: "DC-", end: i + 1, family: "dc" };
  const own = selfNamed(build, i) ?? letterPoint(build, i);
  if (own !== undefined) return own;
  const token = build.tokens[i];
  const value =
    token?.kind === tokenKind.number && !token.text.includes(".")
      ? token.value
      : token?.word?.number?.kind === "ones"
        ? token.word.number.value
        : 0;
  if (
    (family === "L" || family === "T" || family === "lead") &&
    value >= 1 &&
    value <= 9 &&
    token?.kind === tokenKind.number &&
    token.glued
  )
    return { name: family === "lead" ? `lead ${value}` : `${family}${value}`, end: i + 1, family };
  // "lead 1 to 2 .61": a value of its own behind the second
  const valued = build.tokens[i - 1]?.text === "to" && numberAt(build.tokens, i + 1) !== undefined;
  if (
    (family === "L" || family === "T" || family === "lead" || family === "phase") &&
    value >= 1 &&
    value <= 3 &&
    (token?.kind === tokenKind.word || (token?.kind === tokenKind.number && valued))
  )
    return {
      name: family === "lead" || family === "phase" ? `${family} ${value}` : `${family}${value}`,
      end: i + 1,
      family,
    };
  return undefined;
}
