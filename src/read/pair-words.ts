import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { phraseAt } from "./phrase.ts";
import type { PointsSaid } from "./point-words.ts";
import { selfNamed } from "./point-words.ts";
import { spacedPair } from "./spaced-pair.ts";
import { tokenKind } from "./token.ts";
import { role } from "./word.ts";

const pairsOfLetters = /^(?:ab|bc|ca|ac|ba|cb|uv|vw|wu|uw|vu|wv)$/;

/** "T1T2 1.12", "L1L2 478": two terminals written as one word. */
export function gluedPair(build: Building, i: number): PointsSaid | undefined {
  const token = build.tokens[i];
  if (token?.kind !== tokenKind.code) return undefined;
  // "l1n 121"
  const neutral = /^l([1-3])n$/.exec(token.text)?.[1];
  if (neutral !== undefined) return { list: [[`L${neutral}`, "N"]], end: i + 1 };
  const found = /^([lt])([1-9])\1([1-9])$/.exec(token.text);
  const [first, second] = [found?.[2], found?.[3]];
  if (found === null || first === undefined || second === undefined || first === second)
    return undefined;
  const letter = token.text.charAt(0).toUpperCase();
  return { list: [[letter + first, letter + second]], end: i + 1 };
}

/** "AB 211, BC 200, CA 209": pairs of legs without a joint, where more than one stands in the text. */
export function letterPair(build: Building, i: number): PointsSaid | undefined {
  const text = build.tokens[i]?.text ?? "";
  if (spacedPair(build.tokens, i, build.family.slice(0, 3))) {
    const legs = [text, build.tokens[i + 1]?.text ?? ""];
    const output = /^[uvw]$/.test(text);
    return {
      list: [legs.map((leg) => (output ? leg.toUpperCase() : `phase ${leg.toUpperCase()}`))],
      end: i + 2,
    };
  }
  if (text.length !== 2 || !pairsOfLetters.test(text)) return undefined;
  const family = /^[abc]/.test(text) ? /^[abc]{2}$/ : /^[uvw]{2}$/;
  const others = build.tokens.filter(
    (token) => pairsOfLetters.test(token.text) && family.test(token.text) && token.text !== "ac",
  );
  if (others.length < (text === "ac" ? 1 : 2) || new Set(others.map((one) => one.text)).size < 1)
    return undefined;
  if (
    text !== "ac" &&
    new Set(others.map((one) => one.text)).size < 2 &&
    !build.tokens.some((one) => one.text === "ac")
  )
    return undefined;
  const name = (letter: string): string =>
    /[abc]/.test(letter) ? `phase ${letter.toUpperCase()}` : letter.toUpperCase();
  return { list: [[name(text.charAt(0)), name(text.charAt(1))]], end: i + 1 };
}

/** Volts that a thermostat's terminal can have to its common; common practice, no source. */
const terminalVolts = (value: number): boolean => value < 1 || (value >= 16 && value <= 34);

/** "g-c 27 w-c 0": a thermostat's terminal to its common, where the call of another is told. */
export function terminalPair(build: Building, i: number): PointsSaid | undefined {
  const [first, joint, common] = build.tokens.slice(i, i + 3);
  if (first === undefined || !/^[gwoy]$/.test(first.text) || common?.text !== "c") return undefined;
  if (!/^(?:-|\/|to)$/.test(joint?.text ?? "")) return undefined;
  const said = numberAt(build.tokens, i + 3);
  const over = ((build.tokens[i + 3]?.word?.roles ?? 0) & role.over) !== 0;
  if (said === undefined || over || !terminalVolts(said.value)) return undefined;
  const near = build.tokens.slice(Math.max(0, i - 24), i + 24);
  const called = near.some(
    ({ text }, at) =>
      /^(?:y|r)$/.test(text) &&
      /^(?:-|\/|to)$/.test(near[at + 1]?.text ?? "") &&
      near[at + 2]?.text === "c" &&
      terminalVolts(numberAt(near, at + 3)?.value ?? 99),
  );
  return called ? { list: [[first.text.toUpperCase(), "C"]], end: i + 3 } : undefined;
}

/** "common to both": from the common pin to each of the others. */
export function commonToBoth(build: Building, i: number): PointsSaid | undefined {
  if (build.tokens[i]?.text.startsWith("c") !== true) return undefined;
  const phrase = phraseAt(build.tokens, i);
  const point = phrase?.word.point;
  if (phrase === undefined || (point !== "C" && build.tokens[i]?.text !== "c")) return undefined;
  const both = build.tokens[phrase.end + 1]?.text;
  if (build.tokens[phrase.end]?.text !== "to" || (both !== "both" && both !== "either"))
    return undefined;
  return {
    list: [
      ["C", "R"],
      ["C", "S"],
    ],
    end: phrase.end + 2,
  };
}

