import type { Matrix } from 'ml-matrix';
import { times } from '../axes.js';
import type { Matrix3, Vector3 } from '../types.js';
import { type EllipseMembrane, ellipseMembrane } from './ellipse-membrane.js';
import { ellipseSamples } from './ellipse-samples.js';
import { bendingTable, forceTable } from './ellipse-tables.js';

/** A clamped ellipse in numbers near 1: stiffness over A11 + A22 and D11 + D22, strain times ab over W², W² = (D11 + D22)/(A11 + A22). */
export interface EllipsePlate {
  readonly A: Matrix3;
  readonly D: Matrix3;
  readonly strain: Vector3;
  /** √(b/a). */
  readonly slimness: number;
}

type Samples = readonly number[];

/** Deflection and displacements at points of the ellipse, x and y per √(ab). */
export interface EllipseFields {
  readonly weight: Float64Array;
  readonly w: Samples;
  readonly slope: readonly [x: Samples, y: Samples];
  /** -w,xx, -w,yy, -2 w,xy. */
  readonly curvature: readonly [Samples, Samples, Samples];
  /** u,x, u,y, v,x, v,y. */
  readonly gradient: readonly [Samples, Samples, Samples, Samples];
}

/** Energy of a clamped ellipse over the column c of coefficients of its deflection: ½ c·K c + ½ λ c·S c + ½ c·h c. */
export interface EllipseEnergy extends Pick<EllipseMembrane, 'stretching'> {
  readonly K: Matrix;
  readonly S: Matrix;
  readonly fieldsOf: (c: Matrix) => EllipseFields;
}

/**
 * @param parity 0 for shapes of even power, 1 for odd
 * @throws not-computable as `ellipseMembrane`
 */
export function ellipseEnergy({ A, D, strain, slimness }: EllipsePlate, parity: number): EllipseEnergy {
  const samples = ellipseSamples(slimness, parity);
  const { weight, w, slope, curvature, held } = samples;
  const { stretching, displacements } = ellipseMembrane(A, samples);
  return {
    K: bendingTable(D, slimness, parity),
    S: forceTable(times(A, strain), slimness, parity),
    stretching,
    fieldsOf: (c) => {
      const of = (table: Matrix): Samples => c.transpose().mmul(table).getRow(0);
      const d = displacements(c);
      const [x, y] = [d.mmul(held[0]), d.mmul(held[1])];
      return {
        weight,
        w: of(w),
        slope: [of(slope[0]), of(slope[1])],
        curvature: [of(curvature[0]), of(curvature[1]), of(curvature[2])],
        gradient: [x.getRow(0), y.getRow(0), x.getRow(1), y.getRow(1)],
      };
    },
  };
}
