import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { isNitrogen } from "./nitrogen-name.ts";

const joint = /^(?:with|w|of|on|using)$/;

/** "pressurized to 450 with nitrogen", "up to 450 w/ n2": the gas is named behind its bare pressure. */
export function nitrogenBehind(draft: Draft, items: readonly Item[]): void {
  const bare = draft.unit === undefined && draft.named === undefined && draft.hint === undefined;
  if (!bare || draft.points !== undefined || draft.value < 20) return;
  let at = draft.index + 1;
  if (!joint.test(items[at]?.text ?? "")) return;
  at++;
  while (/^(?:\/|dry|the)$/.test(items[at]?.text ?? "")) at++;
  if (isNitrogen(items[at])) draft.named = "pressure";
}
