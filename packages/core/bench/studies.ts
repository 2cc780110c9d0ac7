import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assemble, compute, designInputs, type InputChange, variant } from '../src/design/index.js';
import { differencesBetween, evaluateVariant, uncertainty } from '../src/study/index.js';
import { nanoseconds } from './flat-job.js';

const file = fileURLToPath(new URL('../../../docs/examples/shingle-640-three-rows.yaml', import.meta.url));
const quantities = ['laminates.edge.thickness', 'laminates.edge.arealMass', 'stitching.edge-rows.sewingTime'];
/** Designs of a timed Monte Carlo; its time grows in proportion. */
const samples = 2000;

/** What a change costs while a design is worked on, and a Monte Carlo of whole designs. */
export function studies(write: (line: string) => void): void {
  const text = readFileSync(file, 'utf8');
  const inputs = designInputs(text);
  let round = 0;
  const pitch = (): InputChange[] => [{ path: 'stitching.edge-rows.pitch', value: `${4 + (round++ % 97) / 100} mm` }];
  const before = compute(assemble(inputs.design)).data;
  const milliseconds = (run: () => unknown, repeats = 20) => nanoseconds(() => void run(), 1, repeats) / 1e6;
  const read = milliseconds(() => assemble(designInputs(text).design));
  const whole = milliseconds(() => differencesBetween(before, compute(assemble(variant(inputs, pitch()))).data));
  const part = milliseconds(() => evaluateVariant(inputs, pitch(), { quantities, targets: true }));
  const start = process.cpuUsage();
  uncertainty(inputs, quantities, { samples });
  const { user, system } = process.cpuUsage(start);
  const each = (user + system) / 1e3 / samples;
  write('');
  write('the demonstration, ms of processor time (best of 20)');
  write(
    `read and assemble ${read.toFixed(1)}; a saved change of the pitch, everything again with what changed ${whole.toFixed(1)}`,
  );
  write(
    `three quantities and the targets of a variant ${part.toFixed(2)}: ${(whole / part).toFixed(0)} x less than everything`,
  );
  write(
    `Monte Carlo of ${samples} whole designs ${each.toFixed(2)} each, ${(each / part).toFixed(1)} x one variant; so 10^5 in ${((each * 1e5) / 1e3).toFixed(0)} s`,
  );
}
