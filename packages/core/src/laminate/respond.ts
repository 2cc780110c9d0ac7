import { Matrix } from 'ml-matrix';
import { choleskyOf } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { rotateStrain, rotateStress } from './axes.js';
import { type FreeStrain, freeStrain } from './free-strain.js';
import { STRESS_ROW, sigma1, sigma2, tau12, writeStressRows } from './kernel-ply-stress.js';
import { type Load, sixComponents } from './load.js';
import { entry } from './matrix3.js';
import { showDeformation, showPoint } from './respond-steps.js';
import { kindOfShape } from './shape-kind.js';
import { stiffness } from './stiffness.js';
import type { Laminate, PlyPoint, Stiffness, Vector3 } from './types.js';

/** A ply in a loaded laminate. `top` is the face toward the tool (the smaller z), `bottom` the face toward the bag. */
export interface PlyResponse {
  readonly name: string;
  readonly angle: number;
  readonly top: PlyPoint;
  readonly middle: PlyPoint;
  readonly bottom: PlyPoint;
}

/** Deformation and resultants of a loaded laminate, and the state of each ply from the tool side on. */
export interface Response {
  /** Mid-plane strain εx, εy, γxy. */
  readonly strain: Vector3;
  /** κx, κy, κxy, 1/m. */
  readonly curvature: Vector3;
  /** N/m; as given, or the reaction where strain was given. */
  readonly N: Vector3;
  /** N; as given, or the reaction where curvature was given. */
  readonly M: Vector3;
  readonly plies: readonly PlyResponse[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Response of a laminate to any mix of forces and deformations, heat and moisture.
 *
 * N + N_T = A e + B k, M + M_T = B e + D k, solved for what is not given; then e(z) = e + z k and σ = Qbar (e(z) - free).
 * Small deflections: a thin unsymmetric panel that heat bends by more than its thickness does not follow this linear answer.
 *
 * @param laminate plies from the tool side (z = -t/2)
 * @param load per component a force or a deformation; nothing given is a force of 0
 * @param working takes the steps down, when given; those of the stiffness are taken down by {@link stiffness}
 * @returns strain (engineering shear), curvature 1/m, N in N/m, M in N, ply stresses in Pa
 * @throws not-computable when a strain or force leaves the range of numbers; contradiction when a component is given both ways; not-computable when heat or moisture acts on a ply without
 *   the coefficient; not-admissible as {@link stiffness}; not-a-number, out-of-range for values that cannot be;
 *   wrong-type for a list that has not three components
 * @source Jones 1999, ch. 4; Kaw 2006, ch. 4
 */
export function respond(laminate: Laminate, load: Load, working?: Working): Response {
  const known = sixComponents(load);
  const free = freeStrain(laminate, load, working);
  const s = stiffness(laminate);
  const K = stiffness6(s);
  const held = [...free.N, ...free.M];

  const open = known.deformation.flatMap((value, i) => (value === null ? [i] : []));
  const given = known.deformation.map((value) => value ?? 0);
  // Curvature times thickness is of the size of a strain: rows and columns of the bending part are scaled by it.
  const size = (i: number): number => (i < 3 ? 1 : 1 / s.thickness);
  const product = (i: number, x: readonly number[]): number =>
    x.reduce((sum, value, j) => sum + value * (K[i]?.[j] ?? 0), 0);
  const factors = choleskyOf(new Matrix(open.map((i) => open.map((j) => (K[i]?.[j] ?? 0) * size(i) * size(j)))));
  if (factors === undefined) {
    return fail({
      code: 'not-admissible',
      message: 'the stiffness of the laminate is singular',
      allowed: 'positive moduli',
    });
  }
  const unknown = factors.solve(
    Matrix.columnVector(open.map((i) => ((known.force[i] ?? 0) + (held[i] ?? 0) - product(i, given)) * size(i))),
  );
  const deformation = [...given];
  open.forEach((i, k) => {
    deformation[i] = unknown.get(k, 0) * size(i);
  });
  const force = known.force.map((value, i) =>
    known.deformation[i] === null ? value : product(i, deformation) - (held[i] ?? 0),
  );

  const strain = vector(deformation, 0);
  const curvature = vector(deformation, 3);
  const N = vector(force, 0);
  const M = vector(force, 3);
  if (working !== undefined) showDeformation(s, { strain, curvature, N, M }, free, known, working);
  const plies = plyResponses(laminate, strain, curvature, free, working);
  demandFinite([...deformation, ...force, ...plies.flatMap(({ top, bottom }) => [...top.stress, ...bottom.stress])]);
  return {
    strain,
    curvature,
    N,
    M,
    plies,
    notes: [...s.notes, ...warpNotes(laminate, load, curvature)],
    sources: uniqueSources(s.sources, ['kaw-2006']),
  };
}

function demandFinite(values: readonly number[]): void {
  if (values.every(Number.isFinite)) return;
  fail({
    code: 'not-computable',
    message: 'the response to this load is not a finite number',
    allowed: 'loads and moduli whose products a number of 64 bits can hold',
  });
}

function plyResponses(
  laminate: Laminate,
  strain: Vector3,
  curvature: Vector3,
  free: FreeStrain,
  working?: Working,
): PlyResponse[] {
  const table = new Float64Array(laminate.plies.length * STRESS_ROW);
  laminate.plies.forEach((ply, k) => {
    writeStressRows(ply, [ply.angle], table, k * STRESS_ROW);
  });
  let lower = -laminate.thickness / 2;
  return laminate.plies.map((ply, k) => {
    const p = k * STRESS_ROW;
    const at = (height: number, face: 'top' | 'middle' | 'bottom'): PlyPoint => {
      const z = Math.abs(height) < 2 ** -50 * laminate.thickness ? 0 : height;
      const here: Vector3 = [strain[0] + z * curvature[0], strain[1] + z * curvature[1], strain[2] + z * curvature[2]];
      const free12 = free.at(k, z);
      const strain12 = rotateStrain(here, ply.angle);
      const freed = rotateStrain(free12, -ply.angle);
      const [x, y, xy] = minus(here, freed);
      const full: Vector3 = [sigma1(table, p, x, y, xy), sigma2(table, p, x, y, xy), tau12(table, p, x, y, xy)];
      const stress12 = aboveRounding(full, table, p, here, freed);
      const point: PlyPoint = {
        z,
        stress: plain(rotateStress(stress12, -ply.angle)),
        strain: here,
        stress12: plain(stress12),
        strain12: plain(strain12),
        mechanicalStrain12: plain(minus(strain12, free12)),
      };
      if (working !== undefined) {
        const ofHeat = free.acts ? { free1: free12[0], free2: free12[1], given: free.of(k) } : undefined;
        showPoint(point, ply, { strain, curvature }, ofHeat, working.part('plies', k + 1, face));
      }
      return point;
    };
    const top = lower;
    lower += ply.thickness;
    return {
      name: ply.name,
      angle: ply.angle,
      top: at(top, 'top'),
      middle: at(top + ply.thickness / 2, 'middle'),
      bottom: at(top + ply.thickness, 'bottom'),
    };
  });
}

/** A warning where the linear answer is a saddle that a thin panel leaves for a cylinder. */
function warpNotes(laminate: Laminate, load: Load, curvature: Vector3): Note[] {
  const unloaded = !load.N && !load.M && !load.strain && !load.curvature;
  const kind = kindOfShape(curvature, laminate.thickness);
  if (!unloaded || (kind !== 'saddle' && kind !== 'twist')) return [];
  return [
    {
      level: 'warning',
      text: `${causeOf(load)} curves the free laminate to a saddle. A panel whose edges would lift by more than its thickness snaps to a cylinder instead, curved about one axis only.`,
      source: 'hyer-1981',
    },
  ];
}

/** "Change of temperature", "Moisture" or both: what acts on a laminate without forces. */
function causeOf({ temperatureChange = 0, temperatureGradient = 0, moisture = 0 }: Load): string {
  const heat = temperatureChange !== 0 || temperatureGradient !== 0;
  const wet = [moisture].flat().some((value) => value !== 0);
  if (heat && wet) return 'Temperature with moisture';
  return wet ? 'Moisture' : 'A change of temperature';
}

function stiffness6({ A, B, D }: Stiffness): number[][] {
  return Array.from({ length: 6 }, (_, i) =>
    Array.from({ length: 6 }, (_, j) => {
      const block = i < 3 ? (j < 3 ? A : B) : j < 3 ? B : D;
      return entry(block, i % 3, j % 3);
    }),
  );
}

/**
 * Stress in ply axes with 0 where it is below the rounding of the strains that it is the difference of: a ply that nothing hinders has no stress, exactly.
 *
 * @param here strain in laminate axes
 * @param free free strain in laminate axes
 */
function aboveRounding(stress: Vector3, table: Float64Array, at: number, here: Vector3, free: Vector3): Vector3 {
  const [x, y, xy] = [0, 1, 2].map((i) => Math.abs(here[i] ?? 0) + Math.abs(free[i] ?? 0)) as [number, number, number];
  const size = (i: number): number => Math.abs(table[at + i] ?? 0);
  const limit = 2 ** -50;
  const kept = (value: number, of: number): number => (Math.abs(value) < limit * of ? 0 : value);
  return [
    kept(stress[0], size(0) * x + size(1) * y + size(2) * xy),
    kept(stress[1], size(3) * x + size(4) * y + size(5) * xy),
    kept(stress[2], size(6) * (x + y) + size(7) * xy),
  ];
}

/** The same numbers with 0 for -0, which reads like an error. */
const plain = ([x, y, xy]: Vector3): Vector3 => [x + 0, y + 0, xy + 0];

function vector(values: readonly number[], from: number): Vector3 {
  return [values[from] ?? 0, values[from + 1] ?? 0, values[from + 2] ?? 0];
}

function minus(p: Vector3, q: Vector3): Vector3 {
  return [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
}
