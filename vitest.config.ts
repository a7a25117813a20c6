import { defineConfig } from "vitest/config";

/** Suites that hold a time against a bound: they run after the others, one at a time. */
const timed = ["tests/serve-speed.test.ts", "tests/judge-entry.test.ts"];

export default defineConfig({
  test: {
    environment: "node",
    pool: "forks",
    // by itself it leaves one processor free: of two, half
    maxWorkers: "100%",
    testTimeout: 120_000,
    reporters: ["default", "./tests/support/closing-line.ts"],
    projects: [
      {
        extends: true,
        test: { name: "all", include: ["tests/**/*.test.ts"], exclude: timed },
      },
      {
        extends: true,
        test: {
          name: "timed",
          include: timed,
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
