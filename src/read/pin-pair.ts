import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import type { PointsSaid } from "./point-words.ts";
import type { Token } from "./token.ts";
import { role } from "./word.ts";

const pins: Readonly<Record<string, string>> = { common: "C", run: "R", start: "S" };

/** Ohm between two pins at most; more are amps or volts. Common practice, no source. */
const mostOhm = 200;

function pinOf(token: Token | undefined): string | undefined {
  return token === undefined ? undefined : pins[token.text];
}

/** Two pins by their names, side by side: "common run", "run start". */
function pairAt(build: Building, i: number): readonly [string, string] | undefined {
  const [first, second] = [pinOf(build.tokens[i]), pinOf(build.tokens[i + 1])];
  if (first === undefined || second === undefined || first === second) return undefined;
  return [first, second];
}

/** "common run 2.1 common start 6.4 run start 8.5": pins without a joint, where the common pin is spoken of. */
export function pinPair(build: Building, i: number): PointsSaid | undefined {
  const pair = pairAt(build, i);
  if (pair === undefined) return undefined;
  const end = i + 2;
  const roles = build.tokens[end]?.word?.roles ?? 0;
  const over = (roles & role.over) !== 0;
  const is = (roles & role.is) !== 0 || build.tokens[end - 1]?.apostrophe === true;
  const value = numberAt(build.tokens, (roles & role.is) === 0 ? end : end + 1);
  const unit = value === undefined ? undefined : build.tokens[value.end]?.word?.unit;
  if (unit !== undefined && unit.dimension !== "resistance") return undefined;
  const ohms = value !== undefined && value.value < mostOhm;
  if (!ohms && !over && !is) return undefined;
  const begun = build.items.some((item) => item.points?.some(([first]) => first === "C"));
  return pair[0] === "C" || begun ? { list: [pair], end } : undefined;
}
