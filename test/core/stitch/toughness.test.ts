import { describe, expect, it } from 'vitest';
import {
  armCeiling,
  bridgingInterval,
  bridgingLaw,
  bridgingLength,
  discreteness,
  measuredBridgingLaw,
  stitchType,
  type ToughnessInput,
  toughness,
  toughnessInterval,
} from '../../../packages/core/src/stitch/index.js';
import { penetration } from './bridging/support.js';
import { codesOf, expectNear, mm } from './support.js';

const law = bridgingLaw(penetration());
/** Invented: a homogeneous arm of 20 GPa. */
const arm = { bendingStiffness: (20e9 * (1.5 * mm) ** 3) / 12, thickness: 1.5 * mm };
const strong = { ...arm, failureStrain: { tension: 0.02, compression: 0.012 } };
const base = { law, penetrationDensity: 45_500, bondToughness: 300 };
const texts = (input: ToughnessInput) => toughness(input).notes.map((note) => note.text);

describe('the toughness of a stitched laminate', () => {
  it('is that of the bond and the work of the penetrations per area', () => {
    const { steady, increment, usable, bond } = toughness(base);
    expectNear(increment, 45_500 * law.work);
    expectNear(steady!, 300 + increment);
    expect([usable, bond]).toEqual([steady, 300]);
    expect(texts(base)).toContainEqual(expect.stringContaining('tens of millimetres'));
  });

  it('names its sources and passes the notes of the law on', () => {
    const result = toughness({ ...base, law: { ...law, notes: [{ level: 'assumption', text: 'of the law' }] } });
    expect(result.sources).toEqual(expect.arrayContaining([...law.sources, 'bao-suo-1992']));
    expect(result.notes[0]?.text).toBe('of the law');
  });

  it('has the bridging length of a beam on springs, (E h^3/(6 beta))^(1/4) when homogeneous', () => {
    const { bridgingLength: length, zone } = toughness({ ...base, arm });
    const beta = (45_500 * law.peak.force) / law.peak.opening;
    expectNear(length!, ((20e9 * (1.5 * mm) ** 3) / (6 * beta)) ** 0.25);
    expectNear(zone!.low, 1.4 * length!);
    expectNear(zone!.high, 3.4 * length!);
    // v = exp(-x/l) cos(x/l) solves D v'''' = -2 beta v, by differences.
    const v = (x: number) => Math.exp(-x / length!) * Math.cos(x / length!);
    const [x, step] = [0.7 * length!, 0.01 * length!];
    const fourth = (v(x - 2 * step) - 4 * v(x - step) + 6 * v(x) - 4 * v(x + step) + v(x + 2 * step)) / step ** 4;
    expectNear(arm.bendingStiffness * fourth, -2 * beta * v(x), 1e-3);
  });

  it('takes two unlike arms as two like ones that open as far', () => {
    const other = { ...arm, bendingStiffness: 3 * arm.bendingStiffness };
    const found = toughness({ ...base, arm, otherArm: other }).bridgingLength!;
    expectNear(found, bridgingLength(1.5 * arm.bendingStiffness, 45_500, law));
    expectNear(toughness({ ...base, arm: other, otherArm: arm }).bridgingLength!, found);
  });

  it('gives no steady value where the zone may not fit, and says so', () => {
    const short = toughness({ ...base, arm, length: 11 * mm });
    expect('steady' in short || 'usable' in short).toBe(false);
    expect(short.increment).toBeGreaterThan(0);
    expect(short.notes).toContainEqual(
      expect.objectContaining({
        level: 'warning',
        text: expect.stringContaining('no steady toughness: 11 mm of growth'),
      }),
    );
    const { zone } = short;
    const at = (length: number) => toughness({ ...base, arm, length }).steady;
    expect(at(zone!.needed * 0.999)).toBeUndefined();
    expect(at(zone!.needed * 1.001)).toBeDefined();
    expectNear(zone!.needed, 4 * zone!.high);
  });

  it('trusts the zone of a measured curve as it is', () => {
    const points = [0, 1, 2].map((i) => ({ opening: i * 1e-4, force: [0, 100, 0][i]! }));
    const { zone } = toughness({ ...base, law: measuredBridgingLaw(points, 'threadAtCrack'), arm });
    expectNear(zone!.needed, zone!.high);
  });

  it('says how long the zone is computed and how much growth a steady value is given for, and why they differ', () => {
    const { zone } = toughness({ ...base, arm });
    const inMm = (length: number) => `${Number((length * 1e3).toPrecision(2))} mm`;
    const [long] = texts({ ...base, arm }).filter((text) => text.includes('bridged zone'));
    expect(long).toContain(`${inMm(zone!.low)} to ${inMm(zone!.high)} long as computed`);
    expect(long).toContain(`taken as ${inMm(zone!.needed)}, 4 times the longest computed zone`);
    const [short] = texts({ ...base, arm, length: 11 * mm }).filter((text) => text.includes('no steady'));
    for (const words of [inMm(zone!.high), inMm(zone!.needed), 'as computed', '4 times'])
      expect(short).toContain(words);
    const points = [0, 1, 2].map((i) => ({ opening: i * 1e-4, force: [0, 100, 0][i]! }));
    const measured = { ...base, law: measuredBridgingLaw(points, 'threadAtCrack'), arm };
    expect(texts(measured).join()).toContain(`${inMm(toughness(measured).zone!.high)}, the longest computed zone`);
  });

  it('reports what rows do to a test: the widest of the computed cases at their ratios, nothing without rows, no factor beyond them', () => {
    // Low and high of either program, whichever is wider; the form is that of the five cases of the independent script.
    for (const [ratio, low, high, fit] of [
      [0.1, 1.01, 1.18, [1.01, 1.08]],
      [0.5, 1.31, 2.1, [1.37, 1.59]],
      [1.5, 2.3, 7.91, [2.3, 4.4]],
    ] as const) {
      const { testFactor } = discreteness(ratio * 4 * mm, 4 * mm);
      expectNear(testFactor!.low, low);
      expectNear(testFactor!.high, high);
      expect(testFactor!.fit).toBeGreaterThanOrEqual(fit[0]);
      expect(testFactor!.fit).toBeLessThanOrEqual(fit[1]);
      expectNear(testFactor!.fit, 1 + 1.2 * ratio ** 1.6);
    }
    const between = discreteness(0.3, 1).testFactor!;
    expectNear(between.low, Math.min(1.12 + 0.2 * (1.37 - 1.12), 1.14 + 0.2 * (1.31 - 1.14)));
    expectNear(between.high, 1.45 + 0.2 * (2.1 - 1.45));
    expectNear(discreteness(1e-9, 1).testFactor!.high, 1, 1e-7);
    expect(discreteness(1.51, 1).testFactor).toBeUndefined();
    expect(toughness({ ...base, arm }).discreteness).toBeUndefined();
    const length = toughness({ ...base, arm }).bridgingLength!;
    const atOne = texts({ ...base, arm, rowDistance: length }).join();
    expect(atOne).toContain('reads 1.7 to 4.3 times');
    expect(atOne).toContain('by area it reads high too');
    expect(texts({ ...base, arm, rowDistance: 2 * length })).toContainEqual(
      expect.stringContaining('beyond the computed cases'),
    );
    expect(texts({ ...base, arm, rowDistance: 0.02 * length }).join()).not.toContain('rows are');
  });

  it('has the ceiling E h eps^2/3 of a homogeneous arm: 1.45 kJ/m^2 for carbon of 0.6 mm, 60 GPa and 1.1 %', () => {
    const carbon = {
      bendingStiffness: (60e9 * (0.6 * mm) ** 3) / 12,
      thickness: 0.6 * mm,
      failureStrain: { tension: 0.013, compression: 0.011 },
    };
    expectNear(armCeiling(carbon, carbon)!, (60e9 * 0.6 * mm * 0.011 ** 2) / 3);
    expectNear(armCeiling(carbon, carbon)!, 1452);
    expect(armCeiling(arm, arm)).toBeUndefined();
    // A rigid other arm halves the energy at the moment that breaks this one.
    expectNear(armCeiling(carbon, { bendingStiffness: 1e9, thickness: 1 })!, 1452 / 2, 1e-6);
  });

  it('warns when the arms break below the steady value, and then only the ceiling is usable', () => {
    const many = { ...base, penetrationDensity: 2e5, arm: strong };
    const { usable, steady, ceiling } = toughness(many);
    expect(ceiling).toBeLessThan(steady!);
    expect(usable).toBe(ceiling);
    expect(texts(many)).toContainEqual(expect.stringContaining('tabs on the arms'));
    expect(texts({ ...base, arm: { ...strong, failureStrain: { tension: 1, compression: 1 } } }).join()).not.toContain(
      'tabs',
    );
  });

  it('is refused for values outside their ranges, and for rows or a length without an arm', () => {
    const code = (changes: Partial<ToughnessInput>) => codesOf(() => toughness({ ...base, ...changes }));
    expect(code({ penetrationDensity: 0 })).toEqual(['out-of-range']);
    expect(code({ bondToughness: -1 })).toEqual(['out-of-range']);
    expect(code({ arm: { ...arm, bendingStiffness: 0 } })).toEqual(['out-of-range']);
    expect(code({ arm: { ...arm, thickness: Number.NaN } })).toEqual(['out-of-range']);
    expect(code({ arm, otherArm: { ...arm, thickness: 0 } })).toEqual(['out-of-range']);
    expect(code({ arm: { ...arm, failureStrain: { tension: 0.01, compression: 0 } } })).toEqual(['out-of-range']);
    expect(code({ arm, length: 0 })).toEqual(['out-of-range']);
    expect(code({ arm, rowDistance: -1 })).toEqual(['out-of-range']);
    expect(code({ length: 0.1 })).toEqual(['missing-key']);
    expect(code({ rowDistance: 5 * mm })).toEqual(['missing-key']);
  });
});

