import { Matrix } from 'ml-matrix';
import type { Matrix3, Vector3 } from '../types.js';
import { deflectionShapes } from './ellipse-shapes.js';
import { diskIntegral, type Polynomial, times, xDerivative, yDerivative } from './polynomial.js';

/**
 * ∫ κ·D κ for each pair of deflections of an ellipse, with κ = -w,xx, -w,yy, -2 w,xy, x and y per √(ab).
 *
 * @param slimness √(b/a)
 * @param parity 0 for deflections of even power, 1 for odd
 */
export function bendingTable(D: Matrix3, slimness: number, parity: number): Matrix {
  const [alpha, beta] = [slimness, 1 / slimness];
  return energyTable(
    D,
    deflectionShapes(parity).map((w) => [
      times(xDerivative(xDerivative(w)), -alpha * alpha),
      times(yDerivative(yDerivative(w)), -beta * beta),
      times(yDerivative(xDerivative(w)), -2 * alpha * beta),
    ]),
  );
}

/** ∫ N_x w,x² + 2 N_xy w,x w,y + N_y w,y² for each pair of them. */
export function forceTable([Nx, Ny, Nxy]: Vector3, slimness: number, parity: number): Matrix {
  const N = [
    [Nx, Nxy],
    [Nxy, Ny],
  ];
  return energyTable(
    N,
    deflectionShapes(parity).map((w) => [times(xDerivative(w), slimness), times(yDerivative(w), 1 / slimness)]),
  );
}

/** ∫ e·C e for each pair of the e, of which every one has as many parts as C rows. */
function energyTable(C: readonly (readonly number[])[], e: readonly (readonly Polynomial[])[]): Matrix {
  const table = new Matrix(e.length, e.length);
  e.forEach((one, p) => {
    e.slice(0, p + 1).forEach((other, q) => {
      let sum = 0;
      C.forEach((row, i) => {
        row.forEach((value, j) => {
          if (value !== 0) sum += value * diskIntegral(one[i] ?? [], other[j] ?? []);
        });
      });
      table.set(p, q, sum).set(q, p, sum);
    });
  });
  return table;
}
