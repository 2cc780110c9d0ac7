import type { Reporter, TestModule } from 'vitest/node';
import { exampleCounts } from '../packages/core/src/examples/index.js';

/** Prints, after everything else, what was compared with publications and one line with the counts of tests. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== 'pending') count[state]++;
      }
      count.failed += module.errors().length;
    }
    const { values, examples, sources } = exampleCounts();
    process.stdout.write(`compared ${values} published values of ${examples} examples from ${sources} sources\n`);
    process.stdout.write(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
