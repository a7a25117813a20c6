import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { flowOf } from "./flow-of.ts";
import { type Item, isOneWord } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { liquid, onPipe } from "./liquid-figure.ts";
import { byUnit, resistanceOf, type Setting } from "./settle.ts";
import { isMissing } from "./share.ts";
import { toldOhms } from "./told-ohms.ts";

function labelsBehind(draft: Draft, items: readonly Item[]): boolean {
  const labels = (list: readonly number[]): boolean =>
    list.some(
      (index) =>
        items[index]?.label?.place !== undefined ||
        items[index]?.label?.component === true ||
        items[index]?.label?.thing !== undefined,
    );
  return labels(draft.behind) && !labels(draft.before);
}

/** "15.6 vdc at outdoor, 2.1 at indoor": the second is measured like the first. */
export function likeLeft(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  poundsLike(draft, left, items);
  if (
    left === undefined ||
    draft.unit !== undefined ||
    draft.named !== undefined ||
    !(left.ownUnit || left.assumedUnit) ||
    left.unit?.dimension !== "voltage"
  )
    return;
  const joint = items[draft.index + 1]?.text ?? "";
  if (
    /^(?:at|across|on|between|in|out)$/.test(joint) &&
    (joint === items[left.index + 1]?.text ||
      (joint === "out" && items[left.index + 1]?.text === "in")) &&
    draft.hint === undefined &&
    draft.points === undefined
  ) {
    draft.unit = left.unit;
    draft.kind ??= left.kind;
    draft.assumedUnit = true;
    return;
  }
  if (!labelsBehind(draft, items) || !labelsBehind(left, items) || draft.points !== undefined)
    return;
  draft.unit = left.unit;
  draft.kind ??= left.kind;
  draft.assumedUnit = true;
}

/** "suction's 22 pounds low temp side's 11 pounds": what a gauge beside it shows in pounds, it does too. */
function poundsLike(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  const gauged = left?.quantity === "pressure" && items[left.index]?.unit?.figure === "lb";
  if (!gauged || draft.unit?.figure !== "lb" || left.sentence !== draft.sentence) return;
  if ([draft.action, draft.rating, draft.named].every((one) => one === undefined))
    draft.unit = left.unit;
}

/** What is beyond the range: a diode, an insulation, a winding, a component. */
function overRange(draft: Draft, setting: Setting): void {
  if (draft.named === "diode_drop" || setting.diode) draft.quantity = "diode_drop";
  else if (
    draft.points !== undefined ||
    draft.grounded ||
    draft.component ||
    draft.named !== undefined
  )
    draft.quantity = resistanceOf(draft, undefined, setting);
  else if (draft.count > 1 && setting.insulation) draft.quantity = "insulation_resistance";
  else if (setting.component) {
    draft.quantity = "resistance";
    draft.component = true;
  }
}

