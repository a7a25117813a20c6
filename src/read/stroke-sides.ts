import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { gaugeFarOver } from "./line-range.ts";

/** psi and F of a low side and of a liquid line that were told with a stroke. Common practice, no source. */
const low = { psi: [20, 170], line: [20, 80] } as const;
const high = { psi: [150, 620], line: [60, 130] } as const;
/** How much higher the second gauge stands while a machine runs, at least. Common practice, no source. */
const liftOf = 1.6;
/** F by which a liquid line is warmer than the suction line, at least. Common practice, no source. */
const warmer = 10;

interface Stroke {
  readonly gauge: Draft;
  readonly line: Draft;
}

const said = /^(?:now|at|is|its|it|still|currently)$/;

const isBare = (draft: Draft, items: readonly Item[]): boolean =>
  draft.unit === undefined &&
  draft.points === undefined &&
  draft.rating === undefined &&
  draft.action === undefined &&
  draft.before.every((at) => said.test(items[at]?.text ?? "")) &&
  draft.behind.length === 0 &&
  (draft.named === undefined || draft.named === "voltage");

const within = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

/** "118/52", and no third figure behind another stroke. */
function strokeAt(
  items: readonly Item[],
  gauge: Draft,
  line: Draft | undefined,
): Stroke | undefined {
  if (line === undefined || line.index !== gauge.index + 2) return undefined;
  if (items[gauge.index + 1]?.text !== "/" || items[gauge.index - 1]?.text === "/")
    return undefined;
  if (items[line.index + 1]?.text === "/" || !isBare(gauge, items) || !isBare(line, items))
    return undefined;
  const number = ({ index }: Draft): boolean => items[index]?.kind === itemKind.number;
  return number(gauge) && number(line) ? { gauge, line } : undefined;
}

function asSide({ gauge, line }: Stroke, place: "suction" | "liquid"): void {
  gauge.named = "pressure";
  gauge.hint = undefined;
  gauge.kind = undefined;
  gauge.place = place;
  gauge.unit = unitCalled("psi");
  gauge.assumedUnit = true;
  line.named = "temperature";
  line.hint = "temperature";
  line.kind = undefined;
  line.place = place;
}

const isLow = ({ gauge, line }: Stroke): boolean =>
  within(gauge.value, low.psi) &&
  within(line.value, low.line) &&
  gauge.value >= gaugeFarOver * line.value;

/**
 * "118/52, 335/96", "132/55, head 365": a gauge and its line behind a stroke, the low side first. Two
 * such pairs say it, or one beside a head or a liquid line that has its name; one alone is asked.
 */
export function strokeSides(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  if (units === "si") return;
  const strokes = drafts.flatMap((draft, order) => strokeAt(items, draft, drafts[order + 1]) ?? []);
  const [first, second, third] = strokes;
  if (first === undefined || third !== undefined || !isLow(first)) return;
  if (second === undefined) {
    const beside = drafts.some(
      ({ place, index }) =>
        (place === "discharge" || place === "liquid") && index > first.line.index,
    );
    const suction = drafts.some(({ place }) => place === "suction");
    if (beside && !suction) asSide(first, "suction");
    return;
  }
  const lifts = second.gauge.value >= liftOf * first.gauge.value;
  const isHigh = within(second.gauge.value, high.psi) && within(second.line.value, high.line);
  if (!lifts || !isHigh || second.line.value < first.line.value + warmer) return;
  asSide(first, "suction");
  asSide(second, "liquid");
}
