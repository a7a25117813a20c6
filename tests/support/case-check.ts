import { readFileSync } from "node:fs";
import { z } from "zod";
import { equipmentShape, siteShape } from "../../adapters/command-line/facts-shapes.ts";
import { judgeNotes } from "../../src/bot/judge-notes.ts";
import type { Judgement, Level } from "../../src/model.ts";

/** Whole cases: notes as a technician sends them, read and judged, against what a senior would say. */

const level = z.enum(["good", "watch", "bad", "unknown"]);
const expectation = z.strictObject({
  top: z.string().optional(),
  top_below: z.number().optional(),
  not_top: z.array(z.string()).optional(),
  values: z.record(z.string(), z.tuple([z.number(), z.number()])).optional(),
  levels: z.record(z.string(), level).optional(),
  levels_not: z.record(z.string(), level).optional(),
  next_any: z.array(z.string()).optional(),
  cautions: z.array(z.string()).optional(),
});
const shape = z.strictObject({
  id: z.string(),
  equipment: equipmentShape.optional(),
  site: siteShape.optional(),
  notes: z.array(z.string()),
  units: z.enum(["us", "si"]).optional(),
  at: z.string().optional(),
  expect: expectation,
  why: z.string(),
  source: z.string(),
});
export type JudgeCase = z.infer<typeof shape>;

const folder = new URL("../../fixtures/cases/", import.meta.url);

export function casesOf(file: string): JudgeCase[] {
  return readFileSync(new URL(file, folder), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => shape.parse(JSON.parse(line)));
}

export function judged(one: JudgeCase): Judgement {
  return judgeNotes({
    equipment: one.equipment ?? {},
    site: one.site ?? {},
    notes: one.notes,
    units: one.units ?? "us",
    ...(one.at === undefined ? {} : { at: one.at }),
  });
}

const rank: Readonly<Record<Level, number>> = { unknown: 0, good: 1, watch: 2, bad: 3 };

/** The gravest level among a check's findings ("leak" stands for "leak_rate"). */
function gravest(judgement: Judgement, check: string): Level | undefined {
  return judgement.findings
    .filter((one) => one.check.startsWith(check))
    .map((one) => one.level)
    .sort((a, b) => rank[b] - rank[a])[0];
}

/** What the judgement gets wrong, in words. */
export function mistakes(one: JudgeCase, judgement: Judgement): string[] {
  const { expect: wanted } = one;
  const first = judgement.diagnosis[0];
  const found: string[] = [];
  const tell = (wrong: boolean, says: string) => (wrong ? found.push(says) : 0);
  if (wanted.top !== undefined) tell(first?.fault !== wanted.top, `first is ${first?.fault}`);
  for (const fault of wanted.not_top ?? []) tell(first?.fault === fault, `first is ${fault}`);
  if (wanted.top_below !== undefined)
    tell((first?.probability ?? 0) >= wanted.top_below, `too sure of ${first?.fault}`);
  for (const [name, [from, to]] of Object.entries(wanted.values ?? {})) {
    const values = judgement.findings.flatMap((finding) => finding.values[name] ?? []);
    tell(!values.some((value) => value >= from && value <= to), `${name} is ${values.join(", ")}`);
  }
  for (const [check, at] of Object.entries(wanted.levels ?? {}))
    tell(gravest(judgement, check) !== at, `${check} is ${gravest(judgement, check)}`);
  for (const [check, at] of Object.entries(wanted.levels_not ?? {}))
    tell(gravest(judgement, check) === at, `${check} is ${at}`);
  const asked = judgement.next.map((next) => `${next.check} ${next.why}`.toLowerCase()).join(" ");
  const words = wanted.next_any ?? [];
  tell(words.length > 0 && !words.some((word) => asked.includes(word.toLowerCase())), "asks else");
  const ids = judgement.cautions.map((caution) => caution.id);
  for (const id of wanted.cautions ?? []) tell(!ids.includes(id), `no caution ${id}`);
  return found;
}

/** What a judgement comes to, on one line: each finding's level, basis, signs and figures, the likely causes, what is next, cautions. */
export function verdictLine({ id }: JudgeCase, judgement: Judgement): string {
  const found = judgement.findings.map(({ about, check, level, basis, signs = [], values }) => {
    const figures = Object.entries(values).map(
      ([name, value]) => `${name}=${Number(value.toPrecision(3))}`,
    );
    const name = about === "compressor" ? "" : about;
    return [name, check, level, `(${basis})`, ...signs, ...figures]
      .filter((word) => word !== "")
      .join(" ");
  });
  const causes = judgement.diagnosis.filter(({ probability }) => probability > worthTelling);
  return [
    id,
    found.join("; "),
    causes.map(({ fault }) => fault).join(" "),
    judgement.next.map(({ check, minutes }) => `${check} ${minutes}`).join(", "),
    judgement.cautions.map((caution) => caution.id).join(" "),
  ].join(" | ");
}

/** Causes below it are named by nobody; what stands above it changes seldom. */
const worthTelling = 0.15;
