import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with one plain line, `N passed, N failed`, that people and machines read alike. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== "pending") count[state] += 1;
      }
      // A file that breaks before its tests are collected has failed, too.
      if (!module.ok() && module.children.size === 0) count.failed += 1;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : "";
    console.log(`\n${count.passed} passed, ${count.failed} failed${skipped}`);
  }
}
