import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { colourNames, lettering, palette, strokes } from '../../packages/core/src/report/figures/look/index.js';
import { executablePath, launch, sayWhenSkipped } from './browser.js';
import { contrasts } from './contrast.js';
import { designNames, designPage, studyPages } from './pages.js';

sayWhenSkipped('accessibility tests');

const views = [380, 1000].flatMap((width) => (['light', 'dark'] as const).map((scheme) => ({ width, scheme })));

interface Found {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly html: string }[];
}

/** These are seen in all four views; of the others each in one, the views going round. */
const allViews = ['shingle-640-three-rows', 'comparison', 'sweep over two inputs', 'threads'];
const names = [...designNames, ...Object.keys(studyPages)];
const pages = names.map((name, i) => ({
  name,
  seen: views.filter((_, k) => allViews.includes(name) || k === i % views.length),
}));

/** Contrast is measured below, in drawings too, which axe leaves out, and in a fraction of its time. */
const options = { resultTypes: ['violations'], selectors: false, rules: { 'color-contrast': { enabled: false } } };

// The text of an A4 sheet: 210 mm by 297 mm less its margins, at 96 px per inch.
const sheet = {
  width: Math.floor(((210 - 19 - 17) / 25.4) * 96),
  height: Math.floor(((297 - 19 - 18) / 25.4) * 96),
};

describe.skipIf(executablePath === undefined)('a page', () => {
  let browser: Browser;

  beforeAll(async () => {
    browser = await launch();
  }, 60_000);

  afterAll(async () => {
    await browser?.close();
  });

  describe.each(pages)('of $name', ({ name, seen }) => {
    let page: Page;

    beforeAll(async () => {
      page = await browser.newPage({ bypassCSP: true });
      await page.setContent(studyPages[name]?.() ?? designPage(name));
      await page.evaluate(axe.source);
    }, 60_000);

    afterAll(async () => {
      await page?.close();
    });

    it.each(seen)('breaks no rule of axe at $width px, $scheme', async ({ width, scheme }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ media: 'screen', colorScheme: scheme });
      const found = (await page.evaluate(`axe.run(document, ${JSON.stringify(options)})`)) as { violations: Found[] };
      const told = found.violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html.slice(0, 120)}`);
      expect(told).toEqual([]);
    });

    it.each(['light', 'dark'] as const)(
      'has a contrast of 4.5 or more for every piece of text, %s',
      async (colorScheme) => {
        await page.setViewportSize({ width: 1000, height: 900 });
        await page.emulateMedia({ media: 'screen', colorScheme });
        const found = await contrasts(page);
        expect(found.length).toBeGreaterThan(10);
        expect(found.filter(({ ratio }) => !(ratio >= 4.5))).toEqual([]);
      },
    );

    it('is no wider than a telephone, and shows no letter of a drawing below 9 px there', async () => {
      await page.setViewportSize({ width: 380, height: 900 });
      await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(380);
      expect(Math.min(9, ...(await effectiveLetters(page)))).toBe(9);
    });

    it('prints white, nothing wider than A4 or cut by its end, letters of drawings at 7 pt or more', async () => {
      await page.setViewportSize(sheet);
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      expect(await page.evaluate('getComputedStyle(document.body).backgroundColor')).toBe('rgb(255, 255, 255)');
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(sheet.width);
      const tooLarge = await page.evaluate(`[...document.querySelectorAll('figure, .table, .table.long tr')]
        .filter((box) => box.scrollWidth > box.clientWidth + 1 && box.tagName !== 'TR' ||
          !box.classList.contains('long') && box.offsetHeight > ${sheet.height})
        .map((box) => box.id || box.textContent)`);
      expect(tooLarge).toEqual([]);
      // A point is 1/72 of an inch, a pixel 1/96.
      const points = (await effectiveLetters(page)).map((px) => (px * 72) / 96);
      expect(Math.min(7, ...points)).toBe(7);
    });

    it('draws in the colours of its theme alone, every letter of one size, every stroke of a width that is named', async () => {
      for (const theme of ['light', 'dark'] as const) {
        await page.emulateMedia({ media: 'screen', colorScheme: theme });
        const used = (await page.evaluate(drawnWith)) as { colours: string[]; letters: string[]; widths: string[] };
        const known = colourNames.map((colour) => rgb(palette[colour][theme]));
        expect(used.colours.filter((colour) => !known.includes(colour))).toEqual([]);
        expect(used.letters.filter((size) => size !== `${lettering}px`)).toEqual([]);
        const widths: readonly number[] = Object.values(strokes);
        expect(used.widths.filter((width) => !widths.includes(Number.parseFloat(width)))).toEqual([]);
      }
    });
  });
});

const rgb = (hex: string): string =>
  `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(', ')})`;

/** Runs in the page: what is filled, stroked and written in its drawings. */
const drawnWith = `(() => {
  const colours = new Set(), letters = new Set(), widths = new Set();
  for (const shape of document.querySelectorAll('svg :is(path, line, rect, circle, text, tspan)')) {
    if (shape.closest('clipPath')) continue;
    const style = getComputedStyle(shape);
    const text = shape.matches('text, tspan');
    if (style.fill !== 'none' && !style.fill.startsWith('url(') && !shape.matches('line')) colours.add(style.fill);
    if (style.stroke !== 'none') { colours.add(style.stroke); widths.add(style.strokeWidth); }
    if (text) letters.add(style.fontSize);
  }
  return { colours: [...colours], letters: [...letters], widths: [...widths] };
})()`;

/** Size of every piece of lettering in drawings as it is shown, px: as set, times how much its drawing is reduced. */
async function effectiveLetters(page: Page): Promise<number[]> {
  return (await page.evaluate(`[...document.querySelectorAll('svg text')].map((text) =>
    parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a)`)) as number[];
}
