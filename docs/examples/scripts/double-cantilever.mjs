// A double cantilever specimen pulled open, without stitches and with rows across it: load against displacement as a CSV file.
//
//   node double-cantilever.mjs [OUT.csv]
//
// Cloth, thread and toughness of the bond are invented for demonstration.
import { writeFileSync } from 'node:fs';
import { armOf, bridgingLaw, laminate, ply, rowsAcross, simulateDcb, stitchType } from '@selvage/core';

const out = process.argv[2] ?? 'double-cantilever.csv';

const cloth = ply({
  name: 'glass cloth',
  E1: 24e9,
  E2: 24e9,
  G12: 4.5e9,
  nu12: 0.12,
  thickness: 0.25e-3,
  strengths: { Xt: 420e6, Xc: 360e6, Yt: 400e6, Yc: 350e6, S: 80e6 },
});
const half = laminate(Array.from({ length: 12 }, () => cloth));
const arm = armOf(half);

const thread = { name: 'aramid', linearDensity: 75e-6, density: 1440, tenacity: 1.7e6, modulus: 50e6 };
const law = bridgingLaw({ type: stitchType('301-modified'), needleThread: thread, thickness: 2 * half.thickness });
const [width, crackLength, length] = [25e-3, 50e-3, 0.15]; // m, from the load line
const pattern = { kind: 'parallel', pitch: 4e-3, rowSpacing: 5e-3 };
const place = { growth: 'across', width, from: 55e-3, to: length, origin: 55e-3 };
const rows = rowsAcross({ pattern, ...place, curve: law, failure: law.failure });

const bare = {
  arms: [arm, arm],
  width,
  bondToughness: 400,
  crackLength,
  length,
  rows: [],
  until: { crackLength: 0.1 },
};
const specimens = { 'without stitches': bare, 'with rows of stitches': { ...bare, rows } };

const lines = ['specimen,displacement mm,load N,crack length mm'];
for (const [name, specimen] of Object.entries(specimens)) {
  const { states, peakForce, verdict, energyError } = simulateDcb(specimen);
  for (const state of states) {
    const { displacement, load, crackLength: a } = state;
    lines.push(`${name},${(displacement * 1e3).toFixed(4)},${load.toFixed(3)},${(a * 1e3).toFixed(3)}`);
  }
  console.log(`${name}: ${states.length} states, at most ${peakForce.toFixed(1)} N, first gives way: ${verdict.first}`);
  console.log(`  energy that the account of work, bond and thread leaves open: ${(100 * energyError).toFixed(4)} %`);
}
writeFileSync(out, `${lines.join('\n')}\n`);
console.log(`${lines.length - 1} states in ${out}`);
