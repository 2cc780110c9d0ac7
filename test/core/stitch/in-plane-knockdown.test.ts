import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  affectedWidth,
  kinkingFactor,
  modulusFactor,
  pocketArea,
} from '../../../packages/core/src/stitch/in-plane/formulas.js';
import {
  type Estimate,
  holes,
  type InPlaneKnockdown,
  inPlaneKnockdown,
  type KnockdownInput,
  stitchType,
} from '../../../packages/core/src/stitch/index.js';
import { aramid75, codesOf, expectNear, mm } from './support.js';

/** Invented: glass/epoxy, 75 tex thread through 4 mm by 5.5 mm. */
const input: KnockdownInput = {
  ply: { E1: 40e9, G12: 4e9, nu12: 0.28 },
  spacing: 5.5 * mm,
  pitch: 4 * mm,
  penetrationDensity: 45_455,
  bundleDiameter: 0.45 * mm,
  holeWidth: 0.6 * mm,
};

const factors = (found: InPlaneKnockdown): readonly Estimate[] => [
  found.modulus,
  found.compression.lower,
  found.compression.upper,
  found.tension,
  found.perforation.lower,
  found.perforation.upper,
];

describe('the in-plane price of stitches', () => {
  it('lowers the modulus as the compliance of a sinusoidal fibre averaged along its length does, for small waves', () => {
    const { E1, G12, nu12 } = input.ply;
    const mean = (phi: number) => {
      const n = 2000;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const angle = phi * Math.sin((2 * Math.PI * (i + 0.5)) / n);
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        // Across the fibres as stiff as 10 GPa: of fourth order in the angle.
        sum += c ** 4 / E1 + (1 / G12 - (2 * nu12) / E1) * s ** 2 * c ** 2 + s ** 4 / 10e9;
      }
      return n / (E1 * sum);
    };
    expectNear(1 - modulusFactor(input.ply, 1, 0.01), 1 - mean(0.01), 1e-3);
    expectNear(1 - modulusFactor(input.ply, 0.25, 0.01), 0.25 * (1 - mean(0.01)), 1e-3);
    expectNear(modulusFactor(input.ply, 1, 0.17), mean(0.17), 0.01);
  });

  it('kinks as G/(1 + phi/gamma) says', () => {
    const strength = (phi: number) => 1 / (1 + phi / 0.012);
    expectNear(kinkingFactor(0.1, 0.035, 0.012), strength(0.135) / strength(0.035));
    expect(kinkingFactor(0, 0.035, 0.012)).toBe(1);
  });

  it('disturbs no more than the whole width, and a pocket is no longer than the way to the next hole nor smaller than its thread', () => {
    expectNear(affectedWidth(0.6 * mm, 0.9 * mm, 6 * mm), 0.25);
    expect(affectedWidth(3 * mm, 4 * mm, 5 * mm)).toBe(1);
    expectNear(pocketArea(1 * mm, 9 * mm, 4 * mm, 1e-8), 2e-6);
    expectNear(pocketArea(1 * mm, 3 * mm, 4 * mm, 1e-8), 1.5e-6);
    expect(pocketArea(1 * mm, 3 * mm, 4 * mm, 1e-5)).toBe(1e-5);
  });

  it('weakens a row in bending at worst by the net width that the pattern reports', () => {
    const { netWidth } = holes({
      pattern: { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5.5 * mm },
      type: stitchType(301),
      needleThread: aramid75,
      dryThickness: 3 * mm,
      holeWidth: 0.6 * mm,
    });
    expectNear(inPlaneKnockdown(input).perforation.lower.value, netWidth);
  });

  it('follows its formulas by hand where every parameter is given', () => {
    const found = inPlaneKnockdown({
      ...input,
      needleDiameter: 1.1 * mm,
      parameters: {
        straighteningOverHole: 1.5,
        pocketAspect: 10,
        cutShare: 0.2,
        misalignment: 0.03,
        yieldShearStrain: 0.01,
      },
    });
    // d = 0.6, l = 0.9, s = 5.5, p = 4 mm; along the rows the holes are 4 mm apart, less than the 6 mm of a pocket.
    expectNear(found.affectedWidth.value, 1.5 / 5.5);
    expectNear(found.waviness.value, 0.1);
    expectNear(found.compression.lower.value, 0.04 / 0.14);
    expectNear(found.compression.upper.value, 1 - (1.5 / 5.5) * (1 - 0.04 / 0.14));
    expectNear(found.tension.value, 1 - (0.2 * 1.1) / 5.5);
    expectNear(found.perforation.upper.value, 1 - (0.2 * 1.1) / 4);
    const along = 1 / (45_455 * 5.5 * mm);
    expectNear(found.displaced.upper.value, (45_455 * 0.6 * mm * along) / 2);
    expectNear(found.crowding.upper.value, 1 / (1 - found.displaced.upper.value));
    expectNear(found.displaced.lower, (45_455 * Math.PI * (0.45 * mm) ** 2) / 4);
    expectNear(found.crowding.lower, 1 / (1 - found.displaced.lower));
  });

  it('vanishes as the stitches move apart', () => {
    const rare = inPlaneKnockdown({ ...input, spacing: 100, pitch: 100, penetrationDensity: 1e-4 });
    for (const { value } of factors(rare).filter((one) => one !== rare.compression.lower)) expectNear(value, 1, 1e-4);
    expectNear(rare.crowding.lower, 1, 1e-9);
    // The low estimate of compression knows no distance: one wavy strip decides.
    expect(rare.compression.lower).toEqual(inPlaneKnockdown(input).compression.lower);
  });

  it('gives every factor between 0 and 1 with its range around it, low and high in order, and shrinks to single values when all is given', () => {
    const length = fc.double({ min: 1 * mm, max: 20 * mm, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.double({ min: 0.1, max: 0.7, noNaN: true }), (spacing, pitch, d) => {
        const bundleDiameter = d * mm;
        const { holeWidth, ...rest } = input;
        expect(holeWidth).toBeDefined();
        const found = inPlaneKnockdown({
          ...rest,
          spacing,
          pitch,
          bundleDiameter,
          penetrationDensity: 1 / spacing / pitch,
        });
        for (const { low, value, high } of factors(found)) {
          expect(0 <= low && low <= value && value <= high && high <= 1).toBe(true);
        }
        expect(found.compression.lower.value).toBeLessThanOrEqual(found.compression.upper.value * (1 + 1e-12));
        expect(found.displaced.lower).toBeLessThanOrEqual(found.displaced.upper.value * (1 + 1e-12));
        expect(found.crowding.lower).toBeGreaterThanOrEqual(1);
        expect(found.crowding.upper.high).toBeGreaterThanOrEqual(found.crowding.upper.value);
        expect(Number.isFinite(found.crowding.upper.high)).toBe(true);
      }),
    );
    const parameters = {
      holeOverBundle: 1.2,
      straighteningOverHole: 1.4,
      pocketAspect: 8,
      cutShare: 0.1,
      misalignment: 0.03,
      yieldShearStrain: 0.01,
    };
    for (const { low, value, high } of factors(inPlaneKnockdown({ ...input, parameters })))
      expect([low, high]).toEqual([value, value]);
  });

  it('shows what is in print beside it and says that it disagrees', () => {
    const { published, notes, sources } = inPlaneKnockdown(input);
    expect(published).toContainEqual(
      expect.objectContaining({ loading: 'tension, compression, flexure', low: 0.8, high: 1.2, access: 'recalled' }),
    );
    expect(published.some(({ source, low }) => source === 'mechakra-2021' && low === 0.55)).toBe(true);
    expect(published.every(({ source }) => sources.includes(source))).toBe(true);
    expect(notes[0]?.text).toContain('contradict one another');
    expect(notes[0]?.text).toContain('no bounds: of seven single values in print none lies in its range');
    expect(notes[1]?.text).toContain(
      'printed losses can be far larger; gains in strength, printed too, are not covered',
    );
  });

  it('says when the disturbed strips meet', () => {
    const dense = inPlaneKnockdown({ ...input, spacing: 1.2 * mm });
    expect(dense.affectedWidth.value).toBe(1);
    expect(dense.notes.map((note) => note.text)).toContainEqual(expect.stringContaining('whole width'));
  });

  it('is refused for values outside their ranges', () => {
    const code = (changes: Partial<KnockdownInput>) => codesOf(() => inPlaneKnockdown({ ...input, ...changes }));
    for (const name of [
      'spacing',
      'pitch',
      'penetrationDensity',
      'bundleDiameter',
      'holeWidth',
      'needleDiameter',
    ] as const) {
      expect(code({ [name]: 0 }), name).toEqual(['out-of-range']);
      expect(code({ [name]: Number.NaN }), name).toEqual(['out-of-range']);
    }
    expect(code({ ply: { ...input.ply, E1: 0 } })).toEqual(['out-of-range']);
    expect(code({ ply: { ...input.ply, nu12: -0.1 } })).toEqual(['out-of-range']);
    expect(code({ ply: { E1: 5e9, G12: 4e9, nu12: 0.3 } })).toEqual(['out-of-range']);
    expect(code({ penetrationDensity: 5e6 })).toEqual(['out-of-range']);
    expect(code({ parameters: { cutShare: 1.1 } })).toEqual(['out-of-range']);
    expect(code({ parameters: { cutShare: -0.1 } })).toEqual(['out-of-range']);
    expect(code({ parameters: { pocketAspect: 0 } })).toEqual(['out-of-range']);
  });
});
