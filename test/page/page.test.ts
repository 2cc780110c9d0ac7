import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { render } from '../../packages/core/src/report/render/index.js';
import { sampleReport } from '../core/report/render/sample.js';
import { executablePath, launch, sayWhenSkipped } from './browser.js';
import { contrasts } from './contrast.js';

sayWhenSkipped('page tests');

/** A page that remembers everything it should not have done. */
interface Watched {
  readonly page: Page;
  readonly complaints: string[];
}

describe.skipIf(executablePath === undefined)('the report page in a browser', () => {
  let browser: Browser;
  let folder = '';
  let address = '';

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'selvage-page-'));
    const file = join(folder, 'report.html');
    writeFileSync(file, render(sampleReport(), 'html'));
    address = pathToFileURL(file).href;
    browser = await launch();
  }, 60_000);

  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(width: number, colorScheme: 'light' | 'dark'): Promise<Watched> {
    const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(`console: ${message.text()}`));
    page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
    page.on('request', (request) => {
      if (request.url() !== address) complaints.push(`request: ${request.url()}`);
    });
    await page.goto(address);
    return { page, complaints };
  }

  const views = [360, 768, 1200].flatMap((width) => (['light', 'dark'] as const).map((scheme) => ({ width, scheme })));

  it.each(views)('fits $width px in $scheme, asks for nothing and complains of nothing', async ({ width, scheme }) => {
    const { page, complaints } = await open(width, scheme);
    const wide = await page.evaluate('document.documentElement.scrollWidth');
    expect(wide).toBe(width);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it.each(['light', 'dark'] as const)('has a contrast of 4.5 or more in %s for every piece of text', async (scheme) => {
    const { page } = await open(1200, scheme);
    const found = await contrasts(page);
    expect(found.length).toBeGreaterThan(100);
    expect(found.filter(({ ratio }) => !(ratio >= 4.5))).toEqual([]);
    await page.close();
  });

  it('has different grounds in light and dark', async () => {
    const grounds: unknown[] = [];
    for (const scheme of ['light', 'dark'] as const) {
      const { page } = await open(1200, scheme);
      grounds.push(await page.evaluate('getComputedStyle(document.body).backgroundColor'));
      await page.close();
    }
    expect(grounds[0]).not.toBe(grounds[1]);
  });

  it('gives every figure, table and aside a name, and the page its landmarks', async () => {
    const { page } = await open(1200, 'light');
    const images = page.getByRole('img');
    expect(await images.count()).toBe(4);
    for (const figure of sampleReport().blocks.filter((block) => block.kind === 'figure')) {
      const image = page.getByRole('img', { name: `${figure.caption} ${figure.alt}`, exact: true });
      expect(await image.count(), figure.id).toBe(1);
    }
    expect(await page.getByRole('table', { name: 'Table 2 Moduli in the plane and in bending' }).count()).toBe(1);
    expect(await page.getByRole('note', { name: 'Notes' }).count()).toBe(1);
    expect(await page.getByRole('navigation', { name: 'Contents' }).count()).toBe(1);
    expect(await page.getByRole('main').count()).toBe(1);
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    await page.close();
  });

  it('reaches the report from the keyboard past the contents', async () => {
    const { page } = await open(1200, 'light');
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Skip to the report');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('location.hash')).toBe('#report');
    await page.close();
  });

  it('keeps the lettering of drawings inside them and off itself', async () => {
    const { page } = await open(1200, 'light');
    const faults = await page.evaluate(`[...document.querySelectorAll('svg')].flatMap((svg) => {
      const frame = svg.getBoundingClientRect();
      const boxes = [...svg.querySelectorAll('text')].map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }));
      const outside = boxes.filter(({ box }) => box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1);
      const over = boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) =>
        Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left) > 1 &&
        Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top) > 4).map((b) => a.words + ' over ' + b.words));
      return [...outside.map(({ words }) => words + ' outside'), ...over];
    })`);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('prints on A4 in light colours, without contents, nothing wider than the sheet', async () => {
    const { page, complaints } = await open(1200, 'dark');
    const paper = await page.pdf({ preferCSSPageSize: true });
    const sheets = paper.toString('latin1').match(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g) ?? [];
    expect(sheets.length).toBeGreaterThan(1);
    // A4 is 210 mm by 297 mm (ISO 216), 595.3 by 841.9 points.
    for (const sheet of sheets) {
      const [, , width = 0, height = 0] = [...sheet.matchAll(/[\d.]+/g)].map(([number]) => Number(number));
      expect(width).toBeCloseTo(595.3, -0.5);
      expect(height).toBeCloseTo(841.9, -0.5);
    }
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    // The text width of the sheet, 210 mm less its margins of 19 and 17 mm, at 96 px per inch.
    await page.setViewportSize({ width: Math.round(((210 - 36) / 25.4) * 96), height: 1000 });
    expect(await page.evaluate('getComputedStyle(document.querySelector("nav")).display')).toBe('none');
    expect(await page.evaluate('getComputedStyle(document.body).backgroundColor')).toBe('rgb(255, 255, 255)');
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
