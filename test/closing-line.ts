import type { Reporter, TestModule } from 'vitest/node';
import { exampleCounts } from '../packages/core/src/examples/index.js';

const publishedChecks = 'test/published/laminates.test.ts';

function published(): string {
  const { values, within, banded, dropped, examples, sources } = exampleCounts();
  return `published values compared: ${values}, within tolerance: ${within}, within the band of a simpler theory: ${banded.within}, recalled but not following and not counted: ${dropped}, from ${examples} examples of ${sources} sources\n`;
}

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
    if (modules.some(({ moduleId }) => moduleId.endsWith(publishedChecks))) process.stdout.write(published());
    process.stdout.write(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
