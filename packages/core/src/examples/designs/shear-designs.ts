import { si } from '../inputs.js';
import type { threePointBending } from '../shear-kinds.js';
import { plyEntry } from './materials.js';
import { at, type DesignParts, inUnit, over } from './parts.js';

/** Where the second ply begins among the points of a load case, of which a stack of seven plies has five in each. */
const secondPly = 5;

export const threePointBendingDesign = (inputs: Parameters<typeof threePointBending>[0]): DesignParts => {
  const { ply, G13, G23, angles, thicknesses } = inputs;
  const [P, L] = [si(inputs.lineLoad, 'forcePerLength'), si(inputs.span, 'length')];
  const distinct = [...new Set(thicknesses)];
  const material = (k: number): string => `ply-${distinct.indexOf(thicknesses[k] ?? '') + 1}`;
  return {
    ours: [
      'The load case: moment and shear force per width beside mid-span of a strip in three-point bending, P L/4 and P/2.',
    ],
    materials: Object.fromEntries(
      distinct.map((thickness, i) => [`ply-${i + 1}`, plyEntry(ply, thickness, { G13, G23 })]),
    ),
    laminates: { strip: { stack: angles.map((angle, k) => ({ angle, material: material(k) })) } },
    loads: {
      'mid-span': {
        laminate: 'strip',
        M: [inUnit((P * L) / 4, 'N'), '0 N', '0 N'],
        shear: [inUnit(P / 2, 'N/mm'), '0 N/mm'],
      },
    },
    held: {
      w: {
        terms: [
          { at: 'laminates.strip.d.0.0', times: (P * L ** 3) / 48 },
          over('laminates.strip.transverseShear.H.0.0', (P * L) / 4),
        ],
      },
      sxE: { ...at('loads.mid-span.plies.0.top.stress.0'), size: true },
      txzD: at(`loads.mid-span.interlaminarShear.points.${secondPly}.tauXz`),
    },
  };
};
