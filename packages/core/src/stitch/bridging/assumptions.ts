import type { Note, SourceKey } from '../../provenance/index.js';
import type { BridgingInput } from './bridging-input.js';
import type { PenetrationInput } from './bridging-model.js';
import { assumedParameters, type BridgingParameters, yieldingParameterNames } from './bridging-parameters.js';
import { assumedRodParameters } from './rod.js';

const basic: readonly (keyof BridgingParameters)[] = [
  'frictionStress',
  'sewnEfficiency',
  'anchorEfficiency',
  'packing',
  'beddingIn',
  'siteScatter',
];
const sideways: readonly (keyof BridgingParameters)[] = ['bearingPressure', 'bearingWidth'];
const yielding = [...basic.filter((name) => name !== 'beddingIn'), ...sideways, ...yieldingParameterNames];
/** Sources of a penetration besides those of a thread with rigid bends. */
export function furtherSources(input: BridgingInput): readonly SourceKey[] {
  if ('kind' in input) return ['liu-2003', 'jme-2011'];
  return input.bends === 'yielding' ? ['hill-1950', 'tan-2010'] : [];
}

/** What was assumed of a penetration for want of measured values. */
export function assumptions(input: BridgingInput): readonly Note[] {
  if ('kind' in input) return [...assumedRodParameters(input), ...(input.path === undefined ? [] : [rodAsString])];
  const given = givenParameters(input);
  if (input.bends === 'yielding') return assumedParameters(yielding, given, input.assumed);
  return assumedParameters(input.path === undefined ? basic : [...basic, ...sideways], given, input.assumed);
}

const rodAsString: Note = {
  level: 'warning',
  text: 'rod taken as a string: its bending stiffness, and that it may break in bending, are left out as the crack slides',
};

/** Parameters that need no assumption: given ones, and the packing where every thread has its own. */
function givenParameters({
  parameters = {},
  needleThread,
  underThread,
}: PenetrationInput): Partial<BridgingParameters> {
  const own = needleThread.packing !== undefined && (underThread === undefined || underThread.packing !== undefined);
  return own ? { packing: needleThread.packing, ...parameters } : parameters;
}
