import { checkSync } from "recheck";
import { expect, test } from "vitest";
import { chanceFrom } from "./support/mutate.ts";
import { regexesIn, regexesOf } from "./support/regexes.ts";

/**
 * No regular expression backtracks more than linearly. All of them take the checker many minutes, so
 * a run takes as many as its time allows, others each time. READBACK_REGEX_SECONDS, READBACK_SEED.
 */
const seconds = Number(process.env.READBACK_REGEX_SECONDS ?? 5);
const seed = Number(process.env.READBACK_SEED ?? Date.now() % 1_000_000);
process.env.RECHECK_BACKEND ??= "pure";

test("the finder of regular expressions tells them from divisions, texts and comments", () => {
  const code =
    'const a = b / c / d; // /no/\nconst e = /[/"]x/giu; f("/no/"); return /\\/y/.test(g)';
  expect(regexesOf(code)).toEqual([
    { source: '[/"]x', flags: "giu" },
    { source: "\\/y", flags: "" },
  ]);
});

test(`no regular expression backtracks exponentially (seed ${seed})`, {
  timeout: seconds * 2000 + 60_000,
}, () => {
  const all = [
    ...new Map(
      [...regexesIn("src"), ...regexesIn("adapters")].map((one) => [
        `/${one.source}/${one.flags}`,
        one,
      ]),
    ).values(),
  ];
  const chance = chanceFrom(seed);
  const end = performance.now() + seconds * 1000;
  const finds: string[] = [];
  const counts = { checked: 0, safe: 0, polynomial: 0, undecided: 0 };
  const left = [...all];
  while (left.length > 0 && performance.now() < end) {
    const [one] = left.splice(chance.upTo(left.length), 1);
    if (one === undefined) break;
    const told = checkSync(one.source, one.flags, { timeout: 1500 });
    counts.checked++;
    if (told.status === "safe") counts.safe++;
    else if (told.status === "unknown") counts.undecided++;
    else if (told.complexity.type === "polynomial") counts.polynomial++;
    if (told.status === "vulnerable") {
      const line = `${told.complexity.summary}: ${one.file} /${one.source}/${one.flags}`;
      process.stdout.write(`${line}\n`);
      if (told.complexity.type === "exponential") finds.push(line);
    }
  }
  process.stdout.write(`regular expressions: ${JSON.stringify({ all: all.length, ...counts })}\n`);
  expect(finds).toEqual([]);
});
