import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** A Chromium of this machine; undefined without one. */
export const executablePath = places.find((path) => path !== undefined && path !== '' && existsSync(path));

/** Says on standard error that tests are left out for want of a browser. */
export function sayWhenSkipped(tests: string): void {
  if (executablePath !== undefined) return;
  process.stderr.write(`${tests} skipped: no Chromium found; set CHROMIUM to the path of one\n`);
}

const quiet = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: executablePath ?? '', args: quiet });
