import fc from 'fast-check';
import { afterEach, beforeEach, expect, vi } from 'vitest';

/** The same random cases in every run; another seed by FC_SEED. A failure prints seed and path. */
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 640) });

/** The core never writes to the console: any call during a test is a failure. */
const methods = ['log', 'info', 'warn', 'error', 'debug'] as const;

beforeEach(() => {
  for (const method of methods) vi.spyOn(console, method);
});

afterEach(() => {
  for (const method of methods) {
    // biome-ignore lint/suspicious/noConsole: this is what is watched
    const spy = vi.mocked(console[method]);
    expect(spy.mock.calls, `console.${method} was called`).toEqual([]);
    spy.mockRestore();
  }
});
