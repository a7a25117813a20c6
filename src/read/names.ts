import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { pairName } from "./pair-name.ts";
import {
  bareTwo,
  commonToBoth,
  gluedPair,
  inPairs,
  letterPair,
  terminalPair,
} from "./pair-words.ts";
import { phraseAt } from "./phrase.ts";
import { pinPair } from "./pin-pair.ts";
import { amongPins, endsTerminals } from "./pins-around.ts";
import { pipingAt } from "./piping-at.ts";
import { goesOn, listJoint, numberPair, pinWord, plainOrdinal, plural } from "./point-list.ts";
import { inFamily, ofOutputs } from "./point-row.ts";
import {
  connector,
  groundAt,
  heardLetters,
  isGround,
  letterPoint,
  type Point,
  type PointsSaid,
  secondPoint,
  selfNamed,
} from "./point-words.ts";
import { railBehind, railNext } from "./rail-behind.ts";
import { railSigned } from "./rail-signed.ts";
import { statPair } from "./stat-pair.ts";
import { type Token, tokenKind } from "./token.ts";
import { toldOf } from "./told-of.ts";
import { rowOfOutputs } from "./unit-or-word.ts";
import { isVolts } from "./volts-to-ground.ts";
import { role } from "./word.ts";

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
  const rail = railBehind(build, first);
  if (rail !== undefined) return rail;
  const at = connector(build, first.end) ?? acrossAnd(build, first.end);
  if (at === undefined) return undefined;
  const ground = groundAt(build, at) ?? pipingAt(build, at);
  if (ground !== undefined) return { second: "ground", end: ground, family: first.family };
  const second = secondPoint(build, at, first.family);
  if (second === undefined) return undefined;
  // "between B and C": beside a phase's letter the third is a phase too
  const name = second.name === "C" && first.family === "abc" ? "phase C" : second.name;
  return { second: name, end: second.end, family: second.family };
}

/** Letters count as points where a partner or a family makes them so. */
function firstPoint(build: Building, i: number): Point | undefined {
  const own = selfNamed(build, i);
  if (own !== undefined) return own;
  const letter = letterPoint(build, i);
  if (letter !== undefined && (rowOfOutputs(build, i) || ofOutputs(build, i))) return letter;
  if (letter === undefined || endsTerminals(build, i) || isVolts(build, i)) return undefined;
  const longer =
    (phraseAt(build.tokens, i)?.end ?? 0) > i + 1 && letter.end === i + 1 && !railNext(build, i);
  if (longer && !amongPins(build, i)) return undefined;
  const token = build.tokens[i];
  if (pinGoesOn(build, letter)) return letter;
  if (build.tokens[i + 1]?.text === "/" && build.tokens[i + 2]?.text === "n" && token?.text === "s")
    return undefined;
  const sign = build.tokens[letter.end];
  const pair = pairEnd(build, letter);
  if (pair !== undefined && partner(build, letter, pair, sign)) return letter;
  if (token?.text === "y") return undefined;
  if (token?.text.length !== 1 && heardLetters[token?.text ?? ""] === undefined) return undefined;
  if (token !== undefined && token.text.length > 1) return undefined;
  return inFamily(build, i, letter) ? letter : undefined;
}

