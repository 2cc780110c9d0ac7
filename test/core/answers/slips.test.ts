import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SlipName } from '../../../packages/core/src/answers/index.js';
import type { Quantity } from '../../../packages/core/src/answers/quantities.js';
import { engineeringConstants, laminate, respond, stiffness } from '../../../packages/core/src/laminate/index.js';
import { reducedStiffness } from '../../../packages/core/src/material/index.js';
import { anyHomework, check, entryOf, type Homework, modelOf, numbersOf, resultsOf } from './support.js';

/** Slips that give one number by symmetry: one stands for the others. */
const alike: readonly (readonly SlipName[])[] = [
  ['unit', 'powerOfTen'],
  ['shearSign', 'anglesNegated', 'turnedBack', 'sign'],
  ['orderReversed', 'otherSide', 'heightSubtracted'],
];
const accepted = (name: SlipName): readonly SlipName[] => alike.find((family) => family.includes(name)) ?? [name];

type Slipped = ReadonlyMap<string, number>;

/** Numbers of a homework in which something was taken otherwise. */
const numbersWith = (homework: Homework): Slipped =>
  new Map([...numbersOf(modelOf(homework))].map(([key, { value }]) => [key, value]));

let told = 0;

/** Writes the slipped numbers into a sheet wherever they show, and expects the slip to be named for each. */
function expectNamed(name: SlipName, homework: Homework, slipped: Slipped, seed: number): void {
  const model = modelOf(homework);
  const all = resultsOf(model);
  const largest = (kind: string): number =>
    Math.max(...all.filter((one) => one.kind === kind).map(({ value }) => Math.abs(value)));
  const shown = all.filter(({ key, kind, value }) => {
    const other = slipped.get(key);
    return (
      other !== undefined &&
      Math.abs(other - value) > 0.012 * Math.abs(value) &&
      (name === 'powerOfTen' || Math.abs(other) > 1e-4 * largest(kind))
    );
  });
  const step = Math.max(1, Math.ceil(shown.length / 12));
  const chosen = shown.filter((_, i) => i % step === seed % step);
  if (chosen.length === 0) return;
  const { answers } = check(
    model,
    chosen.map((one) => entryOf(one, slipped.get(one.key) ?? 0, 5)),
  );
  for (const { key, verdict, explanations } of answers) {
    const names = explanations.flatMap(({ slips }) => slips.map((slip) => slip.name));
    expect(verdict, `${key} ${names}`).toBe('slip');
    expect(
      names.some((one) => accepted(name).includes(one)),
      `${key}: ${names} without ${name}`,
    ).toBe(true);
    told++;
  }
}

/** Runs a slip over random homeworks; a slip that never shows would prove nothing. */
function seeded(name: SlipName, slippedOf: (homework: Homework) => Slipped | undefined): void {
  told = 0;
  fc.assert(
    fc.property(anyHomework, fc.nat(1000), (homework, seed) => {
      const slipped = slippedOf(homework);
      if (slipped !== undefined) expectNamed(name, homework, slipped, seed);
    }),
    { numRuns: 10 },
  );
  expect(told).toBeGreaterThan(15);
}

const turned = (homework: Homework, turn: (angle: number) => number): Slipped =>
  numbersWith({ ...homework, angles: homework.angles.map(turn) });

