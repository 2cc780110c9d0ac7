import { describe, expect, it } from 'vitest';
import type { FigureBlock } from '../../../../packages/core/src/report/blocks.js';
import { idsOf, readMarkup } from '../markup.js';
import { sampleReport } from '../render/sample.js';

const figuresIn = (units: 'metric' | 'us'): FigureBlock[] =>
  sampleReport(units).blocks.filter((block): block is FigureBlock => block.kind === 'figure');

describe.each(['metric', 'us'] as const)('every figure in %s units', (units) => {
  const figures = figuresIn(units);

  it('is well formed, finite and named', () => {
    expect(figures.length).toBe(4);
    for (const { svg, id } of figures) {
      const tags = readMarkup(svg);
      const root = tags[0];
      expect(root?.name).toBe('svg');
      expect(root?.attributes.role).toBe('img');
      expect(root?.attributes['aria-labelledby']).toBe(`${id}-title ${id}-desc`);
      expect(tags.find(({ name }) => name === 'title')?.text).not.toBe('');
      expect(/NaN|Infinity|undefined|[="( ]-0[") ]/.exec(svg)).toBeNull();
    }
  });

  it('has ids of its own, and refers to none but those', () => {
    for (const { svg, id } of figures) {
      const ids = idsOf(readMarkup(svg));
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.every((name) => name.startsWith(`${id}-`))).toBe(true);
      for (const [, reference = ''] of svg.matchAll(/url\(#([^)]*)\)/g)) expect(ids).toContain(reference);
    }
    const all = figures.flatMap(({ svg }) => idsOf(readMarkup(svg)));
    expect(new Set(all).size).toBe(all.length);
  });

  it('stands alone: no colour without a fallback, nothing from outside, at most 720 px wide', () => {
    for (const { svg } of figures) {
      for (const [, inside = ''] of svg.matchAll(/var\(([^)]*)\)/g))
        expect(inside).toMatch(/^--sv-[a-z]+,#[0-9a-f]{3,6}$/);
      expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|href|@import|<script/);
      expect(Number(/max-width:(\d+)px/.exec(svg)?.[1])).toBeLessThanOrEqual(720);
    }
  });

  it('is drawn in characters as well, within a terminal', () => {
    for (const { text } of figures) {
      expect(text).toBeDefined();
      for (const line of (text ?? '').split('\n')) expect([...line].length).toBeLessThanOrEqual(78);
    }
  });

  it('is the same text every time', () => {
    expect(figuresIn(units)).toEqual(figures);
  });
});
