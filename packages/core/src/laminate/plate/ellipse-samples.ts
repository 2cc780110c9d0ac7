import { Matrix } from 'ml-matrix';
import { diskPoints } from './disk-points.js';
import { deflectionShapes, energyPower, inPlaneShapes, shapePower } from './ellipse-shapes.js';
import { type Polynomial, valuesAt, xDerivative, yDerivative } from './polynomial.js';

/** The shapes of an ellipse at points that integrate their energy exactly: a row per shape, x and y per √(ab). */
export interface EllipseSamples {
  readonly weight: Float64Array;
  /** Deflection. */
  readonly w: Matrix;
  readonly slope: readonly [x: Matrix, y: Matrix];
  /** -w,xx, -w,yy, -2 w,xy. */
  readonly curvature: readonly [Matrix, Matrix, Matrix];
  /** Derivatives of the displacements in the plane. */
  readonly held: readonly [x: Matrix, y: Matrix];
}

/**
 * @param slimness √(b/a)
 * @param parity 0 for deflections of even power, 1 for odd
 */
export function ellipseSamples(slimness: number, parity: number): EllipseSamples {
  const points = diskPoints(energyPower);
  const at = valuesAt(points, shapePower);
  const table = (shapes: readonly Polynomial[], factor: number): Matrix => new Matrix(shapes.map((p) => at(p, factor)));
  const [alpha, beta] = [slimness, 1 / slimness];
  const w = deflectionShapes(parity);
  const [wx, wy] = [w.map(xDerivative), w.map(yDerivative)];
  const held = inPlaneShapes();
  return {
    weight: points.weight,
    w: table(w, 1),
    slope: [table(wx, alpha), table(wy, beta)],
    curvature: [
      table(wx.map(xDerivative), -alpha * alpha),
      table(wy.map(yDerivative), -beta * beta),
      table(wx.map(yDerivative), -2 * alpha * beta),
    ],
    held: [table(held.map(xDerivative), alpha), table(held.map(yDerivative), beta)],
  };
}
