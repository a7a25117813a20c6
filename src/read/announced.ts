import type { QuantityName } from "../quantities/list.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

interface Usual {
  readonly figure: string;
  readonly least: number;
  readonly most: number;
}

/** What a bare figure can be once its test was announced, in the unit of the meter; common practice, no source. */
const usual: Readonly<Partial<Record<QuantityName, Usual>>> = {
  current: { figure: "A", least: 0.05, most: 600 },
  voltage: { figure: "V", least: 0, most: 700 },
  capacitance: { figure: "microfarad", least: 0.5, most: 1500 },
  winding_resistance: { figure: "ohm", least: 0.02, most: 60 },
  vacuum: { figure: "micron", least: 20, most: 30000 },
};

/** "450" behind "900" while the pump runs: the same gauge, lower. */
function pumpedOn(list: readonly Draft[], context: Context): boolean {
  const last = context.readings[context.readings.length - 1];
  const [only] = list;
  if (last?.quantity !== "vacuum" || last.figure.unit !== "micron" || only === undefined)
    return false;
  return context.latest === 1 && list.length === 1 && only.value < 2 * Number(last.figure.number);
}

function isBare(draft: Draft, items: readonly Item[]): boolean {
  const { quantity, named, hint, place, unit, rating, question } = draft;
  const alone = [quantity, named, hint, place, unit, rating, question].every(
    (one) => one === undefined,
  );
  return alone && !draft.over && draft.value >= 0 && items[draft.index]?.kind === itemKind.number;
}

const moves =
  /^(?:dropping|falling|climbing|rising|holding|even|flat|balanced|off|idle|idling|down|dead|hot|warm|back|another|more)$/;

/** Nothing said beside the numbers but whose they are. */
function onlyFigures(items: readonly Item[]): boolean {
  return items.every(
    ({ kind, roles, owner, signs, label, text }) =>
      label?.rating !== undefined ||
      kind === itemKind.number ||
      kind === itemKind.sign ||
      kind === itemKind.line ||
      kind === itemKind.points ||
      (kind === itemKind.subject && owner === undefined) ||
      (kind === itemKind.word && roles !== 0 && signs === undefined) ||
      moves.test(text),
  );
}

/** "comp 1 22.3 22.8 comp 2 is off": what is told of another machine behind the last figure is none of the test's. */
function toldOf(items: readonly Item[]): readonly Item[] {
  const last = items.findLastIndex(
    ({ kind, owner, unit }) =>
      kind === itemKind.number && owner === undefined && unit?.dimension !== "time",
  );
  const other = items.findIndex(({ kind, owner, unit }, at) => {
    if (at <= last) return false;
    // "820 now, 30 more min": how long it goes on
    return kind === itemKind.subject || owner !== undefined || unit?.dimension === "time";
  });
  return other < 0 ? items : items.slice(0, other);
}

/** "11 ohms last week, now open" behind "crankcase heater": the ohms of the part that was named. */
export function ofNamedPart(list: readonly Draft[], context: Context): void {
  if (context.testing !== "resistance") return;
  for (const draft of list) {
    const ohms = draft.unit?.dimension === "resistance" && draft.unit.factor < 1e6;
    if (draft.gone || (!ohms && !draft.over) || draft.points !== undefined || draft.grounded)
      continue;
    draft.component = true;
    if (draft.over) draft.named ??= "resistance";
  }
}

/** Inches of water at most in a duct, and at a gas valve; common practice, no source. */
const mostInches = { duct: 4, gas: 16 } as const;

/** ".8 on the return .3 on the supply", "3.5 on high and 1.7 on low" behind "checking static", "checking manifold pressure". */
export function staticsAnnounced(list: readonly Draft[], context: Context): void {
  if (context.testing !== "static_pressure" || context.units !== "us") return;
  const free = list.filter((draft) => !draft.gone);
  const inches = ({ unit, named, place, points, rating, over, value }: Draft): boolean => {
    const air = place?.endsWith("_air") === true || place === "supply";
    const most = air ? mostInches.duct : mostInches.gas;
    const told = [unit, named, points, rating].some((one) => one !== undefined);
    return !told && !over && Math.abs(value) <= most;
  };
  if (!free.every(inches)) return;
  for (const draft of free) {
    draft.named = "static_pressure";
    draft.hint = undefined;
    if (draft.place?.endsWith("_air") !== true) draft.place = undefined;
  }
}

/** "14.2 13.9 14.4" behind "checking amps", "900" behind "started vac": figures of the test that was announced. */
export function announced(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const said = context.testing ?? (pumpedOn(list, context) ? "vacuum" : undefined);
  const like = said === undefined ? undefined : usual[said];
  if (said === undefined || like === undefined || !onlyFigures(toldOf(items))) return;
  // where the company thinks in pascals a bare figure has no scale of its own
  if (said === "vacuum" && context.units === "si") return;
  // "14.2 13.9 14.4 rla 18"
  const bare = list.filter(
    (draft) =>
      (draft.rating === undefined || draft.named !== said) && draft.unit?.dimension !== "time",
  );
  const fits = bare.every(
    (draft) =>
      isBare(draft, items) &&
      (draft.value >= like.least || (said === "current" && draft.value === 0)) &&
      draft.value <= like.most,
  );
  if (!fits) return;
  for (const draft of bare) {
    draft.quantity = said;
    draft.named = said;
    draft.unit = unitCalled(like.figure);
    draft.assumedUnit = true;
  }
}
