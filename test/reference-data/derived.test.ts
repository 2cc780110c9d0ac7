import { describe, expect, it } from 'vitest';
import { parseQuantity, toSI } from '../../packages/core/src/quantity/index.js';
import { curedPlyExamples, type Table, tables } from './tables.js';

const number = (table: Table, id: string, name: string): number => table[id]?.values[name]?.value ?? Number.NaN;
const si = (table: Table, id: string, name: string): number => {
  const found = table[id]?.values[name];
  return found === undefined ? Number.NaN : toSI(found.value, found.unit);
};

describe('values marked as derived follow from the others', () => {
  const isotropic = Object.entries(tables.fibres).filter(([, fibre]) => fibre.values.G12?.basis === 'derived');

  it.each(isotropic)('isotropic fibre %s: G12 = E1 / (2 (1 + nu12)), E2 = E1, nu23 = nu12', (id) => {
    const E1 = number(tables.fibres, id, 'E1');
    const nu12 = number(tables.fibres, id, 'nu12');
    expect(Math.abs(number(tables.fibres, id, 'G12') - E1 / (2 * (1 + nu12)))).toBeLessThanOrEqual(0.005);
    expect(number(tables.fibres, id, 'E2')).toBe(E1);
    expect(number(tables.fibres, id, 'nu23')).toBe(nu12);
    expect(number(tables.fibres, id, 'alpha2')).toBe(number(tables.fibres, id, 'alpha1'));
  });

  it('glass fibres are the isotropic ones', () => {
    expect(isotropic.map(([id]) => id).sort()).toEqual(['e-glass', 'e-glass-74', 'e-glass-80', 's-glass']);
  });

  it.each(['carbon-standard', 'carbon-225'])('%s: nu23 = E2 / (2 G23) - 1 with G23 = 7 GPa', (id) => {
    expect(number(tables.fibres, id, 'nu23')).toBeCloseTo(number(tables.fibres, id, 'E2') / 14 - 1, 4);
  });

  const denierThreads = Object.entries(tables.threads).flatMap(([id, thread]) => {
    const size = thread.values.linearDensity;
    return size?.basis === 'derived' ? [[id, size] as const] : [];
  });

  it.each(denierThreads)('thread %s: tex = denier / 9', (_id, size) => {
    const denier = Number.parseInt(size.note ?? '', 10);
    expect(size.value).toBeCloseTo(denier / 9, 9);
    expect(toSI(size.value, 'tex')).toBeCloseTo(toSI(denier, 'denier'), 12);
  });

  it('a thread named after its size has that size', () => {
    const named = Object.keys(tables.threads).filter((id) => id.endsWith('-tex'));
    expect(named.length).toBeGreaterThan(10);
    for (const id of named)
      expect(Math.round(number(tables.threads, id, 'linearDensity')), id).toBe(Number(/(\d+)-tex$/.exec(id)?.[1]));
  });
});

