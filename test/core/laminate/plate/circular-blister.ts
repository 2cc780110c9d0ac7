import { Matrix, solve } from 'ml-matrix';

/** A round isotropic film clamped at its edge, on something evenly strained. */
interface Film {
  readonly E: number;
  readonly nu: number;
  readonly h: number;
  readonly R: number;
}

/** Slope φ = w,r with its derivative, and radial displacement with its derivative; lengths per R, φ per h/R, u per h²/R. */
type State = readonly number[];

const steps = 1500;
const start = 1e-3;
/** 3.8317² is the buckling force times R²/D (first zero of J1). */
const critical = 3.8317059702 ** 2;

/**
 * Energy release rate of a round blister at a multiple of its buckling strain, by its axisymmetric equations:
 * independent of the library's energy and polynomials.
 *
 * Moderately large deflection: D (φ'' + φ'/r - φ/r²) = N_r φ, (r N_r)' = N_θ, N_r = N0 + A (u' + φ²/2 + nu u/r),
 * N_θ = N0 + A (u/r + nu (u' + φ²/2)), N0 = A (1 + nu) strain. Integrated from the centre by Runge and Kutta's method; curvature and
 * stretch there are sought so that φ and u vanish at the edge, in steps from a slightly buckled state on. G = ½ D φ'² + ½ A u'² at the edge
 * (Hutchinson & Suo 1992, recalled, not re-read).
 *
 * @param wanted multiple of the buckling strain, 1.1 or more
 */
export function circularBlister(
  { E, nu, h, R }: Film,
  wanted: number,
): { readonly strain: number; readonly G: number } {
  const A = (E * h) / (1 - nu * nu);
  const D = (A * h * h) / 12;

  const edge = (times: number, bendAtCentre: number, stretch: number): State => {
    const rate = (r: number, [phi = 0, bend = 0, u = 0, pull = 0]: State): State => {
      const Nr = -times * critical + 12 * (pull + (phi * phi) / 2 + (nu * u) / r);
      return [
        bend,
        Nr * phi - bend / r + phi / (r * r),
        pull,
        -phi * bend - pull / r + u / (r * r) - ((1 - nu) * phi * phi) / (2 * r),
      ];
    };
    const step = (1 - start) / steps;
    const moved = (x: State, dx: State, by: number): State => x.map((value, j) => value + by * dx[j]!);
    let state: State = [bendAtCentre * start, bendAtCentre, stretch * start, stretch];
    for (let i = 0; i < steps; i++) {
      const r = start + i * step;
      const k1 = rate(r, state);
      const k2 = rate(r + step / 2, moved(state, k1, step / 2));
      const k3 = rate(r + step / 2, moved(state, k2, step / 2));
      const k4 = rate(r + step, moved(state, k3, step));
      const mean = k1.map((value, j) => value + 2 * k2[j]! + 2 * k3[j]! + k4[j]!);
      state = moved(state, mean, step / 6);
    }
    return state;
  };

  /** Newton's method on two unknowns, for no slope and no displacement at the edge. */
  const sought = (begin: readonly number[], atEdge: (at: readonly number[]) => State): readonly number[] => {
    let unknown = begin;
    const residual = (at: readonly number[]) => [atEdge(at)[0]!, atEdge(at)[2]!];
    for (let round = 0; round < 30; round++) {
      const here = residual(unknown);
      if (Math.max(...here.map(Math.abs)) < 1e-10) return unknown;
      const step = 1e-6;
      const columns = [0, 1].map((j) =>
        residual(unknown.map((value, k) => value + (k === j ? step : 0))).map((value, i) => (value - here[i]!) / step),
      );
      const rows = [0, 1].map((i) => columns.map((column) => column[i]!));
      const move = solve(new Matrix(rows), Matrix.columnVector(here)).getColumn(0);
      unknown = unknown.map((value, j) => value - move[j]!);
    }
    throw new Error('the blister was not found');
  };

  // A given curvature first, so that the flat film is no answer; then the strain is raised.
  const small = 2;
  const begin = sought([1, 0], ([load = 0, stretch = 0]) => edge(load, small, stretch));
  let times = begin[0]!;
  let centre: readonly number[] = [small, begin[1]!];
  while (times < wanted) {
    times = Math.min(wanted, times * 1.1);
    const now = times;
    centre = sought(centre, ([curvature = 0, stretch = 0]) => edge(now, curvature, stretch));
  }
  const [curvature = 0, stretch = 0] = centre;
  const [, bend = 0, , pull = 0] = edge(times, curvature, stretch);
  const [kappa, added] = [(bend * h) / R ** 2, (pull * h * h) / R ** 2];
  return {
    strain: (-times * critical * D) / (A * (1 + nu) * R * R),
    G: (D * kappa ** 2 + A * added ** 2) / 2,
  };
}
