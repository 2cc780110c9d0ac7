// How tough a stitched laminate gets with the density of its stitches, and how sure that is.
//
//   node toughness-and-density.mjs
//
// Thread, laminate and toughness of the bond are invented for demonstration.
import { bridgingInterval, bridgingLaw, penetrationDensity, stitchType, toughness } from '@selvage/core';

const aramid = { name: 'aramid', linearDensity: 75e-6, density: 1440, tenacity: 1.7e6, modulus: 50e6 }; // kg/m, kg/m³, m²/s²
const penetration = { type: stitchType('301-modified'), needleThread: aramid, thickness: 6e-3 };
const bondToughness = 350; // J/m², of the laminate without stitches

// One penetration: the force against the opening of the crack, and the work to pull it apart.
const law = bridgingLaw(penetration);
console.log(
  `one stitch holds ${law.peak.force.toFixed(0)} N and takes ${(law.work * 1e3).toFixed(1)} mJ (${law.failure})`,
);

// Its parameters are known within ranges. Nine of ten samples lie between low and high.
const { work } = bridgingInterval(penetration, { samples: 1000, seed: 1 });
console.log(`nine of ten samples: ${(work.low * 1e3).toFixed(1)} to ${(work.high * 1e3).toFixed(1)} mJ\n`);

// Many penetrations: each square metre of crack takes the work of all of them, on top of the bond.
console.log('rows, mm  pitch, mm  per cm²  toughness, J/m²   low    high');
for (const rowSpacing of [4e-3, 6e-3, 8e-3, 12e-3]) {
  for (const pitch of [3e-3, 5e-3]) {
    const density = penetrationDensity({ kind: 'parallel', pitch, rowSpacing }); // 1/m²
    const { steady } = toughness({ law, penetrationDensity: density, bondToughness });
    const [low, high] = [work.low, work.high].map((one) => bondToughness + density * one);
    const cells = [rowSpacing * 1e3, pitch * 1e3, (density * 1e-4).toFixed(2), ...[steady, low, high].map(Math.round)];
    const widths = [8, 11, 9, 17, 6, 8];
    console.log(cells.map((value, i) => String(value).padStart(widths[i])).join(''));
  }
}

// What the numbers rest on. The range above holds the parameters' uncertainty, not that of the model.
console.log('\nassumptions and warnings:');
for (const { level, text } of law.notes) console.log(`- ${level}: ${text}`);
