import { readFileSync } from 'node:fs';
import { designInputs, parseVariation, sweep, sweepReport } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const text = readFileSync(new URL('../../../docs/examples/shingle-640-three-rows.yaml', import.meta.url), 'utf8');

const captionFor = (pitches: number): string => {
  const variations = [
    `stitching.edge-rows.pitch=3mm..6mm:${pitches}`,
    'stitching.edge-rows.sewing.rate=60/min..100/min:3',
  ];
  const found = sweep(designInputs(text), variations.map(parseVariation), ['stitching.edge-rows.sewingTime']);
  const figure = sweepReport(found).blocks.find(({ kind }) => kind === 'figure');
  return figure?.kind === 'figure' ? figure.caption : '';
};

describe('the figure of a sweep over two inputs', () => {
  it('says how many of the values of the first it draws, where it cannot draw all', () => {
    expect(captionFor(7)).toContain('4 of the 7 values of stitching.edge-rows.pitch');
    expect(captionFor(3)).not.toContain('values of');
  });
});
