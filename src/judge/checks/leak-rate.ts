import type { Finding } from "../../model.ts";
import { carbonEquivalentT, leakCheckMonths } from "../../physics/carbon-equivalent.ts";
import { kilogramPerPound } from "../../physics/constants.ts";
import { annualizedLeakPercent, rollingLeakPercent } from "../../physics/leak-rate.ts";
import {
  type ApplianceUse,
  chronicPercent,
  followUpDays,
  leakThresholdPercent,
  regimeApplies,
  repairDays,
} from "../../physics/leak-rules.ts";
import { refrigerantFacts } from "../../physics/tables/refrigerant-facts.ts";
import { applicationOf } from "../application.ts";
import type { Check } from "../check.ts";
import { refrigerantOf } from "../circuit.ts";

import { daysSinceAddition, pastAdditions, sumsOf, weightsOf } from "../masses.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";

/** kg, 15 lb: the smallest full charge that a federal rule covers. Source: 40 CFR 84.106(a). */
const smallestKg = 15 * kilogramPerPound;

/** Leak rate after an addition, by the office's method, as a reminder of what the rules ask. */
export const leakRate: Check = {
  name: "leak_rate",
  signs: ["leak_rate:over", "leak_rate:under"],
  judge: (scene) => {
    const { inKg, outKg } = sumsOf(scene);
    // what was taken out of the same circuit and put back is no addition
    const addedKg = inKg - outKg;
    const fullKg = scene.facts.charge_kg;
    if (addedKg <= 0) return [];
    // a small circuit that was emptied and filled again is under no federal rule
    if (outKg > 0 && fullKg !== undefined && fullKg < smallestKg) return [];
    if (fullKg === undefined) return outKg > 0 ? [] : [unknown("the full charge of the circuit")];
    return rated(scene, addedKg, fullKg);
  },
};

function rated(scene: Scene, addedKg: number, fullKg: number): Finding[] {
  const rolling = scene.facts.leak_method === "rolling";
  if (rolling) {
    const percent = rollingLeakPercent(lastYearKg(scene, addedKg), fullKg);
    return percent === undefined ? [] : [finding(percent, fullKg, "rolling average", scene)];
  }
  const days = daysSinceAddition(scene);
  if (days === undefined) return addedOnly(scene) ? [unknown("the date of the last addition")] : [];
  const percent = annualizedLeakPercent(addedKg, fullKg, days);
  return percent === undefined ? [] : [finding(percent, fullKg, "annualizing method", scene)];
}

/** An addition to a circuit that was not emptied: only then is a missing date worth a question. */
function addedOnly(scene: Scene): boolean {
  return sumsOf(scene).outKg === 0 && !/\b(vacuum|evacuat|micron)/.test(scene.words);
}

/** All additions of the last 365 days, today's among them. */
function lastYearKg(scene: Scene, todayKg: number): number {
  const earlier = [...weightsOf(scene), ...pastAdditions(scene)].filter(
    (one) => one.action === "charged" && (one.daysAgo ?? 366) > 0 && (one.daysAgo ?? 366) <= 365,
  );
  return earlier.reduce((sum, one) => sum + one.kg, todayKg);
}

function useOf(scene: Scene): ApplianceUse {
  if (scene.facts.use !== undefined) return scene.facts.use;
  const application = applicationOf(scene);
  return application === "cooler" || application === "freezer"
    ? "commercial_refrigeration"
    : "comfort_cooling";
}

function finding(percent: number, fullKg: number, method: string, scene: Scene): Finding {
  const thresholdPercent = leakThresholdPercent(useOf(scene));
  const over = percent > thresholdPercent;
  const rule = ruleFor(scene, fullKg);
  return {
    about: "system",
    check: "leak_rate",
    level: over ? "bad" : "good",
    says: `${plain(percent)} percent of the charge a year by the ${method}, ${over ? "over" : "not over"} the ${thresholdPercent} percent for this use. ${reminder(over, rule, scene, fullKg)}`,
    brief: `${plain(percent)} percent a year, ${over ? "over" : "under"} ${thresholdPercent}`,
    values: { leak_rate_percent_per_year: percent },
    basis: rule.basis,
    source: `40 CFR 82.152 and 84.102 (${method}); thresholds 40 CFR 82.157(c)(2), 84.106(c)(2); ${rule.source}`,
    signs: [over ? "leak_rate:over" : "leak_rate:under"],
  };
}

interface Rule {
  readonly basis: string;
  readonly source: string;
  readonly applies: boolean | undefined;
}

/** The regime that the office chose, else the one that the refrigerant points to. */
function ruleFor(scene: Scene, fullKg: number): Rule {
  const refrigerant = refrigerantOf(scene);
  const facts = refrigerant === undefined ? undefined : refrigerantFacts[refrigerant];
  const regime =
    scene.facts.leak_regime ?? (facts?.depletesOzone === true ? "us_82" : "ask_office");
  if (regime === "eu")
    return { basis: "EU 2024/573", source: "Regulation (EU) 2024/573 Art. 4 and 5", applies: true };
  if (regime === "us_82" || regime === "us_84") {
    const gwp = facts?.gwpUs ?? 0;
    const applies =
      facts === undefined
        ? undefined
        : regimeApplies(regime, fullKg, { gwp, depletesOzone: facts.depletesOzone });
    const basis = regime === "us_82" ? "40 CFR 82.157" : "40 CFR 84.106";
    return { basis, source: `${basis}(a)`, applies };
  }
  return {
    basis: "40 CFR 82/84",
    source: "regime not chosen by the office",
    applies: undefined,
  };
}

function reminder(over: boolean, rule: Rule, scene: Scene, fullKg: number): string {
  if (rule.basis.startsWith("EU")) return europe(scene, fullKg);
  if (rule.applies === false)
    return "This circuit looks too small, or of another kind, for the federal rule; the rate stands for the record. The office decides";
  if (lastYearKg(scene, sumsOf(scene).inKg) >= (chronicPercent / 100) * fullKg)
    return `A reminder: ${chronicPercent} percent or more of the charge within a calendar year is commonly reported by the first of March; the office decides`;
  const asked = over
    ? `A reminder: repair and first verification commonly within ${repairDays.usual} days, a follow-up check within ${followUpDays} days after`
    : "A reminder: the rate belongs in the record with each addition";
  return rule.applies === undefined
    ? `${asked}; whether the rule covers this unit, exemptions included, the office says`
    : `${asked}; exemptions are the office's to say`;
}

function europe(scene: Scene, fullKg: number): string {
  const refrigerant = refrigerantOf(scene);
  const gwp = refrigerant === undefined ? undefined : refrigerantFacts[refrigerant].gwpEu;
  if (gwp === undefined)
    return "A reminder: repair without undue delay and check again within a month";
  const tonnes = carbonEquivalentT(fullKg, gwp);
  const months = leakCheckMonths(tonnes, false);
  const every =
    months === undefined ? "no fixed leak checks" : `a leak check every ${months} months`;
  return `A reminder: ${plain(tonnes)} t of CO2 equivalent, ${every}; repair without undue delay, check again between a day and a month after`;
}

function unknown(missing: string): Finding {
  return {
    about: "system",
    check: "leak_rate",
    level: "unknown",
    says: `No leak rate without ${missing}: the office may have it`,
    brief: `leak rate needs ${missing}`,
    values: {},
    basis: "40 CFR 82.152",
    missing,
  };
}
