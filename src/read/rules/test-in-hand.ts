import type { QuantityName } from "../../quantities/list.ts";
import { type Item, isOneWord, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";

/** Meters whose figures go without a unit once they are announced. */
const meters: readonly (readonly [words: RegExp, quantity: QuantityName])[] = [
  [/^(?:amps?|amperage|amp draws?)$/, "current"],
  [/^(?:volts?|voltages?)$/, "voltage"],
  [/^(?:caps?|capacitors?)$/, "capacitance"],
];

const filler =
  /^(?:ok|okay|alright|so|lets|im|gonna|going|grabbing|checking|check|taking|doing|getting|next|clamp|meter|clamping|got|my|putting|put|draw|draws|reading|readings|legs?|phases?|side|full|speed|load|running|now|rack|racks|condenser|evaporator)$/;

const lead =
  role.article | role.preposition | role.is | role.now | role.next | role.all | role.each;

/** "checking amps", "amps on comp 2": nothing but the meter and where it is held. */
function meterSaid(items: readonly Item[]): QuantityName | undefined {
  let found: QuantityName | undefined;
  for (const item of items) {
    // "amps good" is the test's outcome, not its announcement
    const whole = isOneWord(item);
    // "running amps": the state and the meter in one name
    const meter =
      item.label?.quantity === "current" && item.label.state !== undefined
        ? "current"
        : whole
          ? meters.find(([words]) => words.test(item.text))?.[1]
          : undefined;
    if (meter !== undefined && found === undefined) found = meter;
    else if (!filler.test(item.text)) {
      const place =
        item.kind === itemKind.subject ||
        item.kind === itemKind.sign ||
        item.kind === itemKind.ground ||
        item.kind === itemKind.points ||
        item.label !== undefined;
      if (!place && (item.roles & lead) === 0) return undefined;
    }
  }
  return found;
}

const tests: ReadonlySet<QuantityName> = new Set<QuantityName>([
  "winding_resistance",
  "insulation_resistance",
  "diode_drop",
  "resistance",
  "static_pressure",
]);

/** "amps on the rack compressors": what the figures will be told of by its number, from many of a kind. */
function kindsOf(plain: string): string {
  const [, kind = ""] = /\b(comp|compressor|fan|pump|circuit|heater)s\b/.exec(plain) ?? [];
  return kind === "" ? "" : ` of ${kind === "comp" ? "compressor" : kind}`;
}

/** "winding test on comp 1", "diode check on the drive": the values come in the next message. */
export const testsInHand: Rule = {
  name: "<test> on <part>",
  heads:
    "static|statics|manifold|winding|windings|diode|diodes|ohms|ohming|megging|megger|heaters|heater|thermistors|sensors|checking|check|test|testing|rectifier|ipm|amps|amp|amperage|volts|voltage|voltages|caps|capacitors|cap|capacitor",
  apply: (note) => {
    const { items } = note;
    if (note.readings.length > 0 || note.ask.length > 0 || items.length > 14) return;
    if (note.statements.some((one) => one.kind !== "note")) return;
    if (note.holds.mark || items.some((item) => item.kind === itemKind.number && item.unit)) return;
    const tested = (only: (quantity: QuantityName) => boolean): number =>
      items.findIndex(({ label }) => label?.quantity !== undefined && only(label.quantity));
    // "ohming the windings": what is measured, before the word for measuring
    const windings = tested((quantity) => quantity === "winding_resistance");
    const at = windings >= 0 ? windings : tested((quantity) => tests.has(quantity));
    const quantity =
      items[at]?.label?.quantity ?? (items.length <= 7 ? meterSaid(items) : undefined);
    if (quantity === undefined) return;
    state(note, testsInHand.name, [Math.max(at, 0), Math.max(at, 0) + 1], {
      kind: "note",
      about: `testing ${quantity}${kindsOf(note.plain)}`,
    });
  },
};
