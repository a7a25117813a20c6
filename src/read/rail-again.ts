import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import type { PointsSaid } from "./point-words.ts";

const rails: Readonly<Record<string, "DC+" | "DC-">> = {
  plus: "DC+",
  positive: "DC+",
  pos: "DC+",
  minus: "DC-",
  negative: "DC-",
  neg: "DC-",
};

export function namesRail(text: string): boolean {
  return rails[text] !== undefined;
}

const isRail = (point: string | undefined): boolean => point === "DC+" || point === "DC-";

/** "L1 L2 L3 to plus 0.43 0.43 0.42, to minus 0.43 all three": the same legs again, to the other rail. */
export function railAgain(build: Building, i: number): PointsSaid | undefined {
  if (build.tokens[i]?.text !== "to") return undefined;
  const rail = rails[build.tokens[i + 1]?.text ?? ""];
  if (rail === undefined || numberAt(build.tokens, i + 2) === undefined) return undefined;
  const before = build.items.findLast(({ points }) => points !== undefined && points.length > 0);
  const legs = before?.points?.map(([one, other]) => (isRail(one) ? other : one));
  const paired = before?.points?.every((pair) => pair.length === 2 && pair.some(isRail)) === true;
  if (legs === undefined || !paired || before?.points?.some((pair) => pair.includes(rail)))
    return undefined;
  return { list: legs.map((leg) => [leg ?? "", rail]), end: i + 2 };
}
