import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Label } from "./label.ts";
import { role } from "./word.ts";

const sides: Readonly<Record<string, Label>> = {
  lo: { place: "suction", hint: "pressure" },
  low: { place: "suction", hint: "pressure" },
  hi: { place: "discharge", hint: "pressure" },
  high: { place: "discharge", hint: "pressure" },
};

/** What an item of a stroked run names; nothing where it names no measurement. */
function nameOf(item: Item | undefined): Label | undefined {
  if (item === undefined || item.owner !== undefined || item.kind === itemKind.number)
    return undefined;
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
function namesAt(items: readonly Item[], i: number): readonly [names: Label[], end: number] {
  const names: Label[] = [];
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

function give(values: readonly Draft[], names: readonly Label[]): void {
  values.forEach((draft, order) => {
    const label = names[order];
    if (label === undefined) return;
    draft.place = label.place;
    draft.named = label.quantity;
    draft.hint = label.hint;
    draft.kind = label.kind;
    draft.stat = undefined;
    draft.thing = undefined;
    draft.component = false;
  });
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
    const joint = items[end];
    const from =
      joint !== undefined && ((joint.roles & role.is) !== 0 || joint.text === ",") ? end + 1 : end;
    const ahead = valuesAt(items, drafts, from);
    if (ahead.length === names.length) {
      give(ahead, names);
      i = end;
      continue;
    }
    const start = i - 2 * names.length + 1;
    const behind = start < 0 ? [] : valuesAt(items, drafts, start);
    if (behind.length === names.length) give(behind, names);
    i = end;
  }
}
