import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";
import type { Reading, Understood } from "../../src/model.ts";
import { follow, startContext } from "../../src/read/context.ts";
import { read } from "../../src/read/read.ts";

/** Labelled notes, each read and held against what it expects. */

const folder = new URL("../../fixtures/notes/", import.meta.url);

const Wanted = z.looseObject({
  quantity: z.string(),
  relation: z.string(),
  value: z.union([z.number(), z.string(), z.null()]),
});
const Line = z.looseObject({
  id: z.string(),
  text: z.string(),
  before: z.array(z.string()).optional(),
  units: z.enum(["us", "si"]).optional(),
  at: z.string().optional(),
  rule: z.string().optional(),
  quantity: z.string().optional(),
  expect: z.looseObject({
    readings: z.array(Wanted),
    ask: z.boolean().optional(),
    undo: z.boolean().optional(),
    status: z.string().optional(),
    unread: z.array(z.string()).optional(),
    statements: z.array(z.record(z.string(), z.unknown())).optional(),
  }),
});
export type Line = z.infer<typeof Line>;
export function linesOf(file: string): Line[] {
  return readFileSync(new URL(file, folder), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => Line.parse(JSON.parse(line)));
}

export const noteFiles = readdirSync(folder).filter((name) => name.endsWith(".jsonl"));

export function understand(line: Line): Understood {
  let context = startContext(line.units ?? "us", line.at);
  for (const earlier of line.before ?? []) context = follow(context, read(earlier, context));
  return read(line.text, context);
}

function near(got: unknown, want: unknown): boolean {
  if (typeof got === "number" && typeof want === "number")
    return Math.abs(got - want) <= 1e-6 * Math.max(Math.abs(got), Math.abs(want)) + 1e-12;
  return got === want;
}

/** Quantity, relation, value, unit, rating: what a reading may not get wrong. */
function sameCore(got: Reading, want: z.infer<typeof Wanted>): boolean {
  return (
    got.quantity === want.quantity &&
    got.relation === want.relation &&
    near(got.value, want.value) &&
    near(got.high, want.high) &&
    (got.rating ?? null) === (want.rating ?? null) &&
    (got.over_range ?? false) === (want.over_range ?? false) &&
    (want.unit === undefined || got.unit === want.unit)
  );
}

const attributes = [
  "points",
  "at",
  "test_voltage",
  "after_s",
  "for_s",
  "subject",
  "action",
  "corrects",
  "earlier",
  "series",
  "state",
  "stat",
  "kind",
  "temperature",
  "reference",
  "measured_at",
] as const;

function sameAttribute(got: unknown, want: unknown, ordered: boolean): boolean {
  if (Array.isArray(want)) {
    if (!Array.isArray(got) || got.length !== want.length) return false;
    return ordered
      ? want.every((item, at) => near(got[at], item))
      : want.every((item) => got.includes(item));
  }
  if (typeof want === "string" && typeof got === "string")
    return got.toLowerCase() === want.toLowerCase();
  return near(got, want);
}

/** Attributes that the note settles and the reading misses. */
function missed(got: Reading, want: z.infer<typeof Wanted>): string[] {
  return attributes.filter(
    (name) => want[name] !== undefined && !sameAttribute(got[name], want[name], name === "series"),
  );
}

export interface Outcome {
  readonly exact: boolean;
  readonly full: boolean;
  readonly wrong: boolean;
  readonly asked: boolean;
  readonly says: string;
}

function statementsMissing(understood: Understood, line: Line): string[] {
  return (line.expect.statements ?? [])
    .filter(
      (want) =>
        !understood.statements.some((got) =>
          Object.entries(want).every(
            ([key, value]) => JSON.stringify(Reflect.get(got, key)) === JSON.stringify(value),
          ),
        ),
    )
    .map((want) => `no ${JSON.stringify(want)}`);
}

/** Reads one line and holds it against what it expects. */
export function check(line: Line): Outcome {
  const understood = understand(line);
  const left: Reading[] = [...understood.readings];
  const says: string[] = [];
  let exact = true;
  for (const want of line.expect.readings) {
    const fitting = left
      .filter((got) => sameCore(got, want))
      .sort((a, b) => missed(a, want).length - missed(b, want).length);
    const [best] = fitting;
    if (best === undefined) {
      exact = false;
      says.push(`misses ${JSON.stringify(want)}`);
      continue;
    }
    for (const name of missed(best, want)) says.push(`${name} of ${best.said}`);
    left.splice(left.indexOf(best), 1);
  }
  for (const got of left) says.push(`extra ${got.quantity} ${got.value} from "${got.said}"`);
  const ask = line.expect.ask === true;
  const asks = understood.ask.length > 0;
  if (ask !== asks) says.push(asks ? `asks "${understood.ask[0]}"` : "does not ask");
  says.push(...statementsMissing(understood, line));
  const status = understood.statements.find((one) => one.kind === "status")?.status;
  if (line.expect.status !== undefined && status !== line.expect.status)
    says.push(`status ${status}`);
  if (line.expect.undo === true && !understood.statements.some((one) => one.kind === "undo"))
    says.push("no undo");
  for (const text of line.expect.unread ?? [])
    if (!understood.unread.includes(text)) says.push(`${text} not unread`);
  exact = exact && left.length === 0;
  return {
    exact,
    full: says.length === 0,
    wrong: left.length > 0 && !asks,
    asked: asks && !ask,
    says: says.join("; "),
  };
}
