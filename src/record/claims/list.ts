import { type Claim, done, fitted, fittedFirst, measured, observed } from "./claim.ts";
import {
  causeNamed,
  certificate,
  chargeCylinder,
  chargedWeight,
  cylinder,
  leakPlace,
  nitrogenFlow,
  pressureTest,
  recoveredWeight,
  runningAmps,
  runningVolts,
  settledSet,
  vacuumHold,
} from "./proofs.ts";

const opening =
  /\b(?:drier|dryer|filter drier|expansion valve|txv|eev|service valve|evaporator|condenser|line set|reversing valve)\b/i;
const electrical =
  /\b(?:contactor|capacitor|relay|board|drive|transformer|fuse|motor|sensor|thermistor|switch|control)\b/i;
const compressor = /\bcompressor\b/i;

/** Every claim with what proves it; a new one is an object here. Requirements of proof: common practice, no source, where none stands. */
export const claims: readonly Claim[] = [
  {
    name: "compressor replaced",
    made: (ledger) => fittedFirst(ledger, compressor),
    proofs: [
      recoveredWeight,
      chargedWeight,
      pressureTest,
      vacuumHold,
      runningAmps,
      {
        gap: "old and new serial",
        cost: 2,
        held: (ledger) =>
          ledger.said.filter(
            ({ statement }) => statement.kind === "nameplate" && statement.field === "serial",
          ).length >= 2,
      },
      { gap: "acid test", cost: 2, held: (ledger) => observed(ledger, "acid_found", "no_acid") },
      {
        gap: "drier",
        cost: 1,
        held: (ledger) => fitted(ledger).some(({ name }) => /\bdr[iy]er\b/i.test(name)),
      },
      settledSet,
      causeNamed,
    ],
  },
  {
    // 40 CFR 82.157(l) and 84.106 ask for amount and date of each addition, and leak inspection results
    name: "refrigerant added",
    made: (ledger) => measured(ledger, "mass").find(({ action }) => action === "charged")?.taken,
    proofs: [chargeCylinder, leakPlace, certificate],
  },
  {
    name: "refrigerant recovered",
    made: (ledger) => measured(ledger, "mass").find(({ action }) => action === "recovered")?.taken,
    proofs: [cylinder, certificate],
  },
  {
    name: "leak repaired",
    made: (ledger) =>
      done(ledger).find(
        ({ action }) =>
          action.action === "brazed" ||
          (action.action === "repaired" &&
            /leak|joint|flare|braze|stub|coil/i.test(action.what ?? "")),
      )?.at,
    proofs: [pressureTest, vacuumHold],
  },
  {
    name: "joint brazed",
    made: (ledger) => done(ledger).find(({ action }) => action.action === "brazed")?.at,
    proofs: [nitrogenFlow],
  },
  {
    name: "circuit opened",
    made: (ledger) =>
      done(ledger).find(
        ({ action }) => action.action === "circuit_opened" || action.circuit === "open",
      )?.at ?? fittedFirst(ledger, opening),
    proofs: [recoveredWeight, pressureTest, vacuumHold, chargedWeight],
  },
  {
    name: "electrical repair",
    made: (ledger) =>
      fitted(ledger).find(({ name }) => electrical.test(name) && !compressor.test(name))?.at,
    proofs: [runningAmps],
  },
  {
    name: "fault in the supply mended",
    made: (ledger) =>
      observed(ledger, "upstream_fuse_open", "supply_part_failed", "line_work_done")
        ? ledger.said[0]?.at
        : undefined,
    proofs: [runningVolts],
  },
];
