// A, B and D of a laminate from one ply and an orientation code, and the laminate's moduli.
//
//   node laminate-stiffness.mjs ["[0/±45/90]s"]
//
// The ply is invented for demonstration.
import { engineeringConstants, formatQuantity, laminate, parseOrientationCode, ply, stiffness } from '@selvage/core';

const code = process.argv[2] ?? '[0/±45/90]s';

// SI inside: Pa and m. What stands in a data sheet in other units is converted once, here.
const carbon = ply({ name: 'carbon', E1: 140e9, E2: 9.5e9, G12: 5e9, nu12: 0.3, thickness: 0.2e-3 });

// The code gives one entry per ply, from the tool side; what each one is made of is ours to say.
const plies = parseOrientationCode(code).map(({ angle }) => ({ ...carbon, angle }));
const found = stiffness(laminate(plies));
const { inPlane, flexural } = engineeringConstants(found);

// For a reader: numbers below a billionth of the largest are what rounding leaves of a zero.
function printMatrix(name, unit, rows) {
  const largest = Math.max(...rows.flat().map(Math.abs));
  const entry = (value) => (Math.abs(value) > 1e-9 * largest ? value.toExponential(4) : '0').padStart(13);
  console.log(`\n${name} in ${unit}`);
  for (const row of rows) console.log(row.map(entry).join(''));
}

console.log(`${code}: ${plies.length} plies, ${formatQuantity(found.thickness, 'length')}`);
printMatrix('A', 'N/m', found.A);
printMatrix('B', 'N', found.B);
printMatrix('D', 'N·m', found.D);

console.log('\n              Ex          Ey         Gxy');
for (const [name, { Ex, Ey, Gxy }] of [
  ['in plane', inPlane],
  ['in bending', flexural],
]) {
  const shown = [Ex, Ey, Gxy].map((modulus) => formatQuantity(modulus, 'modulus').padStart(12));
  console.log(name.padEnd(10) + shown.join(''));
}
