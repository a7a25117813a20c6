import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { quantities } from "../src/quantities/list.ts";
import { asides, remarks } from "../src/read/rules/list.ts";
import { check, linesOf, noteFiles, understand } from "./support/note-check.ts";

const Pins = z.record(
  z.string(),
  z.object({ exact: z.number(), full: z.number(), wrong: z.number(), asked: z.number() }),
);

const pins = Pins.parse(JSON.parse(readFileSync("fixtures/notes/pins.json", "utf8")));

for (const file of noteFiles)
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
