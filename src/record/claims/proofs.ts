import type { Statement } from "../../model.ts";
import { done, type Ledger, measured, observed, type Proof } from "./claim.ts";

/** Proofs that several claims share. */

export const pressureTest: Proof = {
  gap: "pressure test",
  cost: 2,
  held: (ledger) =>
    done(ledger).some(
      ({ action }) => action.action === "nitrogen_in" || action.circuit === "nitrogen",
    ) && measured(ledger, "pressure").some(({ at }) => at === undefined),
};

/** A vacuum that was isolated and read again. */
export const vacuumHold: Proof = {
  gap: "vacuum hold",
  cost: 2,
  held: (ledger) => {
    const values = measured(ledger, "vacuum");
    return (
      values.length >= 2 ||
      values.some(({ after_s, series }) => after_s !== undefined || series !== undefined)
    );
  },
};

export const chargedWeight: Proof = {
  gap: "weight charged",
  cost: 3,
  held: (ledger) => measured(ledger, "mass").some(({ action }) => action === "charged"),
};

export const recoveredWeight: Proof = {
  gap: "weight recovered",
  cost: 3,
  held: (ledger) => measured(ledger, "mass").some(({ action }) => action === "recovered"),
};

const isCylinder = /\b(?:cylinder|cyl|bottle|tank|drum)s?\b/i;

function namesCylinder(statement: Statement): boolean {
  if (statement.kind === "action") return isCylinder.test(statement.what ?? "");
  return (
    statement.kind === "note" &&
    (isCylinder.test(statement.about) || isCylinder.test(statement.said)) &&
    /\d/.test(statement.said)
  );
}

/** Whether a cylinder was named, in words that are not of the other way of the gas alone. */
function cylinderOf(ledger: Ledger, way: "recovered" | "charged"): boolean {
  const ways = (message: string): readonly (string | undefined)[] =>
    measured(ledger, "mass")
      .filter((one) => one.message === message)
      .map(({ action }) => action);
  return ledger.said.some(({ statement, message }) => {
    const weighed = ways(message);
    return namesCylinder(statement) && (weighed.length === 0 || weighed.includes(way));
  });
}

export const cylinder: Proof = {
  gap: "cylinder number",
  cost: 3,
  held: (ledger) => cylinderOf(ledger, "recovered"),
};

/** What went in came out of the cylinder that it was recovered into. */
const putBack =
  /\b(?:same (?:cyl(?:inder)?|bottle|tank|gas)|(?:put|went|goes|weighed|charged?) (?:it |all |.{0,20}\b)?back|back in(?:to)?|its own (?:gas|charge))\b/;

/** Scales differ by so little between the weighings out and in; our choice, no source. */
const scaleSlack = 1.05;

/** "9 lb back in" where 6 came out: the rest was out of another cylinder. */
function moreThanCameOut(ledger: Ledger): boolean {
  const sum = (moved: "recovered" | "charged"): number =>
    measured(ledger, "mass")
      .filter(({ action }) => action === moved)
      .reduce((total, { value }) => total + (typeof value === "number" ? value : 0), 0);
  const out = sum("recovered");
  return out > 0 && sum("charged") > out * scaleSlack;
}

/** The cylinder that gas was recovered into does not tell where the charge came from. */
export const chargeCylinder: Proof = {
  gap: "cylinder of the charge",
  cost: 3,
  held: (ledger) => {
    const recovered = measured(ledger, "mass").some(({ action }) => action === "recovered");
    // where none is named at all, that gap is asked for alone
    const none = !ledger.said.some(({ statement }) => namesCylinder(statement));
    return (
      (none && recovered) ||
      (ledger.words.some((words) => putBack.test(words)) && !moreThanCameOut(ledger)) ||
      cylinderOf(ledger, "charged")
    );
  },
};

/** Of a three-phase motor three; taken after the repair, running. */
export const runningAmps: Proof = {
  gap: "running amps",
  cost: 2,
  held: (ledger, since) =>
    measured(ledger, "current", since).some(
      ({ state, stat }) => state !== "start" && stat !== "peak",
    ),
};

export const runningVolts: Proof = {
  gap: "running volts",
  cost: 1,
  held: (ledger, since) =>
    measured(ledger, "voltage", since).some(({ value }) => typeof value === "number" && value > 90),
};

/** Pressures and line temperatures, or superheat said, after the repair. */
export const settledSet: Proof = {
  gap: "settled pressures and superheat",
  cost: 1,
  held: (ledger, since) =>
    measured(ledger, "superheat", since).length > 0 ||
    (measured(ledger, "pressure", since).some(({ at }) => at === "suction") &&
      measured(ledger, "temperature", since).some(({ at }) => at === "suction")),
};

/** "dye at the service port", "bubbles on the flare": a place, in whatever words. */
const leaksAt =
  /\b(?:dye|bubbl\w+|leak(?:s|ed|ing|'s)?|hiss\w*|oil)\b[^.?]{0,12}\b(?:at|on|from|around)\b (?:the |a |its )?(?!it\b|this\b|that\b|here\b|there\b|system\b|unit\b)[a-z]{3,}/;

export const leakPlace: Proof = {
  gap: "where it leaked, or what found no leak",
  cost: 3,
  held: (ledger) =>
    observed(ledger, "leak_found", "no_leak_found", "oil_stain") ||
    ledger.words.some((words) => leaksAt.test(words)) ||
    done(ledger).some(({ action }) => action.action === "brazed" || action.action === "repaired"),
};

/** Brazing without nitrogen inside leaves scale that plugs screens; common practice, no source. */
export const nitrogenFlow: Proof = {
  gap: "nitrogen flow while brazing",
  cost: 1,
  held: (ledger) =>
    ledger.words.some((words) =>
      /\bnitrogen\b.{0,30}\b(?:flow|purg|trickl|sweep|through)|\b(?:flow|purg|trickl|sweep)\w*\b.{0,30}\bnitrogen\b/.test(
        words,
      ),
    ),
};

/** Why it failed, or what was looked at without finding it. */
export const causeNamed: Proof = {
  gap: "why it failed, or what was looked at",
  cost: 1,
  held: (ledger) =>
    ledger.words.some((words) =>
      /\b(?:caus\w+|because|due to|reason|died of|killed by|looked at|no other fault|nothing else found|not found)\b/.test(
        words,
      ),
    ),
};

/** 40 CFR 82.161: only certified technicians open a circuit with regulated refrigerant. */
export const certificate: Proof = {
  gap: "certificate of who handled refrigerant",
  cost: 3,
  held: (ledger) => ledger.uncertified.length === 0,
};
