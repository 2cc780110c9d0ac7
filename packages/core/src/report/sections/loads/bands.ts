import type { LoadResult } from '../../../design/index.js';
import type { Ply } from '../../../material/index.js';
import type { ChartBand } from '../../figures/index.js';
import { withoutNoise } from '../build.js';

/** "45° ud"; a core has no direction worth a name. */
const bandLabel = ({ angle, name, core }: Ply): string => (core === true ? name : `${angle}° ${name}`);

/** The layers as bands over z; equal neighbours are one. */
export function layerBands(result: LoadResult, height: number): ChartBand[] {
  const merged: { label: string; from: number; to: number }[] = [];
  result.laminate.laminate.plies.forEach((ply, k) => {
    const { top, bottom } = result.response.plies[k] ?? {};
    if (top === undefined || bottom === undefined) return;
    const label = bandLabel(ply);
    const last = merged.at(-1);
    const to = withoutNoise(bottom.z, height);
    if (last?.label === label) last.to = to;
    else merged.push({ label, from: withoutNoise(top.z, height), to });
  });
  return merged;
}
