import { describe, expect, it } from 'vitest';
import type { Report } from '../../../../packages/core/src/report/blocks.js';
import { render } from '../../../../packages/core/src/report/render/index.js';
import { idsOf, named, readMarkup } from '../markup.js';
import { hostile, sampleReport } from './sample.js';

const html = render(sampleReport(), 'html');
const tags = readMarkup(html);
const count = (name: string, part = ''): number => named(tags, name, part).length;

describe('html', () => {
  it('is one well-formed document with every id once', () => {
    expect(html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true);
    const ids = idsOf(tags);
    expect(new Set(ids).size).toBe(ids.length);
    expect([count('main'), count('header'), count('nav'), count('h1'), count('title') > 0]).toEqual([1, 1, 1, 1, true]);
  });

  it('points every reference inside the page at something', () => {
    const ids = new Set(idsOf(tags));
    for (const { attributes } of tags) {
      for (const id of (attributes['aria-labelledby'] ?? '').split(' ').filter(Boolean)) expect(ids).toContain(id);
      if (attributes.href !== undefined) expect(ids).toContain(attributes.href.slice(1));
    }
    for (const [, id] of html.matchAll(/url\(#([^)]*)\)/g)) expect(ids).toContain(id);
  });

  it('asks nothing of a network and runs nothing', () => {
    const policy = tags.find(({ attributes }) => attributes['http-equiv'] === 'Content-Security-Policy')?.attributes
      .content;
    expect(policy).toContain("default-src 'none'; style-src 'unsafe-inline'; img-src data:");
    expect(count('script') + count('link') + count('img') + count('iframe')).toBe(0);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|@import|url\((?!#)/);
    for (const { attributes } of tags) for (const name of Object.keys(attributes)) expect(name).not.toMatch(/^on/);
  });

  it('prints hostile text as text', () => {
    expect(html).not.toContain('<script>alert');
    expect(html).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;a|b&#39;');
    const odd: Report = { title: `</style>${hostile}`, blocks: [], data: {}, units: 'metric' };
    const page = readMarkup(render(odd, 'html'));
    expect(named(page, 'script')).toEqual([]);
    expect(named(page, 'style')).toHaveLength(1);
  });

  it('lists the sections, numbers figures and tables, and captions every table', () => {
    const links = tags.filter(({ name, attributes }) => name === 'a' && attributes.href !== undefined);
    expect(
      links.filter(({ text }) => ['Edge laminate', 'Spine', 'Stitched rows', 'Sources'].includes(text)),
    ).toHaveLength(4);
    expect(count('table')).toBe(4);
    expect(count('caption')).toBe(4);
    expect(count('figure')).toBe(count('figcaption'));
    expect(html).toContain('<span class="mark">Table 4</span>');
    expect(html).toContain('<span class="mark">Figure 4</span>');
  });

  it('marks heads of columns and rows, and shows units in the head', () => {
    const heads = named(tags, 'th');
    expect(heads.every(({ attributes }) => attributes.scope === 'col' || attributes.scope === 'row')).toBe(true);
    expect(html).toContain('<th scope="col" class="number">In-plane modulus <span class="unit">GPa</span></th>');
    expect(html).toContain('<td class="number">18.19</td>');
    expect(html).toContain('<td class="number">17.9<span class="pad" aria-hidden="true">0</span></td>');
  });

  it('makes no head of an empty corner, and no name of an empty cell', () => {
    const columns = [{ label: '' }, { label: 'x' }];
    const rows = [
      ['a', '1'],
      ['', '2'],
    ];
    const blocks = [{ kind: 'table', id: 'corner', caption: 'C', columns, rows }] as const;
    const heads = named(readMarkup(render({ title: 'T', blocks, data: {}, units: 'metric' }, 'html')), 'th');
    expect(heads.map(({ attributes, text }) => [attributes.scope, text])).toEqual([
      ['col', 'x'],
      ['row', 'a'],
    ]);
  });

  it('lets the keyboard reach a drawing that scrolls on a telephone, by a name, and no other', () => {
    const block = (id: string, least: number) =>
      ({ kind: 'figure', id, caption: id, alt: '', svg: `<svg style="min-width:${least}px"></svg>` }) as const;
    const blocks = [block('wide', 400), block('small', 300)];
    const page = readMarkup(render({ title: 'T', blocks, data: {}, units: 'metric' }, 'html'));
    const boxes = named(page, 'div', 'canvas').map(({ attributes }) => [
      attributes.tabindex,
      attributes['aria-labelledby'],
    ]);
    expect(boxes).toEqual([
      ['0', 'figure-wide-caption'],
      [undefined, undefined],
    ]);
  });

  it('lets a path break after its dots, and nothing else', () => {
    const columns = [{ label: 'laminates.edge.Ex' }, { label: 'at' }];
    const blocks = [{ kind: 'table', id: 't', caption: 'C', columns, rows: [['a.b', '1.5']] }] as const;
    const page = render({ title: 'T', blocks, data: {}, units: 'metric' }, 'html');
    expect(page).toContain('laminates.<wbr>edge.<wbr>Ex</th>');
    expect(page).toContain('>a.<wbr>b</th>');
    expect(page).toContain('>1.5<');
  });

  it('sets facts as a description list with the unit apart from the number', () => {
    expect(html).toContain('<dt>Thickness</dt><dd class="value">2.677 <span class="unit">mm</span></dd>');
  });

  it('links a note to its source when the page lists it', () => {
    expect(html).toContain('<a class="source" href="#source-jones-1999">[jones-1999]</a>');
    expect(html).toContain('<span class="source">[unlisted-2001]</span>');
  });

  it('leaves out contents of a single section and empty lists', () => {
    const small = render(
      {
        title: 'T',
        blocks: [
          { kind: 'heading', level: 2, id: 'a', text: 'A' },
          { kind: 'notes', notes: [] },
          { kind: 'list', items: [] },
        ],
        data: {},
        units: 'metric',
      },
      'html',
    );
    expect(small).not.toContain('<nav');
    expect(small).not.toContain('<aside');
    expect(small).not.toContain('<ul');
  });
});
