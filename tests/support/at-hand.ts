import { test } from "vitest";

/**
 * For tests that need something outside the project (a second implementation, other people's
 * cases, an hour). Where it is missing the tests are skipped, and one line says so; where
 * READBACK_REQUIRE names it (comma separated), missing is a failure.
 */
export function atHand(name: string, present: boolean): boolean {
  const required = (process.env.READBACK_REQUIRE ?? "").split(",").includes(name);
  if (!present && required) {
    test(`${name} is at hand, as READBACK_REQUIRE asks`, () => {
      throw new Error(`READBACK_REQUIRE names ${name}, and it is not at hand`);
    });
  } else if (!present) {
    process.stderr.write(`SKIPPED: ${name} is not at hand\n`);
    test.skip(`${name} is not at hand`, () => {});
  }
  return present;
}
