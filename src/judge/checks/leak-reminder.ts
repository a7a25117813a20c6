import type { Finding } from "../../model.ts";
import { carbonEquivalentT, leakCheckMonths } from "../../physics/carbon-equivalent.ts";
import {
  chronicPercent,
  daysLater,
  followUpDays,
  regimeApplies,
  repairDays,
} from "../../physics/leak-rules.ts";
import { refrigerantFacts } from "../../physics/tables/refrigerant-facts.ts";
import { refrigerantOf } from "../circuit.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";

/** The rule that a leak rate is held against, as far as it is known. */
export interface Rule {
  readonly basis: string;
  readonly source: string;
  readonly applies: boolean | undefined;
}

const outside = ", which does not seem to reach this unit";

/** Whether a leak rate stands for the record alone: no date of the rule follows from it. */
export const isOutside = ({ basis }: Pick<Finding, "basis">): boolean => basis.endsWith(outside);

/** The regime that the office chose, else the one that the refrigerant points to. */
export function ruleFor(scene: Scene, fullKg: number): Rule {
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
    const text = regime === "us_82" ? "40 CFR 82.157" : "40 CFR 84.106";
    const basis = applies === false ? `${text}${outside}` : text;
    return { basis, source: `${text}(a)`, applies };
  }
  return {
    basis: "40 CFR 82/84",
    source: "regime not chosen by the office",
    applies: undefined,
  };
}

/** A rate and what it was worked out of. */
export interface Rated {
  readonly over: boolean;
  readonly fullKg: number;
  /** all additions of the last 365 days */
  readonly lastYearKg: number;
}

/** What the rules commonly ask for after it: a reminder, never advice. */
export function leakReminder(rated: Rated, rule: Rule, scene: Scene): string {
  const { over, fullKg } = rated;
  if (rule.basis.startsWith("EU")) return europe(scene, fullKg);
  if (rule.applies === false)
    return "This circuit looks too small, or of another kind, for the federal rule; the rate stands for the record. The office decides";
  if (rated.lastYearKg >= (chronicPercent / 100) * fullKg)
    return `A reminder: ${chronicPercent} percent or more of the charge within a calendar year is commonly reported by the first of March; the office decides`;
  const asked = over
    ? `A reminder: repair and first verification commonly within ${repairDays.usual} days${by(scene)}, a follow-up check within ${followUpDays} days after`
    : "A reminder: the rate belongs in the record with each addition";
  return rule.applies === undefined
    ? `${asked}; whether the rule covers this unit, exemptions included, the office says`
    : `${asked}; exemptions are the office's to say`;
}

/** ", by 2026-07-30": counted from the case's own moment. */
function by(scene: Scene): string {
  const date = scene.at === undefined ? undefined : daysLater(scene.at, repairDays.usual);
  return date === undefined ? "" : `, by ${date}`;
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
