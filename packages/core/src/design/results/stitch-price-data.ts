import type { InPlaneKnockdown } from '../../stitch/index.js';
import type { LoadedFibres, StitchPrice } from './stitch-price.js';

/** The price in the plane in the JSON document: factors on the value without stitches; null for what cannot be estimated. */
export function priceData({ missing, along, across, common, notes, sources }: StitchPrice): Record<string, unknown> {
  return {
    missing,
    along: along === undefined ? null : fibresData(along),
    across: across === undefined ? null : fibresData(across),
    ...(common === undefined ? {} : commonData(common)),
    notes,
    sources,
  };
}

const fibresData = ({ layer, material, angle, spacing, found }: LoadedFibres) => ({
  layer,
  material,
  angle,
  spacing,
  affectedWidth: found.affectedWidth,
  modulusFactor: found.modulus,
  compressionFactor: found.compression,
  tensionFactor: found.tension,
});

const commonData = ({
  perforation,
  crowding,
  published,
}: Pick<InPlaneKnockdown, 'perforation' | 'crowding' | 'published'>) => ({
  perforationFactor: perforation,
  crowdingFactor: crowding,
  published,
});
