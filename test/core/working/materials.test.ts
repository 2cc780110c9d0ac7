import { arealMass, laminate } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import {
  type Fabric,
  type Fibre,
  fabricFibreThickness,
  fabricPlies,
  fibreVolumeFractionInGap,
  matPly,
  ply,
  plyConsistency,
  plyFromConstituents,
  type Resin,
  type TransverseRule,
} from '../../../packages/core/src/material/index.js';
import {
  type RecordedStep,
  type RuleName,
  startWorking,
  type Working,
} from '../../../packages/core/src/working/index.js';
import { carbon, eGlass, epoxy, expectPrinted } from '../material/phases.js';
import { misses } from './support.js';

/** The steps that a computation takes down, with what it gives. */
function worked<Result>(compute: (working: Working) => Result): { result: Result; steps: readonly RecordedStep[] } {
  const { working, steps } = startWorking();
  return { result: compute(working), steps };
}

const named = (steps: readonly RecordedStep[], rule: RuleName, ...part: string[]): RecordedStep => {
  const found = steps.find((step) => step.rule === rule && step.part.join('.') === part.join('.'));
  if (found === undefined) throw new Error(`no step ${rule} in ${part.join('.')}`);
  return found;
};

const expanding: Fibre = { ...carbon, nu23: 0.25, alpha1: -0.4e-6, alpha2: 12e-6 };
const expandingGlass: Fibre = { ...eGlass, alpha1: 5e-6, alpha2: 5e-6 };
const swelling: Resin = { ...epoxy, alpha: 60e-6, beta: 0.3 };
const cloth: Fabric = {
  name: 'cloth',
  fibre: expanding,
  resin: swelling,
  arealMass: 0.2,
  architecture: 'woven',
  fibreVolumeFraction: 0.5,
  warpShare: 0.55,
};
const rules = ['halpin-tsai', 'inverse', 'chamis'] as const satisfies readonly TransverseRule[];

describe('the working of a unidirectional ply', () => {
  it.each(rules.flatMap((E2) => rules.map((G12) => ({ E2, G12 }))))('$E2 across and $G12 in shear', (model) => {
    const input = { fibre: expanding, resin: swelling, arealMass: 0.3, fibreVolumeFraction: 0.55, model };
    const { result, steps } = worked((working) => plyFromConstituents(input, working));
    expect(misses(steps)).toEqual([]);
    expect(result).toEqual(plyFromConstituents(input));
    const written: Record<string, number> = Object.assign({}, ...steps.map(({ values }) => values));
    const { E1, E2, G12, G13, G23, nu12, nu23, thickness, density, resinArealMass } = result;
    expect(written).toMatchObject({
      E1,
      E2,
      G12,
      G13,
      G23,
      nu12,
      nu23,
      rho: density,
      t_k: thickness,
      m_m: resinArealMass,
    });
    expect(written).toMatchObject({ ...result.expansion, ...result.moistureExpansion });
  });

  it('shows the resin that voids soften, and a lower mass for either model of voids', () => {
    const input = { fibre: eGlass, resin: epoxy, arealMass: 0.3, fibreVolumeFraction: 0.5, voidFraction: 0.03 };
    const massOnly = worked((working) => plyFromConstituents(input, working)).steps;
    const porous = worked((working) => plyFromConstituents({ ...input, voidModel: 'porous-matrix' }, working)).steps;
    expect([...misses(massOnly), ...misses(porous)]).toEqual([]);
    expect(massOnly.some(({ rule }) => rule === 'porousResin')).toBe(false);
    expect(named(porous, 'porousResin').values.E_m).toBeLessThan(epoxy.E);
    expect(named(porous, 'alongFibre').values.E_m).toBe(named(porous, 'porousResin').values.E_m);
    expect(named(porous, 'plyMass').values.rho).toBe(named(massOnly, 'plyMass').values.rho);
  });

  it('leaves the plane across the fibre out where the rule makes the ply too stiff for it', () => {
    const model = { E2: 'halpin-tsai', xiE2: 1e6 } as const;
    const input = { fibre: eGlass, resin: epoxy, arealMass: 0.3, fibreVolumeFraction: 0.7, model };
    const { result, steps } = worked((working) => plyFromConstituents(input, working));
    expect(result.G23).toBeUndefined();
    expect(steps.some(({ rule }) => rule === 'transverseIsotropy')).toBe(false);
    expect(misses(steps)).toEqual([]);
  });

  // Kaw, Mechanics of Composite Materials, 2nd ed. 2006, examples 3.3 to 3.8 (recalled, not re-read).
  it('prints the intermediates of glass and epoxy at fibre volume fraction 0.70 (Kaw 2006)', () => {
    const fibre: Fibre = { ...eGlass, E1: 85e9, E2: 85e9, G12: 85e9 / 2.4, nu12: 0.2 };
    const resin: Resin = { ...epoxy, E: 3.4e9, nu: 0.3 };
    const { steps } = worked((working) =>
      plyFromConstituents({ fibre, resin, arealMass: 1, fibreVolumeFraction: 0.7 }, working),
    );
    const along = named(steps, 'alongFibre').values;
    const across = named(steps, 'acrossHalpinTsai').values;
    const shear = named(steps, 'shearHalpinTsai').values;
    expectPrinted((along.E1 ?? 0) / 1e9, 60.52, 0.005);
    expectPrinted(across.eta_E, 0.8889, 5e-5);
    expectPrinted((across.E2 ?? 0) / 1e9, 20.2, 0.005);
    expectPrinted((shear.G_m ?? 0) / 1e9, 1.308, 5e-4);
    expectPrinted(shear.eta_G, 0.9288, 5e-5);
    expectPrinted((shear.G12 ?? 0) / 1e9, 6.169, 0.001);
  });
});