/** "T1 T2 T2 T3 T1 T3": points that come again are pairs without joints. */
export function inPairs(list: readonly (readonly string[])[], end: number): PointsSaid | undefined {
  const names = list.map((points) => points[0] ?? "");
  if (list.length < 4 || list.length % 2 > 0 || list.some((points) => points.length !== 1))
    return undefined;
  if (new Set(names).size === names.length) return undefined;
  const pairs: string[][] = [];
  for (let i = 0; i < names.length; i += 2) pairs.push(names.slice(i, i + 2));
  return pairs.every(([a, b]) => a !== b) ? { list: pairs, end } : undefined;
}

/** "208 on L1 L2", "L1 L2 208 L2 L3 211": two points of a family without a joint are a pair, unless two values follow. */
export function bareTwo(
  build: Building,
  i: number,
  list: readonly (readonly string[])[],
  end: number,
): PointsSaid | undefined {
  const [first, second] = [list[0]?.[0], list[1]?.[0]];
  if (list.length !== 2 || first === undefined || second === undefined || first === second)
    return undefined;
  const letters = /^[UVW]$/.test(first) && /^[UVW]$/.test(second);
  const alike = letters || first.charAt(0) === second.charAt(0);
  if (list.some((points) => points.length !== 1) || (!letters && !/^[LT]\d$/.test(first)))
    return undefined;
  if (betweenTwo(build, i, end) && alike) return { list: [[first, second]], end };
  if (!alike || jointIn(build, i, end)) return undefined;
  const before = build.items[build.items.length - 1]?.text ?? "";
  const led = /^(?:on|across|between|at|from)$/.test(before);
  // "T1 T2 is open T2 T3 is open"
  // "T1 T2. 0.8 ohms.", as a phone that hears pauses writes it
  const pause = /^[.,]$/.test(build.tokens[end]?.text ?? "");
  const verb = pause || ((build.tokens[end]?.word?.roles ?? 0) & role.is) !== 0 ? 1 : 0;
  const said = numberAt(build.tokens, end + verb);
  const again = said !== undefined && numberAt(build.tokens, said.end) !== undefined;
  const over = ((build.tokens[end + verb]?.word?.roles ?? 0) & role.over) !== 0;
  // "578 L2 L3 and 576 L1 L3" behind a pair said in full
  const behind = build.items[build.items.length - 1]?.kind === itemKind.number;
  const paired = build.items.some((item) => item.points?.[0]?.length === 2);
  if (behind && paired) return { list: [[first, second]], end };
  if (again || (!led && said === undefined && !over)) return undefined;
  // "L1 L2 four eighteen": no single leg of a supply has that
  const lineVolts =
    first.startsWith("L") && said !== undefined && said.value >= 300 && said.value < 700;
  // "T1 T2 point eight one"
  const ohms = first.startsWith("T") && said !== undefined && said.value < 30;
  if (!led && !lineVolts && !ohms && !repeats(build, end)) return undefined;
  return { list: [[first, second]], end };
}

/** "between L1 and L2 480, L2 and L3 0": the next two go together as the first did. */
function betweenTwo(build: Building, from: number, to: number): boolean {
  if (!build.items.some((item) => /^(?:between|across|btwn)$/.test(item.text))) return false;
  if (!build.items.some((item) => item.points?.[0]?.length === 2)) return false;
  return (
    build.tokens.slice(from, to).some((token) => /^(?:and|&|n)$/.test(token.text)) &&
    numberAt(build.tokens, to) !== undefined
  );
}

function jointIn(build: Building, from: number, to: number): boolean {
  for (let at = from; at < to; at++)
    if (/^(?:,|\/|and|&|n|-)$/.test(build.tokens[at]?.text ?? "")) return true;
  return false;
}

/** Do two such points stand together again further on? */
function repeats(build: Building, from: number): boolean {
  for (let at = from; at < build.tokens.length; at++) {
    const first = selfNamed(build, at);
    if (first === undefined) continue;
    return (
      selfNamed(build, first.end) !== undefined ||
      build.items.some((item) => item.points?.[0]?.length === 2)
    );
  }
  return build.items.some((item) => item.points?.[0]?.length === 2);
}
