import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** F, Cel: no liquid line is as cold where a head stands over it. Common practice, no source. */
const coldest = { us: 55, si: 13 } as const;

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
