import { type BridgingModel, bridgingLaw, bridgingModel, stitchType, toughness } from '../src/stitch/index.js';
import { nanoseconds } from './flat-job.js';

/** Invented: 75 tex para-aramid, modified lockstitch, 2.7 mm of laminate, 4.55 stitches per cm^2. */
const input = {
  type: stitchType('301-modified'),
  needleThread: { name: 'aramid', linearDensity: 75e-6, density: 1440, tenacity: 1.7e6, modulus: 50e6 },
  thickness: 2.7e-3,
};
const penetrationDensity = 45_500;
const bondToughness = 300;

/** Levels of force and steps along each side with which the plain integration comes within the error demanded below. */
const [levels, steps] = [200, 200];

/** The toughness as one writes it down first: the shear-lag equations stepped along both sides for every force, areas summed, pull-out stepped. */
function stepped({ sides, crackStrength, siteScatter }: BridgingModel): number {
  const limits = sides.map((side) => side.anchorStrength + side.slipResistance * side.depth);
  const peak = Math.min(crackStrength, ...limits);
  const opening = (force: number) => {
    let out = 0;
    for (const { depth, slipResistance, axialStiffness } of sides) {
      const dx = depth / steps;
      for (let i = 0; i < steps; i++)
        out += (Math.max(0, force - slipResistance * (i + 0.5) * dx) / axialStiffness) * dx;
    }
    return out;
  };
  let work = 0;
  let [lastForce, lastOpening] = [0, 0];
  for (let k = 1; k <= levels; k++) {
    const force = (peak * k) / levels;
    const w = opening(force);
    work += ((force + lastForce) / 2) * (w - lastOpening);
    [lastForce, lastOpening] = [force, w];
  }
  const m = siteScatter ** -1.086;
  const all = [crackStrength, ...limits].reduce((sum, limit) => sum + limit ** -m, 0);
  for (const [i, { depth, slipResistance }] of sides.entries()) {
    const share = limits[i]! ** -m / all;
    const ds = depth / steps;
    for (let k = 0; k < steps; k++) work += share * slipResistance * (depth - (k + 0.5) * ds) * ds;
  }
  return bondToughness + penetrationDensity * work;
}

/** Law and steady toughness of one stitch, beside a plain integration of the same law. */
export function bridging(write: (line: string) => void): void {
  const own = () => toughness({ law: bridgingLaw(input), penetrationDensity, bondToughness }).steady ?? 0;
  const plain = () => stepped(bridgingModel(input).model);
  if (!(Math.abs(own() / plain() - 1) < 1e-3)) throw new Error(`bridging law: ${own()} for ${plain()}`);
  const repeats = 5;
  const [mine, other] = [
    nanoseconds(() => repeat(own, 2000), 2000, repeats),
    nanoseconds(() => repeat(plain, 50), 50, repeats),
  ];
  write('');
  write(`law and steady toughness of one stitch, us of processor time (best of ${repeats} runs)`);
  const us = (time: number) => (time / 1000).toFixed(1);
  write(`closed form ${us(mine)}   plain integration ${us(other)}   plain/closed ${(other / mine).toFixed(0)}`);
}

function repeat(run: () => unknown, times: number): void {
  for (let i = 0; i < times; i++) run();
}
