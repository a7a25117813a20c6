import type { Fault } from "../fault.ts";

export const refrigerantWrongOrMixed: Fault = {
  fault: "refrigerant_wrong_or_mixed",
  says: "the refrigerant is not what the plate says, or a mixture",
  common: 0.5,
  shows: {
    "physics:contradicts": 0.6,
    "physics:agrees": 0.4,
    "at_rest:above": 0.55,
    "at_rest:below": 0.35,
    "at_rest:matches": 0.1,
    "head:high": 0.4,
    "head:usual": 0.4,
    "head:low": 0.2,
    "wrong_gas:said": 0.6,
    "superheat:usual": 0.4,
    "superheat:none": 0.2,
    "suction:low": 0.25,
    "suction:high": 0.25,
    "superheat:high": 0.25,
    "subcooling:usual": 0.5,
    "subcooling:high": 0.3,
  },
  proof: [
    {
      check: "saturation",
      why: "At rest for an hour, compare pressure with saturation at the coil for the plate refrigerant, then an identifier at the port: mixed gas goes to reclaim in its own marked cylinder",
      minutes: 30,
      danger: 1,
      fills: ["at_rest"],
    },
    {
      check: "charge",
      why: "Recover all of it into a marked cylinder, new drier, evacuate and weigh in the charge by the plate",
      minutes: 60,
      danger: 3,
      fills: [],
      last: true,
    },
  ],
  source: "common practice, no source",
};
