import { kilogramPerPound } from "./constants.ts";

export type ApplianceUse = "comfort_cooling" | "commercial_refrigeration" | "industrial_process";
export type UsRegime = "us_82" | "us_84";

/** Percent a year; only a rate above it counts as over. Source: 40 CFR 82.157(c)(2), 84.106(c)(2). */
const thresholdPercent: Readonly<Record<ApplianceUse, number>> = {
  comfort_cooling: 10,
  commercial_refrigeration: 20,
  industrial_process: 30,
};

/** Pounds of full charge from which a regime applies. Source: 40 CFR 82.157(a), 84.106(a). */
export const smallestChargePounds: Readonly<Record<UsRegime, number>> = { us_82: 50, us_84: 15 };

const smallestChargeKg: Readonly<Record<UsRegime, number>> = {
  us_82: smallestChargePounds.us_82 * kilogramPerPound,
  us_84: smallestChargePounds.us_84 * kilogramPerPound,
};

/** Source: 40 CFR 84.106(a): substitutes at or below it are outside. */
const smallestGwp = 53;

/** kg; a charge of exactly 50 lb is within, whatever rounding its kilograms went through */
const roundingKg = 0.005;

/** Days from the finding: 40 CFR 82.157(d), 84.106(d); 120 where an industrial process must stop. */
export const repairDays = { usual: 30, processShutdown: 120 } as const;

/** Days from the initial test, or from normal operation: 40 CFR 82.157(e)(2), 84.106(e)(2). */
export const followUpDays = 10;

/** Percent of the full charge in a calendar year that must be reported: 40 CFR 82.157(j), 84.106(j). */
export const chronicPercent = 125;

/**
 * The yearly leak rate, in percent, above which the rules ask for repair.
 * Source: 40 CFR 82.157(c)(2) and 84.106(c)(2). Why: a rate equal to it is not over it.
 */
export function leakThresholdPercent(use: ApplianceUse): number {
  return thresholdPercent[use];
}

/**
 * Whether an appliance is large enough, and its refrigerant of the kind, for a regime.
 *
 * @param regime `us_82` for ozone depleters, `us_84` for HFC and substitutes above GWP 53
 * @param fullChargeKg of the one independent circuit
 * @param refrigerant its global warming potential and whether it depletes ozone
 * Source: 40 CFR 82.157(a) (50 lb) and 84.106(a) (15 lb, GWP over 53). It does not decide the
 * exemption of residential and light commercial comfort cooling in 84.106(a)(3)(ii): the office does.
 */
export function regimeApplies(
  regime: UsRegime,
  fullChargeKg: number,
  refrigerant: { readonly gwp: number; readonly depletesOzone: boolean },
): boolean {
  if (fullChargeKg + roundingKg < smallestChargeKg[regime]) return false;
  if (regime === "us_82") return refrigerant.depletesOzone;
  return !refrigerant.depletesOzone && refrigerant.gwp > smallestGwp;
}

/** An ISO date some days later; undefined for a text that is no date. Source: calendar arithmetic in UTC. */
export function daysLater(isoDate: string, days: number): string | undefined {
  const start = Date.parse(`${isoDate.slice(0, 10)}T00:00:00Z`);
  if (Number.isNaN(start)) return undefined;
  return new Date(start + days * 86_400_000).toISOString().slice(0, 10);
}

/** kg of full charge from which inspections are quarterly: 500 lb. Source: 40 CFR 82.157(g), 84.106(g). */
const quarterlyFromKg = 500 * kilogramPerPound;

/**
 * Months between the leak inspections that follow a rate over its limit: 3 for refrigeration and
 * processes from 500 lb on, else 12 ("once per calendar year"). Without a use the stricter counts.
 * Source: 40 CFR 82.157(g)(1), 84.106(g)(1).
 */
export function inspectionMonths(fullChargeKg: number, use: ApplianceUse | undefined): 3 | 12 {
  return use !== "comfort_cooling" && fullChargeKg + roundingKg >= quarterlyFromKg ? 3 : 12;
}

/** When they end. Source: 40 CFR 82.157(g)(1), 84.106(g)(1). */
export const inspectionsEnd = (months: 3 | 12): string =>
  months === 3
    ? "until four quarters in a row were not over"
    : "until a calendar year was not over";

/** An ISO date some months later, the last day where the month is shorter. Source: calendar arithmetic in UTC. */
export function monthsLater(isoDate: string, months: number): string {
  const [year = 0, month = 1, day = 1] = isoDate.slice(0, 10).split("-").map(Number);
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  const date = new Date(Date.UTC(year, month - 1 + months, Math.min(day, last)));
  return date.toISOString().slice(0, 10);
}
