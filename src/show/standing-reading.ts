import type { JobReading } from "../model.ts";

/** A reading that nobody took back or replaced, and that was measured rather than quoted. */
export function stands(reading: JobReading): boolean {
  return (
    reading.replaced_by === undefined &&
    reading.undone !== true &&
    reading.deleted !== true &&
    reading.rating === undefined &&
    reading.earlier !== true
  );
}
