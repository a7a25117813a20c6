import { inherit } from "./chain.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { quantityOf, unitCalled } from "./kinds.ts";
import { fromContext, inOrder } from "./recall.ts";
import { between } from "./relate.ts";
import { byUnit, resistanceOf, type Setting } from "./settle.ts";
import { role } from "./word.ts";

/** P for points, L for a place, S for a subject alone, "" for a bare number. */
export function shapeOf(draft: Draft): string {
  if (draft.points !== undefined || draft.grounded) return "P";
  if (draft.place !== undefined) return "L";
  return draft.subject !== undefined ? "S" : "";
}

function lastLike(
  context: Context,
  quantity: Draft["quantity"],
): Context["readings"][number] | undefined {
  for (let i = context.readings.length - 1; i >= 0; i--) {
    const reading = context.readings[i];
    if (reading?.quantity === quantity && reading?.figure.unit !== "") return reading;
  }
  return undefined;
}

/** Two units for the same thing before, and the value could be in either: nobody knows. */
function differing(draft: Draft, context: Context): boolean {
  const units = new Set<string>();
  for (const reading of context.readings) {
    if (
      reading.quantity !== draft.quantity ||
      reading.at !== draft.place ||
      reading.figure.unit === "" ||
      reading.corrects === true
    )
      continue;
    const ratio = draft.value / Number(reading.figure.number);
    if (ratio > 1 / 3 && ratio < 3) units.add(reading.figure.unit.replace("psig", "psi"));
  }
  return units.size > 1;
}

/** The unit that the message has used for the same thing. */
function unitBefore(draft: Draft, list: readonly Draft[], order: number): void {
  if (draft.quantity !== "pressure" && draft.quantity !== "temperature") return;
  for (let i = order - 1; i >= 0; i--) {
    const other = list[i];
    if (other?.quantity !== draft.quantity || other.unit === undefined || other.assumedUnit)
      continue;
    if (other.unit.dimension === "inches_of_mercury" || other.unit.figure === "degrees") return;
    draft.unit = other.unit;
    draft.assumedUnit = true;
    return;
  }
}

function habitUnit(draft: Draft, context: Context): void {
  if (draft.quantity === undefined || draft.unit !== undefined) return;
  const last = lastLike(context, draft.quantity);
  const { habit } = quantityOf(draft.quantity);
  const figure =
    last !== undefined && sameWorld(draft, last.figure.unit)
      ? last.figure.unit
      : habit?.[context.units];
  if (figure === undefined) return;
  if (differing(draft, context)) {
    draft.question = "unit";
    return;
  }
  draft.unit = unitCalled(figure);
  draft.assumedUnit = true;
}

function sameWorld(draft: Draft, figure: string): boolean {
  return (
    draft.quantity !== undefined &&
    unitCalled(figure)?.dimension === quantityOf(draft.quantity).dimensions[0]
  );
}

