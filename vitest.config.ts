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
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
