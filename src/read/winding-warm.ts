import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** A resistance of a winding, or what may be one: ohms, or a bare figure between two points. */
function ofWinding(draft: Draft): boolean {
  const paired = draft.points?.every((points) => points.length === 2) === true;
  if (draft.unit === undefined) return paired || draft.named === "winding_resistance";
  return draft.unit.dimension === "resistance" && draft.unit.factor < 1e6;
}

/** "T1-T2 .71 T1-T3 .71 T2-T3 .70 ohm @ 74F": nothing but windings is told, and how warm they were. */
export function warmWindings(
  draft: Draft,
  drafts: readonly Draft[],
  items: readonly Item[],
): boolean {
  if (draft.unit?.dimension !== "temperature" || draft.place !== undefined) return false;
  if (draft.hint !== undefined || draft.rating !== undefined) return false;
  if (draft.named !== undefined && draft.named !== "temperature") return false;
  const said = /^(?:@|at|bei|motor|mtr|windings?|amb|ambient|room|is)$/;
  if (!said.test(items[draft.index - 1]?.text ?? "")) return false;
  const others = drafts.filter((other) => other !== draft && !other.gone);
  const paired = others.some((other) => other.points?.some((points) => points.length === 2));
  return others.length > 1 && paired && others.every(ofWinding);
}

/** "evap -20°C cond 29°C": where the gas boils and condenses. */
export function ofCoil({ index }: Draft, items: readonly Item[]): boolean {
  return /^(?:evap|evaporator|evaporating|cond|condenser|condensing)$/.test(
    items[index - 1]?.text ?? "",
  );
}

/** "N2 33 bar, 26°C": how warm it was beside a pressure that is held. */
export function ofHold({ index }: Draft, items: readonly Item[]): boolean {
  const comma = /^[,@/]$|^at$/.test(items[index - 1]?.text ?? "") ? 1 : 0;
  return items[index - 1 - comma]?.unit?.dimension === "pressure";
}