/** By its own unit or its own words. */
function own(draft: Draft, items: readonly Item[], setting: Setting, context: Context): void {
  if (draft.unit !== undefined) {
    draft.quantity = byUnit(draft, setting);
    return;
  }
  if (draft.over) {
    if (draft.named === "diode_drop" || setting.diode) draft.quantity = "diode_drop";
    else if (
      draft.points !== undefined ||
      draft.grounded ||
      draft.component ||
      draft.named !== undefined
    )
      draft.quantity = resistanceOf(draft, undefined, setting);
    return;
  }
  if (draft.named !== undefined && !(draft.component && draft.named === "resistance")) {
    draft.quantity =
      draft.named === "insulation_resistance" || draft.named === "winding_resistance"
        ? resistanceOf(draft, undefined, setting)
        : draft.named;
    if (draft.named === "resistance")
      draft.quantity = resistanceOf(draft, unitCalled("ohm"), setting);
    if (draft.named === "voltage" || draft.named === "diode_drop") draft.unit = unitCalled("V");
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
  else if (draft.hint !== undefined) draft.quantity = hinted(draft, items, context);
  else if (draft.place === "liquid") draft.quantity = liquid(draft, context);
}

/** "and the discharge 204" goes on with lines where lines were being measured. */
function oilIsWarm(draft: Draft, list: readonly Draft[]): boolean {
  if (draft.place !== "oil" || draft.value < 70) return false;
  const lines = list.some(
    (other) => other !== draft && other.hint === "temperature" && other.place !== undefined,
  );
  return (
    lines &&
    !list.some((other) => other.hint === "pressure" && other !== draft) &&
    !list.some((other) => other.unit?.dimension === "pressure")
  );
}

function hinted(draft: Draft, items: readonly Item[], context: Context): Draft["quantity"] {
  if (draft.hint !== "pressure" || draft.place === undefined) return draft.hint;
  const word = items[draft.before[draft.before.length - 1] ?? -1]?.text ?? "";
  if (word === "head" || word === "hd" || word === "low" || word === "high") return draft.hint;
  const latest = context.readings.slice(-2);
  const lines =
    latest.length > 1 &&
    latest.every((reading) => reading.quantity === "temperature" && reading.at !== undefined);
  const temperatures =
    context.units === "us" ? draft.value < 280 : draft.value > 45 && draft.value < 130;
  return lines && temperatures && !items.some((item) => item.unit?.dimension === "pressure")
    ? "temperature"
    : draft.hint;
}

/** "liquid 344" is a pressure, "liq 106" a temperature; between them nobody knows. */
function liquid(draft: Draft, context: Context): Draft["quantity"] {
  if (context.units === "si") return draft.value > 70 ? undefined : undefined;
  if (draft.value > 165) return "pressure";
  return draft.value < 130 ? "temperature" : undefined;
}

function copyKind(from: Draft, to: Draft): void {
  to.quantity = from.quantity;
  if (to.unit === undefined) {
    to.unit = from.unit;
    to.assumedUnit = from.assumedUnit;
  }
}

/** Values of one row are of one size. */
function alike(a: Draft, b: Draft): boolean {
  if (a.value === 0 || b.value === 0 || Number.isNaN(a.value) || Number.isNaN(b.value)) return true;
  const ratio = Math.abs(a.value / b.value);
  return ratio > 0.2 && ratio < 5;
}

/** Where the unit stands with the first of a row, the others are of its size. */
function near(left: Draft, right: Draft): boolean {
  if (!left.ownUnit || left.value === 0 || right.value === 0) return true;
  const ratio = Math.abs(right.value / left.value);
  return ratio > 0.45 && ratio < 2.2;
}

/** A row of values without labels between: what the one says holds for the other. */
function alongLists(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = list.length - 2; i >= 0; i--) {
    const left = list[i];
    const right = list[i + 1];
    if (left === undefined || right === undefined || right.quantity === undefined) continue;
    if (left.unit !== undefined || (left.named !== undefined && left.named !== right.quantity))
      continue;
    if (left.quantity !== undefined && left.quantity !== right.quantity) continue;
    const gap = between(items, left, right);
    if (!alike(left, right)) continue;
    if (
      (gap.list || gap.empty) &&
      right.unit !== undefined &&
      !right.assumedUnit &&
      right.before.length === 0
    )
      copyKind(right, left);
  }
  for (let i = 1; i < list.length; i++) {
    const left = list[i - 1];
    const right = list[i];
    if (left === undefined || right === undefined || left.quantity === undefined) continue;
    const gap = between(items, left, right);
    if (!gap.list && !gap.empty) continue;
    if (right.unit !== undefined && right.quantity !== left.quantity) continue;
    if (right.before.length > 0) continue;
    if (left.rating !== undefined) {
      if (items[left.index + 1]?.text !== "/" || left.rating !== "nominal") continue;
      right.rating ??= left.rating;
    }
    if (right.quantity === undefined && left.quantity !== "capacitance" && !near(left, right))
      continue;
    if (right.quantity === undefined) copyKind(left, right);
    right.subject ??= left.subject;
    right.state ??= left.state;
    right.kind ??= left.kind;
    right.component = right.component || left.component;
    right.place ??= left.place;
  }
}

function likeBefore(list: readonly Draft[], order: number, shape: string): Draft | undefined {
  const draft = list[order];
  for (let i = order - 1; i >= 0; i--) {
    const other = list[i];
    if (draft !== undefined && other?.quantity !== undefined && likeShape(other, draft, shape))
      return other;
  }
  return undefined;
}

