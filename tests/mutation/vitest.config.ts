import { defineConfig } from "vitest/config";

/** The tests that are tried against mutants; run.mjs names them. */
export default defineConfig({
  test: {
    include: JSON.parse(process.env.READBACK_MUTATION_TESTS ?? "[]"),
    environment: "node",
    testTimeout: 60_000,
  },
});
