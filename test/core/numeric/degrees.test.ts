import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cosDegrees, fibreAngle, sinDegrees } from '../../../packages/core/src/numeric/index.js';

describe('sine and cosine of degrees', () => {
  it('are exact at every multiple of 90 degrees', () => {
    for (let k = -8; k <= 8; k++) {
      const [sine, cosine] = [[0, 1, 0, -1][((k % 4) + 4) % 4]!, [1, 0, -1, 0][((k % 4) + 4) % 4]!];
      expect(Object.is(sinDegrees(90 * k), sine), `sin ${90 * k}`).toBe(true);
      expect(Object.is(cosDegrees(90 * k), cosine), `cos ${90 * k}`).toBe(true);
    }
  });

  it('are of exactly one magnitude at odd multiples of 45', () => {
    expect(sinDegrees(45)).toBe(Math.SQRT1_2);
    for (const angle of [45, 135, -45, -135, 225, 315, 405]) {
      expect(Math.abs(sinDegrees(angle))).toBe(Math.abs(cosDegrees(angle)));
    }
    expect(sinDegrees(-135)).toBe(cosDegrees(135));
  });

  it('agree with the functions of radians', () => {
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (angle) => {
        expect(sinDegrees(angle)).toBeCloseTo(Math.sin((angle * Math.PI) / 180), 13);
        expect(cosDegrees(angle)).toBeCloseTo(Math.cos((angle * Math.PI) / 180), 13);
      }),
    );
  });

  it('are odd and even', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), (angle) => {
        expect(sinDegrees(-angle) + sinDegrees(angle)).toBeCloseTo(0, 12);
        expect(cosDegrees(-angle)).toBeCloseTo(cosDegrees(angle), 14);
      }),
    );
  });
});

describe('the direction of a fibre', () => {
  it('lies in (-90, 90] and differs from the angle by half turns', () => {
    expect([0, 90, -90, 135, 180, -180, 270, 450, -100].map(fibreAngle)).toEqual([0, 90, 90, -45, 0, 0, 90, 90, 80]);
    expect(Object.is(fibreAngle(-180), 0)).toBe(true);
  });
});
