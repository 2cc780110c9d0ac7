import { defineConfig } from 'vitest/config';

const conditions = ['@selvage/source'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/silent.ts'],
    reporters: ['default', './test/closing-line.ts'],
    coverage: {
      provider: 'v8',
      include: ['packages/core/src/**/*.ts'],
      reporter: ['text-summary'],
      thresholds: { lines: 95 },
    },
    // Tests share nothing that changes; loading the libraries once per worker, not once per file, saves most of the time.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
