import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Arm, type BridgingRow, type DcbSpecimen, simulateDcb } from '../src/fracture/index.js';
import { openingChain } from '../src/fracture/specimen/opening-chain.js';
import { openingPair } from '../src/fracture/specimen/opening-pair.js';
import { factorBanded, solveBanded } from '../src/numeric/index.js';
import { bytes, nanoseconds } from './flat-job.js';

const repeats = 5;
/** Crack lengths for which the chain is solved, and the rows it has. */
const chains = 200;
const rows = 400;

/** Invented carbon cloth arm, 2 mm. */
const arm: Arm = { thickness: 2e-3, bendingStiffness: 40, axialStiffness: 1.2e8, shearStiffness: 6.67e6, E3: 9e9 };

/** Invented thread law: stretches, breaks, pulls out. */
const curve = { opening: [0, 1e-4, 3e-4, 3e-4, 8e-4], force: [0, 80, 120, 60, 0] };

function specimen(count: number): DcbSpecimen {
  const spacing = 0.098 / count;
  const one = (position: number): BridgingRow => ({
    position,
    penetrations: 1000 * spacing,
    curve,
    failure: 'threadAtAnchor',
  });
  return {
    arms: [arm, arm],
    width: 0.02,
    length: 0.16,
    crackLength: 0.05,
    bondToughness: 400,
    rows: Array.from({ length: count }, (_, i) => one(0.0505 + i * spacing)),
    until: { crackLength: 0.1 },
  };
}

/** Whole simulated specimens, and their chains beside the same chains in SciPy's banded solver. */
export function specimens(write: (line: string) => void): void {
  write('');
  write(`double cantilever beams grown by 50 mm, with their verdict, ms of processor time (best of ${repeats} runs)`);
  write(' rows elements   states     ms   us per state');
  let ofState = 0;
  for (const count of [0, 10, 20, 40, 100, rows]) {
    const given = specimen(Math.max(count, 1));
    const pulled = count === 0 ? { ...given, rows: [] } : given;
    const { states } = simulateDcb(pulled);
    const ns = nanoseconds(() => simulateDcb(pulled), 1, repeats);
    ofState = ns / 1e3 / states.length;
    // A stretch before each row, one behind the last, one more where the tip is.
    const cells = [String(count).padStart(5), String(count + 2).padStart(8), String(states.length).padStart(8)];
    write(`${cells.join(' ')} ${(ns / 1e6).toFixed(1).padStart(6)} ${ofState.toFixed(0).padStart(14)}`);
  }
  againstSciPy(write, ofState);
}

/** @param ofState us per state of the specimen with as many rows, all that belongs to it */
function againstSciPy(write: (line: string) => void, ofState: number): void {
  const places = Array.from({ length: rows }, (_, i) => 0.1 * ((i + 1) / (rows + 1)));
  const chain = openingChain(openingPair([arm, arm]), 0.02, 0.1, places);
  const { band } = chain;
  const lengths = Array.from({ length: chains }, (_, i) => 0.0601 + 0.01 * ((i + 0.37) / chains));
  const n = Math.max(...lengths.map((length) => chain.lay(length, 0).unknowns));
  const stored = lengths.map((length) => {
    const { unknowns } = chain.lay(length, 0);
    const K = new Float64Array(n * (band + 1));
    K.set(chain.K.subarray(0, unknowns * (band + 1)));
    // A shorter chain ends in unknowns that hang on nothing.
    for (let i = unknowns; i < n; i++) K[i * (band + 1)] = 1;
    return K;
  });
  const matrices = new Float64Array(chains * n * (band + 1));
  stored.forEach((K, i) => {
    matrices.set(K, i * n * (band + 1));
  });

  const work = new Float64Array((n + band) * (band + 1));
  const x = new Float64Array(n + band);
  let total = 0;
  const solve = () => {
    total = 0;
    for (let i = 0; i < chains; i++) {
      work.set(matrices.subarray(i * n * (band + 1), (i + 1) * n * (band + 1)));
      factorBanded(work, n, band);
      for (const at of [n - 4, Math.floor(n / 2)]) {
        x.fill(0);
        x[at] = 1;
        solveBanded(work, n, band, x);
        total += x[n - 4]!;
      }
    }
  };
  const own = nanoseconds(solve, chains, repeats) / 1e3;

  write('');
  write(
    `${chains} chains of ${n} unknowns, two right-hand sides each, us of processor time per chain (best of ${repeats} runs)`,
  );
  const script = fileURLToPath(new URL('python/specimens.py', import.meta.url));
  const { status, stdout } = spawnSync('python3', [script, ...[n, chains, repeats].map(String)], {
    input: bytes(matrices),
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  });
  if (status !== 0) {
    write(`own ${own.toFixed(1)}   skipped: no python3 with SciPy`);
    return;
  }
  const [scipy = 0, sum = 0] = stdout.trim().split(' ').map(Number);
  if (!(Math.abs(total / sum - 1) < 1e-6)) throw new Error(`SciPy answers ${sum}, the solver ${total}`);
  write(`own ${own.toFixed(1)}   SciPy ${scipy.toFixed(1)}   SciPy/own ${(scipy / own).toFixed(1)}`);
  const whole = (ofState * chains) / 1e3;
  const solved = (scipy * chains) / 1e3;
  write(
    `${chains} states of ${rows} rows, all found anew with their rows, energies and verdict: ${whole.toFixed(1)} ms; ` +
      `as many ready matrices solved once each by SciPy (a state takes several solutions, for its crack length is sought): ${solved.toFixed(1)} ms`,
  );
}
