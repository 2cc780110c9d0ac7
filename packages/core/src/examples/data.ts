import curedPlies from '@selvage/reference-data/examples/cured-plies.json' with { type: 'json' };
import edge from '@selvage/reference-data/examples/edge.json' with { type: 'json' };
import exactDeflections from '@selvage/reference-data/examples/exact-deflections.json' with { type: 'json' };
import laminates from '@selvage/reference-data/examples/laminates.json' with { type: 'json' };
import plates from '@selvage/reference-data/examples/plates.json' with { type: 'json' };
import sandwich from '@selvage/reference-data/examples/sandwich.json' with { type: 'json' };
import shear from '@selvage/reference-data/examples/shear.json' with { type: 'json' };
import strength from '@selvage/reference-data/examples/strength.json' with { type: 'json' };
import type { WorkedExample } from './types.js';

/** Every worked example: those of publications first, then those computed by an independent script alone. */
export const workedExamples: readonly WorkedExample[] = [
  ...laminates,
  ...strength,
  ...shear,
  ...sandwich,
  ...edge,
  ...plates,
  ...exactDeflections,
  ...curedPlies,
] as unknown as WorkedExample[];