describe('the tables agree with first principles', () => {
  const infused = [
    ['ud-eglass-epoxy-infused', 73, 2540],
    ['ud-carbon-epoxy-infused', 230, 1780],
  ] as const;

  it.each(infused)('%s: E1 and density are those of half fibre (%d GPa, %d kg/m^3) and half resin', (id, Ef, rhof) => {
    expect(Math.abs(number(tables.plies, id, 'E1') - (Ef + 3.2) / 2)).toBeLessThanOrEqual(0.5);
    expect(number(tables.plies, id, 'density')).toBe((rhof + 1150) / 2);
  });

  it('rows said to reproduce do so to 2 % by the rule of mixtures', () => {
    const mixture = (ply: string, Ef: number, Em: number): number => {
      const Vf = number(tables.plies, ply, 'Vf');
      return (Vf * Ef + (1 - Vf) * Em) / number(tables.plies, ply, 'E1');
    };
    const resin = number(tables.resins, 'epoxy-335', 'E');
    expect(Math.abs(mixture('ud-eglass-epoxy-45', number(tables.fibres, 'e-glass-74', 'E1'), resin) - 1)).toBeLessThan(
      0.02,
    );
    expect(
      Math.abs(mixture('ud-carbon-epoxy-138', number(tables.fibres, 'carbon-standard', 'E1'), resin) - 1),
    ).toBeLessThan(0.02);
    expect(Math.abs(mixture('ud-aramid-epoxy-76', 124, resin) - 1)).toBeLessThan(0.02);
  });

  it('rows said to contradict their constituents do: E1 of the mixture is off by more than 4 %', () => {
    const Vf = number(tables.plies, 'ud-carbon-epoxy-181', 'Vf');
    const E1 = Vf * number(tables.fibres, 'carbon-standard', 'E1') + (1 - Vf) * 3.4;
    expect(E1).toBeCloseTo(162, 0);
    const fibre = number(tables.fibres, 'carbon-225', 'E1');
    const mixed = 0.6 * fibre + 0.4 * number(tables.resins, 'epoxy-42', 'E');
    expect(mixed).toBeCloseTo(136.7, 1);
    expect(mixed / number(tables.plies, 'ud-carbon-epoxy-126', 'E1') - 1).toBeGreaterThan(0.04);
  });

  it('cross-ply and biaxial rows follow from the infused unidirectional ply at Vf 0.50', () => {
    for (const fibre of ['eglass', 'carbon']) {
      const [E1 = 0, E2 = 0, nu12 = 0, G12 = 0] = ['E1', 'E2', 'nu12', 'G12'].map((name) =>
        number(tables.plies, `ud-${fibre}-epoxy-infused`, name),
      );
      const Q11 = E1 / (1 - (nu12 ** 2 * E2) / E1);
      const Q22 = (Q11 * E2) / E1;
      const Q12 = nu12 * Q22;
      const crossply = { A11: (Q11 + Q22) / 2, A12: Q12, G: G12 };
      const biax = {
        A11: (Q11 + Q22 + 2 * Q12) / 4 + G12,
        A12: (Q11 + Q22 + 2 * Q12) / 4 - G12,
        G: (Q11 + Q22 - 2 * Q12) / 4,
      };
      for (const [id, { A11, A12, G }] of Object.entries({
        [`crossply-${fibre}-epoxy-vf50`]: crossply,
        [`biax-${fibre}-epoxy-vf50`]: biax,
      })) {
        expect(Math.abs(number(tables.plies, id, 'E1') / (A11 - A12 ** 2 / A11) - 1), id).toBeLessThan(0.02);
        expect(Math.abs(number(tables.plies, id, 'nu12') / (A12 / A11) - 1), id).toBeLessThan(0.02);
        expect(Math.abs(number(tables.plies, id, 'G12') / G - 1), id).toBeLessThan(0.02);
      }
    }
  });

  it.each(['thickness27', 'thickness16', 'thickness36'])(
    'time to saturation of %s is 0.67 h^2 / D, to the day',
    (name) => {
      const hours = number(tables.hygrothermal, 'time-to-saturation', name);
      const h = Number(name.slice(-2)) * 1e-4;
      expect(Math.abs(hours / 24 - (0.67 * h ** 2) / 5e-13 / 86400)).toBeLessThanOrEqual(0.7);
    },
  );

  it('ounces per square yard of the cloth list convert to the grams printed beside them', () => {
    const printed = Object.entries(tables.fabrics).filter(
      ([, fabric]) => fabric.values.arealMass?.source === 'cloth-table',
    );
    expect(printed).toHaveLength(5);
    for (const [id, fabric] of printed) {
      const ounces = Number.parseFloat(fabric.values.arealMass?.note ?? '');
      expect(Math.abs(toSI(ounces, 'oz/yd^2') - si(tables.fabrics, id, 'arealMass')), id).toBeLessThanOrEqual(0.0005);
    }
  });
});

describe('cured plies from areal mass and fibre fraction', () => {
  const read = (text: unknown, kind: 'density' | 'arealMass'): number => {
    const found = parseQuantity(String(text), kind);
    return found.ok ? found.value : Number.NaN;
  };

  it.each(curedPlyExamples.map((example) => [example.id, example] as const))(
    '%s: t = w / (rho_f Vf), volumes add',
    (_id, { inputs, values }) => {
      const rhof = read(inputs.fibreDensity, 'density');
      const rhom = read(inputs.resinDensity, 'density');
      const Vf = Number(inputs.Vf);
      const w = inputs.arealMass === undefined ? Number.NaN : read(inputs.arealMass, 'arealMass');
      const t = w / (rhof * Vf);
      const density = rhof * Vf + rhom * (1 - Vf);
      const expected: Record<string, number> = {
        thickness: t,
        arealMass: w + rhom * (1 - Vf) * t,
        density,
        Wf: (rhof * Vf) / density,
      };
      for (const [key, row] of Object.entries(values)) {
        expect(Math.abs((expected[key] ?? Number.NaN) - toSI(row.value, row.unit)), key).toBeLessThanOrEqual(
          toSI(row.tolerance, row.unit) * (1 + 1e-9),
        );
      }
    },
  );
});
