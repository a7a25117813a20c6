import type { Unit } from "../quantities/quantity.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { usualQuantity } from "./kinds.ts";
import type { Label } from "./label.ts";
import { role } from "./word.ts";

interface Name extends Label {
  readonly unit?: Unit;
}

const sides: Readonly<Record<string, Label>> = {
  lo: { place: "suction", hint: "pressure" },
  low: { place: "suction", hint: "pressure" },
  hi: { place: "discharge", hint: "pressure" },
  high: { place: "discharge", hint: "pressure" },
};

/** What an item of a stroked run names, by its word or its unit; nothing where it names no measurement. */
function nameOf(item: Item | undefined): Name | undefined {
  if (item === undefined || item.owner !== undefined || item.kind === itemKind.number)
    return undefined;
  const { unit } = item;
  const quantity = unit === undefined ? undefined : usualQuantity(unit.dimension);
  if (unit !== undefined && quantity !== undefined) return { quantity, unit };
  const side = sides[item.text];
  if (side !== undefined) return side;
  const { label } = item;
  if (label === undefined || label.rating !== undefined || label.action !== undefined)
    return undefined;
  return label.place !== undefined || label.quantity !== undefined || label.hint !== undefined
    ? label
    : undefined;
}

/** "ra/sa/oa" from its first name: the names, and where they end. */
function namesAt(items: readonly Item[], i: number): readonly [names: Name[], end: number] {
  const names: Name[] = [];
  let at = i;
  for (;;) {
    const name = nameOf(items[at]);
    if (name === undefined) return [[], i];
    names.push(name);
    if (items[at + 1]?.text !== "/") return [names, at + 1];
    at += 2;
  }
}

/** Values joined by strokes from `i`, as drafts. */
function valuesAt(items: readonly Item[], drafts: readonly Draft[], i: number): Draft[] {
  const values: Draft[] = [];
  let at = i;
  for (;;) {
    const value = drafts.find((draft) => draft.index === at);
    if (value === undefined) return values;
    values.push(value);
    if (items[at + 1]?.text !== "/") return values;
    at += 2;
  }
}

function give(values: readonly Draft[], names: readonly Name[]): void {
  // "return db/wb 74/62": both are of the return
  const placed = names.some((label) => label.place !== undefined);
  const place = placed ? undefined : values[0]?.place;
  values.forEach((draft, order) => {
    const label = names[order];
    if (label === undefined) return;
    draft.place = label.place ?? place;
    draft.named = label.quantity;
    draft.hint = label.hint;
    draft.kind = label.kind;
    if (!draft.ownUnit) draft.unit = label.unit;
    draft.stat = undefined;
    draft.thing = undefined;
    draft.component = false;
  });
}

/** May it stand between the names and a row of their values: "db/wb return 74/62 supply 55/53"? */
function leads(item: Item | undefined): boolean {
  if (item === undefined || item.owner !== undefined) return false;
  if (item.kind === itemKind.line || item.kind === itemKind.subject) return true;
  if (item.text === "," || item.text === ":" || (item.roles & role.is) !== 0) return true;
  const { label } = item;
  return label?.place !== undefined && label.quantity === undefined && label.rating === undefined;
}

/** Gives the names to each row behind them that has as many values; false where there is none. */
function giveRows(
  items: readonly Item[],
  drafts: readonly Draft[],
  from: number,
  names: readonly Name[],
): boolean {
  const placed = names.some((label) => label.place !== undefined);
  let at = from;
  for (let rows = 0; ; rows++) {
    let next = at;
    while (leads(items[next]) && (rows > 0 || !placed || items[next]?.label === undefined)) next++;
    const values = valuesAt(items, drafts, next);
    if (values.length !== names.length || (rows > 0 && (placed || next === at))) return rows > 0;
    give(values, names);
    at = next + 2 * names.length - 1;
  }
}

/** "sst/sct 40/105", "40/105 sat": of two saturations the lower is the suction's. */
function saturations(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2) return;
    const word = items[right.index + 1]?.text ?? "";
    if (items[left.index + 1]?.text !== "/" || !/^(?:sat|sats|saturation|saturations)$/.test(word))
      return;
    if (left.before.length > 0 || left.unit !== undefined || left.value >= right.value) return;
    left.place = "suction_saturation";
    right.place = "discharge_saturation";
    left.named = "temperature";
    right.named = "temperature";
  });
}

/** "ra/sa/oa 75/56/92", "76/63 db/wb", "suct/hd 118/340": names and values in the same order. */
export function slashed(items: readonly Item[], drafts: readonly Draft[]): void {
  if (!items.some((item) => item.text === "/")) return;
  saturations(items, drafts);
  for (let i = 0; i < items.length; i++) {
    const [names, end] = namesAt(items, i);
    if (names.length < 2) continue;
    if (giveRows(items, drafts, end, names)) {
      i = end;
      continue;
    }
    const start = i - 2 * names.length + 1;
    const behind = start < 0 ? [] : valuesAt(items, drafts, start);
    if (behind.length === names.length) give(behind, names);
    i = end;
  }
}
