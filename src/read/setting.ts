import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Setting } from "./settle.ts";

function named(items: readonly Item[], quantity: string): boolean {
  return items.some((item) => item.label?.quantity === quantity);
}

/** Which tests the message, or else the one before it, is about. */
export function settingOf(
  items: readonly Item[],
  drafts: readonly Draft[],
  context: Context,
): Setting {
  const mega = drafts.some(
    (draft) => draft.unit?.dimension === "resistance" && draft.unit.factor >= 1e6,
  );
  const ohms = drafts.some(
    (draft) => draft.unit?.dimension === "resistance" && draft.unit.factor <= 1,
  );
  const ground = items.some(
    (item) =>
      item.kind === itemKind.ground ||
      (item.points?.some((points) => points[1] === "ground") ?? false),
  );
  const volts = drafts.some((draft) => draft.unit?.dimension === "voltage");
  const last = context.readings[context.readings.length - 1];
  const onlyTests = drafts.every(
    (draft) =>
      draft.unit === undefined ||
      draft.unit.dimension !== "voltage" ||
      [250, 500, 1000, 2500, 5000].includes(draft.value * draft.unit.factor),
  );
  const silent = !mega && !ohms && (!volts || onlyTests);
  const dc = items.some(
    (item) =>
      item.points?.some((points) => points.some((point) => point.startsWith("DC"))) ?? false,
  );
  const insulation =
    mega ||
    named(items, "insulation_resistance") ||
    (ground && (!volts || drafts.some((draft) => draft.over))) ||
    (silent && last?.quantity === "insulation_resistance");
  return {
    insulation,
    winding:
      named(items, "winding_resistance") ||
      (ohms && !named(items, "resistance")) ||
      (silent && last?.quantity === "winding_resistance"),
    vacuum:
      named(items, "vacuum") ||
      last?.quantity === "vacuum" ||
      items.some((item) => item.text === "vac" || item.text === "pump"),
    diode:
      named(items, "diode_drop") || (dc && !mega) || (silent && last?.quantity === "diode_drop"),
  };
}
