import type { LimitName } from "../../../vocabulary.ts";
import {
  airPressure,
  type Dimension,
  difference,
  percent,
  ratio,
  resistance,
  temperature,
  vacuum,
} from "./limit-units.ts";

/** One limit that a company may set: how people call it, its unit, which side it bounds. */
export interface LimitRow {
  readonly limit: LimitName;
  readonly called: RegExp;
  readonly dimension: Dimension;
  /** the side that a lone figure means; absent where both are usual */
  readonly side?: "least" | "most";
  /** in the canonical unit; what lies outside is a slip or a wrong unit. Our choice, no source. */
  readonly within: readonly [number, number];
}

const unbalanced = "(?:un|im)balance|difference|deviation|spread";

/** The first row whose words fit is meant. */
export const limitRows: readonly LimitRow[] = [
  {
    limit: "voltage_unbalance",
    called: /(?:volt\w*|supply|phase)\b.*\b(?:un|im)balance|(?:un|im)balance\b.*\bvolt/,
    dimension: percent,
    side: "most",
    within: [0.1, 10],
  },
  {
    limit: "current_unbalance",
    called:
      /(?:amp\w*|current)\b.*\b(?:un|im)balance|(?:un|im)balance\b.*\b(?:amp|amps|amperage|current)\b/,
    dimension: percent,
    side: "most",
    within: [0.1, 50],
  },
  {
    limit: "winding_unbalance",
    called: new RegExp(`(?:winding\\w*|resistance|ohms?)\\b.*\\b(?:${unbalanced})`),
    dimension: percent,
    side: "most",
    within: [0.1, 50],
  },
  {
    limit: "insulation_clean",
    called: /(?:insul\w*|meg\w*)\b.*\b(?:clean|dry|moist\w*|contamin\w*|watch|warn\w*)/,
    dimension: resistance,
    side: "least",
    within: [1e5, 1e12],
  },
  {
    limit: "insulation",
    called: /insul|\bmegg?er|\bmegohm|\bmeg\b|to ground|to earth/,
    dimension: resistance,
    side: "least",
    within: [1e5, 1e12],
  },
  {
    limit: "capacitance_error",
    called: /\bcap(?:s|acitors?|acitance)?\b/,
    dimension: percent,
    side: "most",
    within: [0.5, 50],
  },
  {
    limit: "voltage_off_plate",
    called:
      /(?:volt\w*|supply)\b.*\b(?:plate|nameplate|range|tolerance|deviation|off|rated|nominal)|(?:plate|nameplate|rated|nominal) volt/,
    dimension: percent,
    side: "most",
    within: [0.5, 30],
  },
  {
    limit: "vacuum_hold",
    called: /vacuum|micron|evacuat|decay/,
    dimension: vacuum,
    side: "most",
    within: [1, 700],
  },
  { limit: "superheat", called: /super ?heat|\bsh\b/, dimension: difference, within: [0, 60] },
  {
    limit: "subcooling",
    called: /sub ?cool|\bsc\b/,
    dimension: difference,
    within: [0, 40],
  },
  {
    limit: "compression_ratio",
    called: /compression|\bratio\b/,
    dimension: ratio,
    within: [1, 30],
  },
  {
    limit: "discharge_temperature",
    called: /discharge/,
    dimension: temperature,
    side: "most",
    within: [40, 180],
  },
  {
    limit: "temperature_split",
    called: /\bsplit\b|delta ?t\b|supply.*return|return.*supply/,
    dimension: difference,
    within: [1, 40],
  },
  {
    limit: "static_pressure",
    called: /static/,
    dimension: airPressure,
    side: "most",
    within: [10, 2500],
  },
  {
    limit: "leak_rate",
    called: /leak/,
    dimension: percent,
    side: "most",
    within: [0.1, 1000],
  },
  {
    limit: "box_temperature",
    called:
      /\b(?:box|product|walk ?in|reach ?in|cooler|freezer|display case|cold ?(?:room|store))\b/,
    dimension: temperature,
    side: "most",
    within: [-50, 30],
  },
];