describe('the working of a cloth', () => {
  const kinds: Record<string, Partial<Fabric>> = {
    'with a crimp factor': { crimpFactor: 0.93 },
    'of the usual crimp': { weave: 'twill' },
    'crimped by its geometry': { weave: 'satin', harness: 5, yarnCount: 500, weftCount: 430 },
    'of two fibres': { weftFibre: expandingGlass, weave: 'plain' },
    'of two fibres, crimped by its geometry': { weftFibre: expandingGlass, yarnCount: 500, weave: 'plain' },
    'without expansion': { fibre: carbon, resin: epoxy, crimpFactor: 0.9 },
    'with pores': { voidFraction: 0.02, voidModel: 'porous-matrix', crimpFactor: 0.9 },
  };

  it.each(Object.entries(kinds))('%s', (_, own) => {
    const fabric: Fabric = { ...cloth, ...own };
    const { result, steps } = worked((working) => fabricPlies(fabric, {}, working));
    expect(misses(steps)).toEqual([]);
    expect(result).toEqual(fabricPlies(fabric));
    const { E1, E2, G12, nu12 } = result[0] ?? {};
    expect(named(steps, 'clothCrimped').values).toMatchObject({ E1, E2, G12, nu12 });
    if (result[0]?.expansion) expect(named(steps, 'clothExpansion').values).toMatchObject(result[0].expansion);
    if (result[0]?.moistureExpansion) {
      expect(named(steps, 'clothSwelling').values).toMatchObject(result[0].moistureExpansion);
    }
  });

  it('takes over from the straight yarns what it divides the undulated ones by', () => {
    const { steps } = worked((working) => fabricPlies({ ...cloth, ...kinds['crimped by its geometry'] }, {}, working));
    const straight = named(steps, 'clothAverage').values;
    const crimp = named(steps, 'crimpFactors', 'crimp').values;
    for (const symbol of ['E_flat1', 'E_flat2']) {
      expect((crimp[symbol] ?? 0) / (straight[symbol] ?? 0)).toBeCloseTo(1, 11);
    }
    expect(named(steps, 'clothCrimped').values.k_warp).toBe(crimp.k_warp);
    expect(named(steps, 'wayOfWarp', 'crimp', 'warp').values.u_y).toBe(0.4);
  });
});

