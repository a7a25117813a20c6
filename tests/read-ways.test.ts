import { expect, test } from "vitest";
import type { Reading } from "../src/model.ts";
import { follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { randomFrom } from "./support/random.ts";
import { type SaidWay, saidWays, type Wanted } from "./support/ways.ts";

/** Draws of all ways; the share that may be read otherwise than meant, and silently so. */
const DRAWS = 8;
const MOST_OTHERWISE = 0.02;
const MOST_SILENT = 0.01;

function near(got: unknown, want: number): boolean {
  return typeof got === "number" && Math.abs(got - want) <= 1e-6 * Math.abs(want) + 1e-9;
}

function fits(got: Reading, want: Wanted): boolean {
  const { name } = want;
  return (
    got.quantity === want.quantity &&
    got.relation === want.relation &&
    near(got.value, want.value) &&
    got.rating === undefined &&
    (name?.at === undefined || got.at === name.at) &&
    (name?.subject === undefined || got.subject === name.subject) &&
    (name?.points === undefined || name.points.every((point) => got.points?.includes(point))) &&
    (want.corrects === undefined || got.corrects === true)
  );
}

/** What is read otherwise than it was meant; "silently" where a reading is left over and nothing asked. */
function otherwise({ before, text, want }: SaidWay): "no" | "yes" | "silently" {
  let context = startContext("us", undefined);
  for (const earlier of before) context = follow(context, read(earlier, context));
  const { readings, ask } = read(text, context);
  const left = [...readings];
  let missed = 0;
  for (const one of want) {
    const at = left.findIndex((got) => fits(got, one));
    if (at < 0) missed++;
    else left.splice(at, 1);
  }
  if (missed === 0 && left.length === 0 && ask.length === 0) return "no";
  return left.length > 0 && ask.length === 0 ? "silently" : "yes";
}

test("each kind of reading is read in each way of attaching it", () => {
  const seed = Number(process.env.READBACK_SEED ?? 20);
  const random = randomFrom(seed);
  const said = Array.from({ length: DRAWS }, () => saidWays(random)).flat();
  const wrong = said
    .map((one) => ({ ...one, how: otherwise(one) }))
    .filter(({ how }) => how !== "no");
  const silent = wrong.filter(({ how }) => how === "silently");
  console.info(
    [
      `seed ${seed}: ${said.length} notes, ${wrong.length} otherwise than meant, ${silent.length} of them silently`,
      ...wrong.map(
        ({ way, before, text, how }) => `  ${way} (${how}): ${[...before, text].join(" | ")}`,
      ),
    ].join("\n"),
  );
  expect(wrong.length / said.length).toBeLessThanOrEqual(MOST_OTHERWISE);
  expect(silent.length / said.length).toBeLessThanOrEqual(MOST_SILENT);
});
