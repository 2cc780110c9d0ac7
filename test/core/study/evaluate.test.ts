import { describe, expect, it } from 'vitest';
import { assemble, compute, designInputs, quantityAt } from '../../../packages/core/src/design/index.js';
import { evaluateDesign, evaluateVariant } from '../../../packages/core/src/study/index.js';
import { problemsIn } from '../design/faults.js';
import { plate } from './designs.js';

const inputs = designInputs(
  `${plate.replace('targets:', 'loads:\n  pull: { laminate: plate, N: [10 kN/m, 0 N/m, 0 N/m] }\ntargets:')}`,
);
const whole = compute(assemble(inputs.design)).data;

describe('numbers of a part of a design', () => {
  it.each([
    'laminates.plate.thickness',
    'laminates.plate.arealMass',
    'laminates.plate.A.0.0',
    'laminates.plate.D.2.2',
    'laminates.plate.inPlane.Gxy',
    'laminates.plate.flexural.Ex',
    'laminates.plate.d.1.1',
    'laminates.plate.expansion.thermal.strain.0',
    'stitching.rows.arealFraction',
    'loads.pull.strain.1',
  ])('%s is that of the whole report, to the bit', (path) => {
    expect(evaluateDesign(inputs.design, { quantities: [path] }).values).toEqual([quantityAt(whole, path).value]);
  });

  it('judges the targets as the report does', () => {
    const { targets } = evaluateDesign(inputs.design, { quantities: [], targets: true });
    expect(targets).toEqual(compute(assemble(inputs.design)).targets);
  });

  it('names what there is where a quantity is not there, and says why a variant cannot be computed', () => {
    const [problem] = problemsIn(() => evaluateDesign(inputs.design, { quantities: ['laminates.plate.inPlane.Ez'] }));
    expect(problem).toMatchObject({ code: 'unknown-name', hint: expect.stringContaining('E') });
    const bad = evaluateVariant(inputs, [{ path: 'stitching.rows.pitch', value: '-1 mm' }], { quantities: [] });
    expect('problems' in bad && bad.problems[0]!.code).toBe('out-of-range');
  });
});
