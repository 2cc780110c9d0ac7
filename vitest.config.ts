import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['@selvage/source'] },
  ssr: { resolve: { conditions: ['@selvage/source'] } },
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/silent.ts'],
    coverage: {
      provider: 'v8',
      include: ['packages/core/src/**/*.ts'],
      reporter: ['text-summary'],
    },
    testTimeout: 30_000,
  },
});
