import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { nths, type SubjectSaid } from "./subject-name.ts";
import { tokenKind } from "./token.ts";

/** Behind "the second" of what was named: nothing, a sign, "one", or the value. */
function ends(build: Building, end: number): boolean {
  const next = build.tokens[end];
  if (next === undefined || next.kind !== tokenKind.word) return true;
  return /^(?:one|is|its|and|was|has|reads)$/.test(next.text) || next.word?.number !== undefined;
}

/** "900 on the first go and 0.2 on the second": of tries, not of machines. */
function isTry(build: Building, i: number): boolean {
  const first = build.tokens.slice(0, i).findLastIndex(({ text }) => /^(?:first|1st)$/.test(text));
  const what = build.tokens[first + 1]?.text ?? "";
  return first >= 0 && /^(?:go|try|time|test|reading|shot|attempt|pass|round|meg|look)$/.test(what);
}

/** "superheat's ten on the first circuit and twelve on the second": the next of what was named last. */
export function nthAgain(build: Building, i: number): SubjectSaid | undefined {
  const nth = nths.get(build.tokens[i]?.text ?? "");
  if (nth === undefined || build.tokens[i - 1]?.text !== "the") return undefined;
  if (isTry(build, i)) return undefined;
  const one = build.tokens[i + 1]?.text === "one";
  if (!one && !/^(?:on|for|at|of|from)$/.test(build.tokens[i - 2]?.text ?? "")) return undefined;
  const last = build.items
    .slice(-24)
    .findLast((item) => item.kind === itemKind.subject && item.subject !== "");
  const [, name, number] = /^(\D+) (\d)$/.exec(last?.subject ?? "") ?? [];
  if (name === undefined || Number(number) !== nth - 1) return undefined;
  const end = one ? i + 2 : i + 1;
  if (!one && !ends(build, end)) return undefined;
  return { name: `${name} ${nth}`, end, label: last?.label, aside: false };
}