describe('the working of other reinforcements', () => {
  it.each(['invariants', 'tsai-pagano'] as const)('a mat by %s', (matModel) => {
    const { warpShare: _, ...plain } = cloth;
    const fabric: Fabric = { ...plain, architecture: 'mat', fibreVolumeFraction: 0.2, matModel };
    const { result, steps } = worked((working) => fabricPlies(fabric, {}, working));
    expect(misses(steps)).toEqual([]);
    const { E1, G12, nu12, G13, expansion, moistureExpansion } = result[0] ?? {};
    expect(named(steps, matModel === 'invariants' ? 'matInvariants' : 'matEighths').values).toMatchObject({
      E1,
      G12,
      nu12,
    });
    expect(named(steps, 'matShear').values).toMatchObject({ G13 });
    expect(named(steps, 'matExpansion').values).toMatchObject({ ...expansion });
    expect(named(steps, 'matSwelling').values).toMatchObject({ ...moistureExpansion });
  });

  it('a mat of strands that are known by their plane alone', () => {
    const strands = ply({ E1: 40e9, E2: 10e9, G12: 4e9, nu12: 0.3, thickness: 1e-3 });
    const { steps } = worked((working) => matPly(strands, 'invariants', working));
    expect(misses(steps)).toEqual([]);
    expect(steps.map(({ rule }) => rule)).toEqual(['reducedStiffness', 'invariants', 'matInvariants']);
  });

  it('a multiaxial: each layer has its part of the mass, and the parts add up', () => {
    const layers = [
      { angle: 45, share: 0.4 },
      { angle: -45, share: 0.6, fibre: expandingGlass },
    ];
    const { warpShare: _, ...plain } = cloth;
    const { steps } = worked((working) => fabricPlies({ ...plain, architecture: 'multiaxial', layers }, {}, working));
    expect(misses(steps)).toEqual([]);
    const masses = ['1', '2'].map((i) => named(steps, 'layerMass', 'layers', i).values.m_f ?? 0);
    expect(masses.reduce((sum, mass) => sum + mass)).toBeCloseTo(cloth.arealMass, 12);
  });

  it('a closed tool: the fraction is that of the fabrics in the gap', () => {
    const filling = { fibreThickness: fabricFibreThickness(cloth) * 4, gap: 1.2e-3, fixedThickness: 0.3e-3 };
    const { result, steps } = worked((working) => fibreVolumeFractionInGap(filling, working));
    expect(misses(steps)).toEqual([]);
    expect(named(steps, 'closedTool').values.V_f).toBe(result);
  });

  it.each([
    { architecture: 'ud', rule: 'listedPly' },
    { architecture: 'woven', rule: 'listedCloth' },
  ] as const)('a listed $architecture ply beside its constituents', ({ architecture, rule }) => {
    const listed = { E1: 126e9, E2: 9e9, G12: 4.6e9 };
    const claimed = { fibre: expanding, resin: swelling, fibreVolumeFraction: 0.6, architecture };
    const { result, steps } = worked((working) => plyConsistency(listed, claimed, working));
    expect(misses(steps)).toEqual([]);
    expect(named(steps, rule).values).toMatchObject({ d_E1: result.E1.departure, d_G12: result.G12.departure });
    expect(result).toEqual(plyConsistency(listed, claimed));
  });
});

describe('the working of the mass of a laminate', () => {
  it('is a sum over its plies', () => {
    const { warpShare: _, ...plain } = cloth;
    const plies = [...fabricPlies({ ...plain, architecture: 'ud' }), ...fabricPlies(cloth)];
    const { result, steps } = worked((working) => arealMass(laminate(plies), working));
    expect(misses(steps)).toEqual([]);
    expect(named(steps, 'laminateMass').values.m_lam).toBe(result.total);
    expect(named(steps, 'laminateConstituents').values).toEqual({ m_flam: result.fibre, m_mlam: result.resin });
    expect(result.total).toBeCloseTo((result.fibre ?? 0) + (result.resin ?? 0), 12);
  });

  it('is left out where a ply does not know its density', () => {
    const bare = ply({ E1: 40e9, E2: 10e9, G12: 4e9, nu12: 0.3, thickness: 1e-3 });
    expect(worked((working) => arealMass(laminate([bare]), working)).steps).toEqual([]);
  });
});
