import type { Fault } from "../fault.ts";

/** Something that this list does not hold: it shows whatever the background shows, what a breaker does that is itself at fault, a grounded feed and a flue that does not draw. */
export const other: Fault = {
  fault: "other",
  says: "something that is not on this list",
  common: 8,
  shows: {
    "protection:trips_unloaded": 0.3,
    "start_kit:relay_failed": 0.4,
    "driven:seized": 0.5,
    "feed:grounded": 0.1,
    "draft:switch_open": 0.2,
    // a pump's, a tower fan's: no compressor
    "motor:winding_bad": 0.3,
    "valve_coil:open": 0.2,
  },
  proof: [],
  source: "common practice, no source",
};
