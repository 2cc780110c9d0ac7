import { describe, expect, it } from 'vitest';
import { kinds } from '../../../packages/core/src/quantity/index.js';
import { readUnitWithMathjs } from '../../../packages/core/src/quantity/mathjs-units.js';
import prepared from '../../../packages/core/src/quantity/prepared-units.json' with { type: 'json' };
import { normaliseUnit, parseUnit } from '../../../packages/core/src/quantity/unit.js';

describe('units prepared at build time', () => {
  it.each(Object.keys(prepared))('%s is what mathjs computes', (name) => {
    expect(parseUnit(name)).toEqual(readUnitWithMathjs(name));
  });
  it('cover every unit that kinds show or propose, so that a usual design needs no mathjs', () => {
    const pure = new Set(['', '%', '1e-6']);
    for (const kind of Object.values(kinds)) {
      for (const unit of [kind.si, kind.metric, kind.us, ...kind.alsoAccepted].map(normaliseUnit)) {
        expect(pure.has(unit) || Object.hasOwn(prepared, unit), unit).toBe(true);
      }
    }
  });
});

describe('spellings of the trade', () => {
  it.each([
    ['g/m²', 'g/m^2'],
    ['kg·m⁻³', 'kg*m^-3'],
    ['N.m', 'N*m'],
    ['in2', 'in^2'],
    ['µm', 'um'],
    ['°C', 'degC'],
    ['1e-6/K', '1e-6/K'],
  ])('%s is %s', (written, plain) => expect(normaliseUnit(written)).toBe(plain));
});
