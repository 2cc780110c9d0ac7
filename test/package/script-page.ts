import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { engineeringConstants, formatQuantity, laminate, ply, stiffness } from '@selvage/core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { executablePath, launch, sayWhenSkipped } from '../page/browser.js';
import type { PackedProject } from './project.js';

/** The plies of the page, for the same laminate by the library. */
const cloth = ply({ E1: 22e9, E2: 21e9, G12: 4e9, nu12: 0.12, thickness: 0.25e-3 });
const tape = ply({ E1: 130e9, E2: 9e9, G12: 4.8e9, nu12: 0.3, thickness: 0.3e-3 });

export function scriptPage({ at }: PackedProject): void {
  let server: ChildProcess | undefined;
  let address = '';

  beforeAll(async () => {
    server = spawn(process.execPath, [at('examples/scripts/serve-page.mjs')], { stdio: ['ignore', 'pipe', 'inherit'] });
    const [printed] = await once(server.stdout!, 'data');
    address = String(printed).trim();
  }, 60_000);
  afterAll(async () => {
    if (server?.kill()) await once(server, 'exit');
  });

  it('is served to this machine only, with the bundle and nothing else', async () => {
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const status = async (path: string) => (await fetch(address + path)).status;
    expect(await status('')).toBe(200);
    expect(await status('node_modules/@selvage/core/dist/browser.js')).toBe(200);
    for (const path of ['package.json', '%2e%2e/package.json', 'toString', 'page.html/../../package.json']) {
      expect(await status(path), path).toBe(404);
    }
  });

  sayWhenSkipped('tests of the page of docs/examples');
  describe.skipIf(executablePath === undefined)('in a browser', () => {
    let browser: Browser;
    let page: Page;
    const complaints: string[] = [];

    beforeAll(async () => {
      browser = await launch();
      page = await browser.newPage();
      page.on('console', (message) => complaints.push(`console: ${message.text()}`));
      page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
      page.on('request', (request) => {
        if (!request.url().startsWith(address)) complaints.push(`request: ${request.url()}`);
      });
      await page.goto(address);
    }, 60_000);
    afterAll(() => browser?.close());

    const rows = async (): Promise<Record<string, string>> =>
      Object.fromEntries(
        await page
          .locator('tr')
          .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent))),
      );

    it('computes the laminate that it opens with', async () => {
      const half = [cloth, { ...tape, angle: 45 }, { ...tape, angle: -45 }, tape];
      const plate = laminate([...half, ...half.toReversed()]);
      const { inPlane } = engineeringConstants(stiffness(plate));
      const shown = await rows();
      expect(shown.Thickness).toBe(formatQuantity(plate.thickness, 'length'));
      const moduli = [inPlane.Ex, inPlane.Ey, inPlane.Gxy].map((value) => formatQuantity(value, 'modulus'));
      expect(shown['Ex, Ey, Gxy']).toBe(moduli.join(', '));
      expect(await page.locator('#figures svg').count()).toBeGreaterThan(0);
    });

    it('computes anew at every edit, and keeps the last result while a code is not whole', async () => {
      await page.getByLabel('Orientation code').fill('[0c/90c');
      expect(await page.locator('#problem').textContent()).not.toBe('');
      expect(await page.locator('#code').getAttribute('aria-invalid')).toBe('true');
      expect((await rows()).Plies).toBe('8');
      await page.getByLabel('Orientation code').fill('[0c/90c]');
      expect(await page.locator('#problem').textContent()).toBe('');
      const { inPlane } = engineeringConstants(stiffness(laminate([tape, { ...tape, angle: 90 }])));
      const shown = await rows();
      expect(shown).toMatchObject({ Plies: '2', Symmetric: 'no, it may warp when it cools' });
      expect(shown['Ex, Ey, Gxy']).toContain(formatQuantity(inPlane.Ex, 'modulus'));
    });

    it('loads nothing from elsewhere and complains of nothing', () => {
      expect(complaints).toEqual([]);
    });
  });
}
