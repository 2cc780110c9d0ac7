import curedPlies from '@selvage/reference-data/examples/cured-plies.json' with { type: 'json' };
import laminates from '@selvage/reference-data/examples/laminates.json' with { type: 'json' };
import type { WorkedExample } from './types.js';

/** Every worked example: those of publications first, then those computed by an independent script alone. */
export const workedExamples: readonly WorkedExample[] = [...laminates, ...curedPlies] as unknown as WorkedExample[];
