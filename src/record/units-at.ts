import type { EquipmentFacts } from "../model.ts";
import { plainTag } from "./names.ts";

/** The office's units at one site. */
export interface UnitsAt {
  /** in the order of the office's list */
  readonly all: readonly EquipmentFacts[];
  /** by plain tag, the first of a tag */
  readonly byTag: ReadonlyMap<string, EquipmentFacts>;
}

const none: UnitsAt = { all: [], byTag: new Map() };

/** Each message asks several times, of a list that only an import changes: that brings another list. */
const known = new WeakMap<readonly EquipmentFacts[], ReadonlyMap<string, UnitsAt>>();

/** The units that the office lists at a site; none where no site is known. */
export function unitsAt(
  equipment: readonly EquipmentFacts[],
  site: string | null | undefined,
): UnitsAt {
  if (site === null || site === undefined) return none;
  let sites = known.get(equipment);
  if (sites === undefined) {
    sites = bySite(equipment);
    known.set(equipment, sites);
  }
  return sites.get(site) ?? none;
}

function bySite(equipment: readonly EquipmentFacts[]): ReadonlyMap<string, UnitsAt> {
  const sites = new Map<string, { all: EquipmentFacts[]; byTag: Map<string, EquipmentFacts> }>();
  for (const unit of equipment) {
    if (unit.site === undefined) continue;
    const here = sites.get(unit.site) ?? { all: [], byTag: new Map<string, EquipmentFacts>() };
    sites.set(unit.site, here);
    here.all.push(unit);
    if (unit.tag === undefined) continue;
    const tag = plainTag(unit.tag);
    if (!here.byTag.has(tag)) here.byTag.set(tag, unit);
  }
  return sites;
}