describe('a homework computed with another input', () => {
  it.each<[SlipName, (homework: Homework) => Slipped | undefined]>([
    ['orderReversed', (one) => (one.symmetric ? undefined : numbersWith({ ...one, angles: one.angles.toReversed() }))],
    ['anglesNegated', (one) => turned(one, (angle) => -angle)],
    ['angleFromY', (one) => turned(one, (angle) => 90 - angle)],
    ['radians', (one) => turned(one, (angle) => ((angle * 180) / Math.PI) % 360)],
    ['plyThickness', (one) => numbersWith({ ...one, thickness: 2 * one.thickness })],
    [
      'plyThickness',
      (one) => numbersWith({ ...one, thickness: one.thickness * one.angles.length * (one.symmetric ? 2 : 1) }),
    ],
    ['halfStack', (one) => (one.symmetric ? numbersWith({ ...one, symmetric: false }) : undefined)],
    ['heatSign', (one) => (one.heat === 0 ? undefined : numbersWith({ ...one, heat: -one.heat }))],
    ['heatForgotten', (one) => (one.heat === 0 ? undefined : numbersWith({ ...one, heat: 0 }))],
    ['poisson', (one) => numbersWith({ ...one, nu12: (one.nu12 * one.E2) / one.E1 })],
  ])('%s is named', (name, slippedOf) => {
    seeded(name, slippedOf);
  });
});

/** The right numbers, some of them changed. */
const changed = (homework: Homework, change: (one: Quantity) => number | undefined): Slipped =>
  new Map(
    [...numbersOf(modelOf(homework)).values()].flatMap((one) => {
      const value = change(one);
      return value === undefined ? [] : [[one.key, value] as const];
    }),
  );

describe('right numbers written down wrongly', () => {
  it.each([1e3, 1e-3, 1e6, 1e-6, 1e9])('a factor of %d is named', (factor) => {
    seeded('powerOfTen', (one) => changed(one, ({ value }) => value * factor));
  });

  it('the inch in place of the millimetre is named', () => {
    const model = modelOf({
      ...{ E1: 140, E2: 10, G12: 5, nu12: 0.3, thickness: 0.25, heat: 0 },
      ...{ angles: [0, 30], symmetric: false, N: [100, 0, 0], M: [0, 0, 0] },
    });
    const E = numbersOf(model).get('laminates.skin.Ex');
    if (E === undefined) throw new Error('no Ex');
    const { answers } = check(model, [
      `  - { quantity: Ex, value: ${(E.value / 6.894757293e9).toPrecision(4)}, unit: GPa }`,
    ]);
    expect(answers[0]?.explanations[0]?.slips).toEqual([{ name: 'unit', detail: 'Msi' }]);
  });

  it('the other sign of shear is named', () => {
    seeded('shearSign', (one) =>
      changed(one, ({ symbol, value }) =>
        /^(tau12|gamma12|tau_xy|gamma0_xy|Qbar16|A26|D16)$/.test(symbol) ? -value : undefined,
      ),
    );
  });

  it('z that points the other way is named in B and in the curvatures', () => {
    seeded('otherSide', (one) =>
      changed(one, ({ symbol, value }) => (/^B\d\d$|^b\d\d$|^kappa_/.test(symbol) ? -value : undefined)),
    );
  });

  it('the shear strain of the tensor is named', () => {
    seeded('tensorShear', (one) =>
      changed(one, ({ symbol, value }) => (/^gamma|^kappa_xy$|^alpha_xy$/.test(symbol) ? value / 2 : undefined)),
    );
  });
});

const square = (m: string): readonly (readonly string[])[] => [
  [`${m}11`, `${m}12`, `${m}16`],
  [`${m}12`, `${m}22`, `${m}26`],
  [`${m}16`, `${m}26`, `${m}66`],
];
const six = ['11', '12', '16', '22', '26', '66'];
const skin = (symbol: string): string => `laminates.skin.${symbol}`;

/** Product of square matrices of three. */
const times = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] =>
  a.map((row) => [0, 1, 2].map((j) => row.reduce((sum, value, k) => sum + value * (b[k]?.[j] ?? 0), 0)));

