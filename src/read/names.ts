import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import type { Label } from "./label.ts";
import { numberAt } from "./numbers.ts";
import { ordinalAt } from "./ordinal.ts";
import { phraseAt } from "./phrase.ts";
import { type Token, tokenKind } from "./token.ts";
import { type Noun, role } from "./word.ts";

/** Electrical points as said: a list of single points or pairs; empty for "to ground" alone. */
export interface PointsSaid {
  readonly list: readonly (readonly string[])[];
  readonly end: number;
}

export interface SubjectSaid {
  readonly name: string;
  readonly end: number;
  readonly label: Label | undefined;
  /** a room, a door, a panel: takes its number away, says nothing of a reading */
  readonly aside: boolean;
}

interface Point {
  readonly name: string;
  readonly end: number;
  readonly family: string;
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
  n: "n",
};

function named(noun: Noun, ordinal: string): string {
  if (noun.name === "L" || noun.name === "T") return noun.name + ordinal;
  if (noun.name === "terminal") return ordinal;
  return `${noun.name} ${ordinal}`;
}

/** "T1", "lead two", "phase A", "common": a point that names itself. */
function selfNamed(build: Building, i: number): Point | undefined {
  const token = build.tokens[i];
  if (
    token?.kind === tokenKind.word &&
    /^[abc]$/.test(token.text) &&
    build.tokens[i + 1]?.text === "phase" &&
    !/^[a-c]$/.test(build.tokens[i + 2]?.text ?? "")
  )
    return { name: `phase ${token.text.toUpperCase()}`, end: i + 2, family: "phase" };
  const phrase = phraseAt(build.tokens, i);
  const noun = phrase?.word.noun;
  if (phrase !== undefined && noun?.kind === "point") {
    const ordinal = ordinalAt(build, phrase.end, noun);
    if (ordinal === undefined || !/^[1-9A-HUVWRSTN]/.test(ordinal.text)) return undefined;
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
    (phrase.word.point.startsWith("DC") || phrase.word.point === "N" || phrase.word.point === "C")
  )
    return {
      name: phrase.word.point,
      end: phrase.end,
      family: phrase.word.point.startsWith("DC") ? "dc" : "csr",
    };
  return undefined;
}

