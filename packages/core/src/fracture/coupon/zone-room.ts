import { zonePriors } from '../../stitch/index.js';

/** Share of the samples that must have room for their zone before a steady range is given. */
const most = 0.95;

/** Growth that a bridged zone may need, m: the longest computed, for a computed law times what printed zones are longer. */
function zoneNeeded(bridgingLength: number, measured: boolean): number {
  return zonePriors.zoneOverLength.high * (measured ? 1 : zonePriors.zoneShortfall.high) * bridgingLength;
}

/** Whether nineteen samples of twenty have room for their zone. */
export function fitsIn(
  lengths: readonly (number | undefined)[],
  { length, measured }: { readonly length: number; readonly measured: boolean },
): boolean {
  const fitting = lengths.filter((one) => one !== undefined && zoneNeeded(one, measured) <= length);
  return fitting.length >= most * lengths.length;
}