function likeBehind(list: readonly Draft[], order: number, shape: string): Draft | undefined {
  const draft = list[order];
  for (let i = order + 1; i < list.length; i++) {
    const other = list[i];
    if (
      draft !== undefined &&
      other?.quantity !== undefined &&
      (other.unit !== undefined || other.assumedQuantity) &&
      likeShape(other, draft, shape)
    )
      return other;
  }
  return undefined;
}

/** Same shape in the same message: what the one is, the other is. */
function alongShapes(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    if (draft.quantity !== undefined || draft.unit !== undefined) return;
    const shape = shapeOf(draft);
    const before = likeBefore(list, order, shape);
    const behind = likeBehind(list, order, shape);
    if (shape === "P") {
      const word = wordBefore(list, order);
      const source = before ?? behind;
      if (source === undefined && word === undefined) nearRating(draft, list);
      if (source !== undefined) {
        if (source === before && draft.rating === undefined) draft.state ??= source.state;
        copyKind(source, draft);
        return;
      }
      if (word !== undefined) copyKind(word, draft);
      return;
    }
    if (shape === "S" && before !== undefined) {
      copyKind(before, draft);
      return;
    }
    if (shape === "S" && behind !== undefined) {
      copyKind(behind, draft);
      return;
    }
    const left = list[order - 1];
    if (draft.over && left?.quantity === "resistance") {
      draft.quantity = "resistance";
      return;
    }
    if (shape === "" && left?.quantity !== undefined && continues(draft, left, items)) {
      copyKind(left, draft);
      if (left.rating === "expected" || left.rating === "setpoint" || draft.rating === "expected") {
        draft.points ??= left.points;
        if (left.place !== undefined && draft.rating === undefined) draft.place ??= left.place;
      }
      if (draft.earlier || left.earlier || draft.after !== undefined || draft.now)
        inherit(left, draft);
    }
    if (draft.quantity === undefined && shape === "") nearRating(draft, list);
    const right = list[order + 1];
    if (
      draft.quantity === undefined &&
      shape === "" &&
      right?.quantity !== undefined &&
      draft.named === undefined &&
      contrasts(draft, right, items)
    )
      copyKind(right, draft);
  });
}

/** "tag says 208-230v … reading 214": a value near a rated one is of its kind. */
function nearRating(draft: Draft, list: readonly Draft[]): void {
  const like = list.find(
    (other) =>
      other.rating !== undefined &&
      other.quantity !== undefined &&
      draft.value > other.value * 0.85 &&
      draft.value < (Number.isNaN(other.high) ? other.value : other.high) * 1.15,
  );
  if (like !== undefined && draft.rating === undefined && list.length > 2) copyKind(like, draft);
}

function isPair(draft: Draft): boolean {
  const points = draft.points?.[0];
  return (
    points !== undefined &&
    points.length === 2 &&
    !points.includes("ground") &&
    !points.includes("N")
  );
}

function likeShape(a: Draft, b: Draft, shape: string): boolean {
  if (a.after !== undefined && b.after !== undefined) return true;
  if (shapeOf(a) !== shape || a.rating !== undefined) return false;
  if (shape !== "P") return true;
  return isPair(a) === isPair(b);
}

/** A quantity word earlier in the message, the nearest value's own. */
function wordBefore(list: readonly Draft[], order: number): Draft | undefined {
  for (let i = order - 1; i >= 0; i--)
    if (list[i]?.quantity !== undefined && list[i]?.rating === undefined) return list[i];
  return undefined;
}

function continues(draft: Draft, left: Draft, items: readonly Item[]): boolean {
  if (draft.rating !== undefined || left.rating !== undefined)
    return alike(draft, left) || left.quantity === "insulation_resistance";
  const gap = between(items, left, draft);
  if (
    (gap.strong || !gap.calm) &&
    !draft.now &&
    !draft.earlier &&
    draft.after === undefined &&
    !left.earlier
  )
    return false;
  for (let i = left.index + 1; i < draft.index; i++)
    if (items[i]?.text === "still") return alike(draft, left);
  if (draft.earlier || draft.now || left.earlier || draft.after !== undefined) return true;
  if (draft.state !== undefined && alike(draft, left)) {
    draft.place ??= left.place;
    draft.kind ??= left.kind;
    return true;
  }
  return (
    (gap.roles & (role.next | role.is | role.correct | role.change)) !== 0 &&
    (!gap.carriers ||
      draft.before.every(
        (index) =>
          items[index]?.label?.thing !== undefined || items[index]?.label?.reference !== undefined,
      ))
  );
}