/** "common to ground 1.2 meg run 1.2 start 1.3": behind a pin to ground the others go on by their names. */
function pinGoesOn(build: Building, pin: Point): boolean {
  if (pin.name !== "R" && pin.name !== "S") return false;
  const begun = build.items.some((item) =>
    item.points?.some(([first = "", second]) => /^[CRS]$/.test(first) && second === "ground"),
  );
  if (!begun) return false;
  const is = (build.tokens[pin.end]?.word?.roles ?? 0) & role.is;
  const number = numberAt(build.tokens, is === 0 ? pin.end : pin.end + 1);
  if (number === undefined) return false;
  const unit = build.tokens[number.end]?.word?.unit?.dimension;
  return unit === undefined || unit === "resistance";
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

/** "L1/L2/L3" is a list, not a pair. */
function chain(build: Building, end: number, first: Point): boolean {
  const sign = build.tokens[end];
  const before = build.tokens[first.end];
  return sign?.kind === tokenKind.sign && sign.text === "/" && before?.text === "/" && sign.glued;
}

/** Points at token `i`: one, a pair, a list; or "to ground" alone. */
export function pointsAt(build: Building, i: number): PointsSaid | undefined {
  const letters =
    railSigned(build, i) ??
    gluedPair(build, i) ??
    letterPair(build, i) ??
    pinPair(build, i) ??
    terminalPair(build, i) ??
    statPair(build, i);
  if (letters !== undefined) return letters;
  const both = commonToBoth(build, i);
  if (both !== undefined) return both;
  const alone = groundAlone(build, i);
  if (alone !== undefined) return alone;
  const first = pointOrPair(build, i) ?? numberPair(build, i);
  if (first === undefined) return undefined;
  const list: (readonly string[])[] = [first.points];
  let end = first.end;
  const many = plural(build, i);
  const behind = build.items[build.items.length - 1];
  const led = behind?.text === "on" ? build.items[build.items.length - 2] : behind;
  const postfix = led !== undefined && (led.kind === itemKind.number || led.kind === itemKind.over);
  for (;;) {
    if (postfix && !many && build.tokens[end]?.text === ",") break;
    // "L3 OL, DC- side all ok": a rail behind a comma begins anew
    if (
      list[0]?.length === 1 &&
      build.tokens[end]?.text === "," &&
      build.tokens[end + 1]?.text === "dc"
    )
      break;
    const last = list[list.length - 1]?.[0] ?? "";
    const plain = many || goesOn(build, end) ? plainOrdinal(build, end, last) : undefined;
    const next =
      plain ??
      pointOrPair(build, listJoint(build, end), build.tokens[end]?.text === "/") ??
      pinWord(build, listJoint(build, end), last);
    if (next === undefined || beginsAnew(build, end, next.end) || nothingThere(build)) break;
    if (postfix && behind?.text === "on" && toldOf(build, next.end)) break;
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
    const [rail = ""] = first.points;
    if (
      rail.startsWith("DC") &&
      first.points.length === 2 &&
      next.points.length === 1 &&
      /^(?:[UVW]|L\d|phase [ABC])$/.test(next.points[0] ?? "")
    ) {
      list.push([rail, next.points[0] ?? ""]);
      end = next.end;
      continue;
    }
    if (
      next.points.length !== first.points.length &&
      !(next.points[1] === "ground" || next.points[1]?.startsWith("DC"))
    )
      break;
    list.push(next.points);
    end = next.end;
  }
  return bareTwo(build, i, list, end) ?? inPairs(list, end) ?? spread(list, end);
}

/** "nothing between L1 and L2 and L2 to L3 is 212": of what has nothing the next pair is none. */
function nothingThere({ items }: Building): boolean {
  const [before, nothing] = [items[items.length - 1], items[items.length - 2]];
  return (
    /^(?:between|across|btwn|on|from)$/.test(before?.text ?? "") &&
    ((nothing?.roles ?? 0) & (role.zero | role.not)) !== 0
  );
}

/** "same again on lead two and lead three's only forty", "same on T2, T3 was 3 meg": behind "same" a value begins the next. */
function beginsAnew(build: Building, joint: number, end: number): boolean {
  if (!/^(?:and|n|[,&])$/.test(build.tokens[joint]?.text ?? "")) return false;
  if (!build.items.slice(-3).some((item) => item.kind === itemKind.same)) return false;
  const [last, next] = build.tokens.slice(end - 1, end + 1);
  if (last?.apostrophe === true || next?.kind === tokenKind.number) return true;
  return ((next?.word?.roles ?? 0) & (role.is | role.only)) !== 0;
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
    // "the shell's up to 95" is the shell, no ground
    const warm = /^(?:at|is|was|reads|temp)$/.test(build.tokens[i + 2]?.text ?? "");
    if (token.text === "the" && (warm || build.tokens[i + 1]?.apostrophe === true))
      return undefined;
    const end = groundAt(build, i + 1);
    if (end !== undefined && build.tokens[i + 1]?.text !== "g") return { list: [], end };
    return undefined;
  }
  return isGround(token) ? { list: [], end: groundAt(build, i) ?? i + 1 } : undefined;
}
