import type { Reporter, TestModule } from "vitest/node";

/** Ends every run with one line that a machine can read: "N passed, N failed[, N skipped]". */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      if (module.errors().length > 0) count.failed += 1;
      for (const test of module.children.allTests()) count[test.result().state] += 1;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : "";
    // after the default reporter's own summary, which it prints in the same event
    process.once("exit", () => {
      process.stdout.write(
        `${count.passed} passed, ${count.failed + count.pending} failed${skipped}\n`,
      );
    });
  }
}
