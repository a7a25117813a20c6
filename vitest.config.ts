import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    environment: "node",
    pool: "forks",
    testTimeout: 60_000,
    reporters: ["default", "./tests/support/closing-line.ts"],
  },
});
