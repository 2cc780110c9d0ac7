// Variants of a design file, written back as files: comments, order and spelling stay, only the chosen inputs change.
//
//   node design-variants.mjs [FOLDER]
//
// The design is invented for demonstration.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { assemble, compute, designInputs, inputAt, readDesign, variantText } from '@selvage/core';

const folder = process.argv[2] ?? 'variants';
const inputs = designInputs(readFileSync(new URL('../shingle-640-three-rows.yaml', import.meta.url), 'utf8'));

// An input is named by its path in the file; places in lists count from 0.
const pitch = 'stitching.edge-rows.pitch';
const stack = 'laminates.edge.stack';
const variants = {
  'closer-pitch': [{ path: pitch, value: '3 mm' }],
  'wider-pitch': [{ path: pitch, value: '6 mm' }],
  'more-glass': [
    { path: stack, value: '[0t/0b/0t/0b/0t/0b]s' },
    { path: 'title', value: 'Shingle 640 oar blade, thicker edge' },
  ],
};

console.log(`as it stands: pitch ${inputAt(inputs, pitch)}, edge ${inputAt(inputs, stack)}`);
mkdirSync(folder, { recursive: true });
for (const [name, changes] of Object.entries(variants)) {
  const text = variantText(inputs, changes);
  const file = join(folder, `${name}.yaml`);
  writeFileSync(file, text);

  // A variant is a design like any other: it is read, computed and judged by its targets.
  const { targets } = compute(assemble(readDesign(text)));
  const missed = targets.filter(({ met }) => !met).map(({ quantity }) => quantity);
  const lines = inputs.text.split('\n');
  const changed = text.split('\n').filter((line, i) => line !== lines[i]).length;
  console.log(
    `${file}: lines changed: ${changed}, targets missed: ${missed.length === 0 ? 'none' : missed.join(', ')}`,
  );
}
