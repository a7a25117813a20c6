import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";

/** The most recent reading of each quantity; a code is none that goes on with the next figure. */
export function latest(context: Context): Reading[] {
  const found = new Map<string, Reading>();
  for (let i = context.readings.length - 1; i >= 0; i--) {
    const reading = context.readings[i];
    if (reading === undefined || reading.rating !== undefined) continue;
    if (reading.quantity !== "fault_code" && !found.has(reading.quantity))
      found.set(reading.quantity, reading);
  }
  return [...found.values()];
}
