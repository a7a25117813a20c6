import { z } from "zod";
import type { EquipmentFacts, FaultCode, SiteFacts } from "../model.ts";
import { type Store, sql } from "./store.ts";

export interface PersonFacts {
  readonly name: string;
  readonly role?: string;
  readonly nickname?: string;
  readonly phone?: string;
  readonly certificate?: string;
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
}

export const registryKinds = ["site", "equipment", "code", "person", "cylinder"] as const;
export type RegistryKind = (typeof registryKinds)[number];

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null;
// written by `putFacts` alone, from facts that the import checked
const schemas = {
  site: z.custom<SiteFacts>(isObject),
  equipment: z.custom<EquipmentFacts>(isObject),
  code: z.custom<FaultCode>(isObject),
  person: z.custom<PersonFacts>(isObject),
  cylinder: z.custom<CylinderFacts>(isObject),
};

export function readRegistry(store: Store): Registry {
  return {
    sites: factsOf(store, "site").map((facts) => schemas.site.parse(facts)),
    equipment: factsOf(store, "equipment").map((facts) => schemas.equipment.parse(facts)),
    codes: factsOf(store, "code").map((facts) => schemas.code.parse(facts)),
    people: factsOf(store, "person").map((facts) => schemas.person.parse(facts)),
    cylinders: factsOf(store, "cylinder").map((facts) => schemas.cylinder.parse(facts)),
  };
}

const rows = z.array(z.object({ facts: z.string() }));

function factsOf(store: Store, kind: RegistryKind): readonly unknown[] {
  return rows
    .parse(sql(store, "SELECT facts FROM registry WHERE kind = ? ORDER BY rowid").all(kind))
    .map((row): unknown => JSON.parse(row.facts));
}

export type PutOutcome = "added" | "changed" | "same";

/** Keeps one line of an office file under its key; says whether that told something new. */
export function putFacts(
  store: Store,
  line: { readonly kind: RegistryKind; readonly key: string; readonly facts: unknown },
): PutOutcome {
  const facts = JSON.stringify(line.facts);
  const before = sql(store, "SELECT facts FROM registry WHERE kind = ? AND key = ?")
    .pluck()
    .get(line.kind, line.key);
  if (before === facts) return "same";
  sql(
    store,
    `INSERT INTO registry (kind, key, facts) VALUES (?, ?, ?)
     ON CONFLICT (kind, key) DO UPDATE SET facts = excluded.facts`,
  ).run(line.kind, line.key, facts);
  return before === undefined ? "added" : "changed";
}