describe('the range of the toughness', () => {
  const { parameters, ...rest } = penetration();
  const bare = { ...rest, type: stitchType('301-modified') };
  const input = { penetration: bare, penetrationDensity: 45_500, bondToughness: 300 };

  it('is that of the work times the density, sample by sample, on a bond that is known', () => {
    const found = toughnessInterval(input, { samples: 300, seed: 9 });
    const { work } = bridgingInterval(bare, { samples: 300, seed: 9 });
    expect(parameters).toBeDefined();
    for (const end of ['low', 'median', 'high'] as const) {
      expectNear(found.increment[end], 45_500 * work[end], 1e-9);
      expectNear(found.steady![end], 300 + 45_500 * work[end], 1e-9);
    }
    expectNear(found.nominal.increment, 45_500 * bridgingLaw(bare).work);
    const texts = found.notes.map((note) => note.text).join();
    expect(texts).toContain('factor of 2 to 3');
    expect(texts).toContain(
      'steady value with rigid bends is mostly too low, what a test is foretold to read mostly too high',
    );
  });

  it('widens with a bond that is a range, and never passes the ceiling of the arms', () => {
    const width = ({ steady }: ReturnType<typeof toughnessInterval>) => steady!.high - steady!.low;
    const wide = { ...input, bondToughness: { value: 300, low: 0, high: 1500 } };
    expect(width(toughnessInterval(wide))).toBeGreaterThan(width(toughnessInterval(input)));
    const armed = toughnessInterval({ ...input, penetrationDensity: 1e5, arm: strong });
    expect(armed.usable!.high).toBeLessThanOrEqual(armed.nominal.ceiling!);
    expect(armed.armsFirst).toBeGreaterThan(0);
  });

  it('is absent where the zone may not fit, in the nominal case or in more than one sample of twenty', () => {
    const { nominal } = toughnessInterval({ ...input, arm });
    expect('steady' in toughnessInterval({ ...input, arm, length: 5 * mm })).toBe(false);
    const barely = toughnessInterval({ ...input, arm, length: 1.01 * nominal.zone!.needed });
    expect(barely.nominal.steady).toBeDefined();
    expect('steady' in barely).toBe(false);
    expect(barely.notes.map((note) => note.text)).toContainEqual(expect.stringContaining('no steady range'));
    expect(toughnessInterval({ ...input, arm, length: 0.5 }).steady).toBeDefined();
  });

  it('is refused for a bond whose range does not rise', () => {
    const code = (value: number, low: number, high: number) =>
      codesOf(() => toughnessInterval({ ...input, bondToughness: { value, low, high } }));
    expect(code(300, 400, 500)).toEqual(['out-of-range']);
    expect(code(300, -1, 500)).toEqual(['out-of-range']);
    expect(code(300, 200, Number.NaN)).toEqual(['out-of-range']);
  });
});