function isGround(token: Token | undefined): boolean {
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
function groundAt(build: Building, i: number): number | undefined {
  const phrase = phraseAt(build.tokens, i);
  if (phrase !== undefined && (phrase.word.roles & role.ground) !== 0) return phrase.end;
  const token = build.tokens[i];
  if (token?.text === "the" && groundNoun(build.tokens[i + 1])) return i + 2;
  if (groundNoun(token)) return i + 1;
  return token?.text === "g" ? i + 1 : undefined;
}

/** What a phone writes for a letter; read so only in pairs. */
const heardLetters: Readonly<Record<string, string>> = {
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

/** A letter or a word that is a point only beside another point. */
function letterPoint(build: Building, i: number): Point | undefined {
  const token = build.tokens[i];
  if (token === undefined) return undefined;
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
function connector(build: Building, i: number): number | undefined {
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
    token?.text === "2"
  )
    return i + 1;
  return undefined;
}

function secondPoint(build: Building, i: number, family: string): Point | undefined {
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
  if (
    (family === "L" || family === "T" || family === "lead") &&
    value >= 1 &&
    value <= 3 &&
    token?.kind === tokenKind.word
  )
    return { name: family === "lead" ? `lead ${value}` : `${family}${value}`, end: i + 1, family };
  return undefined;
}

/** "across L1 and L2", "between T1 and T2": here "and" makes a pair. */
function acrossAnd(build: Building, i: number): number | undefined {
  if (build.tokens[i]?.text !== "and" && build.tokens[i]?.text !== "&") return undefined;
  const before = build.items[build.items.length - 1];
  const pins =
    /^(?:r|c|are|see)$/.test(build.tokens[i - 1]?.text ?? "") &&
    /^[rcy]$/.test(build.tokens[i + 1]?.text ?? "");
  if (pins && (before?.text === "at" || before?.text === "on")) return i + 1;
  return before?.text === "across" || before?.text === "between" || before?.text === "btwn"
    ? i + 1
    : undefined;
}

/** The second half of a pair, if one follows. */
function pairEnd(
  build: Building,
  first: Point,
): { second: string; end: number; family: string } | undefined {
  const glued = build.tokens[first.end];
  if (glued?.text === "g" && glued.glued)
    return { second: "ground", end: first.end + 1, family: first.family };
  if (
    glued?.text === "n" &&
    /^L\d/.test(first.name) &&
    numberAt(build.tokens, first.end + 1) !== undefined
  )
    return { second: "N", end: first.end + 1, family: first.family };
  if (isGround(glued) && glued?.kind === tokenKind.word)
    return {
      second: "ground",
      end: groundAt(build, first.end) ?? first.end + 1,
      family: first.family,
    };
  const at = connector(build, first.end) ?? acrossAnd(build, first.end);
  if (at === undefined) return undefined;
  const ground = groundAt(build, at);
  if (ground !== undefined) return { second: "ground", end: ground, family: first.family };
  const second = secondPoint(build, at, first.family);
  if (second === undefined) return undefined;
  return { second: second.name, end: second.end, family: second.family };
}

/** Letters count as points where a partner or a family makes them so. */
function firstPoint(build: Building, i: number): Point | undefined {
  const own = selfNamed(build, i);
  if (own !== undefined) return own;
  const letter = letterPoint(build, i);
  if (letter === undefined) return undefined;
  if ((phraseAt(build.tokens, i)?.end ?? 0) > i + 1 && letter.end === i + 1) return undefined;
  const token = build.tokens[i];
  if (build.tokens[i + 1]?.text === "/" && build.tokens[i + 2]?.text === "n" && token?.text === "s")
    return undefined;
  const sign = build.tokens[letter.end];
  const pair = pairEnd(build, letter);
  if (pair !== undefined && partner(build, letter, pair, sign)) return letter;
  if (token?.text.length !== 1 && heardLetters[token?.text ?? ""] === undefined) return undefined;
  if (token !== undefined && token.text.length > 1) return undefined;
  return inFamily(build, i, letter) ? letter : undefined;
}

function partner(
  build: Building,
  letter: Point,
  pair: { second: string; family: string },
  sign: Token | undefined,
): boolean {
  if (pair.second === "ground") return true;
  if (
    sign?.kind === tokenKind.sign &&
    sign.text === "/" &&
    build.tokens[letter.end + 1]?.glued !== true
  )
    return false;
  return pair.second !== letter.name && (pair.family === letter.family || pair.family.length <= 3);
}

/** "phase A … B …", "U V W 0.11": the letter stands in a row that has begun, or begins one in capitals. */
function inFamily(build: Building, i: number, letter: Point): boolean {
  const token = build.tokens[i];
  if (token === undefined) return false;
  const typed = build.typed.charAt(token.from);
  const capital = typed !== token.text;
  const begun =
    build.family.slice(0, 3) === letter.family.slice(0, 3) ||
    (letter.family === "abc" && build.family.startsWith("phase"));
  if (begun && (capital || token.text !== "a")) return true;
  if (!capital) return false;
  if (numberRow(build, i)) return true;
  if (
    build.tokens[i - 1]?.text === "on" &&
    (letter.family === "abc" || letter.family === "uvw") &&
    build.tokens[i + 1]?.kind !== tokenKind.word
  )
    return true;
  const next = build.tokens[i + 1];
  if (letter.family === "uvw")
    return (
      next === undefined ||
      next.kind === tokenKind.number ||
      rowOf(build, i) ||
      next.word?.number !== undefined ||
      ((next.word?.roles ?? 0) & (role.is | role.conjunction | role.over)) !== 0 ||
      next.kind === tokenKind.sign
    );
  return rowOf(build, i);
}

/** "A 14.1 B 14.3 C 13.9": capitals of one family, each before a number. */
function numberRow(build: Building, i: number): boolean {
  let row = "";
  for (let at = i; at < i + 8 && row.length < 3; at++) {
    const token = build.tokens[at];
    if (token === undefined) break;
    if (token.kind === tokenKind.word && token.text.length === 1) {
      if (build.tokens[at + 1]?.kind !== tokenKind.number) return false;
      row += token.text;
    } else if (token.kind !== tokenKind.number && token.text !== "," && token.text !== "and")
      return false;
  }
  return row === "abc" || row === "uvw" || row === "csr" || row === "crs";
}

/** Three letters of one family in a row: "U V W", "A B C", "C S R". */
function rowOf(build: Building, i: number): boolean {
  let row = "";
  for (let at = i; at < i + 6 && row.length < 3; at++) {
    const token = build.tokens[at];
    if (token?.kind === tokenKind.word && token.text.length === 1) row += token.text;
    else if (token?.kind !== tokenKind.sign && token?.text !== "and") break;
  }
  return row === "uvw" || row === "abc" || row === "csr" || row === "crs" || row === "rsc";
}

function mark(build: Building, family: string, name: string): void {
  build.family =
    family === "abc" || family === "uvw" || family === "csr"
      ? family + name.slice(-1).toLowerCase()
      : family;
}

/** One point or pair at token `i`. */
function pointOrPair(
  build: Building,
  i: number,
  inRow = false,
): { points: readonly string[]; end: number } | undefined {
  const first = firstPoint(build, i);
  if (first === undefined) return undefined;
  const pair = pairEnd(build, first);
  if (
    pair === undefined ||
    chain(build, pair.end, first) ||
    (inRow && build.tokens[first.end]?.text === "/")
  ) {
    mark(build, first.family, first.name);
    return { points: [first.name], end: first.end };
  }
  mark(build, pair.family === "n" ? first.family : pair.family, pair.second);
  return { points: [pairName(first, pair), pair.second], end: pair.end };
}

/** "C to A" beside phases: the first letter is a phase when the second is. */
function pairName(first: Point, pair: { second: string }): string {
  return first.name === "C" && (pair.second === "phase A" || pair.second === "phase B")
    ? "phase C"
    : first.name;
}

/** "L1/L2/L3" is a list, not a pair. */
function chain(build: Building, end: number, first: Point): boolean {
  const sign = build.tokens[end];
  const before = build.tokens[first.end];
  return sign?.kind === tokenKind.sign && sign.text === "/" && before?.text === "/" && sign.glued;
}

/** May a list go on here: ",", "/", "and", or nothing between? */
function listJoint(build: Building, i: number): number {
  const token = build.tokens[i];
  if (
    token?.kind === tokenKind.sign &&
    (token.text === "," || token.text === "/" || token.text === "&")
  ) {
    const next = build.tokens[i + 1];
    return next?.text === "and" || next?.text === "&" ? i + 2 : i + 1;
  }
  return token?.text === "and" || token?.text === "&" || token?.text === "n" ? i + 1 : i;
}

/** "leads one two and three", "leads 1, 2 and 3": plain numbers go on a row of points. */
function plainOrdinal(
  build: Building,
  i: number,
  last: string,
): { points: readonly string[]; end: number } | undefined {
  const at = listJoint(build, i);
  const token = build.tokens[at];
  const match = /^(lead |phase |L|T)(\d)$/.exec(last);
  if (match === null || token === undefined) return undefined;
  const digits =
    token.kind === tokenKind.number && /^\d$/.test(token.text)
      ? token.value
      : token.word?.number?.kind === "ones"
        ? token.word.number.value
        : 0;
  if (digits !== Number(match[2]) + 1) return undefined;
  return { points: [`${match[1]}${digits}`], end: at + 1 };
}

/** "lead 2 and 3 same", "lead 1 & 2 pegged": a digit behind "and" that no unit follows is the next point. */
function goesOn(build: Building, i: number): boolean {
  const joint = build.tokens[i]?.text;
  if (joint !== "and" && joint !== "&" && joint !== "n") return false;
  const digit = build.tokens[i + 1];
  const next = build.tokens[i + 2];
  const small =
    digit?.kind === tokenKind.number ? digit.value <= 9 : digit?.word?.number?.kind === "ones";
  if (!small) return false;
  if (next === undefined) return true;
  const roles = next.word?.roles ?? 0;
  return (
    (roles & (role.is | role.same | role.over | role.all | role.to | role.only)) !== 0 ||
    next.text === "pegged" ||
    next.kind === tokenKind.line
  );
}

/** "common run and start": pins by their names, behind the first. */
function pinWord(
  build: Building,
  i: number,
  last: string,
): { points: readonly string[]; end: number } | undefined {
  if (last !== "C" && last !== "R" && last !== "S") return undefined;
  const phrase = phraseAt(build.tokens, i);
  const point = phrase?.word.point;
  if (phrase === undefined || (point !== "R" && point !== "S" && point !== "C") || point === last)
    return undefined;
  const next = build.tokens[phrase.end];
  const goes =
    next === undefined ||
    next.text === "and" ||
    next.text === "start" ||
    next.text === "all" ||
    next.text === "to" ||
    next.text === ",";
  return goes ? { points: [point], end: phrase.end } : undefined;
}

function plural(build: Building, i: number): boolean {
  const text = build.tokens[i]?.text ?? "";
  return text === "leads" || text === "legs" || text === "phases" || text === "terminals";
}

/** Points at token `i`: one, a pair, a list; or "to ground" alone. */
export function pointsAt(build: Building, i: number): PointsSaid | undefined {
  const alone = groundAlone(build, i);
  if (alone !== undefined) return alone;
  const first = pointOrPair(build, i) ?? numberPair(build, i);
  if (first === undefined) return undefined;
  const list: (readonly string[])[] = [first.points];
  let end = first.end;
  const many = plural(build, i);
  const behind = build.items[build.items.length - 1];
  const postfix =
    behind !== undefined && (behind.kind === itemKind.number || behind.kind === itemKind.over);
  for (;;) {
    if (postfix && !many && build.tokens[end]?.text === ",") break;
    const last = list[list.length - 1]?.[0] ?? "";
    const plain = many || goesOn(build, end) ? plainOrdinal(build, end, last) : undefined;
    const next =
      plain ??
      pointOrPair(build, listJoint(build, end), build.tokens[end]?.text === "/") ??
      pinWord(build, listJoint(build, end), last);
    if (next === undefined) break;
    if (
      list.length === 1 &&
      first.points.length === 1 &&
      first.points[0]?.startsWith("DC") === true &&
      next.points.length === 1 &&
      listJoint(build, end) === end
    ) {
      list[0] = [first.points[0], next.points[0] ?? ""];
      return { list, end: next.end };
    }
    if (
      next.points.length !== first.points.length &&
      !(next.points[1] === "ground" || next.points[1]?.startsWith("DC"))
    )
      break;
    list.push(next.points);
    end = next.end;
  }
  return spread(list, end);
}

/** "L1, L2 and L3 to ground": the ground belongs to each. */
function spread(list: readonly (readonly string[])[], end: number): PointsSaid {
  const last = list[list.length - 1];
  const rail = last?.[1];
  if (
    list.length > 1 &&
    rail?.startsWith("DC") === true &&
    list.slice(0, -1).every((points) => points.length === 1)
  )
    return { list: list.map((points) => [points[0] ?? "", rail]), end };
  if (
    list.length > 1 &&
    last?.[1] === "ground" &&
    list.slice(0, -1).every((points) => points.length === 1)
  )
    return { list: list.map((points) => [points[0] ?? "", "ground"]), end };
  return { list, end };
}

function groundAlone(build: Building, i: number): PointsSaid | undefined {
  const token = build.tokens[i];
  if (token === undefined) return undefined;
  if (
    token.text === "to" ||
    token.text === "2" ||
    token.text === "against" ||
    token.text === "from" ||
    token.text === "the"
  ) {
    const end = groundAt(build, i + 1);
    if (end !== undefined && build.tokens[i + 1]?.text !== "g") return { list: [], end };
    return undefined;
  }
  return isGround(token) ? { list: [], end: groundAt(build, i) ?? i + 1 } : undefined;
}

/** "and one to three is 483", "2-3 484": legs by number, where legs or terminals are being measured. */
function numberPair(
  build: Building,
  i: number,
): { points: readonly string[]; end: number } | undefined {
  const family =
    build.family === "L" || build.family === "T"
      ? build.family
      : build.family === "lead"
        ? "lead "
        : undefined;
  if (family === undefined) return undefined;
  const one = digitOf(build.tokens[i]);
  const joint = build.tokens[i + 1];
  const two = digitOf(build.tokens[i + 2]);
  if (one === 0 || joint === undefined) return undefined;
  const bareNext = digitOf(joint);
  if (
    bareNext !== 0 &&
    bareNext !== one &&
    build.items.some((item) => item.points?.[0]?.length === 2)
  ) {
    const value = numberAt(build.tokens, i + 2);
    if (value !== undefined && value.value >= 20)
      return { points: [`${family}${one}`, `${family}${bareNext}`], end: i + 2 };
  }
  const dash = joint.kind === tokenKind.sign && joint.text === "-" && joint.glued;
  if (two === 0 || one === two || (!dash && joint.text !== "to")) return undefined;
  const after = build.tokens[i + 3];
  const said = numberAt(build.tokens, i + 3);
  if (
    said === undefined &&
    ((after?.word?.roles ?? 0) & (role.is | role.over | role.same)) === 0 &&
    after?.text !== ":"
  )
    return undefined;
  return { points: [`${family}${one}`, `${family}${two}`], end: i + 3 };
}

function digitOf(token: Token | undefined): number {
  const value =
    token?.kind === tokenKind.number && token.text.length === 1
      ? token.value
      : token?.word?.number?.kind === "ones"
        ? token.word.number.value
        : 0;
  return value >= 1 && value <= 3 ? value : 0;
}

/** "compressor 2", "ckt A", "RTU-1", or an aside that keeps its number to itself: "room 412". */
export function subjectAt(build: Building, i: number): SubjectSaid | undefined {
  const phrase = phraseAt(build.tokens, i);
  const noun = phrase?.word.noun;
  if (phrase === undefined || noun === undefined || noun.kind === "point") return undefined;
  const ordinal = ordinalAt(build, phrase.end, noun);
  if (ordinal === undefined) return undefined;
  const from = build.tokens[i]?.from ?? 0;
  const to = build.tokens[ordinal.end - 1]?.to ?? from;
  if (noun.kind === "tag")
    return {
      name: tagName(build.typed.slice(from, to)),
      end: ordinal.end,
      label: undefined,
      aside: false,
    };
  if (noun.kind === "aside") return { name: "", end: ordinal.end, label: undefined, aside: true };
  return {
    name: `${noun.name} ${ordinal.text}`,
    end: ordinal.end,
    label: phrase.word.label,
    aside: false,
  };
}

/** A tag stays as typed, without a possessive ending. */
function tagName(typed: string): string {
  return typed.replace(/['’]s$/u, "");
}
