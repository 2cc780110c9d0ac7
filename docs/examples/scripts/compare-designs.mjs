// Designs side by side: what is different in them, and what came of it.
//
//   node compare-designs.mjs [FIRST.yaml SECOND.yaml]
//
// Without files an invented design is compared with a variant of it: stitches farther apart, and more resin in the cloth.
import { readFileSync } from 'node:fs';
import { assemble, compare, comparisonReport, compute, designInputs, render, variantText } from '@selvage/core';

const [first, second] = process.argv.slice(2);
const text = readFileSync(first ?? new URL('../shingle-640-three-rows.yaml', import.meta.url), 'utf8');
const changes = [
  { path: 'title', value: 'The same, wider pitch and more resin' },
  { path: 'stitching.edge-rows.pitch', value: '6 mm' },
  { path: 'materials.glass-twill.fibreVolumeFraction', value: '46 %' },
];
const other = second === undefined ? variantText(designInputs(text), changes) : readFileSync(second, 'utf8');

const designs = [text, other].map((one) => {
  const inputs = designInputs(one);
  return { name: inputs.design.title, inputs, results: compute(assemble(inputs.design)) };
});
const comparison = compare(designs);

const shown = (value) => (typeof value === 'number' ? Number(value.toPrecision(4)) : (value ?? 'not given'));

console.log(designs.map(({ name }, i) => `${i + 1}. ${name}`).join('\n'));
console.log(`\n${comparison.inputs.length} inputs differ:`);
for (const { path, values } of comparison.inputs) console.log(`  ${path}: ${values.map(shown).join(' -> ')}`);

// Rank 0 are verdicts of targets, rank 1 what a designer looks at first, rank 2 everything else.
const moved = comparison.quantities.filter(({ rank }) => rank < 2);
console.log(`\n${comparison.quantities.length} results moved; the first of them, in SI:`);
for (const { path, values, percent } of moved.slice(0, 12)) {
  const change = percent[1] === undefined ? '' : `  (${percent[1] > 0 ? '+' : ''}${percent[1].toFixed(1)} %)`;
  console.log(`  ${path}: ${values.map(shown).join(' -> ')}${change}`);
}

// The same for a reader: text, markdown, html, csv or json.
const page = render(comparisonReport(comparison), 'html');
console.log(`\nas a page: ${Math.ceil(page.length / 1024)} KiB of HTML`);
