import { solveChain } from './chain.js';

/** A boundary-value problem z' = f(z) in one dimension, autonomous, with jumps of z at chosen points. Tables are row-major. */
export interface BoundaryValueProblem {
  /** Unknowns at a point. */
  readonly size: number;
  /** Conditions at the first point; the last has size - left. */
  readonly left: number;
  /** Writes f and its derivative by z (size rows of size) for the point that starts at `z[at]`; always the same entries, the others are 0. */
  slope(z: ArrayLike<number>, at: number, f: number[], derivative: number[]): void;
  /** Adds to z what changes at this point and to the unit matrix `derivative` how that depends on z; false where nothing does. */
  jump(point: number, z: number[], derivative: number[]): boolean;
  /** Writes what shall be zero at the first point, and its derivative (left rows of size), which is full of 0 before. */
  first(z: ArrayLike<number>, at: number, residual: number[], derivative: number[]): void;
  /** The same for the last point (size - left rows). */
  last(z: ArrayLike<number>, at: number, residual: number[], derivative: number[]): void;
}

const mostRounds = 30;
/** Newton's method doubles the digits: a last change of this size leaves an error of about its square. */
const enough = 3e-5;

/**
 * Solves a boundary-value problem by Newton's method on Hermite-Simpson collocation (order 4).
 *
 * z1 = z0 + h/6 (f0 + 4 f(zm) + f1), zm = (z0 + z1)/2 + h/8 (f0 - f1), in every interval.
 *
 * @param steps lengths of the intervals
 * @param guess values at the points, point by point; unknowns should be of the size of 1
 * @returns values at the points (ahead of the jump where there is one), or undefined when Newton's method does not settle
 */
export function solveBoundaryValue(
  problem: BoundaryValueProblem,
  steps: Float64Array,
  guess: Float64Array,
): Float64Array | undefined {
  const { size: m, left } = problem;
  const z = guess.slice();
  const first = zeros(left * (m + 1));
  const last = zeros((m - left) * (m + 1));
  const links = new Float64Array(steps.length * m * (2 * m + 1));
  const scratch = allocate(problem, z);

  for (let round = 0; round < mostRounds; round++) {
    assemble(problem, steps, z, scratch, first, links, last);
    const change = solveChain(m, left, first, links, last);
    if (change === undefined) return undefined;
    let largest = 0;
    for (let i = 0; i < z.length; i++) {
      const size = Math.abs(change[i]!) / (1 + Math.abs(z[i]!));
      if (size <= largest) continue;
      if (!Number.isFinite(size)) return undefined;
      largest = size;
    }
    const share = largest > 1 ? 1 / largest : 1;
    for (let i = 0; i < z.length; i++) z[i] = z[i]! + share * change[i]!;
    if (largest < enough) return z;
  }
  return undefined;
}

const zeros = (count: number): number[] => new Array(count).fill(0);

/** Tables for one interval, and for each row of the derivative of f the columns that are written at all, row after row up to `end[row]`. */
function allocate({ size: m, slope }: BoundaryValueProblem, z: Float64Array) {
  const vector = () => zeros(m);
  const table = () => zeros(m * m);
  const written = new Array<number>(m * m).fill(Number.NaN);
  slope(z, 0, vector(), written);
  const columns: number[] = [];
  const end: number[] = [];
  for (let i = 0; i < m; i++) {
    for (let j = 0; j < m; j++) if (!Number.isNaN(written[i * m + j])) columns.push(j);
    end.push(columns.length);
  }
  return {
    near: vector(),
    middle: vector(),
    residual: vector(),
    f0: vector(),
    fm: vector(),
    f1: vector(),
    jumped: table(),
    J0: table(),
    Jm: table(),
    J1: table(),
    edge: table(),
    P: vector(),
    columns: Int32Array.from(columns),
    end: Int32Array.from(end),
  };
}

type Scratch = ReturnType<typeof allocate>;

