import { z } from "zod";
import type { EquipmentFacts, FaultCode, LimitFacts, SiteFacts } from "../model.ts";
import { type Store, sql } from "./store.ts";

export interface PersonFacts {
  readonly name: string;
  readonly role?: string;
  readonly nickname?: string;
  readonly phone?: string;
  readonly certificate?: string;
  /** what platforms call them, whichever column it stood in */
  readonly handles?: readonly string[];
}

/** One line of the company's parts list. */
export interface PartFacts {
  readonly number: string;
  readonly name: string;
  readonly fits?: readonly string[];
  readonly supplier?: string;
  readonly place?: string;
}

export interface CylinderFacts {
  readonly number: string;
  readonly gas?: string;
  readonly owner?: string;
  readonly net_kg?: number;
  /** kg of water that it holds */
  readonly capacity_kg?: number;
  readonly tare_kg?: number;
}

/** What the office's files told: each list in the order of the file. */
export interface Registry {
  readonly sites: readonly SiteFacts[];
  readonly equipment: readonly EquipmentFacts[];
  readonly codes: readonly FaultCode[];
  readonly people: readonly PersonFacts[];
  readonly cylinders: readonly CylinderFacts[];
  readonly parts: readonly PartFacts[];
  readonly limits: readonly LimitFacts[];
}

export const registryKinds = [
  "site",
  "equipment",
  "code",
  "person",
  "cylinder",
  "part",
  "limit",
] as const;
export type RegistryKind = (typeof registryKinds)[number];

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null;
// written by `putFacts` alone, from facts that the import checked
const schemas = {
  site: z.custom<SiteFacts>(isObject),
  equipment: z.custom<EquipmentFacts>(isObject),
  code: z.custom<FaultCode>(isObject),
  person: z.custom<PersonFacts & OnPlatforms>(isObject),
  cylinder: z.custom<CylinderFacts>(isObject),
  part: z.custom<PartFacts>(isObject),
  limit: z.custom<LimitFacts>(isObject),
};

export function readRegistry(store: Store): Registry {
  const sites = factsOf(store, "site").map((facts) => schemas.site.parse(facts));
  const equipment = factsOf(store, "equipment").map((facts) => schemas.equipment.parse(facts));
  return {
    sites,
    equipment: atOneSite(equipment, sites),
    codes: factsOf(store, "code").map((facts) => schemas.code.parse(facts)),
    people: factsOf(store, "person").map((facts) => withHandles(schemas.person.parse(facts))),
    cylinders: factsOf(store, "cylinder").map((facts) => schemas.cylinder.parse(facts)),
    parts: factsOf(store, "part").map((facts) => schemas.part.parse(facts)),
    limits: factsOf(store, "limit").map((facts) => schemas.limit.parse(facts)),
  };
}

/** Units of one site stand under one spelling of it, whichever way their rows spell it: else its tree falls apart. */
function atOneSite(
  equipment: readonly EquipmentFacts[],
  sites: readonly SiteFacts[],
): readonly EquipmentFacts[] {
  const spelled = new Map<string, string>();
  for (const name of [...sites.map((one) => one.name), ...equipment.map((one) => one.site)]) {
    if (name !== undefined && !spelled.has(plainSite(name))) spelled.set(plainSite(name), name);
  }
  return equipment.map((unit) => {
    const site = unit.site === undefined ? undefined : spelled.get(plainSite(unit.site));
    return site === undefined || site === unit.site ? unit : { ...unit, site };
  });
}

const plainSite = (name: string): string => name.toLowerCase().replace(/\s+/g, " ").trim();

/** Names that stood in a platform's own column. */
interface OnPlatforms {
  readonly slack?: readonly string[];
  readonly matrix?: readonly string[];
}

/** A file may tell of one platform and a later one of another: none takes the other's names away. */
function withHandles({
  slack = [],
  matrix = [],
  ...facts
}: PersonFacts & OnPlatforms): PersonFacts {
  const handles = [...new Set([...(facts.handles ?? []), ...slack, ...matrix])];
  return handles.length === 0 ? facts : { ...facts, handles };
}

const rows = z.array(z.object({ facts: z.string() }));

function factsOf(store: Store, kind: RegistryKind): readonly unknown[] {
  return rows
    .parse(sql(store, "SELECT facts FROM registry WHERE kind = ? ORDER BY rowid").all(kind))
    .map((row): unknown => JSON.parse(row.facts));
}

export type PutOutcome = "added" | "changed" | "same";

export interface Put {
  readonly outcome: PutOutcome;
  /** "serial: A1 becomes A2", a sentence a field */
  readonly changes: readonly string[];
}

const factsShape = z.record(z.string(), z.unknown());

/** What is to be kept: facts under the key of their kind. */
export interface RegistryLine {
  readonly kind: RegistryKind;
  readonly key: string;
  readonly facts: object;
  /** fields that the file tells of; of the others stays what was known. Absent: of all */
  readonly covers?: ReadonlySet<string>;
}

/** Keeps one line of an office file under its key, unless `dry`; says what that tells anew. */
export function putFacts(store: Store, line: RegistryLine, dry = false): Put {
  const before = z
    .string()
    .optional()
    .parse(
      sql(store, "SELECT facts FROM registry WHERE kind = ? AND key = ?")
        .pluck()
        .get(line.kind, line.key),
    );
  const known = before === undefined ? {} : factsShape.parse(JSON.parse(before));
  const merged = { ...untold(known, line.covers), ...line.facts };
  const facts = JSON.stringify(merged);
  if (before === facts) return { outcome: "same", changes: [] };
  const changes = changedFields(known, factsShape.parse(JSON.parse(facts)));
  // the same facts in another order of columns
  if (before !== undefined && changes.length === 0) return { outcome: "same", changes };
  if (!dry) {
    sql(
      store,
      `INSERT INTO registry (kind, key, facts) VALUES (?, ?, ?)
     ON CONFLICT (kind, key) DO UPDATE SET facts = excluded.facts`,
    ).run(line.kind, line.key, facts);
  }
  return before === undefined ? { outcome: "added", changes: [] } : { outcome: "changed", changes };
}

function untold(
  known: Readonly<Record<string, unknown>>,
  covers: ReadonlySet<string> | undefined,
): Readonly<Record<string, unknown>> {
  if (covers === undefined) return {};
  return Object.fromEntries(Object.entries(known).filter(([field]) => !covers.has(field)));
}

function changedFields(
  was: Readonly<Record<string, unknown>>,
  is: Readonly<Record<string, unknown>>,
): readonly string[] {
  return [...new Set([...Object.keys(was), ...Object.keys(is)])]
    .filter((field) => JSON.stringify(was[field]) !== JSON.stringify(is[field]))
    .map(
      (field) =>
        `${field.replaceAll("_", " ")} ${plainWords(was[field])} becomes ${plainWords(is[field])}`,
    );
}

/** A value as the office reads it: "line liquid, size in 0.375; line suction". */
function plainWords(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.map(plainWords).join("; ");
  return typeof value === "object" && value !== null
    ? Object.entries(value)
        .map(([field, one]) => `${field.replaceAll("_", " ")} ${plainWords(one)}`)
        .join(", ")
    : String(value);
}