describe('a homework computed with another formula', () => {
  it('z from the tool face: B larger by A h/2, D by B h + A h²/4, and a softer plate', () => {
    seeded('fromToolFace', (one) => {
      const right = numbersWith(one);
      const at = (symbol: string): number => right.get(skin(symbol)) ?? Number.NaN;
      const h = at('h');
      return new Map([
        ...six.map((ij) => [skin(`B${ij}`), at(`B${ij}`) + (at(`A${ij}`) * h) / 2] as const),
        ...six.map((ij) => [skin(`D${ij}`), at(`D${ij}`) + at(`B${ij}`) * h + (at(`A${ij}`) * h * h) / 4] as const),
        ...['11', '22'].map((ij, i) => {
          const compliance = at(`a${ij}`) - h * at(`b${ij}`) + (at(`d${ij}`) * h * h) / 4;
          return [skin(i === 0 ? 'Ex' : 'Ey'), 1 / (h * compliance)] as const;
        }),
      ]);
    });
  });

  it('D without t³/12', () => {
    seeded('ownInertia', (one) => {
      const { plies } = modelOf(one).laminates[0]?.laminate ?? { plies: [] };
      const right = numbersWith(one);
      return new Map(
        six.map((ij) => {
          const own = plies.reduce(
            (sum, { thickness }, k) =>
              sum + ((right.get(skin(`plies.${k + 1}.Qbar${ij}`)) ?? Number.NaN) * thickness ** 3) / 12,
            0,
          );
          return [skin(`D${ij}`), (right.get(skin(`D${ij}`)) ?? Number.NaN) - own] as const;
        }),
      );
    });
  });

  it('A and D inverted as if B were zero', () => {
    seeded('couplingIgnored', (one) => {
      const [model] = modelOf(one).laminates;
      if (model === undefined) return undefined;
      const { inPlaneRestrained, flexuralRestrained } = engineeringConstants(stiffness(model.laminate));
      return new Map([
        ...Object.entries(inPlaneRestrained).map(([name, value]) => [skin(name), value] as const),
        ...Object.entries(flexuralRestrained).map(([name, value]) => [skin(`${name}b`), value] as const),
      ]);
    });
  });

  it('one over a component of the stiffness', () => {
    seeded('singleInverse', (one) => {
      const right = numbersWith(one);
      const places = ['11', '22', '66'];
      return new Map([
        ...places.map((ij) => [skin(`a${ij}`), 1 / (right.get(skin(`A${ij}`)) ?? Number.NaN)] as const),
        ...places.map((ij) => [skin(`d${ij}`), 1 / (right.get(skin(`D${ij}`)) ?? Number.NaN)] as const),
      ]);
    });
  });

  it('Q turned by the rotation of stress on both sides', () => {
    seeded('tensorShear', (one) => {
      const { plies } = modelOf(one).laminates[0]?.laminate ?? { plies: [] };
      return new Map(
        plies.flatMap((ply, k) => {
          const T = (angle: number): number[][] => {
            const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
            return [
              [c * c, s * s, 2 * s * c],
              [s * s, c * c, -2 * s * c],
              [-s * c, s * c, c * c - s * s],
            ];
          };
          const [Q11, Q12, Q22, Q66] = reducedStiffness(ply);
          const Q = [
            [Q11, Q12, 0],
            [Q12, Q22, 0],
            [0, 0, Q66],
          ];
          const wrong = times(times(T(-ply.angle), Q), T(ply.angle));
          return square('Qbar').flatMap((row, i) =>
            row.flatMap((symbol, j) =>
              j < i ? [] : [[skin(`plies.${k + 1}.${symbol}`), wrong[i]?.[j] ?? 0] as const],
            ),
          );
        }),
      );
    });
  });

  it('the strain turned by the rotation of stress, with the stresses that follow', () => {
    seeded('tensorShear', (one) => {
      const right = numbersWith(one);
      const { plies } = modelOf(one).laminates[0]?.laminate ?? { plies: [] };
      return new Map(
        plies.flatMap((ply, k) => {
          const key = (symbol: string): string => `loads.pull.plies.${k + 1}.top.${symbol}`;
          const at = (symbol: string): number => right.get(key(symbol)) ?? 0;
          const [c, s] = [Math.cos((ply.angle * Math.PI) / 180), Math.sin((ply.angle * Math.PI) / 180)];
          const [x, y, xy] = [at('eps_x'), at('eps_y'), at('gamma_xy')];
          const eps1 = c * c * x + s * s * y + 2 * s * c * xy;
          const eps2 = s * s * x + c * c * y - 2 * s * c * xy;
          const gamma12 = s * c * (y - x) + (c * c - s * s) * xy;
          const [Q11, Q12, Q22, Q66] = reducedStiffness(ply);
          const [own1, own2] = [eps1 - at('free1'), eps2 - at('free2')];
          return [
            [key('eps1'), eps1],
            [key('gamma12'), gamma12],
            [key('sigma1'), Q11 * own1 + Q12 * own2],
            [key('sigma2'), Q12 * own1 + Q22 * own2],
            [key('tau12'), Q66 * gamma12],
          ] as const;
        }),
      );
    });
  });

  /** Strain, and stress of it, at the tool side of each ply: from the strain in laminate axes and the angle by which it is turned. */
  const recovered = (
    one: Homework,
    strainOf: (at: (symbol: string) => number) => readonly [number, number, number],
    turn: (angle: number) => number,
  ): Slipped => {
    const right = numbersWith(one);
    const { plies } = modelOf(one).laminates[0]?.laminate ?? { plies: [] };
    return new Map(
      plies.flatMap((ply, k) => {
        const key = (symbol: string): string => `loads.pull.plies.${k + 1}.top.${symbol}`;
        const at = (symbol: string): number => right.get(key(symbol)) ?? 0;
        const strain = strainOf(at);
        const [x, y, xy] = strain;
        const angle = (turn(ply.angle) * Math.PI) / 180;
        // By Mohr's circle: the mean stays, the difference turns by twice the angle.
        const mean = (x + y) / 2;
        const along = ((x - y) / 2) * Math.cos(2 * angle) + (xy / 2) * Math.sin(2 * angle);
        const gamma12 = (y - x) * Math.sin(2 * angle) + xy * Math.cos(2 * angle);
        const [Q11, Q12, Q22, Q66] = reducedStiffness(ply);
        const [own1, own2] = [mean + along - at('free1'), mean - along - at('free2')];
        return [
          ...['eps_x', 'eps_y', 'gamma_xy'].map((symbol, i) => [key(symbol), strain[i] ?? 0] as const),
          [key('eps1'), mean + along],
          [key('eps2'), mean - along],
          [key('gamma12'), gamma12],
          [key('sigma1'), Q11 * own1 + Q12 * own2],
          [key('sigma2'), Q12 * own1 + Q22 * own2],
          [key('tau12'), Q66 * gamma12],
        ] as const;
      }),
    );
  };

  it('the strain turned into the axes of the ply by the angle with the other sign, the laminate being right', () => {
    seeded('turnedBack', (one) =>
      recovered(
        one,
        (at) => [at('eps_x'), at('eps_y'), at('gamma_xy')],
        (angle) => -angle,
      ),
    );
  });

  it('the mid-plane strain less z times the curvature', () => {
    seeded('heightSubtracted', (one) =>
      recovered(
        one,
        (at) => [
          at('eps0_x') - at('z') * at('kappa_x'),
          at('eps0_y') - at('z') * at('kappa_y'),
          at('gamma0_xy') - at('z') * at('kappa_xy'),
        ],
        (angle) => angle,
      ),
    );
  });

  it('the stiffness of the ply turned by the angle with the other sign, the ply being right', () => {
    seeded('turnedBack', (one) => {
      const model = modelOf(one);
      const [{ laminate: known } = { laminate: laminate([]) }] = model.laminates;
      // What is right of the ply is its expansion: without heat the laminate is that of the other angles.
      if (one.heat !== 0) return undefined;
      const other = numbersWith({ ...one, angles: one.angles.map((angle) => -angle) });
      const at = (symbol: string): number => other.get(`loads.pull.${symbol}`) ?? 0;
      return new Map(
        known.plies.flatMap((ply, k) => {
          const key = (symbol: string): string => `loads.pull.plies.${k + 1}.bottom.${symbol}`;
          const z = other.get(key('z')) ?? 0;
          const x = at('eps0_x') + z * at('kappa_x');
          const y = at('eps0_y') + z * at('kappa_y');
          const xy = at('gamma0_xy') + z * at('kappa_xy');
          const angle = (2 * ply.angle * Math.PI) / 180;
          return [
            [key('eps1'), (x + y) / 2 + ((x - y) / 2) * Math.cos(angle) + (xy / 2) * Math.sin(angle)],
            [key('gamma12'), (y - x) * Math.sin(angle) + xy * Math.cos(angle)],
          ] as const;
        }),
      );
    });
  });

  it('nu21 from nu12 by the moduli the other way up, with the stiffness that follows', () => {
    seeded('poisson', (one) => {
      const { plies } = modelOf(one).laminates[0]?.laminate ?? { plies: [] };
      return new Map(
        plies.flatMap(({ E1, E2, nu12 }, k) => {
          const nu21 = (nu12 * E1) / E2;
          const values = { nu21, Q11: E1 / (1 - nu12 * nu21), Q22: E2 / (1 - nu12 * nu21) };
          return Object.entries(values).map(([symbol, value]) => [skin(`plies.${k + 1}.${symbol}`), value] as const);
        }),
      );
    });
  });

  it('the free strain not taken off before the stress', () => {
    seeded('heatForgotten', (one) => {
      if (one.heat === 0) return undefined;
      const model = modelOf(one);
      const [load] = model.loads;
      const [skinModel] = model.laminates;
      if (load === undefined || skinModel === undefined) return undefined;
      const { N = [0, 0, 0], M = [0, 0, 0] } = load;
      const { plies } = respond(skinModel.laminate, { N, M, temperatureChange: one.heat });
      return new Map(
        plies.flatMap(({ top }, k) => {
          const ply = skinModel.laminate.plies[k];
          if (ply === undefined) return [];
          const [Q11, Q12, Q22] = reducedStiffness(ply);
          const [eps1, eps2] = top.strain12;
          return [
            [`loads.pull.plies.${k + 1}.top.sigma1`, Q11 * eps1 + Q12 * eps2],
            [`loads.pull.plies.${k + 1}.top.sigma2`, Q12 * eps1 + Q22 * eps2],
          ] as const;
        }),
      );
    });
  });

  it('half of the sums of a symmetric stack, with z as it is', () => {
    seeded('halfStack', (one) => {
      if (!one.symmetric) return undefined;
      const { plies, thickness } = modelOf(one).laminates[0]?.laminate ?? laminate([]);
      const right = numbersWith(one);
      const written = plies.slice(0, plies.length / 2);
      return new Map(
        six.flatMap((ij) => {
          let z = -thickness / 2;
          const sums = [0, 0, 0];
          written.forEach(({ thickness: t }, k) => {
            const Q = right.get(skin(`plies.${k + 1}.Qbar${ij}`)) ?? Number.NaN;
            sums[0]! += Q * t;
            sums[2]! += (Q * ((z + t) ** 3 - z ** 3)) / 3;
            z += t;
          });
          return [
            [skin(`A${ij}`), sums[0]!],
            [skin(`D${ij}`), sums[2]!],
          ] as const;
        }),
      );
    });
  });
});

