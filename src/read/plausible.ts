import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { between } from "./relate.ts";
import { alike, isPair, shapeOf } from "./shape.ts";

/** "defrost heaters 21.4 21.2 and one open": beside an open one, ohms are meant. */
export function byOpen(list: readonly Draft[]): void {
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
export function byTest(draft: Draft, context: Context): void {
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
export function byCapacitor(list: readonly Draft[]): void {
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
export function byState(draft: Draft, list: readonly Draft[], items: readonly Item[]): void {
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
export function byThree(list: readonly Draft[], items: readonly Item[]): void {
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
export function byPairs(list: readonly Draft[], items: readonly Item[]): void {
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
export function byPlausibility(draft: Draft): void {
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
