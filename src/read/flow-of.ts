import { clauseAround } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const water =
  /^(?:water|waters|wtr|chw|chws|chwr|hw|hhw|loop|pump|pumps|brine|glycol|chiller|chlr|tower|boiler|strainer|hx|barrel|circulator)$/;
const air =
  /^(?:air|airflow|duct|fan|fans|blower|grille|hood|vav|exhaust|diffuser|register|esp|tesp|ahu|filter)$/;

/** Flows in m3/h and L/s that a pump moves, where air is spoken of too; common practice, no source. */
const most: Readonly<Record<string, number>> = { "m3/h": 60, "L/s": 15 };
/** m3/h at most that a loop of water moves, where no water is spoken of beside it; common practice, no source. */
const mostOfLoop = 900;
/** L/s, m3/h at most that is water with nothing said: no duct has so little air; common practice, no source. */
const trickle: Readonly<Record<string, number>> = { "L/s": 5, "m3/h": 18 };

interface Spoken {
  readonly water: boolean;
  readonly air: boolean;
}

function spokenIn(items: readonly Item[]): Spoken {
  const places = items.map(({ label }) => label?.place ?? "");
  return {
    water:
      items.some(({ text }) => water.test(text)) ||
      places.some((place) => /^(?:water|condenser|evaporator)_/.test(place)),
    air:
      items.some(({ text }) => air.test(text)) ||
      places.some((place) => /^(?:return|supply)_air$/.test(place)),
  };
}

/** The value's own clause: up to a comma, a full stop or another line on each side. */
function clauseOf(items: readonly Item[], index: number): readonly Item[] {
  return items.slice(...clauseAround(items, index));
}

function isWater(draft: Draft, items: readonly Item[]): boolean | undefined {
  const small = draft.value <= (most[draft.unit?.figure ?? ""] ?? 0);
  // "fan 2 3,4 A, flow rate 13,7 m3/h": too little for a duct, and its word is water's
  if (small && draft.named === "water_flow") return true;
  const own = spokenIn(clauseOf(items, draft.index));
  if (own.water !== own.air) return own.water;
  const all = spokenIn(items);
  if (all.water && all.air) return small;
  // "2300 m3/h, EWT 15,6": no loop moves so much
  const huge = draft.unit?.figure === "m3/h" && draft.value > mostOfLoop;
  if (all.water || all.air) return all.water && !huge;
  return draft.value < (trickle[draft.unit?.figure ?? ""] ?? 0) ? true : undefined;
}

/** "pump 1,9 bar, 6,0 m³/h", "1,7 l/s": units that air and water share are told apart by what is spoken of. */
export function flowOf(draft: Draft, items: readonly Item[], wet = false): void {
  const figure = draft.unit?.figure ?? "";
  if (most[figure] === undefined || draft.named === "airflow") return;
  const water = isWater(draft, items) ?? (wet ? true : undefined);
  if (water !== undefined) draft.named = water ? "water_flow" : "airflow";
}
