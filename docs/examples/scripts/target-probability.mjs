// How likely a design meets its targets when its inputs are known within the tolerances that it states: a seeded Monte Carlo.
//
//   node target-probability.mjs [SAMPLES]
//
// The design and its tolerances are invented for demonstration.
import { readFileSync } from 'node:fs';
import { designInputs, formatQuantity, uncertainty } from '@selvage/core';

const samples = Number(process.argv[2] ?? 500);
const inputs = designInputs(readFileSync(new URL('../shingle-640-three-rows.yaml', import.meta.url), 'utf8'));

// The same design, samples and seed give the same numbers on every machine.
const found = uncertainty(inputs, ['laminates.edge.thickness', 'laminates.edge.arealMass'], { samples, seed: 640 });
console.log(
  `${found.samples} samples of ${found.inputs.length} uncertain inputs, ${found.failed} could not be computed`,
);

for (const { path, kind, nominal, summary, causes } of found.quantities) {
  const { mean, standardDeviation, percentiles } = summary;
  const [low, , high] = percentiles.map(({ value }) => formatQuantity(value, kind));
  console.log(`\n${path}: ${formatQuantity(nominal, kind)} as written`);
  console.log(`  mean ${formatQuantity(mean.value, kind)}, deviation ${formatQuantity(standardDeviation.value, kind)}`);
  console.log(`  nine in ten between ${low} and ${high}`);
  const [most] = causes
    .map(({ value }, i) => ({ value, path: found.inputs[i].path }))
    .sort((a, b) => b.value - a.value);
  console.log(`  mostly because of ${most.path}, ${(100 * most.value).toFixed(0)} % of the variance`);
}

const percent = (share) => `${(100 * share).toFixed(1)} %`;
console.log('\nprobability that a target is met, with the range that the number of samples leaves open:');
for (const { quantity, probability: p, hard } of found.targets) {
  console.log(`  ${quantity}${hard ? '' : ' (soft)'}: ${percent(p.value)}, ${percent(p.low)} to ${percent(p.high)}`);
}
const all = found.allMet;
console.log(`  all hard targets together: ${percent(all.value)}, ${percent(all.low)} to ${percent(all.high)}`);