/** By its own unit or its own words. */
export function own(
  draft: Draft,
  items: readonly Item[],
  setting: Setting,
  context: Context,
): void {
  const kind = items[draft.index + 1];
  flowOf(draft, items, context.wet === true);
  // "2 liq line caps, 12 lb 410a": so much gas, no pressure of the line
  // "low temp took five pounds of 404"
  const of = items[draft.index + 1]?.text === "of" ? 2 : 1;
  const gas = items[draft.index + of]?.owner === "<letters and digits>";
  if (draft.unit?.figure === "lb" && gas) {
    draft.named = "mass";
    draft.place = undefined;
    draft.hint = undefined;
  }
  // "discharge is 215 on the pipe": a probe on it, no gauge
  const pipe = /^(?:pipe|clamp)$/;
  const [on, what, then] = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
  const clamped = /^(?:on|at)$/.test(on ?? "") && pipe.test((what === "the" ? then : what) ?? "");
  const gauge = draft.named === undefined && draft.unit === undefined && draft.hint === "pressure";
  if (clamped && gauge) draft.hint = "temperature";
  // "60 pounds standing both sides"
  const stands = items
    .slice(draft.index + 1, draft.index + 4)
    .some(({ text }) => /^(?:standing|static|sides|equalized|resting)$/.test(text));
  if (
    draft.unit?.figure === "lb" &&
    stands &&
    draft.action === undefined &&
    draft.rating === undefined
  )
    draft.unit = unitCalled("psi");
  // "the valve's wide open a hundred percent", "3 way valve at 65%"
  const share = draft.unit?.figure === "percent";
  const led = items.slice(Math.max(0, draft.index - 2), draft.index).map(({ text }) => text);
  const opens = /(?:^| )(?:open|wide)$|(?:^| )(?:valve|valves|vlv)(?: (?:at|is|@|=|:))?$/;
  if (share && opens.test(led.join(" "))) draft.named ??= "valve_opening";
  if (
    draft.unit === undefined &&
    draft.kind !== undefined &&
    kind?.label?.kind !== undefined &&
    kind.label.place === undefined &&
    !draft.over &&
    draft.named === undefined
  ) {
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.quantity = byUnit(draft, setting);
    return;
  }
  // "filled 2,150 kg", "LP 1,250 bar": where commas are decimal, three figures may stand behind it
  if (
    /^(?:kg|bar|MPa)$/.test(draft.unit?.figure ?? "") &&
    context.units === "si" &&
    draft.value >= 1000 &&
    /^\d{1,2},\d{3}$/.test(items[draft.index]?.text ?? "")
  )
    draft.value /= 1000;
  if (draft.letter === "g" && isMissing(draft, items)) draft.named ??= "mass";
  const air = draft.unit?.figure === "in" && draft.value < 5;
  if (air && (dropAcross(draft, items) || atAirSwitch(draft, items)))
    draft.named ??= "static_pressure";
  if (draft.unit !== undefined) {
    draft.quantity = byUnit(draft, setting);
    return;
  }
  if (draft.over) {
    overRange(draft, setting);
    return;
  }
  if (
    draft.named !== undefined &&
    !(draft.component && draft.named === "resistance" && !toldOhms(draft, items))
  ) {
    draft.quantity =
      draft.named === "insulation_resistance" || draft.named === "winding_resistance"
        ? resistanceOf(draft, undefined, setting)
        : draft.named;
    if (draft.named === "resistance")
      draft.quantity = resistanceOf(draft, unitCalled("ohm"), setting);
    if (draft.named === "diode_drop" && draft.value >= 5) draft.quantity = undefined;
    else if (draft.named === "voltage" || draft.named === "diode_drop")
      draft.unit = unitCalled("V");
    return;
  }
  if (dropAcross(draft, items)) {
    draft.quantity = "static_pressure";
    return;
  }
  if (
    setting.diode &&
    draft.value >= 0 &&
    draft.value < 3 &&
    draft.thing !== "compressor" &&
    draft.before.every((index) => items[index]?.label === undefined)
  )
    draft.quantity = "diode_drop";
  else if (
    draft.points?.some((points) => points.some((point) => point.startsWith("DC"))) === true &&
    Math.abs(draft.value) < 3
  )
    draft.quantity = "diode_drop";
  else if (draft.component && draft.named === "resistance") return;
  else if (draft.hint !== undefined) draft.quantity = hinted(draft, items, context);
  else if (draft.place === "liquid") draft.quantity = liquid(draft, items, context);
}

function isPressed(item: Item | undefined): boolean {
  const { hint, quantity } = item?.label ?? {};
  const long = item !== undefined && item.to - item.from > "oil's".length;
  return long && (hint ?? quantity) === "pressure";
}

const isLong = (item: Item | undefined): boolean => item !== undefined && !isOneWord(item);

/** "and the discharge 204" goes on with lines where lines were being measured. */
export function oilIsWarm(draft: Draft, list: readonly Draft[], items: readonly Item[]): boolean {
  if (draft.place !== "oil" || draft.value < 70) return false;
  // "oil's at 135 and the crankcase heater's drawing 0.7"
  const heated = items.some(({ text }) => /^(?:crankcase|sump)$/.test(text));
  const said = draft.before.some((index) => isPressed(items[index]));
  if (heated && !said && draft.unit === undefined) return true;
  const lines = list.some(
    (other) => other !== draft && other.hint === "temperature" && other.place !== undefined,
  );
  return (
    lines &&
    !list.some((other) => other.hint === "pressure" && other !== draft) &&
    !list.some((other) => other.unit?.dimension === "pressure")
  );
}

