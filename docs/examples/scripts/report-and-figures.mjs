// The whole report of a design as a page, each of its figures as an SVG file, and each of its tables as CSV.
//
//   node report-and-figures.mjs [FOLDER]
//
// The design is invented for demonstration.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { assemble, readDesign, render, report } from '@selvage/core';

const folder = process.argv[2] ?? 'report';
mkdirSync(folder, { recursive: true });
const write = (name, text) => {
  writeFileSync(join(folder, name), text);
  console.log(`${join(folder, name)}: ${Math.ceil(Buffer.byteLength(text) / 1024)} KiB`);
};

const text = readFileSync(new URL('../shingle-640-three-rows.yaml', import.meta.url), 'utf8');
const whole = report(assemble(readDesign(text)));

// A report is a value; the page loads nothing from elsewhere, so it can be sent as it is.
write('report.html', render(whole, 'html'));
write('report-us.html', render(whole, 'html', { units: 'us' }));
write('tables.csv', render(whole, 'csv'));

// The blocks of the report are plain data: pick what you want and put it where you want it.
for (const block of whole.blocks) {
  if (block.kind === 'figure') write(`${block.id}.svg`, block.svg);
}
const tables = whole.blocks.filter(({ kind }) => kind === 'table');
console.log(`${tables.length} tables: ${tables.map(({ id }) => id).join(', ')}`);
