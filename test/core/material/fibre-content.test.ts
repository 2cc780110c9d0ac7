import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityFromVolumeFraction,
  fibreMassFraction,
  fibreVolumeFractionFromMassFraction,
  fibreVolumeFractionFromThickness,
  resinArealMass,
  solidFibreThickness,
  thicknessFromArealMass,
} from '../../../packages/core/src/material/index.js';
import { codesOf, expectClose, expectPrinted } from './phases.js';

// Workshop table of cured thickness, mass, density and fibre mass fraction, computed by an independent script with
// fibre densities E-glass 2540, S-glass 2480, carbon 1780, aramid 1440, resin 1150 kg/m^3, no voids.
const densities: Record<string, number> = { 'E-glass': 2540, 'S-glass': 2480, carbon: 1780, aramid: 1440 };
const curedMillimetres: [string, number, number, number][] = [
  ['E-glass', 200, 0.35, 0.225],
  ['E-glass', 200, 0.45, 0.175],
  ['E-glass', 200, 0.5, 0.157],
  ['E-glass', 200, 0.55, 0.143],
  ['E-glass', 200, 0.6, 0.131],
  ['E-glass', 300, 0.35, 0.337],
  ['E-glass', 300, 0.45, 0.262],
  ['E-glass', 300, 0.5, 0.236],
  ['E-glass', 300, 0.55, 0.215],
  ['E-glass', 300, 0.6, 0.197],
  ['E-glass', 400, 0.45, 0.35],
  ['E-glass', 400, 0.5, 0.315],
  ['E-glass', 400, 0.55, 0.286],
  ['E-glass', 600, 0.45, 0.525],
  ['E-glass', 600, 0.5, 0.472],
  ['E-glass', 600, 0.55, 0.429],
  ['E-glass', 450, 0.17, 1.042],
  ['E-glass', 450, 0.2, 0.886],
  ['E-glass', 450, 0.25, 0.709],
  ['S-glass', 200, 0.45, 0.179],
  ['S-glass', 200, 0.5, 0.161],
  ['S-glass', 200, 0.55, 0.147],
  ['carbon', 200, 0.4, 0.281],
  ['carbon', 200, 0.45, 0.25],
  ['carbon', 200, 0.5, 0.225],
  ['carbon', 200, 0.55, 0.204],
  ['carbon', 200, 0.6, 0.187],
  ['carbon', 300, 0.45, 0.375],
  ['carbon', 300, 0.5, 0.337],
  ['carbon', 300, 0.55, 0.306],
  ['aramid', 170, 0.4, 0.295],
  ['aramid', 170, 0.45, 0.262],
  ['aramid', 170, 0.5, 0.236],
];
const curedGrams: [string, number, number, number][] = [
  ['E-glass', 300, 0.45, 466],
  ['E-glass', 300, 0.5, 436],
  ['E-glass', 300, 0.55, 411],
  ['E-glass', 400, 0.45, 621],
  ['E-glass', 400, 0.5, 581],
  ['E-glass', 400, 0.55, 548],
  ['carbon', 200, 0.45, 358],
  ['carbon', 200, 0.5, 329],
  ['carbon', 200, 0.55, 306],
  ['E-glass', 450, 0.17, 1445],
  ['E-glass', 450, 0.2, 1265],
];
const densityAndMassFraction: [string, number, number, number][] = [
  ['E-glass', 0.45, 1776, 0.644],
  ['E-glass', 0.5, 1845, 0.688],
  ['E-glass', 0.55, 1914, 0.73],
  ['E-glass', 0.6, 1984, 0.768],
  ['carbon', 0.45, 1434, 0.559],
  ['carbon', 0.5, 1465, 0.608],
  ['carbon', 0.55, 1496, 0.654],
  ['carbon', 0.6, 1528, 0.699],
  ['aramid', 0.45, 1280, 0.506],
  ['aramid', 0.5, 1295, 0.556],
];

describe('the workshop table of cured fabrics', () => {
  it.each(curedMillimetres)('%s %d g/m2 at %d is %d mm thick', (fibre, grams, Vf, millimetres) => {
    expectPrinted(thicknessFromArealMass(grams / 1e3, densities[fibre]!, Vf) * 1e3, millimetres, 5e-4);
  });

  it.each(curedGrams)('%s %d g/m2 at %d weighs %d g/m2 with its resin', (fibre, grams, Vf, total) => {
    const thickness = thicknessFromArealMass(grams / 1e3, densities[fibre]!, Vf);
    const resin = resinArealMass(thickness, Vf, { fibre: densities[fibre]!, resin: 1150 });
    expectPrinted(grams + resin * 1e3, total, 0.5);
  });

  it.each(densityAndMassFraction)('%s at %d has density %d and fibre mass fraction %d', (fibre, Vf, density, Wf) => {
    const phases = { fibre: densities[fibre]!, resin: 1150 };
    expectPrinted(densityFromVolumeFraction(Vf, phases), density, 0.5);
    expectPrinted(fibreMassFraction(Vf, phases), Wf, 5e-4);
  });
});

