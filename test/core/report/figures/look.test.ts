import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  colourNames,
  dashes,
  dyes,
  fibreDye,
  leastLettering,
  lettering,
  mostSeries,
  palette,
  printed,
  seriesLook,
} from '../../../../packages/core/src/report/figures/look/index.js';
import { apart, contrast, deficiencies, greyOf, lightOf, oklab, sights } from './sight.js';

describe('how colours are seen', () => {
  it('gives black on white the contrast of 21 to 1, and the grey of 4.5 its place', () => {
    expect(contrast('#000', '#fff')).toBeCloseTo(21, 10);
    // Two neighbouring greys on either side of 4.5, known from the practice of accessible pages.
    expect(contrast('#767676', '#fff')).toBeGreaterThan(4.5);
    expect(contrast('#777777', '#fff')).toBeLessThan(4.5);
  });

  it('puts white at lightness 1 without hue, and red where the published table of OKLab does', () => {
    const [L, a, b] = oklab(lightOf('#ffffff'));
    expect(L).toBeCloseTo(1, 6);
    expect(Math.hypot(a, b)).toBeLessThan(1e-6);
    // sRGB red in OKLab, recalled from CSS Color 4: 0.62796, 0.22486, 0.12585.
    const red = oklab(lightOf('#ff0000'));
    [0.62796, 0.22486, 0.12585].forEach((value, i) => {
      expect(red[i]).toBeCloseTo(value, 4);
    });
  });

  it('leaves greys as they are whatever sight lacks, and brings together what it confuses', () => {
    for (const matrix of Object.values(deficiencies)) {
      for (const row of matrix) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
    }
    const [red, green] = [lightOf('#b03030'), lightOf('#4a7a20')];
    const [blue, teal] = [lightOf('#2060a0'), lightOf('#107070')];
    const seen = (name: string, one: typeof red, other: typeof red): number =>
      apart(sights[name]!(one), sights[name]!(other)) / apart(one, other);
    expect(seen('deuteranopia', red, green)).toBeLessThan(0.6);
    expect(seen('protanopia', red, green)).toBeLessThan(0.6);
    expect(seen('tritanopia', blue, teal)).toBeLessThan(0.6);
  });
});

describe.each(['light', 'dark'] as const)('the palette, %s', (theme) => {
  const grounds = ['paper', 'cloth'] as const;
  const on = (name: keyof typeof palette): number[] => [
    ...grounds.map((ground) => contrast(palette[name][theme], palette[ground][theme])),
    ...(theme === 'light' ? Object.values(printed).map((ground) => contrast(palette[name].light, ground)) : []),
  ];

  it('writes with a contrast of 4.5 or more on both grounds, on paper as well', () => {
    for (const name of ['ink', 'muted', 'indigo', 'madder'] as const) {
      for (const ratio of on(name)) expect(ratio, name).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('draws with a contrast of 3 or more on both grounds, on paper as well', () => {
    for (const dye of dyes) for (const ratio of on(dye)) expect(ratio, dye).toBeGreaterThanOrEqual(3);
  });

  it.each(Object.keys(sights))('tells every two dyes apart with %s', (sight) => {
    const seen = dyes.map((dye) => sights[sight]!(lightOf(palette[dye][theme])));
    seen.forEach((one, i) => {
      // Six times what is just seen side by side: lines stand apart, and are thin.
      for (const other of seen.slice(i + 1)) expect(apart(one, other)).toBeGreaterThan(0.12);
    });
  });

  it('has six steps of grey', () => {
    const steps = dyes.map((dye) => oklab(greyOf(lightOf(palette[dye][theme])))[0]).sort((a, b) => a - b);
    steps.slice(1).forEach((step, i) => {
      expect(step - steps[i]!).toBeGreaterThan(0.05);
    });
  });
});

describe('the language of drawings', () => {
  it('tells series apart three times over: by dye, by dashes and by sign', () => {
    const looks = Array.from({ length: mostSeries }, (_, i) => seriesLook(i));
    expect(mostSeries).toBe(dyes.length);
    for (const pick of ['dye', 'dash', 'sign', 'character'] as const) {
      expect(new Set(looks.map((look) => look[pick])).size).toBe(mostSeries);
    }
    expect(new Set(Object.values(dashes)).size).toBe(Object.keys(dashes).length);
  });

  it('gives fibres along, across and leaning either way a dye each', () => {
    expect(new Set([0, 90, 45, -45].map(fibreDye)).size).toBe(4);
    expect(fibreDye(30)).toBe(fibreDye(60));
  });

  const figures = new URL('../../../../packages/core/src/report/figures/', import.meta.url);
  const sources = readdirSync(figures)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ name, text: readFileSync(new URL(name, figures), 'utf8') }));

  it('is spoken by every drawing: no colour, size of letters, width or dash of a stroke stands in its source', () => {
    expect(sources.length).toBeGreaterThan(30);
    const literal =
      /#[0-9a-fA-F]{3,8}\b(?!;)|rgba?\(|hsla?\(|font-size|stroke-width|dasharray|opacity|style: '|(?:fill|stroke): '/;
    const found = sources.flatMap(({ name, text }) =>
      text.split('\n').flatMap((row) => (literal.test(row) ? [`${name}: ${row.trim()}`] : [])),
    );
    // Of a pattern, by its id.
    expect(found.filter((row) => !row.includes('fill: `url('))).toEqual([]);
  });

  it('is spoken by the page as well: its style takes every colour from the palette', () => {
    const style = readFileSync(new URL('../render/html-style.ts', figures), 'utf8');
    expect(style).toContain('customProperties');
    expect(style.match(/#[0-9a-fA-F]{3,8}\b|rgba?\(|hsla?\(|var\(--/g)).toBeNull();
  });

  it('is told to contributors as it is', () => {
    const guide = readFileSync(new URL('../../../../docs/guide/figures.md', import.meta.url), 'utf8');
    for (const dye of dyes) {
      expect(guide).toMatch(new RegExp(`\\| ${dye} +\\| \`${palette[dye].light}\` \\| \`${palette[dye].dark}\` \\|`));
    }
    expect(guide).toContain(`${lettering} px`);
    expect(guide).toContain(`${leastLettering} px`);
  });

  it('defines every colour of a drawing in the palette, and none of it twice', () => {
    const shades = colourNames.flatMap((name) => [palette[name].light, palette[name].dark]);
    expect(new Set(shades).size).toBe(shades.length);
    for (const shade of shades) expect(shade).toMatch(/^#[0-9a-f]{6}$/);
  });
});
