import { highSide, leastRatio, lowSide } from "./gauge-pair.ts";
import type { Item } from "./item.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import type { SubjectSaid } from "./subject-name.ts";
import { isNumber, tokenKind } from "./token.ts";

const gauges =
  /^(?:suct|suction|suc|head|disch|discharge|dis|liq|liquid|sst|sct|sh|sc|superheat|subcool|subcooling|sub|super|slt|llt|lp|hp|lo|low|hi|high|static|standing)$/;

const drawn =
  /^(?:amps|amp|amperage|draws|pulls|pulling|drawing|meg|megs|windings|winding|rla|lra|locked|wont|won't|hums|trips|ol)$/;

/** "c1 l1 22.4 l2 22.9": legs, or what only a motor has. */
function ofMotor(build: Building, at: number): boolean {
  const token = build.tokens[at];
  if (drawn.test(token?.text ?? "")) return true;
  return token?.text === "l" && build.tokens[at + 1]?.text === "1";
}

/** "c1 22a c2 0a", "c1 12 c2 13 amps": marks and figures alone, and amps in their row. */
function rowOfAmps(build: Building, from: number): boolean {
  for (let at = from; at < build.tokens.length && at < from + 24; at++) {
    const { kind, text, word } = build.tokens[at] ?? {
      kind: tokenKind.line,
      text: "",
      word: undefined,
    };
    if (/^(?:a|amp|amps)$/.test(text)) return at > from;
    const number = kind === tokenKind.number || word?.number !== undefined;
    const goes = number || eitherMark.test(text) || /^[,:=]$/.test(text);
    if (!goes) return false;
  }
  return false;
}

/** The figures right behind a mark, with strokes or commas between them, four at most. */
function figuresAt({ tokens }: Building, from: number): readonly number[] {
  const out: number[] = [];
  for (let at = from; out.length < 4; ) {
    const said = isNumber(tokens[at]) ? numberAt(tokens, at) : undefined;
    if (said !== undefined) out.push(said.value);
    else if (out.length === 0 || !/^[/,]$/.test(tokens[at]?.text ?? "")) break;
    at = said?.end ?? at + 1;
  }
  return out;
}

/** A, and how near the legs of one motor are to each other; common practice, no source. */
const mostAmps = 90;
const even = 0.8;

/** "c1 15.2 15.4 15.1 c2 15.8": three even legs such as only a motor draws. */
function isLegs(figures: readonly number[]): boolean {
  const [most, least] = [Math.max(...figures), Math.min(...figures)];
  return figures.length === 3 && least > 0 && least / most >= even && most <= mostAmps;
}

/** "c1 118/340 c2 121/338", "c1 s 118 h 340": both gauges of a circuit. */
function isGauges(build: Building, at: number, [left, right, more]: readonly number[]): boolean {
  const letter = build.tokens[at]?.text === "s" && build.tokens[at + 1]?.kind === tokenKind.number;
  if (letter && build.tokens[at + 2]?.text === "h") return true;
  if (left === undefined || right === undefined || more !== undefined) return false;
  const [low, high] = [lowSide[build.units], highSide[build.units]];
  const fits = left >= low[0] && left <= low[1] && right >= high[0] && right <= high[1];
  return fits && right >= left * leastRatio;
}

/** Does what is read of a circuit stand right before its mark? */
function behindGauge(items: readonly Item[]): boolean {
  const at = /^(?:on|of|for|:)$/.test(items.at(-1)?.text ?? "") ? -2 : -1;
  return gauges.test(items.at(at)?.text ?? "");
}

function figureBehind({ tokens }: Building, end: number): boolean {
  const at = /^(?:is|was|at)$/.test(tokens[end]?.text ?? "") ? end + 1 : end;
  return isNumber(tokens[at]);
}

/** "c2 same": of which kind the message before says. */
export const eitherMark = /^c[1-8]$/;

/** "c1 suct 121 head 355": a circuit, where one of its gauges follows, a compressor where its legs do; a capacitor has neither. */
export function circuitMark(build: Building, i: number): SubjectSaid | undefined {
  const token = build.tokens[i];
  if (token?.kind !== tokenKind.code || !eitherMark.test(token.text)) return undefined;
  const colon = /^[:=-]$/.test(build.tokens[i + 1]?.text ?? "");
  const end = colon ? i + 2 : i + 1;
  const number = token.text.slice(1);
  if (ofMotor(build, end) || rowOfAmps(build, end))
    return { name: `compressor ${number}`, end, label: undefined, aside: false };
  // "amps: c1 14.2 c2 14.6": what only a motor has, named before its row
  const [ahead, sign] = [build.items.at(-1), build.items.at(-2)];
  const head = ahead?.text === ":" ? sign : ahead;
  if (drawn.test(head?.text ?? "") && build.tokens[end]?.kind === tokenKind.number)
    return { name: `compressor ${number}`, end, label: undefined, aside: false };
  // "superheat c1 9 c2 22", "superheat on c1 is 9"
  if (behindGauge(build.items) && figureBehind(build, end))
    return { name: `circuit ${number}`, end, label: undefined, aside: false };
  const left = build.items
    .slice(-60)
    .findLast(({ text, subject }) => subject && eitherMark.test(text));
  const kind = /^\D+/.exec(left?.subject ?? "")?.[0];
  if (kind !== undefined && figureBehind(build, end))
    return { name: kind + number, end, label: undefined, aside: false };
  const figures = figuresAt(build, end);
  if (isLegs(figures)) return { name: `compressor ${number}`, end, label: undefined, aside: false };
  const next = build.tokens[end]?.text ?? "";
  // "same on c2"
  const again =
    /^(?:on|for|w|with)$/.test(build.tokens[i - 1]?.text ?? "") &&
    /^(?:same|ditto|identical)$/.test(build.tokens[i - 2]?.text ?? "");
  const pair = isGauges(build, end, figures);
  if (!again && !pair && !gauges.test(next) && !/^(?:same|ditto)$/.test(next)) return undefined;
  return { name: `circuit ${number}`, end, label: undefined, aside: false };
}