describe('the height of a ply', () => {
  const model = modelOf({
    ...{ E1: 181, E2: 10.3, G12: 7.17, nu12: 0.28, thickness: 5, heat: 0 },
    ...{ angles: [0, 30, -45], symmetric: false, N: [100, 20, 10], M: [0, 0, 0] },
  });

  it.each<[string, string, SlipName]>([
    ['laminates.skin.plies.1.z_k', '5 mm', 'otherSide'],
    ['laminates.skin.plies.3.z_k', '-5 mm', 'otherSide'],
    ['laminates.skin.plies.1.z_k', '2.5 mm', 'fromToolFace'],
    ['laminates.skin.plies.2.z_k', '7.5 mm', 'fromToolFace'],
    ['laminates.skin.plies.3.z_k', '12.5 mm', 'fromToolFace'],
    ['loads.pull.plies.1.top.z', '7.5 mm', 'otherSide'],
    ['loads.pull.plies.1.bottom.z', '5 mm', 'fromToolFace'],
  ])('%s answered by %s: %s, however few digits it has', (key, value, name) => {
    const { answers } = check(model, [`  - { quantity: ${key}, value: ${value} }`]);
    expect(answers[0]?.explanations.flatMap(({ slips }) => slips.map((slip) => slip.name))).toContain(name);
  });
});

