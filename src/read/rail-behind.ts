import type { Building } from "./items.ts";
import { phraseAt } from "./phrase.ts";
import type { Point } from "./point-words.ts";
import { tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Is the sign at `i` glued to what stands before it and to nothing behind? */
function hangs(build: Building, i: number, sign: string): boolean {
  const [token, next] = [build.tokens[i], build.tokens[i + 1]];
  if (token?.kind !== tokenKind.sign || token.text !== sign || !token.glued) return false;
  const over = ((next?.word?.roles ?? 0) & role.over) !== 0;
  return next !== undefined && (next.kind === tokenKind.number || over) && !next.glued;
}

/** Tokens within which another leg of the same bridge is told. */
const NEAR = 24;

function plusNear(build: Building, i: number): boolean {
  for (let at = Math.max(1, i - NEAR); at < i + NEAR; at++) if (hangs(build, at, "+")) return true;
  return false;
}

/** "V-DC+ .41": an output and a rail, no volts of direct current. */
export function railNext(build: Building, i: number): boolean {
  if (build.tokens[i + 1]?.text !== "-") return false;
  return phraseAt(build.tokens, i + 2)?.word.point?.startsWith("DC") === true;
}

/** "L1 to + .44": the sign between "to" and a figure of its own. */
function signBehindTo(build: Building, i: number): string | undefined {
  const [to, sign, next] = [build.tokens[i], build.tokens[i + 1], build.tokens[i + 2]];
  if (to?.text !== "to" || sign?.kind !== tokenKind.sign || !/^[+-]$/.test(sign.text))
    return undefined;
  const over = ((next?.word?.roles ?? 0) & role.over) !== 0;
  return (next?.kind === tokenKind.number && !next.glued) || over ? sign.text : undefined;
}

/** "L1+ .44 L2+ .45", "L1- .46" beside them: the rail of a bridge by its sign alone. */
export function railBehind(
  build: Building,
  first: Point,
): { second: string; end: number; family: string } | undefined {
  if (!/^(?:[LT][123]|[UVW])$/.test(first.name)) return undefined;
  const signed = signBehindTo(build, first.end);
  if (signed !== undefined)
    return { second: signed === "+" ? "DC+" : "DC-", end: first.end + 2, family: first.family };
  const plus = hangs(build, first.end, "+");
  // "L1- 14.8": a dash before the value, where no other leg has a plus
  const minus = hangs(build, first.end, "-") && plusNear(build, first.end);
  if (!plus && !minus) return undefined;
  return { second: plus ? "DC+" : "DC-", end: first.end + 1, family: first.family };
}
