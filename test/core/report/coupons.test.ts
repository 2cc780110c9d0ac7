import { render, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { couponNotes } from '../../../packages/core/src/design/index.js';
import { couponsTable } from '../../../packages/core/src/report/sections/coupons/glance.js';
import { couponSection } from '../../../packages/core/src/report/sections/coupons/section.js';
import { changed, named, reportOf, results, section, sharesOf, tableOf, wordsOf } from './coupon-support.js';
import { outside, overlaps } from './text-boxes.js';

const metric = reportOf();
const us = reportOf('us');
const ofCoupon = (name: string) => section(metric, `coupon-${name}`);
const ids = (name: string): string[] => ofCoupon(name).flatMap((block) => ('id' in block ? [block.id] : []));

const glance = (all = results.coupons) => tableOf(couponsTable({ coupons: all }), 'coupons');
/** A cell of the table at a glance by the label of its column. */
function cell(name: string, label: string, all = results.coupons): unknown {
  const { columns, rows } = glance(all);
  const value = rows.find(([first]) => first === name)?.[columns.findIndex((column) => column.label === label)];
  return typeof value === 'object' ? value.value : value;
}

describe('coupons at a glance', () => {
  it('stand in the order of the file, each with its plan, arms and what gives way first in words', () => {
    expect(glance().rows.map(([name]) => name)).toEqual(results.coupons.map(({ model }) => model.name));
    expect(cell('open', 'Stitch plan')).toBe('seam');
    expect(cell('bare', 'Stitch plan')).toBe('none');
    expect(cell('bare', 'Gives way')).toBe('bond');
    const verdict = { first: 'arm', load: 50, next: 'threadAtAnchor', margin: 1.25 } as const;
    const arm = changed(named('open'), { verdict, shares: sharesOf({ arm: 0.94, threadAtCrack: 0.06 }) });
    expect(cell('open', 'Gives way', [arm])).toBe('arm (plies)');
    expect([cell('open', 'Share', [arm]), cell('open', 'Margin', [arm])]).toEqual(['94 %', 1.25]);
    const lock = changed(named('open'), {
      verdict: { first: 'threadAtAnchor', load: 50 },
      shares: sharesOf({ threadAtAnchor: 1 }),
    });
    expect(cell('open', 'Gives way', [lock])).toBe('thread at lock');
    expect(cell('open', 'Margin', [lock])).toBe('–');
  });

  it('tell what limits the majority of the samples, without the margin of middle values that say something else', () => {
    const verdict = { first: 'threadAtCrack', load: 50, next: 'arm', margin: 1.25 } as const;
    const one = changed(named('open'), { verdict, shares: sharesOf({ arm: 0.94, threadAtCrack: 0.06 }) });
    expect(['Gives way', 'Share', 'Margin'].map((label) => cell('open', label, [one]))).toEqual([
      'arm (plies)',
      '94 %',
      '–',
    ]);
  });

  it('mark a split without end, and say what the force of a wedge is', () => {
    const one = named('wedged');
    const { specimen } = one.model.coupon;
    const depth = specimen.kind === 'wedge' ? specimen.depth : 0;
    const through = changed(one, { splitLength: { median: depth, low: 0.02, high: depth, nominal: depth } });
    expect(['Split stops at', 'split from', 'split to'].map((label) => cell('wedged', label, [through]))).toEqual([
      'runs through',
      0.02,
      'runs through',
    ]);
    const { rows, caption } = tableOf(couponSection(through, 'metric'), 'coupon-wedged-predictions');
    expect(rows[0]).toMatchObject(['Split stops at', 'runs through', { value: 0.02 }, 'runs through', 'runs through']);
    expect(caption).toContain('the force of a wedge is the one that holds the mouth open');
    expect(glance().caption).toContain('peak force of a wedged edge: the force that holds its mouth');
  });

  it('give median and range of what was foretold', () => {
    const { peakForce, toughness } = named('open').prediction;
    expect([cell('open', 'Peak force'), cell('open', 'force from'), cell('open', 'force to')]).toEqual([
      peakForce.median,
      peakForce.low,
      peakForce.high,
    ]);
    expect(cell('open', 'Toughness')).toBe(toughness?.specimen.median);
    expect(cell('wedged', 'Toughness')).toBe('–');
    expect(cell('wedged', 'Split stops at')).toBe(named('wedged').prediction.splitLength?.median);
  });

  it('give the gain over the unstitched coupon of the same type and arms, and none where the design has no such', () => {
    const [open, bare] = [named('open'), named('bare')].map(
      ({ prediction }) => prediction.toughness?.specimen.median ?? 0,
    );
    expect(cell('open', 'Gain')).toBeCloseTo((open ?? 0) / (bare ?? 1), 12);
    const [wedged, plain] = [named('wedged'), named('bare-edge')].map(
      ({ prediction }) => prediction.splitLength?.median ?? 0,
    );
    expect(cell('wedged', 'Gain')).toBeCloseTo((plain ?? 0) / (wedged ?? 1), 12);
    for (const name of ['bare', 'slide', 'peeled']) expect(cell(name, 'Gain')).toBe('–');
  });

  it('say why there is no steady value', () => {
    const without = (needed: number) => {
      const one = named('open');
      const { specimen } = one.prediction.toughness ?? {};
      return changed(one, {
        ...(specimen === undefined ? {} : { toughness: { specimen } }),
        zone: { computed: 0.01, low: 0.01, high: 0.02, needed },
      });
    };
    expect(cell('open', 'Steady toughness', [without(1)])).toBe('none: too short');
    expect(cell('open', 'Steady toughness', [without(0.001)])).toBe('none: see notes');
  });

  it('are absent from a design without coupons', () => {
    expect(couponsTable({ coupons: [] })).toEqual([]);
  });
});

it('targets on what is foretold say that they are judged by the middle values, with the median', () => {
  const quantity = 'coupons.bare.simulated.peakForce';
  const target = { quantity, kind: 'force' as const, value: 50, atLeast: 40, hard: true, met: true, margin: 10 };
  const overview = (median?: number) => {
    const targets = [median === undefined ? target : { ...target, median }];
    return section(report({ ...results, targets }), 'at-a-glance');
  };
  expect(wordsOf(overview(51.234))).toContain(`${quantity}: middle values; median 51.2 N`);
  expect(tableOf(overview(51.234), 'targets').caption).toContain('judged by its middle values');
  expect(wordsOf(overview())).not.toContain('middle values;');
  expect(tableOf(overview(), 'targets').caption).not.toContain('middle values');
});

it('the arms reach their strain at the tip; it is no bound, and sliding is called so', () => {
  const words = reportOf()
    .blocks.map((block) => wordsOf([block]))
    .join('\n');
  expect(words).toContain('Arms reach their breaking strain at the crack tip at:');
  expect(words).toContain('a reading may pass it somewhat, since the sharpest bend lies at a row behind the tip');
  expect(words).not.toMatch(/most that the arms|whatever the stitches/i);
  expect(wordsOf(ofCoupon('slide'))).toContain('Sliding at that force:');
  expect(wordsOf(ofCoupon('open'))).toContain('Opening at that force:');
});

describe('the section of a coupon', () => {
  it('goes from the verdict to drawing, record, resistance, stitch, advice, checks and notes', () => {
    expect(ids('open')).toEqual([
      'coupon-open',
      'coupon-open-predictions',
      'coupon-open-drawing',
      'coupon-open-record',
      'coupon-open-events',
      'coupon-open-resistance',
      'coupon-open-law',
      'coupon-open-advice',
      'coupon-open-changes',
      'coupon-open-density',
      'coupon-open-checks',
    ]);
    expect(ids('wedged')).toEqual([
      'coupon-wedged',
      'coupon-wedged-predictions',
      'coupon-wedged-drawing',
      'coupon-wedged-law',
      'coupon-wedged-checks',
    ]);
    expect(ids('bare')).not.toContain('coupon-bare-law');
    expect(ofCoupon('open').at(-1)?.kind).toBe('notes');
  });

  it('repeats no id in the whole report', () => {
    for (const kind of ['heading', 'table', 'figure']) {
      const all = metric.blocks.flatMap((block) => (block.kind === kind && 'id' in block ? [block.id] : []));
      expect(new Set(all).size).toBe(all.length);
    }
  });

  it('gives median, range and single value of everything foretold', () => {
    const { rows } = tableOf(ofCoupon('open'), 'coupon-open-predictions');
    const numbers = (label: string) =>
      rows
        .find(([first]) => first === label)
        ?.slice(1)
        .map((one) => (typeof one === 'object' ? one.value : one));
    const { peakForce: force, toughness } = named('open').prediction;
    expect(numbers('Peak force')).toEqual([force.median, force.low, force.high, force.nominal]);
    const steady = toughness?.steady;
    expect(numbers('Steady toughness, zone in full')).toEqual(
      steady === undefined
        ? [expect.stringMatching(/^none/), '–', '–', '–']
        : [steady.median, steady.low, steady.high, steady.nominal],
    );
  });

  it('says every note of every part once, and assumptions of earlier coupons not again', () => {
    const notes = (blocks: readonly (typeof metric.blocks)[number][]) =>
      blocks.flatMap((block) => (block.kind === 'notes' ? block.notes.map(({ text }) => text) : []));
    const said = new Set(
      notes(results.coupons.flatMap((one, i) => couponSection(one, 'metric', results.coupons.slice(0, i)))),
    );
    for (const one of results.coupons) {
      const { result, wedge, law, bridging } = one.prediction;
      for (const { text } of [
        couponNotes(one),
        ...[result, wedge, law, bridging].map((part) => part?.notes ?? []),
      ].flat())
        expect(said).toContain(text);
    }
    const later = ofCoupon('peeled');
    const assumptions = later
      .flatMap((block) => (block.kind === 'notes' ? block.notes : []))
      .filter(({ level }) => level === 'assumption');
    const before = new Set(notes(ofCoupon('open')));
    expect(assumptions.filter(({ text }) => before.has(text))).toEqual([]);
    expect(wordsOf(later)).toContain('Assumptions that stand with an earlier coupon hold here too.');
    expect(wordsOf(ofCoupon('open'))).not.toContain('earlier coupon');
  });

  it('lists the warnings of coupons at a glance, and their sources', () => {
    const warnings = section(metric, 'at-a-glance').flatMap((block) => (block.kind === 'notes' ? block.notes : []));
    for (const one of results.coupons)
      for (const { level, text } of couponNotes(one))
        if (level === 'warning')
          expect(warnings.some((note) => note.text.includes(text) && note.text.includes(one.model.name))).toBe(true);
    const listed = metric.blocks.flatMap((block) =>
      block.kind === 'sources' ? block.entries.map(({ key }) => key) : [],
    );
    for (const { prediction } of results.coupons) for (const key of prediction.sources) expect(listed).toContain(key);
  });

  it('keeps the note of the design, and cautions of testing in the one block of cautions', () => {
    expect(wordsOf(ofCoupon('peeled'))).toContain('peeled by hand');
    const cautions = metric.blocks.filter((block) => block.kind === 'caution');
    expect(cautions).toHaveLength(1);
    const items = cautions.flatMap((block) => (block.kind === 'caution' ? block.items : [])).join('\n');
    expect(items).toMatch(/does not replace tests/);
    expect(items).toMatch(/local code/);
    expect(items).toMatch(/Testing coupons: .*sharp.*Eye protection/);
    expect(items).toMatch(/broken needles/);
    expect(items).toMatch(/Dust/);
  });
});

describe('the figures of coupons', () => {
  const figures = [metric, us].flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'figure' && block.id.startsWith('coupon-') ? [block] : [])),
  );

  it('have words and a drawing in characters that fits a terminal', () => {
    expect(figures.length).toBeGreaterThan(20);
    for (const { id, alt, text = '' } of figures) {
      expect(alt.length, id).toBeGreaterThan(40);
      for (const line of text.split('\n')) expect([...line].length, `${id}: ${line}`).toBeLessThanOrEqual(78);
    }
  });

  it('let no words touch or leave the frame', () => {
    for (const { id, svg } of figures) {
      expect(overlaps(svg), id).toEqual([]);
      expect(outside(svg), id).toEqual([]);
    }
  });
});

describe('a report with coupons in every format', () => {
  it.each([
    ['metric', metric],
    ['us', us],
  ] as const)('in %s units fits 80 columns and never says NaN, undefined or Infinity', (units, one) => {
    for (const format of ['text', 'markdown', 'html', 'csv'] as const) {
      const printed = render(one, format, { units });
      expect(printed).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b/);
      if (format === 'text')
        for (const line of printed.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    }
  });

  it('in US units shows no metric unit in the sections of coupons', () => {
    for (const { model } of results.coupons) {
      const blocks = section(us, `coupon-${model.name}`).filter(({ kind }) => kind !== 'notes');
      const printed = render({ ...us, blocks }, 'text', { units: 'us' });
      expect(printed, model.name).not.toMatch(/\d (N|mm|J\/m²|1\/cm²)\b/);
    }
  });

  it('has the numbers of the table at a glance in its CSV', () => {
    const csv = render(metric, 'csv');
    expect(csv).toContain('\r\ncoupons,');
    expect(csv).toContain('Peak force [N],force from [N],force to [N],Toughness [J/m²]');
  });
});
