import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { designInputs } from '../src/design/index.js';
import { allocateBatch, evaluateBatch, makeQbarTable, makeStrengthTable } from '../src/laminate/index.js';
import { evaluateRange, type SearchProblem, searchProblem } from '../src/study/index.js';
import { nextStack, stackBuilder } from '../src/study/search/stack-rules.js';
import { nanoseconds } from './flat-job.js';

/** Invented: 8^8 symmetric laminates of 16 plies, of which 1.2 million keep to the rules; a load, a target and limits on the stiffness. */
const text = `format: 1
title: Laminates to be gone through
materials:
  ud: { kind: ply, E1: 40 GPa, E2: 9 GPa, G12: 4 GPa, nu12: 0.28, thickness: 0.25 mm, density: 1900 kg/m^3,
    strengths: { Xt: 900 MPa, Xc: 600 MPa, Yt: 45 MPa, Yc: 140 MPa, S: 65 MPa } }
  stiff: { kind: ply, E1: 130 GPa, E2: 8.5 GPa, G12: 4.5 GPa, nu12: 0.3, thickness: 0.2 mm, density: 1550 kg/m^3,
    strengths: { Xt: 1800 MPa, Xc: 1100 MPa, Yt: 50 MPa, Yc: 170 MPa, S: 80 MPa } }
laminates:
  skin: { material: ud, letters: { c: stiff }, stack: "[0/90]s" }
loads:
  pull: { laminate: skin, N: [400 kN/m, 60 kN/m, 30 kN/m], M: [40 N, 10 N, 5 N] }
targets:
  - { quantity: loads.pull.failure.tsaiWu.ratio, atLeast: 1.2 }
search:
  stack: { laminate: skin, materials: [ud, stiff], angles: [0, 45, -45, 90], plies: 8, symmetric: true, balanced: true, grouping: 3 }
  minimise: [laminates.skin.arealMass]
  maximise: [laminates.skin.flexural.Ex]
  constraints:
    - { quantity: laminates.skin.inPlane.Ey, atLeast: 15 GPa }
    - { quantity: laminates.skin.inPlane.Gxy, atLeast: 5 GPa }
`;
const plies = 16;
/** Number of the candidate that is measured from. */
const first = 400_000;
/** Laminates of a batch of the kernel alone, as many as a search takes at a time. */
const portion = 1024;

/** The kernel alone over laminates of the search: stiffness, inverse, constants, strength ratio under the load. */
function kernelAlone({ space }: SearchProblem): () => void {
  const layers = space!.layers.flatMap(({ plain }) => plain);
  const tables = layers.map((ply) => makeStrengthTable([ply], [ply.angle], 'tsaiWu'));
  const table = {
    criterion: 'tsaiWu',
    stress: Float64Array.from(tables.flatMap(({ stress }) => [...stress])),
    constants: tables.flatMap(({ constants }) => constants),
    expands: false,
  } as const;
  const qbarTable = Float64Array.from(layers.flatMap((ply) => [...makeQbarTable([ply], [ply.angle])]));
  const loads = Float64Array.from([4e5, 6e4, 3e4, 40, 10, 5]);
  const { batch, out } = allocateBatch(portion, portion * plies, qbarTable, { table, loads });
  const builder = stackBuilder(space!.rules, plies / 2);
  space!.counter!.goTo(builder, first);
  for (let k = 0; k < portion; k++) {
    nextStack(space!.rules, builder);
    batch.plyOffsets[k + 1] = (k + 1) * plies;
    for (let i = 0; i < plies; i++) {
      const row = builder.stack[Math.min(i, plies - 1 - i)]!;
      batch.row[k * plies + i] = row;
      batch.thickness[k * plies + i] = layers[row]!.thickness;
    }
  }
  return () => evaluateBatch(batch, out);
}

/** The same without rules that leave laminates out: so many that starting threads does not count. */
const everything = text
  .replace('balanced: true, grouping: 3', 'balanced: false, grouping: 8')
  .replace('  minimise:', '  method: exhaustive\n  minimise:');

/** Seconds that the command takes with one worker and with two, in turn, so that other work on the machine troubles both alike; the least of some runs. */
function commandSeconds(command: string, input: string, options: readonly string[], repeats: number) {
  const run = (workers: number): number => {
    const start = performance.now();
    const args = [command, 'search', '-', '--workers', String(workers), '--format', 'json', ...options];
    const { status, stderr } = spawnSync(process.execPath, args, { input, encoding: 'utf8', maxBuffer: 2 ** 26 });
    if (status !== 0) throw new Error(stderr);
    return (performance.now() - start) / 1000;
  };
  const pairs = Array.from({ length: repeats }, () => [run(1), run(2)] as const);
  return { one: Math.min(...pairs.map(([one]) => one)), two: Math.min(...pairs.map(([, two]) => two)) };
}

/** A search that goes through a million laminates: what it costs beside the kernel, and what a second worker brings. */
export function search(write: (line: string) => void): void {
  write('');
  const problem = searchProblem(designInputs(text));
  const count = Number(problem.size.candidates);
  write(`search: ${count} laminates of ${plies} plies, stiffness, one load, three limits`);
  const kernel = kernelAlone(problem);
  kernel();
  const alone = nanoseconds(
    () => {
      for (let i = 0; i < 64; i++) kernel();
    },
    64 * portion,
    5,
  );
  evaluateRange(problem, { from: 0, to: 64 * portion });
  const stretch = { from: first, to: first + 64 * portion };
  const whole = nanoseconds(() => evaluateRange(problem, stretch), stretch.to - stretch.from, 5);
  write(
    `kernel alone ${alone.toFixed(0)} ns a laminate, search ${whole.toFixed(0)} ns   ratio ${(whole / alone).toFixed(2)}`,
  );

  const command = fileURLToPath(new URL('../../cli/dist/selvage.mjs', import.meta.url));
  if (!existsSync(command)) {
    write('workers skipped: the command is not built (npm run build)');
    return;
  }
  const inWords = ({ one, two }: ReturnType<typeof commandSeconds>): string =>
    `1 worker ${one.toFixed(2)} s, 2 workers ${two.toFixed(2)} s   ratio ${(one / two).toFixed(2)}`;
  write(
    `whole commands, start and compiling in each thread counted (${availableParallelism()} cores, least of runs in turn)`,
  );
  write(`${count} laminates: ${inWords(commandSeconds(command, text, [], 7))}`);
  const all = commandSeconds(command, everything, [], 3);
  write(`all 16.8 million laminates: ${inWords(all)}`);
  const part = commandSeconds(command, everything, ['--shard', '1/8'], 5);
  const rest = { one: all.one - part.one, two: all.two - part.two };
  write(`threads that are warm, by what 7/8 of these take beyond the first 1/8: ${inWords(rest)}`);
}
