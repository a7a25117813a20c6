import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { takeFor } from "./recast.ts";

/** V; a contact that loses more in load is open. Common practice, no source. */
const mostDropV = 20;

const poles = /^(?:pole|poles|contacts|points|contactor)$/;

/** "drop across the poles at 21 amps 0.04 0.05 0.04": bare figures beside contacts and what they lose. */
export function poleDrops(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) if (isVoltsSaid(draft, items)) asVolts(draft);
  const lost = items.findIndex(({ text }) => /^(?:drop|drops|across)$/.test(text));
  if (lost < 0) return;
  const told = list.some(({ unit, value }) => unit?.dimension === "voltage" && value <= mostDropV);
  if (!told && !items.some(({ text }, at) => at > lost && at < lost + 6 && poles.test(text)))
    return;
  for (const draft of list) {
    const free =
      draft.unit === undefined &&
      (draft.named === undefined ||
        draft.named === "diode_drop" ||
        (told && draft.named === "temperature_difference")) &&
      draft.rating === undefined &&
      !draft.over &&
      items[draft.index]?.kind === itemKind.number;
    if (!free || draft.index < lost || draft.value > mostDropV) continue;
    if (Number.isInteger(draft.value) && draft.value !== 0) continue;
    takeFor(draft, "voltage", "V");
  }
}

/** "pulls in clean, 0.1 V drop": the unit stands behind the figure, as part of the drop's name. */
function isVoltsSaid(draft: Draft, items: readonly Item[]): boolean {
  const behind = items[draft.index + 1];
  const named = behind?.label?.hint === "voltage" && /^(?:v|volt)\b/.test(behind.text);
  return !draft.ownUnit && named;
}

function asVolts(draft: Draft): void {
  draft.quantity = "voltage";
  draft.named = "voltage";
  draft.unit = unitCalled("V");
  draft.ownUnit = true;
  draft.assumedUnit = false;
  draft.hint = undefined;
}
