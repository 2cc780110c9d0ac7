// What the pitch of a stitch plan does: holes, thread and toughness over thirteen pitches, as a CSV file.
//
//   node pitch-sweep.mjs [OUT.csv]
//
// The design is invented for demonstration.
import { readFileSync, writeFileSync } from 'node:fs';
import { designInputs, parseVariation, sweep } from '@selvage/core';

const out = process.argv[2] ?? 'pitch-sweep.csv';
const inputs = designInputs(readFileSync(new URL('../minimal.yaml', import.meta.url), 'utf8'));

// Any number of the JSON report may be swept, by its path there.
const columns = {
  'stitching.rows.penetrationDensity': 'holes per m2',
  'stitching.rows.threadMassPerArea': 'thread kg/m2',
  'stitching.rows.bridging.toughnessAdded': 'added toughness J/m2',
};
const found = sweep(inputs, [parseVariation('stitching.rows.pitch=2mm..8mm:13')], Object.keys(columns));

const lines = found.points.map(({ inputs: [pitch], values, problems }) => {
  // A point that cannot be computed keeps its place and says why.
  if (values === undefined) return [pitch, ...Object.keys(columns).map(() => ''), problems[0].message];
  return [pitch, ...values.map((value) => value.toPrecision(6)), ''];
});
const cell = (value) => (/[",\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value);
const table = [['pitch', ...Object.values(columns), 'problem'], ...lines];
writeFileSync(out, table.map((row) => `${row.map((value) => cell(String(value))).join(',')}\n`).join(''));

console.log(`${lines.length} pitches from ${lines[0][0]} to ${lines.at(-1)[0]} in ${out}`);
