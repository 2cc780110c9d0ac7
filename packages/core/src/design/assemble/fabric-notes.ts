import type { Note } from '../../provenance/index.js';
import type { ResolvedFabric } from './fabrics.js';

const percent = (fraction: number): string => `${(fraction * 100).toFixed(1)} %`;

/** Fibre fractions count as the same within this. */
const sameFraction = 0.005;

/** What is to be said of the strengths of a fabric, which are used as they are given whatever its fibre fraction. */
function strengthNotes(fabric: ResolvedFabric, fraction: number): Note[] {
  const { name, strengths, layers = [], fibreVolumeFraction: stated = fraction } = fabric;
  if (strengths === undefined && layers.every((layer) => layer.strengths === undefined)) return [];
  const scaled: Note =
    Math.abs(stated - fraction) <= sameFraction
      ? {
          level: 'assumption',
          text: `${name}: strengths as given, taken to hold at fibre fraction ${percent(fraction)}; they are not scaled with it`,
        }
      : {
          level: 'warning',
          text: `${name}: strengths are given for fibre fraction ${percent(stated)} and used at ${percent(fraction)}; they are not scaled with it`,
        };
  const borrowed =
    strengths !== undefined &&
    layers.some((layer) => layer.fibre !== undefined && layer.fibre !== fabric.fibre && layer.strengths === undefined);
  const text = `${name}: one set of strengths is used for layers of different fibres; give each layer its own`;
  return borrowed ? [scaled, { level: 'warning', text }] : [scaled];
}

/** Notes on a fabric that come from how the design file gives it, at the fibre fraction of the laminate. */
export const fabricNotes = (fabric: ResolvedFabric, fraction: number): Note[] => [
  ...(fabric.remarks ?? []),
  ...strengthNotes(fabric, fraction),
];