describe('several slips', () => {
  const three: Homework = {
    ...{ E1: 181, E2: 10.3, G12: 7.17, nu12: 0.28, thickness: 0.125, heat: -75 },
    ...{ angles: [0, 30, -45], symmetric: false, N: [100, 20, 10], M: [0, 0, 0] },
  };

  it('that give the same number are all named, the common one first', () => {
    // In one ply at 45° the angle from y is the same; its sign turns D16, and so does the sign of shear: one stands for both.
    const model = modelOf({ ...three, angles: [45] });
    const all = numbersOf(model);
    const D16 = all.get(skin('D16')) as Quantity;
    const names = (value: number): unknown[] =>
      check(model, [entryOf(D16, value, 5)]).answers.flatMap(({ explanations }) =>
        explanations.map(({ slips }) => slips.map(({ name }) => name).join(' ')),
      );
    expect(names(-D16.value)).toEqual(['shearSign']);
    // Twice the thickness gives eight times D.
    expect(names(8 * D16.value)).toEqual(['plyThickness']);
    const A66 = all.get(skin('A66')) as Quantity;
    const twice = check(model, [entryOf(A66, 2 * A66.value, 5)]).answers[0];
    expect(twice?.explanations.map(({ slips }) => slips[0]?.name)).toEqual(['tensorShear', 'plyThickness']);
  });

  it('made together are named when only one pair gives the number', () => {
    const model = modelOf(three);
    const reversed = numbersWith({ ...three, angles: three.angles.toReversed() });
    const eps = numbersOf(model).get('loads.pull.plies.1.top.sigma2');
    if (eps === undefined) throw new Error('no stress');
    const { answers } = check(model, [entryOf(eps, (reversed.get(eps.key) ?? 0) * 1e3, 6)]);
    expect(answers[0]?.explanations.map(({ slips }) => slips)).toEqual([
      [{ name: 'orderReversed' }, { name: 'powerOfTen', detail: '3' }],
    ]);
  });

  it('of one kind in a sheet are counted, and stand first with each answer', () => {
    const model = modelOf(three);
    const reversed = numbersWith({ ...three, angles: three.angles.toReversed() });
    const keys = ['laminates.skin.B11', 'laminates.skin.B66', 'loads.pull.kappa_x', 'loads.pull.plies.2.top.sigma1'];
    const all = numbersOf(model);
    const entries = keys.map((key) => entryOf(all.get(key) as Quantity, reversed.get(key) ?? 0, 5));
    const { answers, shared, counts } = check(model, [...entries, '  - { quantity: A11, value: 1.234 N/mm }']);
    expect(counts).toEqual({ right: 0, rounded: 0, slip: 4, wrong: 1 });
    expect(shared[0]).toEqual({ name: 'orderReversed', count: 4 });
    for (const { explanations } of answers.slice(0, 4)) {
      expect(explanations[0]?.slips[0]?.name).toBe('orderReversed');
    }
  });
});

