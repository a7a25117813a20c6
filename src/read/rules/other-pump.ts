import type { Note } from "../note.ts";

/** A pump that pulls no vacuum, and what cleans a floor. */
const otherPump =
  /^(?:wet|shop|condensate|water|chilled|hot|chw|hw|drain|sump|booster|loop|circulator|circulation|circulating|glycol|brine|oil|heat|condenser|cond|evap|primary|secondary|circ|tower|recirc|transfer|fuel)$/;

/** "pump on, 14 gpm", "pump running" behind a water's flow: what moves water draws no vacuum. */
function movesWater({ items, context }: Note, i: number): boolean {
  if (!/^pump/.test(items[i]?.text ?? "")) return false;
  const wet =
    /^(?:gpm|lps|flow|water|tower|loop|impeller|strainer|seal|coupling|bearings?|leaving|entering)$/;
  const told = items.some(({ text, unit }) => wet.test(text) || unit?.dimension === "waterflow");
  return told || /^water_/.test(context.readings.at(-1)?.quantity ?? "");
}

/** "460 volts on the pump": what was measured there. */
function measuredThere({ items }: Note, i: number): boolean {
  const before = items[i - 1]?.unit?.dimension;
  return before === "voltage" || before === "current";
}

/** "pump running" at a chiller of which no gas was taken: what moves its water. */
function ofChiller({ items, context }: Note, i: number): boolean {
  if (context.wet !== true || !/^pump/.test(items[i]?.text ?? "")) return false;
  const gas = context.readings.some(
    ({ quantity, action }) => quantity === "vacuum" || action === "recovered",
  );
  return !gas && context.testing !== "vacuum";
}

/** Is the pump at the item one that draws no vacuum? */
export function isOtherPump(note: Note, i: number): boolean {
  return (
    otherPump.test(note.items[i - 1]?.text ?? "") ||
    movesWater(note, i) ||
    measuredThere(note, i) ||
    ofChiller(note, i)
  );
}

const inTruck =
  /^(?:nitrogen|n2|nitro) in (?:the |my |our |your |his |her )?(?:truck|van|shop|car|bed|trunk|lobby|cage|box truck|back)\b/;

/** "2 bottles of nitrogen in the truck": goods, and nothing that stands in a circuit. */
export function isInTruck({ plain, items }: Note, i: number): boolean {
  return inTruck.test(plain.slice(items[i]?.from));
}
