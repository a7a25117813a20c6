import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** F, Cel of a discharge line that runs. Common practice, no source. */
export const hotLines = { us: [90, 290], si: [35, 145] } as const;

const head = /^(?:head|high|hi|high side|head pressure|condensing)$/;
const discharge = /^(?:discharge|disch|disc|dis|hot gas|dischg)$/;

/** The words that stand right beside the value. */
function told(draft: Draft, items: readonly Item[], word: RegExp): boolean {
  return [draft.index - 1, draft.index + 1].some((at) => word.test(items[at]?.text ?? ""));
}

function isPressure(draft: Draft, units: UnitHabit): boolean {
  if (draft.unit !== undefined) return draft.unit.dimension === "pressure";
  return draft.named !== "temperature" && draft.value > (units === "us" ? 90 : 8);
}

/** A liquid line's pressure, which no temperature of one comes near. */
function liquidGauge(drafts: readonly Draft[], units: UnitHabit): Draft | undefined {
  const free = ({ unit, named }: Draft): boolean =>
    unit === undefined ? named !== "temperature" : unit.dimension === "pressure";
  return drafts.find(
    (draft) =>
      draft.place === "liquid" &&
      !draft.gone &&
      draft.rating === undefined &&
      free(draft) &&
      draft.value >= leastVapor[units],
  );
}

/** "352 head, liquid 96. discharge 158": a head has one pressure, so the discharge is how hot its line is; "discharge 172, liquid 340" no less, for no liquid stands over the gas it is made of. */
export function headThenDischarge(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const [least, most] = hotLines[units];
  const named = drafts.filter(({ place, gone }) => place === "discharge" && !gone);
  const liquid = named.length === 1 ? liquidGauge(drafts, units) : undefined;
  const side = liquid === undefined ? named : [...named, liquid];
  const [one, other] = side;
  if (one === undefined || other === undefined || side.length !== 2) return;
  // "121 over 356 sh 9 discharge 188"
  const gauge =
    liquid ??
    side.find(
      (draft) =>
        (told(draft, items, head) || items[draft.index - 1]?.text === "over") &&
        isPressure(draft, units),
    );
  const line = gauge === one ? other : one;
  if (gauge === undefined || !told(line, items, discharge) || told(line, items, head)) return;
  const free = [line.unit, line.rating, line.points, line.after].every(
    (each) => each === undefined,
  );
  if (!free || line.named === "pressure" || line.subject !== gauge.subject) return;
  if (line.value < least || line.value > most) return;
  // "comp 1 head 367, comp 2 suction 100 discharge 287": of another machine
  const [from, to] = [Math.min(line.index, gauge.index), Math.max(line.index, gauge.index)];
  const turned = ({ index, subject }: Draft): boolean =>
    index > from && index < to && subject !== undefined && subject !== gauge.subject;
  if (drafts.some(turned)) return;
  if (liquid !== undefined && line.value > liquid.value) return;
  // in psi both may be gauges that agree
  if (units === "us" && Math.abs(line.value - gauge.value) < gauge.value * 0.1) return;
  line.named = "temperature";
  line.hint = "temperature";
}

/** How far a heat pump's vapor line stands over its suction while it heats, and the least psi or bar of it. Common practice, no source. */
const leastRatio = 1.6;
const leastVapor = { us: 150, si: 10 } as const;

/** "vapor 266, suction 109": two pressures of one name, so it heats and the vapor line is the high side. */
export function vaporOverSuction(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const side = drafts.filter(({ place, gone }) => place === "suction" && !gone);
  const vapor = side.find((draft) => told(draft, items, /^vapou?r$/));
  const suction = side.find((draft) => told(draft, items, /^(?:suction|suct)$/));
  if (vapor === undefined || suction === undefined || side.length !== 2) return;
  const free = (draft: Draft): boolean =>
    (draft.unit === undefined || draft.unit.dimension === "pressure") &&
    draft.named !== "temperature" &&
    draft.rating === undefined &&
    draft.points === undefined;
  if (![vapor, suction].every(free) || vapor.value < leastVapor[units]) return;
  if (vapor.value < leastRatio * suction.value) return;
  vapor.place = "discharge";
  for (const draft of [vapor, suction]) draft.named = "pressure";
}
