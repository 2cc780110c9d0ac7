import { afterEach, beforeEach, expect, vi } from 'vitest';

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
