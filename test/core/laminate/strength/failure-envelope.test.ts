import { describe, expect, it } from 'vitest';
import { type Load, laminate } from '../../../../packages/core/src/laminate/index.js';
import {
  failure,
  failureCriteria,
  failureEnvelope,
  type LoadComponent,
} from '../../../../packages/core/src/laminate/strength/index.js';
import { plyOf, problemCode, stackOf } from '../plies.js';
import { carbon, glass } from './materials.js';

const stack = stackOf(carbon, '[0/±45/90]s', 0.125e-3);

describe('the envelope of first-ply failure', () => {
  it('is a closed polygon around the origin with the four half-axes on it', () => {
    for (const criterion of failureCriteria) {
      const { points } = failureEnvelope(stack, { components: ['Nx', 'Ny'], criterion, count: 24 });
      expect(points.length).toBe(25);
      expect(points[24]).toBe(points[0]);
      expect([points[0]!.y, points[6]!.x, points[12]!.y, points[18]!.x]).toEqual([0, 0, 0, 0]);
      const alone = (N: [number, number, number]) => failure(stack, { N }, criterion).ratio!;
      expect(points[0]!.x / alone([1, 0, 0])).toBeCloseTo(1, 12);
      expect(points[6]!.y / alone([0, 1, 0])).toBeCloseTo(1, 12);
      expect(-points[12]!.x / alone([-1, 0, 0])).toBeCloseTo(1, 12);
      expect(-points[18]!.y / alone([0, -1, 0])).toBeCloseTo(1, 12);
      for (let i = 0; i < 24; i++) {
        const [p, q] = [points[i]!, points[i + 1]!];
        expect(p.x * q.y - p.y * q.x, `${criterion} ${i}`).toBeGreaterThan(0);
      }
    }
  });

  it('consists of loads that just break a ply, the one it names, with residual stress and in any two components', () => {
    const pairs: [LoadComponent, LoadComponent][] = [
      ['Nx', 'Nxy'],
      ['Ny', 'My'],
      ['Mx', 'Mxy'],
    ];
    const other = stackOf(glass, '[0/30/-60]', 0.25e-3);
    const place = (name: LoadComponent, value: number): Load => {
      const at = ['x', 'y', 'xy'].map((axis) => (name.slice(1) === axis ? value : 0)) as [number, number, number];
      return name.startsWith('N') ? { N: at } : { M: at };
    };
    for (const components of pairs) {
      const { points } = failureEnvelope(other, { components, criterion: 'puck', count: 16, temperatureChange: -50 });
      for (const { x, y, ply, face, modeKey } of points) {
        const [p, q] = [place(components[0], x), place(components[1], y)];
        const sum = (a: Load['N'], b: Load['N']) =>
          [0, 1, 2].map((i) => (a?.[i] ?? 0) + (b?.[i] ?? 0)) as [number, number, number];
        const load = { N: sum(p.N, q.N), M: sum(p.M, q.M), temperatureChange: -50 };
        const found = failure(other, load, 'puck');
        expect(found.ratio).toBeCloseTo(1, 9);
        expect(found).toMatchObject({ ply, face, modeKey });
      }
    }
  });

  it('of a quasi-isotropic laminate is the same with x and y exchanged', () => {
    const { points } = failureEnvelope(stack, { components: ['Nx', 'Ny'], criterion: 'tsaiWu', count: 48 });
    points.slice(0, 48).forEach(({ x, y }, i) => {
      const mirrored = points[(48 + 12 - i) % 48]!;
      expect(mirrored.x / 1e5).toBeCloseTo(y / 1e5, 9);
      expect(mirrored.y / 1e5).toBeCloseTo(x / 1e5, 9);
    });
  });

  it('shrinks to the origin, with a warning, where cure alone breaks a ply', () => {
    const { points, notes } = failureEnvelope(stack, {
      components: ['Nx', 'Ny'],
      criterion: 'maxStress',
      count: 8,
      temperatureChange: -400,
    });
    for (const { x, y } of points) expect([x, y]).toEqual([0, 0]);
    expect(notes.some(({ level }) => level === 'warning')).toBe(true);
  });

  it('has 72 directions unless told otherwise', () => {
    expect(failureEnvelope(stack, { components: ['Mx', 'Nx'], criterion: 'maxStress' }).points.length).toBe(73);
  });

  it('is refused for one component twice, unknown names, odd counts, and plies without strengths', () => {
    const code = (options: object) =>
      problemCode(() => failureEnvelope(stack, { components: ['Nx', 'Ny'], criterion: 'maxStress', ...options }));
    expect(code({ components: ['Nx', 'Nx'] })).toBe('contradiction');
    expect(code({ components: ['Nx', 'Nz'] })).toBe('not-a-choice');
    expect(code({ criterion: 'none' })).toBe('not-a-choice');
    expect(code({ count: 10 })).toBe('out-of-range');
    expect(code({ count: 3604 })).toBe('out-of-range');
    expect(code({ count: Number.NaN })).toBe('out-of-range');
    const { strengths: _, ...bare } = carbon;
    const plain = stackOf(bare, '[0]', 1e-3);
    expect(problemCode(() => failureEnvelope(plain, { components: ['Nx', 'Ny'], criterion: 'puck' }))).toBe(
      'not-computable',
    );
  });

  it('leaves out a core without strengths, with a note', () => {
    const { strengths: _, ...bare } = carbon;
    const half = laminate([{ ...plyOf(bare, 0, 1e-3), core: true }, plyOf(carbon, 0, 1e-3)]);
    const { points, notes } = failureEnvelope(half, { components: ['Nx', 'Mx'], criterion: 'puck', count: 4 });
    expect(points.every(({ ply }) => ply === 2)).toBe(true);
    expect(notes.some(({ text }) => text.includes('left out'))).toBe(true);
  });
});
