import { burnerWords } from "../application.ts";
import type { ToldRow } from "./told-rows.ts";

/** What is heard of air that goes where it should not. Source throughout: common practice, no source. */
export const toldAirRows: readonly ToldRow[] = [
  {
    check: "airflow",
    sign: "fans:outdoor_fan_backward",
    words: [
      /\b(?:cond(?:enser)?|outdoor) fan\b[^.;\n]{0,70}\b(?:backwards?|in reverse|wrong (?:way|direction|rotation))\b/,
      /\b(?:cond(?:enser)? |outdoor )?fans?\b[^.;\n]{0,40}\bblow(?:s|ing) (?:air |it )?down(?:wards?)?\b/,
    ],
    // "flick it and it runs backwards or forwards": its capacitor
    unless:
      /\b(?:flick|push|nudg|spin it)\w*|\bforwards?\b|\beither way\b|\b(?:not|isn'?t) (?:\w+ )?(?:backwards?|in reverse)|\bcomp\w* [^.;\n]{0,30}backwards?/,
    mended: /\bfan\b|\blegs?\b|\bleads?\b|\bswapped\b|\bblade\b/,
    level: "bad",
    about: "condenser",
    says: "The condenser's fan turns the wrong way, as told: its leads or its blade, not the motor, and before any word on charge",
    brief: "condenser fan turns the wrong way",
  },
  {
    check: "airflow",
    sign: "draft:switch_open",
    words: [
      /\bpress(?:ure)? ?sw(?:itch)?\b[^.;\n]{0,30}\b(?:open|won'?t (?:close|make)|(?:not|isn'?t|never) (?:closed|closing|closes|made|making|makes))\b/,
      /\b(?:open|stuck) press(?:ure)? ?sw(?:itch)?\b/,
    ],
    unless: /\b(?:high|low|head|suction|oil) press(?:ure)? ?sw/,
    beside: burnerWords,
    mended: /\b(?:vent|flue|hose|port|drain|inducer|switch)\b/,
    level: "bad",
    about: "gas heat",
    says: "The draft switch is open, as told: it waits for draft, so vent, drain, hose, port and inducer come before the switch and long before the board",
    brief: "draft switch open",
  },
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
