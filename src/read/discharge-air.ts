import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** Below these figures no head pressure of a machine that runs lies, in psi and bar. Common practice, no source. */
const noHead: Readonly<Record<UnitHabit, number>> = { us: 90, si: 8 };
/** What lies between the two airs of a coil at most, in degrees of the house. Common practice, no source. */
const mostBetween: Readonly<Record<UnitHabit, number>> = { us: 40, si: 22 };

const isBare = (draft: Draft): boolean =>
  !draft.gone &&
  draft.unit === undefined &&
  draft.named === undefined &&
  draft.points === undefined &&
  draft.rating === undefined;

/** "47.5 return, 44 disch", "33 return 29 disch": beside the air that returns the discharge is air as well, too low for a head pressure. */
export function dischargeAir(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  // "case 12 is 47.5 return"
  const back = drafts.find(
    (draft) =>
      isBare(draft) &&
      (draft.place === "return_air" ||
        (draft.place === "box" && /^(?:return|ret|rtn)$/.test(items[draft.index + 1]?.text ?? ""))),
  );
  const out = drafts.find((draft) => isBare(draft) && draft.place === "discharge");
  if (back === undefined || out === undefined) return;
  if (drafts.some((draft) => draft.place === "suction" || draft.place === "liquid")) return;
  const pipe = [...out.before, ...out.behind].some((index) =>
    /^(?:line|pipe|gauge|pressure|temp|side)s?$/.test(items[index]?.text ?? ""),
  );
  if (pipe || out.value >= noHead[units]) return;
  if (Math.abs(back.value - out.value) > mostBetween[units]) return;
  for (const draft of [back, out]) draft.hint = "temperature";
  back.place = "return_air";
  out.place = "supply_air";
}
