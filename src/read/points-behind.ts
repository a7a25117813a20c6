import { isStrongBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { type Item, itemKind } from "./item.ts";

export function electrical(dimension: string): boolean {
  return dimension === "resistance" || dimension === "current" || dimension === "voltage";
}

function bearsPoints(item: Item | undefined): boolean {
  if (item === undefined) return false;
  if (item.kind === itemKind.over || item.kind === itemKind.same) return true;
  return (
    item.kind === itemKind.number && (item.unit === undefined || electrical(item.unit.dimension))
  );
}

const differences: ReadonlySet<string | undefined> = new Set(["superheat", "subcooling"]);

const named = /^(?:pressure|low_pressure|temperature|inches_of_water)$/;

/** "44.1 amps": its unit is of no side of a machine. */
const nameless = (item: Item | undefined): boolean =>
  item?.unit !== undefined && !named.test(item.unit.dimension);

/** "pump 1 58 psi disch 21 suct": no pump sucks at more than it gives. */
function ofPump(items: readonly Item[], start: number): boolean {
  const first = items[start + 1]?.label?.place;
  return (
    first === "discharge" &&
    items.slice(0, start).some(({ subject }) => /^pump\b/.test(subject ?? ""))
  );
}

/** ".45 supply -.31 return", "12 superheat 8 sub": does a name stand behind each value, and none before the first? */
export function namesPlacesBehind(items: readonly Item[], values: readonly number[]): boolean {
  if (values.length < 2) return false;
  const placed = (item: Item | undefined): boolean =>
    item?.kind === itemKind.label &&
    item.owner === undefined &&
    (item.label?.place !== undefined || differences.has(item.label?.quantity));
  const start = values[0] ?? 0;
  if (items.slice(0, start).some((item) => placed(item))) return false;
  const many = values.filter((index) => placed(items[index + 1])).length;
  if (many < 2) return false;
  if (values.every((index) => placed(items[index + 1]))) return true;
  return values.every((index, order) => {
    const next = items[index + 1];
    const after = items[index + 2];
    if (!placed(next) && items[index]?.unit !== undefined && order < values.length - 1) return true;
    // "118/398 psi 14 sh 9 sc"
    if (next?.text === "/" && items[index + 2]?.kind === itemKind.number) return true;
    // "58 psi disch 21 suct 44.1 amps": nothing is left for the last, which needs no name
    const last = next === undefined && order === values.length - 1 && many === order;
    if (last && (nameless(items[index]) || ofPump(items, start))) return true;
    if (!placed(next)) return false;
    return order < values.length - 1 || after === undefined || isStrongBreak(after);
  });
}

/** "298 U-V 301 V-W 299 U-W": do the points stand behind their values rather than before? */
export function namesPointsBehind(items: readonly Item[], values: readonly number[]): boolean {
  const taken = new Set(values);
  let ahead = 0;
  let behind = 0;
  let value: Item | undefined;
  let points = 0;
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item === undefined) continue;
    if (item.kind === itemKind.points) {
      if (bearsPoints(value)) behind++;
      points++;
      value = undefined;
    } else if (taken.has(i)) {
      if (points > 0 && bearsPoints(item)) ahead++;
      points = 0;
      value = item;
    } else if (isStrongBreak(item) || (item.kind === itemKind.sign && item.text === ",")) {
      points = 0;
      value = undefined;
    }
  }
  const first = items.findIndex((item) => item.kind === itemKind.points);
  const start = values[0] ?? 0;
  // "439 v on start N-G 2.4": what stands behind stands behind the last one too
  const last = values[values.length - 1] ?? 0;
  const ends = items.slice(last).some((item) => item.kind === itemKind.points);
  return (
    behind > ahead ||
    (behind === ahead &&
      behind > 0 &&
      ends &&
      start < first &&
      items.slice(0, start).every((item) => classOf(item) === ""))
  );
}