function contrasts(draft: Draft, right: Draft, items: readonly Item[]): boolean {
  if (!alike(draft, right)) return false;
  if (draft.rating !== undefined || draft.earlier || draft.after !== undefined) return true;
  const gap = between(items, draft, right);
  return right.rating !== undefined || gap.bare;
}

/** "defrost heaters 21.4 21.2 and one open": beside an open one, ohms are meant. */
function byOpen(list: readonly Draft[]): void {
  const open = list.find((draft) => draft.over && draft.quantity === "resistance");
  if (open === undefined) return;
  for (const draft of list)
    if (draft.quantity === undefined && draft.unit === undefined && draft.component) {
      draft.quantity = "resistance";
      draft.unit = unitCalled("ohm");
      draft.assumedUnit = true;
    }
}

/** A test was announced and its first values come: "one minute 45", "lead 1 84". */
function byTest(draft: Draft, context: Context): void {
  if (
    context.test === undefined ||
    draft.quantity !== undefined ||
    draft.unit !== undefined ||
    draft.question !== undefined
  )
    return;
  const last = context.readings[context.readings.length - 1];
  if (last !== undefined && last.quantity !== "insulation_resistance") return;
  const pair = isPair(draft);
  if (pair || (draft.points === undefined && draft.after === undefined)) return;
  draft.quantity = "insulation_resistance";
  draft.assumedQuantity = true;
}

/** In a message about capacitors a bare value is a capacitor's too. */
function byCapacitor(list: readonly Draft[]): void {
  const known = list.filter((draft) => draft.quantity !== undefined);
  if (known.length === 0 || !known.every((draft) => draft.quantity === "capacitance")) return;
  for (const draft of list)
    if (
      draft.quantity === undefined &&
      draft.unit === undefined &&
      draft.value > 0 &&
      draft.value < 400
    )
      draft.quantity = "capacitance";
}

/** "running 13.8 14.0 13.7", "settled to 12.2": amperes go without saying where nothing else fits. */
function byState(draft: Draft, list: readonly Draft[], items: readonly Item[]): void {
  if (
    draft.quantity !== undefined ||
    draft.unit !== undefined ||
    draft.over ||
    draft.place !== undefined ||
    draft.rating !== undefined
  )
    return;
  const settled =
    draft.state !== undefined ||
    /^settl|^level/.test(items[draft.index - 1]?.text ?? "") ||
    /^settl|^level/.test(items[draft.index - 2]?.text ?? "");
  if (!settled || draft.value < 0.3 || draft.value >= 170) return;
  draft.quantity = "current";
  draft.assumedQuantity = true;
  for (const other of list)
    if (
      other.quantity === undefined &&
      other.unit === undefined &&
      shapeOf(other) === "" &&
      other.state === undefined &&
      alike(draft, other) &&
      Math.abs(list.indexOf(other) - list.indexOf(draft)) <= 3
    ) {
      other.quantity = "current";
      other.assumedQuantity = true;
    }
}

/** Three values of one size between 180 and 620: the legs of a supply. */
function byThree(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const bare = row.every(
      (draft) =>
        (draft.quantity === undefined || supplyAir(draft)) &&
        draft.unit === undefined &&
        draft.rating === undefined &&
        !draft.over &&
        draft.value >= 180 &&
        draft.value <= 620,
    );
    const legs = row.every(
      (draft) =>
        /^(?:L\d|phase [ABC])$/.test(draft.points?.[0]?.[0] ?? "") &&
        draft.points?.[0]?.length === 1,
    );
    const plainRow = row.every(
      (draft, at) => draft.points === undefined && (at === 0 || rowGap(items, row[at - 1], draft)),
    );
    const joined = legs || plainRow;
    const low = Math.min(...row.map((draft) => draft.value));
    const high = Math.max(...row.map((draft) => draft.value));
    if (!bare || !joined || high > low * 1.3) continue;
    for (const draft of row) {
      if (supplyAir(draft)) draft.place = "supply";
      draft.quantity = "voltage";
      draft.assumedQuantity = true;
    }
  }
}

