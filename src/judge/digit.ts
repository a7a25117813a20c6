import type { Reading } from "../model.ts";

/**
 * What one of the last digits typed is worth of its reading, percent; the coarsest of them counts.
 * 100 where nothing was typed that shows it.
 */
export function digitPercentOf(readings: readonly Reading[]): number {
  const shares = readings.flatMap(({ figure }) => {
    const typed = Math.abs(Number(figure.number));
    const places = figure.number.split(".")[1]?.length ?? 0;
    return typed > 0 ? [(100 * 10 ** -places) / typed] : [];
  });
  return shares.length === 0 ? 100 : Math.max(...shares);
}
