import { expect, test } from "vitest";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";

/** What the note says the refrigerant is; undefined where it names none. */
function gasOf(text: string): string | undefined {
  return read(text, startContext("us")).statements.flatMap((one) =>
    one.kind === "nameplate" && one.field === "refrigerant" ? [String(one.value)] : [],
  )[0];
}

// designations: ANSI/ASHRAE Standard 34, from memory; how they are said aloud: common practice, no source
test.each([
  ["weighed in three pounds six ounces four oh four a cylinder 14", "R-404A"],
  ["charged five pounds four ten a", "R-410A"],
  ["added two pounds r four five four b", "R-454B"],
  ["r four oh seven c unit", "R-407C"],
  ["r one thirty four a", "R-134a"],
  ["r 404 a system low", "R-404A"],
  ["r twenty two system", "R-22"],
  ["charge 12 lb r32", "R-32"],
])("%s: %s", (text, gas) => {
  expect(gasOf(text)).toBe(gas);
});

test("amps are no gas", () => {
  expect(gasOf("started and pulls four oh four a on l1")).toBeUndefined();
});