/** "comp 0.71 0.71 0.72 and 820 meg": three small values of one size before its insulation. */
function byPairs(list: readonly Draft[], items: readonly Item[]): void {
  if (!list.some((draft) => draft.quantity === "insulation_resistance")) return;
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const bare = row.every(
      (draft) =>
        draft.quantity === undefined &&
        draft.unit === undefined &&
        draft.points === undefined &&
        draft.value > 0 &&
        draft.value < 30,
    );
    const joined = row.every((draft, at) => at === 0 || rowGap(items, row[at - 1], draft));
    if (!bare || !joined || row[0]?.thing !== "compressor") continue;
    for (const draft of row) {
      draft.quantity = "winding_resistance";
      draft.assumedQuantity = true;
    }
  }
}

function rowGap(items: readonly Item[], left: Draft | undefined, right: Draft): boolean {
  if (left === undefined) return false;
  const gap = between(items, left, right);
  return gap.list || gap.empty;
}

function supplyAir(draft: Draft): boolean {
  return draft.quantity === "temperature" && draft.place === "supply_air" && !draft.ownUnit;
}

/** Legs with a value that only volts have: "L1-L2 481". */
function byPlausibility(draft: Draft): void {
  if (draft.quantity !== undefined || draft.unit !== undefined || draft.over) return;
  const pair = draft.points?.[0];
  if (pair === undefined || pair.length !== 2) return;
  const legs =
    pair.every((point) => /^(?:L\d|N|phase [ABC]|ground)$/.test(point)) && !pair.includes("ground");
  const thermostat = pair.includes("R") && pair.includes("C");
  if (thermostat && draft.value >= 18 && draft.value <= 32) draft.quantity = "voltage";
  const pins =
    !(thermostat && draft.value < 0.1) && pair.every((point) => /^(?:[CSRUVW]|T\d)$/.test(point));
  if (legs && draft.value >= 90 && draft.value <= 700) draft.quantity = "voltage";
  else if (draft.quantity === undefined && pins && draft.value < 60)
    draft.quantity = "winding_resistance";
  if (draft.quantity !== undefined) draft.assumedQuantity = true;
}

/** The subject named last holds on, until another part of the machine is spoken of. */
function subjects(list: readonly Draft[], items: readonly Item[]): void {
  let last: string | undefined;
  for (const draft of list) {
    if (draft.subject !== undefined) last = draft.subject;
    else if (
      draft.thing !== undefined &&
      last !== undefined &&
      !last.startsWith("circuit") &&
      !/-\d/.test(last) &&
      !(draft.thing === "compressor" && last.startsWith("compressor"))
    )
      last = undefined;
    else draft.subject = last;
  }
  const only = new Set(
    list.map((draft) => draft.subject).filter((subject) => subject !== undefined),
  );
  const end = list[list.length - 1];
  const [one] = only;
  if (
    only.size === 1 &&
    one !== undefined &&
    end?.behind.some((index) => items[index]?.kind === itemKind.subject) === true
  )
    for (const draft of list) draft.subject ??= one;
}

/** Gives each draft its quantity and its unit, from itself, its neighbours, the message, the job. */
export function infer(
  drafts: readonly Draft[],
  items: readonly Item[],
  setting: Setting,
  context: Context,
): void {
  const list = drafts.filter((draft) => !draft.gone);
  for (const draft of list) {
    if (oilIsWarm(draft, list)) draft.hint = "temperature";
    own(draft, items, setting, context);
  }
  alongLists(list, items);
  alongShapes(list, items);
  subjects(list, items);
  inOrder(list, context);
  for (const draft of list) if (draft.quantity === undefined) fromContext(draft, items, context);
  byCapacitor(list);
  byThree(list, items);
  byPairs(list, items);
  byOpen(list);
  for (const draft of list) byState(draft, list, items);
  for (const draft of list) byTest(draft, context);
  for (const draft of list) byPlausibility(draft);
  alongShapes(list, items);
  list.forEach((draft, order) => {
    if (draft.unit === undefined && draft.quantity !== undefined) unitBefore(draft, list, order);
    habitUnit(draft, context);
  });
}
