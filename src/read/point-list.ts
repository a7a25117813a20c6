import { digitOf, digitPair, pairsAreVolts } from "./digit-pairs.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { phraseAt } from "./phrase.ts";
import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** May a list go on here: ",", "/", "and", or nothing between? */
export function listJoint(build: Building, i: number): number {
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
export function plainOrdinal(
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
  // "lead one and three are over 500"
  const is = (build.tokens[at + 1]?.word?.roles ?? 0) & role.is;
  const skips = at > i && digits > Number(match[2]) && is !== 0;
  if (digits !== Number(match[2]) + 1 && !skips) return undefined;
  return { points: [`${match[1]}${digits}`], end: at + 1 };
}

/** "lead 1,2,3 all 1.8 gig": digits strung together by commas, none of them with a unit. */
function strungOn({ tokens }: Building, i: number): boolean {
  const [before, comma, digit, next] = tokens.slice(i - 1, i + 3);
  if (comma?.text !== "," || !comma.glued || digit?.glued !== true) return false;
  if (!/^[1-3]$/.test(before?.text ?? "") || !/^[2-4]$/.test(digit.text)) return false;
  return next?.word?.unit === undefined;
}

/** "lead 2 and 3 same", "lead 1 & 2 pegged": a digit behind "and" that no unit follows is the next point. */
export function goesOn(build: Building, i: number): boolean {
  if (strungOn(build, i)) return true;
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
export function pinWord(
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

export function plural(build: Building, i: number): boolean {
  const text = build.tokens[i]?.text ?? "";
  return text === "leads" || text === "legs" || text === "phases" || text === "terminals";
}

/** "and one to three is 483", "2-3 484": legs by number, where legs or terminals are being measured. */
export function numberPair(
  build: Building,
  i: number,
): { points: readonly string[]; end: number } | undefined {
  const family =
    build.family === "L" || build.family === "T"
      ? build.family
      : build.family === "lead"
        ? "lead "
        : phases(build)
          ? "phase "
          : groundedDigit(build, i)
            ? "lead "
            : numbered(build, i);
  if (family === undefined) return undefined;
  const one = digitOf(build.tokens[i]);
  const joint = build.tokens[i + 1];
  const leads = family === "L" || family === "T" || family === "lead " ? family : "lead ";
  if (one !== 0 && groundedDigit(build, i))
    return { points: [`${leads}${one}`, "ground"], end: i + 3 };
  const two = digitOf(build.tokens[i + 2]);
  const across = /^(?:across|between|btwn)$/.test(build.items[build.items.length - 1]?.text ?? "");
  if (
    across &&
    one !== 0 &&
    two !== 0 &&
    one !== two &&
    /^(?:and|&|to|n|\/)$/.test(joint?.text ?? "")
  )
    return { points: [`${family}${one}`, `${family}${two}`], end: i + 3 };
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

/** "phase one to two 471, two to three 468": phases by number. */
function phases(build: Building): boolean {
  if (build.family !== "phase") return false;
  return build.items.some((item) => /^phase \d$/.test(item.points?.[0]?.[1] ?? ""));
}

/** "1-g 220 2-g 215": leads by number alone to ground, where another stands so. */
function groundedDigit(build: Building, i: number): boolean {
  const tokens = build.tokens.slice(Math.max(0, i - 12), i + 16);
  const at = (one: Token | undefined, dash: Token | undefined, end: Token | undefined): boolean =>
    one?.kind === tokenKind.number &&
    digitOf(one) > 0 &&
    dash?.text === "-" &&
    dash.glued &&
    end?.glued === true &&
    /^(?:g|gnd|grd|ground|e|earth)$/.test(end.text);
  if (!at(build.tokens[i], build.tokens[i + 1], build.tokens[i + 2])) return false;
  return tokens.filter((one, k) => at(one, tokens[k + 1], tokens[k + 2])).length > 1;
}

/** "1-2 OL, 2-3 0.6, 1-3 OL": pairs by number alone, where they are three or their test is named. */
function numbered(build: Building, i: number): string | undefined {
  const { tokens } = build;
  if (/^(?:across|between|btwn)$/.test(build.items[build.items.length - 1]?.text ?? "")) return "L";
  if (digitPair(tokens, i)) return pairsAreVolts(tokens) ? "L" : "T";
  if (tokens[i + 1]?.text !== "-" || tokens[i + 2]?.glued !== true) return undefined;
  const pairs = tokens.filter(
    (token, at) =>
      token.kind === tokenKind.number &&
      digitOf(token) > 0 &&
      tokens[at + 1]?.text === "-" &&
      tokens[at + 1]?.glued === true &&
      digitOf(tokens[at + 2]) > 0 &&
      tokens[at + 3]?.text !== "-",
  );
  if (pairs.length < 2) return undefined;
  return pairsAreVolts(tokens) ? "L" : "T";
}
