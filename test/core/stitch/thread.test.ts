import { describe, expect, it } from 'vitest';
import {
  bundleArea,
  bundlePerimeter,
  checkThread,
  fibreArea,
  threadDiameter,
} from '../../../packages/core/src/stitch/index.js';
import { aramid75, codesOf, expectNear, mm, tex } from './support.js';

const aramid = (size: number) => ({ name: `aramid ${size}`, linearDensity: size * tex, density: 1440 });

describe('a thread', () => {
  // Computed from linear density and density by an independent script, rounded to 0.001 mm and to 1e-5 mm^2.
  it.each([
    [20, 0.165, 0.01389],
    [44.4444, 0.246, 0.03086],
    [111.111, 0.389, 0.07716],
    [177.778, 0.492, 0.12346],
  ])('of %f tex aramid has the diameter and fibre area of the independent table', (size, diameter, area) => {
    expect(Math.abs(threadDiameter(aramid(size)) / mm - diameter)).toBeLessThan(0.00051);
    expect(Math.abs(fibreArea(aramid(size)) * 1e6 - area)).toBeLessThan(0.000011);
  });

  it('has a fibre area whose mass per length is its linear density', () => {
    expectNear(fibreArea(aramid75) * aramid75.density, aramid75.linearDensity);
  });

  it('fills the circle of its diameter with fibre to its packing', () => {
    const thread = { ...aramid75, packing: 0.6 };
    expectNear(fibreArea(thread) / ((Math.PI / 4) * threadDiameter(thread) ** 2), 0.6);
    expectNear(bundleArea(thread) * 0.6, fibreArea(thread));
  });

  it('takes a packing of 0.65 when none is given', () => {
    expect(threadDiameter(aramid75)).toBe(threadDiameter({ ...aramid75, packing: 0.65 }));
  });

  it('forms with two legs a round bundle of twice the area', () => {
    expectNear(threadDiameter(aramid75, 2) ** 2, 2 * threadDiameter(aramid75) ** 2);
  });

  it('has the perimeter of a tight cord around strands side by side', () => {
    const d = threadDiameter(aramid75);
    expectNear(bundlePerimeter(aramid75, 1), Math.PI * d);
    expectNear(bundlePerimeter(aramid75, 2), (Math.PI + 2) * d);
    expectNear(bundlePerimeter(aramid75, 3), (Math.PI + 4) * d);
  });

  it.each([
    ['linearDensity', { linearDensity: 0 }],
    ['density', { density: -1 }],
    ['tenacity', { tenacity: Number.NaN }],
    ['modulus', { modulus: 0 }],
    ['packing', { packing: 0.91 }],
    ['packing', { packing: 0 }],
  ])('is refused with a %s that no thread has', (what, wrong) => {
    expect(codesOf(() => checkThread({ ...aramid75, ...wrong }))).toEqual(['out-of-range']);
    expect(() => checkThread({ ...aramid75, ...wrong })).toThrow(what);
  });

  it('has no bundle of less than one leg', () => {
    expect(codesOf(() => threadDiameter(aramid75, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => bundlePerimeter(aramid75, 0))).toEqual(['out-of-range']);
  });
});
