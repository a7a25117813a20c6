import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** "SP 118 ST 50 HP 365": beside the other gauges SP is the suction pressure. */
export function gaugeLetters(items: readonly Item[], drafts: readonly Draft[]): void {
  superLetters(items, drafts);
  lowHigh(items, drafts);
  staticLetters(items, drafts);
  if (!drafts.some((draft) => draft.rating === "setpoint")) return;
  if (!items.some((item) => /^(?:hp|st|slt|llt|dp)$/.test(item.text))) return;
  drafts.forEach((draft, order) => {
    if (
      !draft.before.some((index) => items[index]?.text === "sp") ||
      draft.rating !== "setpoint" ||
      draft.unit !== undefined ||
      wanted(draft, drafts[order - 1])
    )
      return;
    draft.rating = undefined;
    draft.place = "suction";
    draft.named = "pressure";
    const other = drafts.find(
      (one) =>
        items[one.index - 1]?.text === "dp" ||
        (items[one.index - 1]?.text === ":" && items[one.index - 2]?.text === "dp"),
    );
    if (other === undefined || other.unit !== undefined || other.value <= draft.value) return;
    other.place = "discharge";
    other.named = "pressure";
  });
}

/** "sub 6.5 sup 14": beside the subcooling SUP is the superheat, no supply air. */
function superLetters(items: readonly Item[], drafts: readonly Draft[]): void {
  if (!items.some(({ text }) => /^(?:sub|subs)$/.test(text))) return;
  if (items.some(({ label }) => label?.place === "return_air")) return;
  for (const draft of drafts) {
    if (items[draft.index - 1]?.text !== "sup" || draft.value > 45) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    draft.place = undefined;
    draft.hint = undefined;
    draft.named = "superheat";
  }
}

/** "lo 62 hi 241", "LP 60 HP 260": side by side the gauges of the two sides. */
function lowHigh(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index > left.index + 3) return;
    if (right.index === left.index + 3 && items[left.index + 1]?.text !== ",") return;
    const [low, high] = [left, right].map(({ index }) => items[index - 1]?.text ?? "");
    if (!/^l[op]$/.test(low ?? "") || !/^h[ip]$/.test(high ?? "")) return;
    const free = [left, right].every(
      ({ unit, points, named }) => (unit ?? points ?? named) === undefined,
    );
    if (!free || right.value < left.value * 1.5 || right.value < 60) return;
    left.place = "suction";
    right.place = "discharge";
    left.named = "pressure";
    right.named = "pressure";
    right.stat = undefined;
  });
}

/** "lwt 44.2 sp 44.0": right behind the water or the air that it is near to, SP is what was set. */
function wanted(draft: Draft, left: Draft | undefined): boolean {
  if (left?.place === undefined || draft.before.length > 1) return false;
  if (!/_air$|^water_|^box$|^product$/.test(left.place)) return false;
  return draft.index <= left.index + 3 && Math.abs(draft.value - left.value) <= 15;
}

/** "RA 74.8 SA 55.2 SP 1.15": among the air's figures SP is a small static pressure, no setpoint. */
function staticLetters(items: readonly Item[], drafts: readonly Draft[]): void {
  const air = drafts.some((draft) => draft.place?.endsWith("_air") === true);
  if (!air) return;
  for (const draft of drafts) {
    const { value, unit } = draft;
    const said = draft.before.some((index) => items[index]?.text === "sp");
    if (!said || draft.rating !== "setpoint" || draft.place !== undefined) continue;
    if (unit !== undefined || Math.abs(value) > 6 || Number.isInteger(value)) continue;
    draft.rating = undefined;
    draft.named = "static_pressure";
  }
}

/** "suct grp 1 22# grp 2 41#": the sign means pounds of pressure for all where it does for one. */
export function hashes(drafts: readonly Draft[]): void {
  const signed = drafts.filter((draft) => draft.letter === "#");
  if (!signed.some((draft) => draft.quantity === "pressure")) return;
  let place: Draft["place"];
  for (const draft of signed) {
    if (draft.quantity === "pressure") place = draft.place;
    if (draft.quantity !== "mass" || draft.action !== undefined || draft.rating !== undefined)
      continue;
    draft.unit = unitCalled("psi");
    draft.quantity = "pressure";
    draft.place ??= place;
  }
}

const lineLetters: ReadonlyMap<string, "discharge" | "suction" | "liquid"> = new Map([
  ["td", "discharge"],
  ["ts", "suction"],
  ["tl", "liquid"],
]);

/** "td 210 ts 52 tl 95": beside the other lines' temperatures TD is the discharge's. */
export function lineTemperatures(items: readonly Item[], drafts: readonly Draft[]): void {
  const said = new Set<string>();
  for (const { text } of items) if (lineLetters.has(text)) said.add(text);
  if (said.size === 0) return;
  const gauges = items.some(({ text }) => /^(?:pd|ps)$/.test(text));
  if (said.size < 2 && !(gauges && said.has("td"))) return;
  for (const draft of drafts) {
    const place = lineLetters.get(items[draft.index - 1]?.text ?? "");
    if (place === undefined || draft.value < -40 || draft.value > 300) continue;
    // alone it may be a difference
    if (said.size < 2 && draft.value < 45) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    draft.place = place;
    draft.named = "temperature";
  }
}

/** "sst A 41 B 29": one label, and the letters of two circuits before their values. */
export function lettered(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2 || right.unit !== undefined) return;
    const [first, second] = [items[left.index - 1]?.text ?? "", items[right.index - 1]?.text ?? ""];
    if (!/^(?:ab|bc|cd|12|23)$/.test(first + second) || right.named !== undefined) return;
    // "a to b 461 b to c 459": between the legs
    if ((items[left.index - 1]?.points?.[0]?.length ?? 1) > 1) return;
    const label = items[left.index - 2]?.label;
    // "amps A 12.1 B 12.4 C 0": the three legs
    const legs = /^(?:current|voltage)$/.test(label?.quantity ?? label?.hint ?? "");
    if (legs && items[right.index + 1]?.points?.[0]?.[0] === "phase C") return;
    if (label === undefined || (label.place === undefined && label.quantity === undefined)) return;
    right.place = label.place;
    right.named = label.quantity;
    right.hint = label.hint;
    const named = items.find((item) => / [A-D1-4]$/.test(item.subject ?? ""))?.subject;
    const whose = named?.slice(0, -1);
    left.subject = whose === undefined ? undefined : whose + first.toUpperCase();
    right.subject = whose === undefined ? right.subject : whose + second.toUpperCase();
    right.points = undefined;
    left.points = undefined;
  });
}