/** "static .45 supply -.31 return": so small beside a static, it is one. */
function small(draft: Draft, items: readonly Item[]): boolean {
  const pascals = items.some((item) => item.unit?.figure === "Pa");
  const inside = /^(?:supply|return)_air$/.test(draft.place ?? "");
  if (pascals && draft.hint === "temperature" && inside)
    if (draft.value < 0 || draft.value > 50) return true;
  if (draft.hint === "voltage" && draft.place === "supply" && Math.abs(draft.value) < 5)
    return items.some((item) => item.label?.quantity === "static_pressure");
  // "water out 4,5. filter dp 234 Pa": beside pascals so small a figure is no static, and water has none
  if (pascals || /^(?:water|condenser|evaporator)_/.test(draft.place ?? "")) return false;
  return (
    draft.hint === "temperature" &&
    Math.abs(draft.value) < 5 &&
    !Number.isInteger(draft.value) &&
    items.some((item) => item.label?.quantity === "static_pressure")
  );
}

/** "static ret -.38 sup .52 filter .21": what the filter or the coil costs of it. */
function dropAcross(draft: Draft, items: readonly Item[]): boolean {
  const at = draft.before[draft.before.length - 1] ?? -1;
  if (!/^(?:filter|filters|filt|fltr|coil)$/.test(items[at]?.text ?? "")) return false;
  if (draft.index - at > 2 || draft.points !== undefined || Number.isInteger(draft.value))
    return false;
  const told = items.some(({ label }) => label?.quantity === "static_pressure");
  return told && Math.abs(draft.value) < 5;
}

/** "pressure switch is rated 0.65 inches": what proves the draft of a burner. */
function atAirSwitch(draft: Draft, items: readonly Item[]): boolean {
  return draft.before.some((index) => {
    const { text, label } = items[index] ?? {};
    return text === "pressure" && label?.component === true;
  });
}

function hinted(draft: Draft, items: readonly Item[], context: Context): Draft["quantity"] {
  if (small(draft, items)) {
    if (draft.place === "supply") draft.place = "supply_air";
    return "static_pressure";
  }
  if (draft.hint !== "pressure" || draft.place === undefined) return draft.hint;
  // beside a head, or near the pressure that was read there, "suct 128" is a pressure too
  if (items.some(({ text }) => /^(?:head|hd|low|high)$/.test(text))) return draft.hint;
  if (nearPressure(draft, context)) return draft.hint;
  // "oil pressure 41" behind lines: said to be one
  if (draft.before.some((index) => isPressed(items[index]) && isLong(items[index])))
    return draft.hint;
  const latest = context.readings.slice(-2);
  const lines =
    // so many bar have no discharge but that of CO2: there one line is enough
    latest.length > (context.units === "si" ? 0 : 1) &&
    latest.every((reading) => reading.quantity === "temperature" && onPipe.test(reading.at ?? ""));
  const temperatures =
    context.units === "us" ? draft.value < 280 : draft.value > 45 && draft.value < 130;
  return lines && temperatures && !items.some((item) => item.unit?.dimension === "pressure")
    ? "temperature"
    : draft.hint;
}

/** Is the figure nearer to the pressure than to the temperature that was last read at its place? */
function nearPressure(draft: Draft, { readings }: Context): boolean {
  const far = (quantity: "pressure" | "temperature"): number => {
    const last = readings.findLast((one) => one.quantity === quantity && one.at === draft.place);
    const figure = Number(last?.figure.number ?? Number.NaN);
    return figure > 0 && draft.value > 0 ? Math.abs(Math.log(draft.value / figure)) : Infinity;
  };
  const pressure = far("pressure");
  return pressure < Math.log(2) && pressure < far("temperature");
}
