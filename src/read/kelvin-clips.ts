import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { role } from "./word.ts";

const tools = /^(?:clips?|leads?|probes?|bridge|meter|ohmmeter|tweezers)$/;

/** "kelvin clips 0.118 0.121 0.084": four wires to a meter, no degrees. */
export function kelvinClips(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "kelvin" || !tools.test(items[i + 1]?.text ?? "")) return;
    item.kind = itemKind.word;
    item.unit = undefined;
  });
}

const differences = /^(?:superheat|subcooling|temperature_difference)$/;
/** K between a line and saturation at most; common practice, no source. */
const mostApart = 60;

/** "SC should be 5, measured 1.5 K": where nothing but a difference is told K is no kilohm. */
export function kelvinsApart(items: readonly Item[], typed: string): void {
  items.forEach((item, i) => {
    if (item.unit?.figure !== "kilohm" || !(item.value <= mostApart)) return;
    // "discharge superheat 22 k, crankcase heater …"
    const before = (items[i - 1]?.roles ?? 0) & role.is ? items[i - 2] : items[i - 1];
    if (differences.test(before?.label?.quantity ?? "")) item.unit = unitCalled("K");
  });
  const kelvins = items.filter(
    ({ unit, value, unitFrom }) =>
      unit?.figure === "kilohm" && value <= mostApart && typed.charAt(unitFrom) === "K",
  );
  if (kelvins.length === 0) return;
  const named = items.flatMap(({ label }) => label?.quantity ?? []);
  if (named.length === 0 || !named.every((one) => differences.test(one))) return;
  if (items.some(({ label, points }) => label?.component === true || points !== undefined)) return;
  for (const item of kelvins) item.unit = unitCalled("K");
}

/** "SC should be 5, measured 1.5 K": kelvins behind what a difference should be are what it is. */
export function asExpected(drafts: readonly Draft[]): void {
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    if (left?.rating !== "expected" || left.named === undefined) return;
    if (draft.unit?.figure !== "K" || draft.named !== undefined) return;
    if (differences.test(left.named)) draft.named = left.named;
  });
}
