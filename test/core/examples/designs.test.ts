import { describe, expect, it } from 'vitest';
import { parse, parseDocument } from 'yaml';
import { assemble, compute, readDesign } from '../../../packages/core/src/design/index.js';
import { designParts } from '../../../packages/core/src/examples/designs/kinds.js';
import type { Held } from '../../../packages/core/src/examples/designs/parts.js';
import { checkExample, exampleDesign, exampleIds, exampleOf } from '../../../packages/core/src/examples/index.js';
import { citation } from '../../../packages/core/src/material/index.js';
import { toSI } from '../../../packages/core/src/quantity/index.js';

const partsOf = (id: string) => designParts(exampleOf(id));
const withDesign = exampleIds.filter((id) => 'held' in partsOf(id));
const withoutDesign = exampleIds.filter((id) => !('held' in partsOf(id)));

const heldOf = (id: string): Readonly<Record<string, Held>> => {
  const parts = partsOf(id);
  return 'held' in parts ? parts.held : {};
};

/** The number at a dotted path of a JSON document. */
function numberAt(data: unknown, path: string): number {
  const found = path
    .split('.')
    .reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], data);
  expect(found, path).toBeTypeOf('number');
  return found as number;
}

function heldValue(data: unknown, { terms, plus = 0, size }: Held): number {
  const sum = terms.reduce((all, { at, times = 1, inverse }) => {
    const number = numberAt(data, at);
    return all + (inverse ? times / number : times * number);
  }, plus);
  return size ? Math.abs(sum) : sum;
}

const resultsOf = (text: string) => compute(assemble(readDesign(text)));

describe('a worked example as a design file', () => {
  it.each(withDesign)('%s gives the values of the example', (id) => {
    const held = heldOf(id);
    const { data } = resultsOf(exampleDesign(id));
    const rows = checkExample(exampleOf(id)).rows.filter(({ key }) => key in held);
    expect(rows.length).toBeGreaterThan(0);
    for (const { key, computed, unit } of rows) {
      const value = heldValue(data, held[key]!) / toSI(1, unit);
      const off = Math.abs(value - computed);
      expect(off, `${key}: ${value} beside ${computed}`).toBeLessThanOrEqual(1e-9 * Math.abs(computed));
    }
  });

  it.each(withDesign)('%s stays the same when it is read and written again', (id) => {
    const text = exampleDesign(id);
    expect(parseDocument(text).toString({ lineWidth: 0 })).toBe(text);
    // JSON is YAML too: nothing hangs on how the text is laid out, or on its comments.
    const { source: _, ...design } = readDesign(text);
    const { source: __, ...again } = readDesign(JSON.stringify(parse(text)));
    expect(again).toEqual(design);
  });

  it.each(withDesign)('%s names its source, and says of every value where it is found or that it is not', (id) => {
    const { source, where, title, values } = exampleOf(id);
    const text = exampleDesign(id);
    const head = text.slice(0, text.indexOf('\nformat:'));
    for (const part of [citation(source), where]) expect(head).toContain(part);
    expect(parse(text)).toMatchObject({ format: 1, title });
    for (const [key, { printed }] of Object.entries(values)) {
      if (key in heldOf(id)) expect(head).toContain(`  ${key} = ${printed}`);
      else expect(/No results of a design: (.*)\./.exec(head)?.[1]?.split(', ')).toContain(key);
    }
  });

  it('keeps the numbers and the units of the source', () => {
    const text = exampleDesign('edge-delamination-onset');
    for (const part of ['E1: 20 Msi', 'thickness: 5.4 mil', '"[±30/±30/90/90~]s"', 'strain: 0.00347']) {
      expect(text).toContain(part);
    }
    expect(exampleDesign('response-three-plies-carbon')).toContain('1000 N/m, 1000 N/m, 0 N/m');
  });

  it('says what is not of the source', () => {
    for (const id of ['cured-carbon-cloth-200-vf45', 'max-stress-ply-45', 'bimetal-curvature']) {
      expect(exampleDesign(id)).toContain('but for these:');
    }
    expect(exampleDesign('stiffness-three-plies-carbon')).toContain('# The numbers are those of the source.\n');
  });

  it('is there for all but a few kinds', () => {
    expect(withoutDesign).toEqual([
      'hybrid-micromechanics-aramid-glass',
      'glass-thickness-formula',
      'tsai-wu-coefficients-carbon',
      'tsai-wu-coefficients-glass',
      'strip-deflection-cross-ply',
      'plate-deflection-three-plies',
      'plate-deflection-four-plies',
    ]);
  });

  it.each(withoutDesign)('is refused for %s, with what can be had instead', (id) => {
    expect(() => exampleDesign(id)).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code: 'not-computable', allowed: expect.stringMatching(/`/) })],
      }),
    );
  });

  it('is there for every example that a refusal points to', () => {
    const named = withoutDesign.flatMap((id) => {
      const parts = partsOf(id);
      return 'instead' in parts ? [...parts.instead.matchAll(/examples ([a-z0-9-]+) --design/g)] : [];
    });
    expect(named.length).toBeGreaterThan(3);
    for (const [, id] of named) expect(withDesign).toContain(id);
  });

  it('is refused for an id that is not there', () => {
    expect(() => exampleDesign('ply-stifness-carbon')).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code: 'unknown-name', hint: 'did you mean `ply-stiffness-carbon`?' })],
      }),
    );
  });
});
