import { type Block, type Note, type Report, render, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import type { StitchLaw } from '../../../packages/core/src/design/index.js';
import { placesInRanges } from '../../../packages/core/src/report/sections/stitching/bridging.js';
import { keysOf, planResults, rows } from '../design/stitch-support.js';

const ofPlan = (...plan: Parameters<typeof planResults>): Report => report(planResults(...plan));
const plain = ofPlan();
const band =
  'pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm, length: 400 mm }, { offset: 11 mm, length: 400 mm }]';
const measured =
  'bridging: { measured: { opening: [0 mm, 0.1 mm, 0.9 mm], force: [0 N, 80 N, 0 N], failure: threadAtAnchor } }';

/** The blocks of the plan, or of a part of it. */
function section({ blocks }: Report, id = 'stitching-p'): Block[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id);
  const level = id === 'stitching-p' ? 2 : 3;
  const end = blocks.findIndex((block, i) => i > start && block.kind === 'heading' && block.level <= level);
  return start < 0 ? [] : blocks.slice(start, end);
}
const holding = (from: Report): Block[] => section(from, 'stitching-p-bridging');
const price = (from: Report): Block[] => section(from, 'stitching-p-price');
const words = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((block) => {
      if (block.kind === 'list') return block.items;
      if (block.kind === 'paragraph') return [block.text];
      if (block.kind === 'facts') return block.items.map(({ label, remark }) => `${label}: ${remark ?? ''}`);
      return [];
    })
    .join('\n');