describe('a slip that explains several answers', () => {
  const homework: Homework = {
    ...{ E1: 181, E2: 10.3, G12: 7.17, nu12: 0.28, thickness: 0.125, heat: -75 },
    ...{ angles: [0, 30, -50], symmetric: false, N: [100, 20, 10], M: [1, 2, 3] },
  };
  const model = modelOf(homework);
  const all = numbersOf(model);
  const sheetOf = (slipped: Slipped, keys: readonly string[]) =>
    check(
      model,
      keys.map((key) => entryOf(all.get(key) as Quantity, slipped.get(key) ?? 0, 5)),
    );

  it('claims those too that another would explain by symmetry: A16, B16 and D16 when all angles have the other sign', () => {
    const shear = ['A16', 'B16', 'D16', 'A26'].map(skin);
    const others = ['loads.pull.eps0_x', 'loads.pull.kappa_y', 'loads.pull.plies.2.top.sigma1', skin('a16')];
    const { answers, shared, counts } = sheetOf(numbersWith({ ...homework, angles: [0, -30, 50] }), [
      ...shear,
      ...others,
    ]);
    expect(counts.slip).toBe(8);
    expect(shared[0]).toEqual({ name: 'anglesNegated', count: 8 });
    expect(shared.map(({ name }) => name)).not.toContain('shearSign');
    for (const { explanations } of answers) expect(explanations[0]?.slips).toEqual([{ name: 'anglesNegated' }]);
  });

  it('leaves them to the more common one where it explains no more', () => {
    const right = numbersWith(homework);
    const keys = ['A16', 'B16', 'D16'].map(skin);
    const { shared } = sheetOf(new Map(keys.map((key) => [key, -(right.get(key) ?? 0)])), keys);
    expect(shared).toEqual([{ name: 'shearSign', count: 3 }]);
  });
});

