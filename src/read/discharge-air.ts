import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** Below these figures no head pressure of a machine that runs lies, in psi and bar. Common practice, no source. */
const noHead: Readonly<Record<UnitHabit, number>> = { us: 90, si: 8 };
/** What lies between the two airs of a coil at most, in degrees of the house. Common practice, no source. */
const mostBetween: Readonly<Record<UnitHabit, number>> = { us: 40, si: 22 };
/** Where a room was named it may be heated: what it blows at most, and so much more between. Common practice, no source. */
const heated: Readonly<Record<UnitHabit, { most: number; between: number }>> = {
  us: { most: 140, between: 65 },
  si: { most: 60, between: 36 },
};

/** The rules that take a room's number. */
const named = /^(?:<room named before>|in <room number>)$/;

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
  const room = items.some(({ owner }) => named.test(owner ?? ""));
  // "304 still cold, 71 on the discharge"
  if (room && back === undefined && out !== undefined && drafts.length === 1) blows(out, units);
  if (back === undefined || out === undefined) return;
  if (drafts.some((draft) => draft.place === "suction" || draft.place === "liquid")) return;
  const pipe = [...out.before, ...out.behind].some((index) =>
    /^(?:line|pipe|gauge|pressure|temp|side)s?$/.test(items[index]?.text ?? ""),
  );
  const most = room ? heated[units].most : noHead[units];
  if (pipe || out.value >= most) return;
  if (Math.abs(back.value - out.value) > (room ? heated[units].between : mostBetween[units]))
    return;
  for (const draft of [back, out]) draft.hint = "temperature";
  back.place = "return_air";
  out.place = "supply_air";
}

/** What a room's unit blows into it. */
function blows(out: Draft, units: UnitHabit): void {
  if (out.value >= noHead[units]) return;
  out.hint = "temperature";
  out.place = "supply_air";
}

/** "301 disch 108 return 68, 302 106 67": both airs of the next rooms, by their numbers alone. */
export function airsOfRooms(drafts: readonly Draft[], items: readonly Item[]): void {
  const rooms = items.flatMap(({ owner }, i) => (named.test(owner ?? "") ? [i] : []));
  if (rooms.length < 2) return;
  const of = rooms.map((room, at) =>
    drafts.filter(
      ({ gone, index }) => !gone && index > room && index < (rooms[at + 1] ?? items.length),
    ),
  );
  const [first = [], ...others] = of;
  const isAir = ({ place }: Draft): boolean => place?.endsWith("_air") === true;
  if (first.length !== 2 || !first.every(isAir)) return;
  for (const pair of others) {
    const bare = pair.length === 2 && pair.every((one) => isBare(one) && one.place === undefined);
    if (!bare) continue;
    pair.forEach((one, at) => {
      one.place = first[at]?.place;
      one.hint = "temperature";
    });
  }
}
