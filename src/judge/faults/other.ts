import type { Fault } from "../fault.ts";

/** Something that this list does not hold: it shows whatever the background shows. */
export const other: Fault = {
  fault: "other",
  says: "something that is not on this list",
  common: 8,
  shows: {},
  proof: [],
  source: "common practice, no source",
};
