import type { Finding } from "../../model.ts";
import { kilogramPerPound } from "../../physics/constants.ts";
import { annualizedLeakPercent, rollingLeakPercent } from "../../physics/leak-rate.ts";
import { type ApplianceUse, leakThresholdPercent } from "../../physics/leak-rules.ts";
import { applicationOf } from "../application.ts";
import type { Check } from "../check.ts";
import { circuitScenes } from "../circuit-scenes.ts";

import { daysSinceAddition, pastAdditions, sumsOf, weightsOf } from "../masses.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";
import { leakReminder, ruleFor } from "./leak-reminder.ts";

/** kg, 15 lb: the smallest full charge that a federal rule covers. Source: 40 CFR 84.106(a). */
const smallestKg = 15 * kilogramPerPound;

/** Percent a year beyond which a circuit leaks, whatever the rules allow its use: their lowest threshold. Source: 40 CFR 84.106(c)(2). */
const leakyPercent = 10;

/** Leak rate after an addition, by the office's method, as a reminder of what the rules ask. */
export const leakRate: Check = {
  name: "leak_rate",
  examples: [
    {
      level: "bad",
      notes: ["added 38 kg, last addition was 90 days ago"],
      equipment: {
        refrigerant: "R-134a",
        charge_kg: 320,
        use: "industrial_process",
        leak_regime: "us_84",
      },
    },
    {
      level: "good",
      notes: ["added 12 lb, last addition was 200 days ago"],
      equipment: {
        refrigerant: "R-404A",
        charge_kg: 81.65,
        use: "commercial_refrigeration",
        leak_regime: "us_84",
      },
    },
    { level: "unknown", notes: ["added 12 lb"], equipment: { refrigerant: "R-404A" } },
  ],
  signs: ["leak_rate:over", "leak_rate:under", "added:again"],
  judge: (scene) =>
    circuitScenes(scene).flatMap(([about, own]) =>
      leakFindings(own).map((found) => ({ ...found, about })),
    ),
};

function leakFindings(scene: Scene): Finding[] {
  const { inKg, outKg } = sumsOf(scene);
  // what was taken out of the same circuit and put back is no addition
  const addedKg = inKg - outKg;
  const fullKg = scene.facts.charge_kg;
  if (addedKg <= 0) return fullKg === undefined ? [] : leakChecked(scene, fullKg);
  // a small circuit that was emptied and filled again is under no federal rule
  if (outKg > 0 && fullKg !== undefined && fullKg < smallestKg) return [];
  if (fullKg === undefined)
    return outKg > 0
      ? []
      : [
          unknown(
            scene.facts.circuits === undefined
              ? "the full charge of the circuit"
              : "which circuit it went into",
          ),
        ];
  return rated(scene, addedKg, fullKg);
}

/** A leak check in Europe: when the next one is due, which goes by the charge and not by a rate. */
function leakChecked(scene: Scene, fullKg: number): Finding[] {
  const looked = scene.seen.some(
    ({ observation }) => observation === "no_leak_found" || observation === "leak_found",
  );
  if (scene.facts.leak_regime !== "eu" || !looked) return [];
  const rule = ruleFor(scene, fullKg);
  return [
    {
      about: "system",
      check: "leak_rate",
      level: "good",
      says: leakReminder({ over: false, fullKg, lastYearKg: 0 }, rule, scene),
      brief: "next leak check by its charge",
      values: {},
      basis: rule.basis,
      source: rule.source,
    },
  ];
}

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
    (one) =>
      one.action === "charged" &&
      (one.withinYear === true || ((one.daysAgo ?? 366) > 0 && (one.daysAgo ?? 366) <= 365)),
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
  const europe = scene.facts.leak_regime === "eu";
  // the European rule knows no rate: any leak is to be repaired
  const against = europe
    ? ""
    : `, ${over ? "over" : "not over"} the ${thresholdPercent} percent for this use`;
  const rated = { over, fullKg, lastYearKg: lastYearKg(scene, sumsOf(scene).inKg) };
  const reminder = leakReminder(rated, rule, scene);
  return {
    about: "system",
    check: "leak_rate",
    level: europe ? "watch" : over ? "bad" : "good",
    says: `${plain(percent)} percent of the charge a year by the ${method}${against}. ${reminder}`,
    brief: `${plain(percent)} percent a year${europe ? "" : `, ${over ? "over" : "under"} ${thresholdPercent}`}`,
    values: { leak_rate_percent_per_year: percent },
    basis: rule.basis,
    source: `40 CFR 82.152 and 84.102 (${method}); thresholds 40 CFR 82.157(c)(2), 84.106(c)(2); ${rule.source}`,
    signs: [percent > leakyPercent ? "leak_rate:over" : "leak_rate:under", "added:again"],
  };
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
