import type { Item } from "./item.ts";

/**
 * "vac 290, 340 iso 15 min": beside a vacuum "iso" is the pump valved off, no test of insulation.
 * `last` is the quantity that was read before this message.
 */
export function isolated(items: readonly Item[], last: string | undefined): void {
  const short = items.filter(({ text }) => text === "iso" || text === "isolation");
  if (short.length === 0) return;
  const pumped = items.some(
    ({ text, label, unit }) =>
      label?.quantity === "vacuum" ||
      /^(?:vac|vacuum|evac|microns?|torr)$/.test(text) ||
      unit?.figure === "micron" ||
      unit?.figure === "torr",
  );
  if (!pumped && last !== "vacuum") return;
  for (const item of short) item.label = undefined;
}
