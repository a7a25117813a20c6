import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import type { Reading, Understood } from "../src/model.ts";
import { quantities } from "../src/quantities/list.ts";
import { follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { asides, remarks } from "../src/read/rules/list.ts";

const folder = new URL("../fixtures/notes/", import.meta.url);

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
type Line = z.infer<typeof Line>;
const Pins = z.record(
  z.string(),
  z.object({ exact: z.number(), full: z.number(), wrong: z.number(), asked: z.number() }),
);

function linesOf(file: string): Line[] {
  return readFileSync(new URL(file, folder), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => Line.parse(JSON.parse(line)));
}

const files = readdirSync(folder).filter((name) => name.endsWith(".jsonl"));
const pins = Pins.parse(JSON.parse(readFileSync(new URL("pins.json", folder), "utf8")));

function understand(line: Line): Understood {
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

interface Outcome {
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
function check(line: Line): Outcome {
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

for (const file of files)
  test(`${file} is read as well as it was`, () => {
    const lines = linesOf(file);
    const count = { exact: 0, full: 0, wrong: 0, asked: 0 };
    const misses: string[] = [];
    for (const line of lines) {
      const outcome = check(line);
      if (outcome.exact) count.exact++;
      if (outcome.full) count.full++;
      else misses.push(`  ${line.id} ${JSON.stringify(line.text)}: ${outcome.says}`);
      if (outcome.wrong) count.wrong++;
      if (outcome.asked) count.asked++;
    }
    const share = (part: number): string => `${((100 * part) / lines.length).toFixed(1)} %`;
    console.info(
      `${file}: ${lines.length} notes, exact ${share(count.exact)}, with attributes ${share(count.full)}, silently wrong ${share(count.wrong)}, settled but asked ${share(count.asked)}`,
    );
    if (misses.length > 0) console.info(misses.join("\n"));
    const pin = pins[file];
    expect(pin, `${file} has its pins`).toBeDefined();
    expect(count.exact).toBeGreaterThanOrEqual(pin?.exact ?? 0);
    expect(count.full).toBeGreaterThanOrEqual(pin?.full ?? 0);
    expect(count.wrong).toBeLessThanOrEqual(pin?.wrong ?? 0);
    expect(count.asked).toBeLessThanOrEqual(pin?.asked ?? 0);
  });

test("every quantity has an example of its own, and it is read", () => {
  const named = new Set(linesOf("quantities.jsonl").map((line) => line.quantity));
  for (const { name } of quantities) expect(named, name).toContain(name);
});

test("every rule has an example of its own that it takes part in", () => {
  const lines = linesOf("rules.jsonl");
  for (const rule of [...asides, ...remarks]) {
    const own = lines.filter((line) => line.rule === rule.name);
    expect(own.length, `examples of ${rule.name}`).toBeGreaterThan(0);
    for (const line of own) {
      const understood = understand(line);
      const rules = [...understood.readings, ...understood.statements].map((one) => one.rule);
      const paced = rule.name.includes("at <time>");
      if (!paced) expect(rules, `${line.id} ${line.text}`).toContain(rule.name);
    }
  }
});
