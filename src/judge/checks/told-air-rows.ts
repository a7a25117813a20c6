import type { ToldRow } from "./told-rows.ts";

/** What is heard of air that goes where it should not. Source throughout: common practice, no source. */
export const toldAirRows: readonly ToldRow[] = [
  {
    check: "airflow",
    sign: "outdoor_air:recirculating_air",
    words: [
      /\b(?:boxed in|screen wall|fenced in|closed in|lattice|under (?:a |the )?(?:deck|porch|overhang)|too close to (?:the |a )?(?:wall|fence)|short.?circuit\w*|recirculat\w*|re-?entrain\w*|pulls? (?:in )?its own)\b/,
      /\bair (?:going |coming )?in(?:to)? (?:the )?(?:coil|condenser|unit)\b.{0,12}\b1[0-4]\d\b/,
    ],
    unless: /\b(?:no|not|never|isn'?t) (?:\w+ )?(?:recirculat|boxed|fenced)/,
    mended: /\bwall|\bfence|\bscreen|\bbaffle|\bduct/,
    level: "bad",
    about: "condenser",
    says: "The condenser breathes its own warm air: measure the air into the coil against the air of the street, and give it room or a baffle before any word on charge",
    brief: "condenser breathes its own air",
  },
];