const tableOf = (blocks: readonly Block[], id: string) => {
  const found = blocks.find((block) => block.kind === 'table' && block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found;
};
const figureOf = (blocks: readonly Block[]) => {
  const found = blocks.find((block) => block.kind === 'figure' && block.id === 'stitching-p-bridging-curve');
  if (found?.kind !== 'figure') throw new Error('no figure');
  return found;
};
const numbers = (blocks: readonly Block[], id: string): unknown[][] =>
  tableOf(blocks, id).rows.map((row) => row.map((cell) => (typeof cell === 'string' ? cell : cell.value)));
// biome-ignore lint/suspicious/noExplicitAny: a JSON document has no type
const json = (from: Report): any => JSON.parse(JSON.stringify(from.data)).stitching.p;

describe('the section of a stitch plan', () => {
  it('says first what to read for sewing, then what a stitch holds and what it costs', () => {
    const blocks = section(plain);
    expect(blocks[1]).toMatchObject({ kind: 'paragraph' });
    expect(words(blocks)).toContain('To sew, read as far as the needle and the holes');
    const headings = blocks.flatMap((block) => (block.kind === 'heading' ? [block.id] : []));
    expect(headings).toEqual([
      'stitching-p',
      'stitching-p-density',
      'stitching-p-thread',
      'stitching-p-needle',
      'stitching-p-bridging',
      'stitching-p-price',
    ]);
  });

  it('shows the numbers of the JSON document', () => {
    const { opening, sliding, across, along, toughnessAdded } = json(plain).bridging;
    const interval = ({ low, median, high }: Record<string, number>) => [low, median, high];
    expect(numbers(holding(plain), 'stitching-p-bridging-law')).toEqual([
      ['opening: peak force', opening.peakForce, ...interval(opening.peakForceInterval)],
      ['opening: peak at', opening.openingAtPeak, ...interval(opening.openingAtPeakInterval)],
      ['opening: work', opening.work, ...interval(opening.workInterval)],
      ['sliding: peak force', sliding.peakForce, ...interval(sliding.peakForceInterval)],
      ['sliding: peak at', sliding.openingAtPeak, ...interval(sliding.openingAtPeakInterval)],
      ['sliding: work', sliding.work, ...interval(sliding.workInterval)],
    ]);
    const [first, second] = numbers(holding(plain), 'stitching-p-bridging-zone');
    const lengths = ({ bridgingLength, zone, rowDistance }: typeof across) => [
      bridgingLength,
      zone.low,
      zone.high,
      zone.needed,
      rowDistance,
    ];
    expect(first?.slice(0, 6)).toEqual(['across the rows', ...lengths(across)]);
    expect(second?.slice(0, 6)).toEqual(['along the rows', ...lengths(along)]);
    const facts = holding(plain).flatMap((block) => (block.kind === 'facts' ? block.items : []));
    expect(facts[0]).toMatchObject({ label: 'Toughness the stitches add', value: { value: toughnessAdded } });
    expect(facts[0]?.remark).toContain('once the bridged zone is full');
    const { modulusFactor, tensionFactor } = json(plain).inPlane.along;
    const bounds = numbers(price(plain), 'stitching-p-price-bounds');
    expect(bounds[0]?.slice(0, 2)).toEqual(['Modulus along the rows', modulusFactor.value - 1]);
    expect(bounds[3]?.[2]).toBeCloseTo(tensionFactor.low - 1, 12);
  });

  it('draws opening and sliding with their peaks and the ranges of these, and says the same in words', () => {
    const { alt, text = '', svg } = figureOf(holding(plain));
    expect(alt).toMatch(/Marked: peak, opening at .* N\./);
    expect(alt).toMatch(/Marked: peak, sliding at/);
    expect(alt).toContain('A box holds nine in ten');
    expect(text).toContain('opening, range of its peak');
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it('says where the single values lie in their ranges, quantity by quantity', () => {
    const { opening } = json(plain).bridging;
    const place = (value: number, { median, low, high }: { median: number; low: number; high: number }): string => {
      if (value < low || value > high) return value < low ? 'below the low end of' : 'above the high end of';
      if (Math.abs(value - median) <= (high - low) / 10) return 'about the middle of';
      return `in the ${value < median ? 'lower' : 'upper'} half of`;
    };
    const places = [
      `peak force ${place(opening.peakForce, opening.peakForceInterval)} its range`,
      `opening at the peak ${place(opening.openingAtPeak, opening.openingAtPeakInterval)} its range`,
      `work ${place(opening.work, opening.workInterval)} its range`,
    ];
    const give = ': they take none of the give of bends and locks that nobody has measured';
    const low = opening.openingAtPeak < opening.openingAtPeakInterval.median;
    const expected = `the single values of opening: ${places.join(', ')}${low ? give : ''}`;
    if (places.every((words) => words.includes('about the middle')))
      expect(words(holding(plain))).not.toContain('single values of');
    else expect(words(holding(plain)).split('\n')).toContain(expected);
    expect(words(holding(ofPlan('bridging: { beddingIn: 0.3 }')))).not.toContain('take none of the give');
    const wide = { median: 2, low: 1, high: 3 };
    const law = { peak: { force: 0.5, opening: 3.5 }, work: 2.5 } as StitchLaw['law'];
    const interval = { peak: wide, opening: wide, work: wide } as StitchLaw['interval'];
    expect(placesInRanges({ law, interval } as StitchLaw, true)).toEqual([
      'the single values of opening: peak force below the low end of its range, opening at the peak above the high end of its range, work in the upper half of its range',
    ]);
    const middle = { peak: { force: 2.1, opening: 1.9 }, work: 2 } as StitchLaw['law'];
    expect(placesInRanges({ law: middle, interval } as StitchLaw, true)).toEqual([]);
  });

  it('says what gives way first, in how many of the samples', () => {
    const said = words(holding(plain));
    expect(said).toMatch(/between layers 4 and 5 \(layers counted from the tool side\)/);
    expect(said).toMatch(/opening, of the samples: the thread breaks at its lock .* in [\d.]+ %/);
    expect(words(holding(ofPlan('bridging: { underFace: none }')))).toContain(
      'opening: the thread is drawn out without breaking in all samples',
    );
    expect(words(holding(ofPlan('', keysOf(rows).replace('one', 'odd'))))).toContain('inside layer 2');
  });

  it('of rows near an edge names no toughness but the coupon that judges them', () => {
    const edge = ofPlan('', keysOf(band));
    const said = words(holding(edge));
    expect(said).toContain('rows near an edge are judged one by one');
    expect(said).toContain('a coupon of type wedge');
    expect(said).not.toContain('Toughness the stitches add');
    expect(tableOf(holding(edge), 'stitching-p-bridging-zone').rows).toHaveLength(1);
    expect(words(holding(plain))).not.toContain('wedge');
  });

  it('with a measured curve shows it beside the computed one', () => {
    const blocks = holding(ofPlan(measured));
    const names = tableOf(blocks, 'stitching-p-bridging-law').rows.map(([name]) => name);
    expect(names).toContain('opening, measured: work');
    expect(names).toContain('opening, computed: work');
    expect(words(blocks)).toContain('opening, as measured: the thread breaks at its lock');
    expect(figureOf(blocks).text).toContain('opening, measured');
  });

  it('warns where the arms break before the stitches show what they add', () => {
    const many = keysOf('pattern: parallel, pitch: 2 mm, rowSpacing: 2 mm');
    const strong = 'bridging: { beddingIn: 5 }';
    const report = ofPlan(strong, many);
    const { across, along, toughnessAdded } = json(report).bridging;
    expect(toughnessAdded).toBeGreaterThan(Math.min(across.ceiling, along.ceiling));
    expect(words(holding(report))).toContain('THE HALVES OF THE LAMINATE BREAK FIRST');
    expect(
      words(holding(ofPlan(measured, keysOf('pattern: parallel, pitch: 40 mm, rowSpacing: 50 mm')))),
    ).not.toContain('BREAK FIRST');
  });

  it('names what is wanting, and has the rest', () => {
    const thin = ofPlan('', `laminate: one, thread: plain, stitchType: running, dryThickness: 2 mm, ${rows}`);
    expect(words(holding(thin))).toContain(
      'not computed: it needs the tenacity of thread plain, the modulus of thread plain',
    );
    expect(holding(thin).some(({ kind }) => kind === 'figure')).toBe(false);
    expect(words(price(thin))).toContain('estimated in part: the rest needs fibres within 15 degrees of y');
    const bare = ofPlan(measured, `thread: plain, stitchType: running, dryThickness: 2 mm, ${rows}`);
    expect(words(holding(bare))).toContain('computed in part: the rest needs the laminate');
    expect(figureOf(holding(bare)).alt).toContain(
      'The drawing stops beyond the peaks: opening, measured ends at 0.9 mm.',
    );
    expect(words(price(bare))).toContain('not estimated: it needs the laminate');
  });

  it('says that studies disagree, with the spread and where it is printed', () => {
    expect(words(price(plain))).toContain('studies in print disagree even in sign, from -45 to +20 %');
    const bounds = tableOf(price(ofPlan('', keysOf(rows).replace('one', 'skin'))), 'stitching-p-price-bounds');
    const print = (label: string): unknown => bounds.rows.find(([name]) => String(name).startsWith(label))?.at(-1);
    expect(print('Modulus along')).toMatch(/^-36 to \+20 % \(.*mechakra-2021/);
    expect(print('Tension strength across')).toMatch(/^-45 to \+20 %/);
    expect(print('Compression strength along')).toMatch(/^-20 to \+20 % \(.*reeder-1995/);
    expect(print('Bending across')).toMatch(/mechakra-2021/);
    expect(print('Interlaminar')).toMatch(/^-20 to \+15 %/);
    expect(words(price(plain))).not.toContain('closed tool');
  });

  it.each([
    ['plain', plain],
    ['edge band', ofPlan('', keysOf(band))],
    ['measured', ofPlan(measured)],
  ])('carries every note and every source to the reader: %s', (_, whole) => {
    const { bridging, inPlane } = json(whole);
    const shown = section(whole).flatMap((block) =>
      block.kind === 'notes' ? block.notes.map(({ text }) => text) : [],
    );
    const notes: Note[] = [...bridging.notes, ...inPlane.notes];
    for (const { text } of notes) expect(shown).toContain(text);
    expect(new Set(shown).size).toBe(shown.length);
    const listed = whole.blocks.flatMap((block) =>
      block.kind === 'sources' ? block.entries.map(({ key }) => key) : [],
    );
    const keys: string[] = [...bridging.sources, ...inPlane.sources, ...notes.flatMap(({ source }) => source ?? [])];
    for (const key of keys) expect(listed).toContain(key);
    const ids = whole.blocks.flatMap((block) => ('id' in block ? [`${block.kind} ${block.id}`] : []));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is written in every format and either system of units, on 80 columns', () => {
    for (const format of ['text', 'markdown', 'html', 'csv', 'json'] as const) {
      for (const units of ['metric', 'us'] as const) {
        expect(render(plain, format, { units })).not.toMatch(/\bNaN\b|Infinity|undefined|\[object/);
      }
    }
    for (const line of render(plain, 'text', { width: 80 }).split('\n'))
      expect([...line].length).toBeLessThanOrEqual(80);
    expect(render(plain, 'text', { units: 'us' })).toMatch(/opening: peak force +[\d.]+ lbf/);
    expect(render(plain, 'text', { units: 'us' })).toMatch(/opening: work +[\d.]+ in·lbf/);
  });
});
