import * as z from 'zod/mini';
import { choice, quantity, section } from './fields.js';
import { oneOrList } from './one-or-list.js';

const side = { above: 0, max: 20 } as const;
const small = { min: -0.1, max: 0.1 } as const;

const toughness = z.optional(
  quantity('toughness', 'energy that an interface takes to part, per area of new crack', { above: 0, max: 100_000 }),
);

/** Cracks between the layers that come in from an edge. */
export const freeEdgeEntry = section('a free edge along x: where it parts and what drives it', {
  strain: z.optional(quantity('strain', 'strain along the edge, tension positive', small)),
  temperatureChange: z.optional(
    quantity('temperatureChange', 'change from the stress-free temperature', { min: -500, max: 1000 }),
  ),
  toughness,
});

const acrossAndAlong = 'force per width that compresses the panel along x and along y, negative when it pulls';

/** A rectangle on simple supports. */
export const panelEntry = section('a rectangular panel of this laminate, simply supported on all four sides', {
  length: quantity('length', 'side along x', side),
  width: quantity('length', 'side along y', side),
  compression: z.optional(
    z
      .tuple([quantity('forcePerLength', 'compression along x'), quantity('forcePerLength', 'compression along y')], {
        error: () => `${acrossAndAlong}: a list of two, [Nx, Ny]`,
      })
      .check(z.describe(`${acrossAndAlong}: [Nx, Ny], a force per length each, for example 20 N/mm`)),
  ),
  pressure: z.optional(quantity('pressure', 'pressure on one face', { min: -1e7, max: 1e7 })),
  modes: z.optional(
    quantity('number', 'how many of the lowest natural frequencies; 4 by default', { min: 1, max: 25 }),
  ),
});

const strain = quantity('strain', 'strain', small);

/** A delamination inside the laminate whose thinner side may buckle. */
export const blisterEntry = section('a delamination of this laminate, whose thinner side may buckle', {
  shape: choice('a shape of blister', ['strip', 'ellipse', 'circle']),
  interface: quantity('number', 'number of layers of the built-up laminate below it, from the tool side', {
    min: 1,
    max: 100_000,
  }),
  length: quantity('length', 'whole length along x; of a circle its diameter', side),
  width: z.optional(quantity('length', 'whole width along y, of an ellipse', side)),
  strain: z.optional(
    oneOrList(
      'strain of the laminate, tension positive: for a strip one value along x, for example -0.3 %; else a list of three, [x, y, xy]',
      strain,
      strain,
      { least: 3, most: 3 },
    ),
  ),
  toughness,
});
