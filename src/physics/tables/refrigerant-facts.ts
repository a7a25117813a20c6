import type { Refrigerant } from "../refrigerant.ts";

/** What a refrigerant is, beyond its saturation lines. */
export interface RefrigerantFacts {
  /** ASHRAE 34 safety group */
  readonly safety: "A1" | "A2L" | "A3";
  /** g/mol */
  readonly molarMass: number;
  /** 100 years, as the US rules count (AR4) */
  readonly gwpUs: number;
  /** 100 years, by Regulation (EU) 2024/573; absent for the ozone depleter, which is under another rule */
  readonly gwpEu?: number;
  readonly depletesOzone: boolean;
  /** kg/m3, refrigerant concentration limit */
  readonly limitKgM3: number;
  /** kg/m3, lower flammability limit, where it burns */
  readonly flammableKgM3?: number;
  /** kg/m3, practical limit of the European standard */
  readonly practicalLimitKgM3?: number;
}

/**
 * Facts by refrigerant. Units in the names; greatest error: rounding of the printed tables.
 * Sources: safety group, molar mass and concentration limit ASHRAE 34-2022 tables 4-1 and 4-2;
 * GWP for the US 40 CFR 84 appendix A (AR4 components, mass-weighted), for the EU 2024/573 annexes
 * I, II and VI; lower flammability limits ASHRAE 34 and IEC 60335-2-40 (from memory); practical
 * limits EN 378-1 annex C (from memory; those of burning refrigerants are a fifth of the limit).
 */
export const refrigerantFacts: Readonly<Record<Refrigerant, RefrigerantFacts>> = {
  "R-22": {
    safety: "A1",
    molarMass: 86.468,
    gwpUs: 1810,
    depletesOzone: true,
    limitKgM3: 0.21,
    practicalLimitKgM3: 0.3,
  },
  "R-32": {
    safety: "A2L",
    molarMass: 52.024,
    gwpUs: 675,
    gwpEu: 675,
    depletesOzone: false,
    limitKgM3: 0.077,
    flammableKgM3: 0.307,
    practicalLimitKgM3: 0.061,
  },
  "R-134a": {
    safety: "A1",
    molarMass: 102.03,
    gwpUs: 1430,
    gwpEu: 1430,
    depletesOzone: false,
    limitKgM3: 0.21,
    practicalLimitKgM3: 0.25,
  },
  "R-290": {
    safety: "A3",
    molarMass: 44.096,
    gwpUs: 3,
    gwpEu: 0.02,
    depletesOzone: false,
    limitKgM3: 0.0095,
    flammableKgM3: 0.038,
    practicalLimitKgM3: 0.008,
  },
  "R-404A": {
    safety: "A1",
    molarMass: 97.6,
    gwpUs: 3922,
    gwpEu: 3921.6,
    depletesOzone: false,
    limitKgM3: 0.5,
    practicalLimitKgM3: 0.52,
  },
  "R-407C": {
    safety: "A1",
    molarMass: 86.2,
    gwpUs: 1774,
    gwpEu: 1773.85,
    depletesOzone: false,
    limitKgM3: 0.29,
    practicalLimitKgM3: 0.31,
  },
  "R-410A": {
    safety: "A1",
    molarMass: 72.59,
    gwpUs: 2088,
    gwpEu: 2087.5,
    depletesOzone: false,
    limitKgM3: 0.42,
    practicalLimitKgM3: 0.44,
  },
  "R-448A": {
    safety: "A1",
    molarMass: 86.28,
    gwpUs: 1386,
    gwpEu: 1386.0,
    depletesOzone: false,
    limitKgM3: 0.39,
  },
  "R-449A": {
    safety: "A1",
    molarMass: 87.21,
    gwpUs: 1396,
    gwpEu: 1396.16,
    depletesOzone: false,
    limitKgM3: 0.37,
  },
  "R-454B": {
    safety: "A2L",
    molarMass: 62.61,
    gwpUs: 465,
    gwpEu: 465.23,
    depletesOzone: false,
    limitKgM3: 0.049,
    flammableKgM3: 0.297,
    practicalLimitKgM3: 0.059,
  },
};