/** Fills the chain with the derivatives of the collocation equations and, on the right, what they miss zero by. */
function assemble(
  problem: BoundaryValueProblem,
  steps: Float64Array,
  z: Float64Array,
  s: Scratch,
  first: number[],
  links: Float64Array,
  last: number[],
): void {
  const { size: m, left } = problem;
  s.edge.fill(0);
  problem.first(z, 0, s.residual, s.edge);
  writeEdge(m, left, s, first);

  problem.slope(z, 0, s.f1, s.J1);
  for (let k = 0; k < steps.length; k++) {
    const at = k * m;
    for (let i = 0; i < m; i++) s.near[i] = z[at + i]!;
    s.jumped.fill(0);
    for (let i = 0; i < m; i++) s.jumped[i * m + i] = 1;
    const jumps = problem.jump(k, s.near, s.jumped);
    if (jumps) problem.slope(s.near, 0, s.f0, s.J0);
    else copy(s);
    problem.slope(z, at + m, s.f1, s.J1);
    writeLink(problem, s, steps[k]!, z, at + m, links, k * m * (2 * m + 1), jumps);
  }
  s.edge.fill(0);
  problem.last(z, z.length - m, s.residual, s.edge);
  writeEdge(m, m - left, s, last);
}

/** The slope at the end of the last interval is that at the start of this one. */
function copy({ f0, f1, J0, J1 }: Scratch): void {
  for (let i = 0; i < f1.length; i++) f0[i] = f1[i]!;
  for (let i = 0; i < J1.length; i++) J0[i] = J1[i]!;
}

/**
 * One interval. With derivatives J0, Jm, J1 of f: by the nearer value P = -1 - h/6 (J0 + 2 Jm + h/2 Jm J0), by the farther
 * 1 - h/6 (J1 + 2 Jm - h/2 Jm J1).
 */
function writeLink(
  problem: BoundaryValueProblem,
  s: Scratch,
  h: number,
  z: Float64Array,
  far: number,
  links: Float64Array,
  to: number,
  jumps: boolean,
): void {
  const { size: m } = problem;
  const { near, middle, f0, fm, f1, J0, Jm, J1, P, jumped, columns, end } = s;
  for (let i = 0; i < m; i++) middle[i] = (near[i]! + z[far + i]!) / 2 + (h / 8) * (f0[i]! - f1[i]!);
  problem.slope(middle, 0, fm, Jm);
  const width = 2 * m + 1;
  const sixth = h / 6;
  const product = (sixth * h) / 2;
  links.fill(0, to, to + m * width);
  for (let i = 0; i < m; i++) {
    const row = to + i * width;
    for (let c = i > 0 ? end[i - 1]! : 0; c < end[i]!; c++) {
      const l = columns[c]!;
      const il = i * m + l;
      const middleSlope = Jm[il]!;
      const twice = 2 * middleSlope;
      links[row + l] = links[row + l]! - sixth * (J0[il]! + twice);
      links[row + m + l] = links[row + m + l]! - sixth * (J1[il]! + twice);
      for (let d = l > 0 ? end[l - 1]! : 0; d < end[l]!; d++) {
        const j = columns[d]!;
        links[row + j] = links[row + j]! - product * middleSlope * J0[l * m + j]!;
        links[row + m + j] = links[row + m + j]! + product * middleSlope * J1[l * m + j]!;
      }
    }
    links[row + i] = links[row + i]! - 1;
    links[row + m + i] = links[row + m + i]! + 1;
    links[row + 2 * m] = near[i]! + sixth * (f0[i]! + 4 * fm[i]! + f1[i]!) - z[far + i]!;
  }
  if (!jumps) return;
  for (let i = 0; i < m; i++) {
    const row = to + i * width;
    for (let j = 0; j < m; j++) P[j] = links[row + j]!;
    for (let j = 0; j < m; j++) {
      let sum = 0;
      for (let l = 0; l < m; l++) sum += P[l]! * jumped[l * m + j]!;
      links[row + j] = sum;
    }
  }
}

function writeEdge(m: number, rows: number, s: Scratch, out: number[]): void {
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < m; j++) out[i * (m + 1) + j] = s.edge[i * m + j]!;
    out[i * (m + 1) + m] = -s.residual[i]!;
  }
}
