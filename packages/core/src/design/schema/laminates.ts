import * as z from 'zod/mini';
import { choice, fibreContent, quantity, reference, section, text } from './fields.js';
import { blisterEntry, freeEdgeEntry, panelEntry } from './laminate-checks.js';

const plyEntry = section('one ply of a stack', {
  angle: quantity('angle', 'ply angle', { min: -360, max: 360 }),
  material: z.optional(reference('a ply, fabric or core of this file')),
  count: z.optional(quantity('number', 'how many of them', { min: 1, max: 1000 })),
});

const angleOnly = quantity('angle', 'ply angle', { min: -360, max: 360 });

/** A list entry: an angle, or angle and material. */
const listEntry = z.union([plyEntry, angleOnly], { error: () => 'an angle, or { angle, material }' });

export const laminateEntry = section('a laminate', {
  title: z.optional(text('a name for readers')),
  material: z.optional(reference('the material of plies without a suffix')),
  letters: z.optional(
    z
      .record(z.string(), reference('a material'), { error: () => 'letters for the materials of the orientation code' })
      .check(
        z.describe('short suffixes of the orientation code and the materials they stand for, for example t: twill-300'),
      ),
  ),
  stack: z
    .union([z.string(), z.array(listEntry).check(z.minLength(1), z.maxLength(2000))], {
      error: () => 'an orientation code in quotes such as "[45/0/90]s", or a list of plies from the tool side',
    })
    .check(z.describe('an orientation code in quotes such as "[45/0/90]s", or a list of plies, from the tool side')),
  symmetric: z.optional(
    z
      .boolean({ error: () => 'true or false' })
      .check(z.describe('true when a listed stack is the tool-side half and is mirrored')),
  ),
  process: z.optional(
    section('how the laminate is made', {
      kind: choice('a process', ['bag', 'closedTool']),
      fibreVolumeFraction: z.optional(quantity('fraction', 'fibre volume fraction in the bag', fibreContent)),
      gap: z.optional(quantity('length', 'gap of the closed tool', { above: 0, max: 0.5 })),
    }),
  ),
  freeEdge: z.optional(freeEdgeEntry),
  panel: z.optional(panelEntry),
  blister: z.optional(blisterEntry),
  note: z.optional(text('a remark')),
});
