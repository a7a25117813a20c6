import type { EquipmentFacts, LimitFacts, Limits } from "../model.ts";
import { plainTag } from "./names.ts";

/**
 * The company's own limits that hold for a unit: those of its tag or kind outweigh those of its
 * site, and those outweigh what holds everywhere.
 */
export function limitsFor(
  equipment: EquipmentFacts,
  site: string | null,
  all: readonly LimitFacts[],
): Limits {
  const own = all
    .filter((one) => isOfUnit(one, equipment) && isOfSite(one, site))
    .sort((a, b) => weightOf(a) - weightOf(b));
  return Object.fromEntries(
    own.map(({ limit, least, most }) => [
      limit,
      { ...(least === undefined ? {} : { least }), ...(most === undefined ? {} : { most }) },
    ]),
  );
}

function isOfUnit(one: LimitFacts, { tag, kind }: EquipmentFacts): boolean {
  const meant = one.equipment === undefined ? undefined : plainTag(one.equipment);
  return (
    meant === undefined ||
    [tag, kind].some((name) => name !== undefined && plainTag(name) === meant)
  );
}

function isOfSite(one: LimitFacts, site: string | null): boolean {
  return one.site === undefined || one.site.toLowerCase() === site?.toLowerCase();
}

/** The nearer a limit is to the unit, the later it counts. */
const weightOf = ({ site, equipment }: LimitFacts): number =>
  (equipment === undefined ? 0 : 2) + (site === undefined ? 0 : 1);
