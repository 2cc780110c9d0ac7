// Many laminates at once: every symmetric stack of glass and carbon up to ten plies, and the lightest
// that bear two loads and have glass outside, where it wears.
//
//   node lightest-laminate.mjs [STRENGTH-RATIO]
//
// Plies, strengths and loads are invented for demonstration.
import { allocateBatch, evaluateBatch, layout, makeQbarTable, makeStrengthTable, STRIDE } from '@selvage/core';

const wanted = Number(process.argv[2] ?? 2); // multiples of the loads that must be borne
const loads = Float64Array.of(300e3, 0, 60e3, 0, 0, 0, 0, 0, 0, 60, 20, 0); // Nx Ny Nxy (N/m) Mx My Mxy (N), twice

const carbonStrengths = { Xt: 1900e6, Xc: 1100e6, Yt: 45e6, Yc: 180e6, S: 75e6 };
const glassStrengths = { Xt: 950e6, Xc: 650e6, Yt: 38e6, Yc: 130e6, S: 65e6 };
const materials = [
  {
    name: 'c',
    E1: 130e9,
    E2: 9e9,
    G12: 4.8e9,
    nu12: 0.3,
    strengths: carbonStrengths,
    thickness: 0.3e-3,
    density: 1550,
  },
  { name: 'g', E1: 40e9, E2: 9e9, G12: 4e9, nu12: 0.27, strengths: glassStrengths, thickness: 0.25e-3, density: 1900 },
];
const angles = [0, 45, -45, 90];

// A choice of a ply is a row of the tables: material i at angle j is row i · 4 + j.
const choices = materials.flatMap((material, i) =>
  angles.map((angle, j) => ({ ...material, label: `${angle}${material.name}`, row: i * angles.length + j })),
);

/** Every half stack of up to five plies that the mirror makes whole. */
const halves = [1, 2, 3, 4, 5].flatMap((count) =>
  Array.from({ length: choices.length ** count }, (_, k) =>
    Array.from({ length: count }, (_, ply) => choices[Math.floor(k / choices.length ** ply) % choices.length]),
  ),
);

// Flat arrays, filled once; the kernel then allocates nothing per laminate.
const qbarTable = makeQbarTable(materials, angles);
const strength = { table: makeStrengthTable(materials, angles, 'tsaiWu'), loads };
const plies = 2 * halves.reduce((sum, half) => sum + half.length, 0);
const { batch, out } = allocateBatch(halves.length, plies, qbarTable, strength);
let at = 0;
for (const [k, half] of halves.entries()) {
  for (const { row, thickness } of [...half, ...half.toReversed()]) {
    batch.row[at] = row;
    batch.thickness[at++] = thickness;
  }
  batch.plyOffsets[k + 1] = at;
}

const start = performance.now();
evaluateBatch(batch, out);
const seconds = (performance.now() - start) / 1000;

// Two ratios for each laminate, one per load; the lesser counts.
const rows = halves.map((half, k) => ({
  half,
  ratio: Math.min(out.ratio[2 * k], out.ratio[2 * k + 1]),
  mass: 2 * half.reduce((sum, { thickness, density }) => sum + thickness * density, 0), // kg/m²
  Ex: out.values[k * STRIDE + layout.inPlane], // Pa
}));
const fit = rows.filter(({ half, ratio }) => half[0].name === 'g' && ratio >= wanted);
const strong = fit.sort((a, b) => a.mass - b.mass || b.ratio - a.ratio);

console.log(
  `${halves.length} laminates in ${seconds.toFixed(2)} s, ${strong.length} with glass outside bear ${wanted} times the loads`,
);
if (strong.length > 0) console.log('\n  kg/m²  ratio  Ex, GPa  stack');
for (const { half, ratio, mass, Ex } of strong.slice(0, 5)) {
  const numbers = [mass.toFixed(3).padStart(7), ratio.toFixed(2).padStart(6), (Ex / 1e9).toFixed(1).padStart(8)];
  console.log(`${numbers.join(' ')}  [${half.map(({ label }) => label).join('/')}]s`);
}
