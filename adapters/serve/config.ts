import { readFileSync } from "node:fs";
import { z } from "zod";
import type { ChatPlatform } from "../chat-platform.ts";
import { platforms } from "../list.ts";
import { personSchema } from "./people.ts";
import { problemsOf } from "./problems.ts";

const timeZone = z.string().refine((zone) => {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}, "must be an IANA time zone, like America/Chicago");

const shape = z.strictObject({
  /** the store: one SQLite file, made if it is not there */
  db: z.string().min(1),
  time_zone: timeZone.optional(),
  units: z.enum(["us", "si"]).optional(),
  board_channel: z.string().min(1).optional(),
  /** the channel or direct chat of who hears of near misses; nobody else does */
  safety_channel: z.string().min(1).optional(),
  /** when the record's digest is posted where the board is, once a day */
  digest_at: z
    .string()
    .regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, "must be a time of day, such as 18:00")
    .optional(),
  /** readings of one burst, or of an outage, get one answer */
  one_answer_a_burst: z.boolean().default(true),
  /** a port on this machine for /live and /ready */
  health_port: z.int().min(1).max(65_535).optional(),
  people: z
    .array(personSchema)
    .default([])
    .superRefine((people, context) => {
      for (const field of ["person", "slack", "matrix"] as const) {
        const all = people.flatMap((one) => one[field] ?? []);
        const twice = all.find((value, index) => all.indexOf(value) !== index);
        if (twice !== undefined) {
          context.addIssue({ code: "custom", message: `${field} ${twice} stands twice` });
        }
      }
    }),
  platforms: z.record(z.string(), z.unknown()),
});

export interface Config extends Omit<z.output<typeof shape>, "platforms"> {
  readonly platforms: readonly ChatPlatform[];
}

export type ReadConfig =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly problems: readonly string[] };

const bad = (...problems: readonly string[]): ReadConfig => ({ ok: false, problems });

/** Reads a configuration file; every mistake is named with its place and what would be right. */
export function readConfig(path: string): ReadConfig {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    return bad(`There is no configuration ${path} that can be read.`);
  }
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return bad(`${path} is not JSON: ${error instanceof Error ? error.message : ""}.`);
  }
  const parsed = shape.safeParse(json, { reportInput: true });
  if (!parsed.success) return bad(...problemsOf(parsed.error).map((one) => `${path}: ${one}`));
  return open(path, parsed.data);
}

function open(path: string, raw: z.output<typeof shape>): ReadConfig {
  const problems: string[] = [];
  const opened: ChatPlatform[] = [];
  for (const [name, settings] of Object.entries(raw.platforms)) {
    const kind = platforms.find((one) => one.name === name);
    const names = platforms.map((one) => one.name).join(", ");
    const made = kind?.configure(settings, raw.people);
    if (made === undefined)
      problems.push(`${path}: There is no platform "${name}"; known: ${names}.`);
    else if (made.ok) opened.push(made.platform);
    else problems.push(...made.problems.map((one) => `${path}: ${one}`));
  }
  if (problems.length > 0) return bad(...problems);
  if (opened.length === 0) return bad(`${path}: No platform stands under "platforms".`);
  if (raw.digest_at !== undefined && opened.every(({ boardChannel }) => boardChannel === undefined))
    return bad(
      `${path}: digest_at: the digest is posted where the board is; name a board as well.`,
    );
  return { ok: true, config: { ...raw, platforms: opened } };
}
