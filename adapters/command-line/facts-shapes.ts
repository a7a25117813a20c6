import { z } from "zod";
import type { EquipmentFacts, Limits, SiteFacts } from "../../src/model.ts";
import { limitNames } from "../../src/vocabulary.ts";

/** What a caller may tell of a unit and its site. Null and "" mean not told; more fields are let through unread. */
const text = z.string().exactOptional();
const number = z.number().exactOptional();

const equipment = z.object({
  tag: text,
  site: text,
  kind: text,
  parent: text,
  places: z.array(z.string()).exactOptional(),
  drive: z.enum(["inverter", "line"]).exactOptional(),
  phases: number,
  supply_V: number,
  rla_A: number,
  lra_A: number,
  moc_A: number,
  refrigerant: text,
  metering: z.enum(["expansion_valve", "fixed_orifice"]).exactOptional(),
  mode: z.enum(["cooling", "heating"]).exactOptional(),
  operation: z.enum(["normal", "test"]).exactOptional(),
  charge_kg: number,
  receiver: z.boolean().exactOptional(),
  line_set: z
    .array(
      z.object({ line: z.string(), size_in: z.number(), length_m: z.number(), covered_m: number }),
    )
    .exactOptional(),
  use: z
    .enum(["comfort_cooling", "commercial_refrigeration", "industrial_process"])
    .exactOptional(),
  leak_regime: z.enum(["us_82", "us_84", "eu", "ask_office"]).exactOptional(),
  leak_method: z.enum(["annualizing", "rolling"]).exactOptional(),
  last_addition: text,
  winding_class: text,
  model: text,
  serial: text,
  installed: text,
  notes: text,
}) satisfies z.ZodType<EquipmentFacts>;

const site = z.object({
  name: text,
  street: text,
  town: text,
  contact: text,
  phone: text,
  use: text,
  notes: text,
  altitude_m: number,
  smallest_room_m3: number,
  occupancy: text,
  rules: z.enum(["ashrae", "iso_en"]).exactOptional(),
  tree: z
    .array(
      z.object({
        tag: z.string(),
        parent: text,
        kind: text,
        places: z.array(z.string()).exactOptional(),
      }),
    )
    .exactOptional(),
}) satisfies z.ZodType<SiteFacts>;

/** Drops what was given as null or "" on every level: not told is not there. */
function told(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(told);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, item]) => item !== null && item !== "")
      .map(([key, item]) => [key, told(item)]),
  );
}

const limit = z.object({ least: number, most: number });

/** Limits of the company's own, by the name of the figure, in canonical units. */
export const limitsShape = z.preprocess(
  told,
  z.partialRecord(z.enum(limitNames), limit),
) satisfies z.ZodType<Limits>;

export const equipmentShape = z.preprocess(told, equipment);
export const siteShape = z.preprocess(told, site);
