import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** F, Cel: no liquid line is as cold where a head stands over it. Common practice, no source. */
export const coldest = { us: 55, si: 13 } as const;

/** "suction 17 head 140 line 30": too cold for the liquid, so it is the suction's that is not named. */
export function coldLine(
  items: readonly Item[],
  drafts: readonly Draft[],
  units: "us" | "si",
): void {
  const gauge = drafts.find((draft) => draft.place === "suction");
  const line = drafts.find(
    (draft) => draft.place === "liquid" && items[draft.index - 1]?.text === "line",
  );
  if (gauge === undefined || line === undefined || items[line.index - 2]?.text === "liquid") return;
  const others = drafts.filter((one) => one.place === "suction" || one.place === "liquid");
  if (others.length > 2 || gauge.index > line.index || line.unit !== undefined) return;
  if (line.value < coldest[units]) line.place = "suction";
}

/**
 * "suction 88 head 255 line 68 liquid 88": where the liquid line has a figure of its own and the
 * suction line none, the line that is not named is the suction's.
 */
export function lineThenLiquid(items: readonly Item[], drafts: readonly Draft[]): void {
  bothLines(items, drafts);
  const warm = (draft: Draft): boolean =>
    draft.hint === "temperature" || draft.unit?.dimension === "temperature";
  const line = drafts.find(
    (draft) => draft.place === "liquid" && items[draft.index - 1]?.text === "line",
  );
  if (line === undefined || items[line.index - 2]?.text === "liquid") return;
  const own = drafts.some(
    (draft) =>
      draft !== line && draft.place === "liquid" && items[draft.index - 1]?.text !== "line",
  );
  const gauge = drafts.find((draft) => draft.place === "suction");
  const taken = drafts.some((draft) => draft.place === "suction" && draft !== gauge);
  if (!own || gauge === undefined || taken || warm(gauge)) return;
  if (gauge.index < line.index) line.place = "suction";
}

const namesLine = /^(?:suction|suct|liquid|liq|discharge|disch|gas|vapor|low|high)$/;

/** "line 58 liquid 112" behind the gauges: the liquid line has its own name, so the other is the suction's. */
function bothLines(items: readonly Item[], drafts: readonly Draft[]): void {
  const [line, liquid, ...others] = drafts.filter(({ gone }) => !gone);
  if (line === undefined || liquid?.place !== "liquid" || others.length > 0) return;
  if (items[line.index - 1]?.text !== "line" || items[liquid.index - 1]?.text === "line") return;
  if (namesLine.test(items[line.index - 2]?.text ?? "") || line.value >= liquid.value) return;
  if (line.place === undefined || line.place === "liquid") line.place = "suction";
}