describe('fibre content', () => {
  const phases = fc.record({
    fibre: fc.double({ min: 1400, max: 2600, noNaN: true }),
    resin: fc.double({ min: 1000, max: 1300, noNaN: true }),
    voidFraction: fc.double({ min: 0, max: 0.1, noNaN: true }),
  });
  const fraction = fc.double({ min: 0.1, max: 0.75, noNaN: true });
  const grams = fc.double({ min: 0.02, max: 1.2, noNaN: true });

  it('goes from volume fraction to mass fraction and back', () => {
    fc.assert(
      fc.property(fraction, phases, (Vf, given) => {
        expectClose(fibreVolumeFractionFromMassFraction(fibreMassFraction(Vf, given), given), Vf, 1e-11);
      }),
    );
  });

  it('goes from thickness to volume fraction and back', () => {
    fc.assert(
      fc.property(fraction, grams, (Vf, w) => {
        expectClose(fibreVolumeFractionFromThickness(w, 2540, thicknessFromArealMass(w, 2540, Vf)), Vf);
      }),
    );
  });

  it('adds the volumes of fibre and resin: t = w/rho_f + w (1/Wf - 1)/rho_m', () => {
    fc.assert(
      fc.property(fraction, grams, (Vf, w) => {
        const given = { fibre: 2540, resin: 1150 };
        const Wf = fibreMassFraction(Vf, given);
        const t = thicknessFromArealMass(w, given.fibre, Vf);
        expectClose(t, w / given.fibre + (w * (1 / Wf - 1)) / given.resin, 1e-11);
        expectClose(densityFromVolumeFraction(Vf, given) * t, w / Wf, 1e-11);
      }),
    );
  });

  it('agrees with the small-craft rule for glass, t = w/3.072 (2.56/Wf - 1.36) in mm and kg/m2', () => {
    // The rule's constants are densities 2.56 and 1.20 (recalled, not re-read).
    const given = { fibre: 2560, resin: 1200 };
    for (const Wf of [0.3, 0.5, 0.7]) {
      const t = thicknessFromArealMass(0.6, given.fibre, fibreVolumeFractionFromMassFraction(Wf, given));
      expectClose(t * 1e3, (0.6 / 3.072) * (2.56 / Wf - 1.36), 1e-11);
    }
  });

  it('has the mass of a ply as fibre plus resin', () => {
    fc.assert(
      fc.property(fraction, grams, phases, (Vf, w, given) => {
        const t = thicknessFromArealMass(w, given.fibre, Vf);
        expectClose(w + resinArealMass(t, Vf, given), densityFromVolumeFraction(Vf, given) * t, 1e-11);
      }),
    );
  });

  it('refuses what cannot be', () => {
    const glass = { fibre: 2540, resin: 1150 };
    expect(codesOf(() => solidFibreThickness(-0.3, 2540))).toEqual(['out-of-range']);
    expect(codesOf(() => solidFibreThickness(0.3, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => thicknessFromArealMass(0.3, 2540, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => thicknessFromArealMass(0.3, 2540, 1.001))).toEqual(['out-of-range']);
    expect(codesOf(() => fibreVolumeFractionFromThickness(2.54, 2540, 0.999e-3))).toEqual(['out-of-range']);
    expect(codesOf(() => fibreVolumeFractionFromThickness(0.3, 2540, 1e-4))).toEqual(['out-of-range']);
    expect(codesOf(() => fibreVolumeFractionFromThickness(0.3, 2540, Number.NaN))).toEqual(['not-a-number']);
    expect(codesOf(() => fibreVolumeFractionFromMassFraction(1.001, glass))).toEqual(['out-of-range']);
    expect(codesOf(() => fibreMassFraction(0.851, { ...glass, voidFraction: 0.15 }))).toEqual(['out-of-range']);
    expect(codesOf(() => densityFromVolumeFraction(0.5, { ...glass, voidFraction: 0.201 }))).toEqual(['out-of-range']);
    expect(codesOf(() => resinArealMass(1e-3, 0.851, { ...glass, voidFraction: 0.15 }))).toEqual(['out-of-range']);
    expect(codesOf(() => resinArealMass(-1e-3, 0.5, glass))).toEqual(['out-of-range']);
  });
});
