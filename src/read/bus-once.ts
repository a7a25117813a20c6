import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const names = /^(?:bus|dc|link|pn)$/;
const elsewhere =
  /^(?:board|control|controls|transformer|xfmr|coil|contactor|secondary|thermostat|stat)$/;

/** A bus stands at 1.35 to 1.41 times its line. Source: rectifier theory, three-phase bridge. */
const ofBus = { least: 0.66, most: 0.78 } as const;

/** "bus 648 volts 461 459 463": three legs such as feed that bus. */
function lineOf(bus: Draft, drafts: readonly Draft[]): boolean {
  const row = drafts.slice(drafts.indexOf(bus) + 1, drafts.indexOf(bus) + 4);
  return (
    row.length === 3 &&
    row.every(({ value }) => value / bus.value > ofBus.least && value / bus.value < ofBus.most)
  );
}

/** "bus 648 volts 461 459 463", "bus 648, 24 volts at the board": the bus was told, these are another's volts. */
export function busOnce(drafts: readonly Draft[], items: readonly Item[]): void {
  let other = false;
  drafts.forEach((draft, order) => {
    const last = drafts[order - 1];
    if (last === undefined || draft.gone || draft.place !== "dc_bus") return;
    const between = items.slice(last.index + 1, draft.index);
    if (between.some(({ text }) => names.test(text))) {
      other = false;
      return;
    }
    other ||= between.some(({ kind, unit }) => kind === itemKind.unit && unit?.figure === "V");
    if (last.place === "dc_bus" && lineOf(last, drafts)) other = true;
    const behind = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
    const at = behind[0] === "at" && behind.some((text) => elsewhere.test(text));
    if (!other && !at) return;
    draft.place = undefined;
    draft.kind = undefined;
  });
}
