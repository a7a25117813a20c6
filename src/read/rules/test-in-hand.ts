import type { QuantityName } from "../../quantities/list.ts";
import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";

const tests: ReadonlySet<QuantityName> = new Set<QuantityName>([
  "winding_resistance",
  "insulation_resistance",
  "diode_drop",
  "resistance",
]);

/** "winding test on comp 1", "diode check on the drive": the values come in the next message. */
export const testsInHand: Rule = {
  name: "<test> on <part>",
  heads:
    "winding|windings|diode|diodes|ohms|ohming|megging|megger|heaters|heater|thermistors|sensors|checking|check|test|testing|rectifier|ipm",
  apply: (note) => {
    const { items } = note;
    if (note.readings.length > 0 || note.ask.length > 0 || items.length > 14) return;
    if (note.statements.some((one) => one.kind !== "note")) return;
    if (note.holds.mark || items.some((item) => item.kind === itemKind.number && item.unit)) return;
    const at = items.findIndex(
      (item) => item.label?.quantity !== undefined && tests.has(item.label.quantity),
    );
    const quantity = items[at]?.label?.quantity;
    if (quantity === undefined) return;
    state(note, testsInHand.name, [at, at + 1], { kind: "note", about: `testing ${quantity}` });
  },
};
