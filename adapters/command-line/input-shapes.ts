import { z } from "zod";

/** ISO 8601 with offset, as all times that come in. */
export const isoTime = z
  .string()
  .refine(
    (text) =>
      /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:?\d{2})$/.test(text) &&
      !Number.isNaN(Date.parse(text)),
    "must be an ISO 8601 time with its offset, like 2026-03-04T13:02:00-05:00",
  );

export const lineId = z.union([z.string(), z.number()]);
export const unitHabit = z.enum(["us", "si"]);
