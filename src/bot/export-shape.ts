import { z } from "zod";
import { jsonFormat, jsonVersion } from "../show/exports/json.ts";

/**
 * The shape of an export's JSON file. Fields are added, never renamed or dropped, within a version:
 * what reads a file must let unknown ones pass.
 */
const hash = z.string().regex(/^[0-9a-f]{64}$/);
const moment = z.string().describe("ISO 8601 with offset");

export const linkShape = z
  .object({
    job: z.number().int(),
    place: z.number().int().describe("1, 2, 3 within its job"),
    version: z.number().int(),
    at: moment,
    person: z.number().int().describe("number in `people`"),
    platform: z.string(),
    message: z.string(),
    facts: z.string().describe("what the message added, as JSON, without its words"),
    words: hash.describe("SHA-256 of JSON [salt, text, strings]"),
    hash: hash.describe("SHA-256 of the entry and the hash before it in its job"),
  })
  .describe("one entry of the record as it was written");

const spokenShape = z
  .object({
    job: z.number().int(),
    place: z.number().int(),
    salt: z.string(),
    text: z.string(),
    strings: z.string(),
  })
  .describe("the words that an entry's `words` was made over; absent once erased");

const reading = z.looseObject({
  id: z.string(),
  message: z.string(),
  quantity: z.string(),
  relation: z.enum(["=", "~", "<", "<=", ">", ">=", "in"]),
  value: z.union([z.number(), z.string(), z.null()]).describe("in `unit`; null when over range"),
  unit: z.string().nullable().describe("canonical, UCUM"),
  figure: z.object({ number: z.string(), unit: z.string() }).describe("as the technician said it"),
  said: z.string(),
  taken: moment,
  received: moment,
  who: z.string(),
  replaced_by: z.string().optional(),
  undone: z.literal(true).optional(),
  deleted: z.literal(true).optional(),
});

const finding = z.looseObject({
  about: z.string(),
  check: z.string(),
  level: z.enum(["good", "watch", "bad", "unknown"]),
  says: z.string(),
  values: z.record(z.string(), z.number()),
  basis: z.string(),
});

const job = z.looseObject({
  job: z.number().int(),
  site: z.string().nullable(),
  equipment: z.string().nullable(),
  opened: moment,
  status: z.string(),
  status_at: moment,
  person: z.string().nullable(),
  people: z.array(z.string()),
  timeline: z.array(z.looseObject({ at: moment, who: z.string(), says: z.string() })),
  readings: z.array(reading),
  findings: z.array(finding),
  diagnosis: z.array(z.looseObject({ fault: z.string(), probability: z.number() })),
  parts: z.array(z.looseObject({ part: z.string(), state: z.string() })),
  visits: z.array(
    z.looseObject({ person: z.string(), kind: z.string(), from: moment, to: moment.optional() }),
  ),
  labor_hours: z.number(),
  refrigerant: z.object({ recovered_kg: z.number(), charged_kg: z.number() }),
  file: z.object({ state: z.enum(["open", "closed"]), gaps: z.array(z.string()) }),
});

export const exportShape = z
  .looseObject({
    format: z.literal(jsonFormat),
    version: z.literal(jsonVersion),
    scope: z.string().describe("day 2026-05-12, job 14"),
    revision: z.number().int(),
    since_revision: z.number().int().nullable(),
    as_of: z.string().describe("the last entry's time; empty where there is none"),
    time_zone: z.string(),
    units: z.enum(["us", "si"]),
    digest: z
      .string()
      .describe("of the whole store: number of entries, SHA-256 of every job's last hash"),
    jobs: z.array(job),
    due: z.array(
      z.looseObject({ job: z.number(), what: z.string(), due: z.string(), state: z.string() }),
    ),
    changes: z.array(
      z.object({
        job: z.number(),
        what: z.string(),
        was: z.string(),
        is: z.string(),
        who: z.string(),
        at: moment,
        message: z.string(),
      }),
    ),
    files: z.array(z.object({ name: z.string(), sha256: hash })),
    people: z.record(z.string(), z.string()).optional(),
    entries: z.array(linkShape).optional().describe("absent in an anonymous export"),
    other_heads: z.array(z.tuple([z.number(), z.number(), hash])).optional(),
    words: z.array(spokenShape).optional(),
    seal: hash.describe("SHA-256 of the file up to the comma before this line"),
  })
  .describe("One export of the record: some days or some jobs");

/** The published JSON Schema. */
export function exportSchema(): object {
  return z.toJSONSchema(exportShape, { target: "draft-2020-12", io: "input" });
}