describe('the right number of something else', () => {
  const model = modelOf({
    ...{ E1: 181, E2: 10.3, G12: 7.17, nu12: 0.28, thickness: 0.125, heat: -75 },
    ...{ angles: [0, 30, -45], symmetric: false, N: [100, 20, 10], M: [3, 0, 0] },
  });
  const all = numbersOf(model);

  it.each<[SlipName, string, string]>([
    ['faceOrAxes', 'loads.pull.plies.2.top.sigma1', 'loads.pull.plies.2.top.sigma_x'],
    ['faceOrAxes', 'loads.pull.plies.2.top.sigma1', 'loads.pull.plies.2.bottom.sigma1'],
    ['bendingForInPlane', 'laminates.skin.Ex', 'laminates.skin.Exb'],
    ['poisson', 'laminates.skin.nuxy', 'laminates.skin.nuyx'],
    ['poisson', 'laminates.skin.plies.1.nu21', 'laminates.skin.plies.1.nu12'],
  ])('%s: %s is answered by %s', (name, key, other) => {
    const { answers } = check(model, [entryOf(all.get(key) as Quantity, all.get(other)?.value ?? 0, 5)]);
    expect(answers[0]?.explanations.map(({ slips }) => slips[0])).toContainEqual({ name, detail: other });
  });

  it('is found too for a number of the report, by its path there', () => {
    const reversed = modelOf({
      ...{ E1: 181, E2: 10.3, G12: 7.17, nu12: 0.28, thickness: 0.125, heat: -75 },
      ...{ angles: [-45, 30, 0], symmetric: false, N: [100, 20, 10], M: [3, 0, 0] },
    });
    const B11 = numbersOf(reversed).get(skin('B11'))?.value ?? 0;
    const { answers } = check(model, [`  - { quantity: laminates.skin.B.0.0, value: ${B11.toPrecision(5)} N }`]);
    expect(answers[0]?.explanations[0]?.slips[0]?.name).toBe('orderReversed');
  });
});

describe('an answer with few digits', () => {
  it('is not read as a slip: one digit never, a computed slip only from three on', () => {
    fc.assert(
      fc.property(anyHomework, fc.nat(1000), (homework, seed) => {
        const model = modelOf(homework);
        const all = resultsOf(model);
        const one = all[seed % all.length] as Quantity;
        const { answers } = check(model, [entryOf(one, one.value * 1000, 1)]);
        expect(answers[0]?.verdict).not.toBe('slip');
      }),
      { numRuns: 25 },
    );
  });
});
